// The evening's work laid out in time: which hands do what, when, for one pair of hands and for
// several. Copies pass from step to step in batches; a step begins on a batch when the step before
// it is done with that batch, and what must be made ready first (a stamp that is cut) when that is
// ready. There is one of each tool, so two hands never share a step; while something dries or lies
// under a weight, hands are free for other batches. Before all others one whole copy is made, to
// learn each step on. Numbers and signatures go on when every copy is made and checked.
#pragma once

#include "paperwork/leaflet.hpp"
#include "paperwork/tasks.hpp"

#include <cstdint>
#include <string>
#include <vector>

namespace bodkin::paperwork {

struct WorkOfTask {
  std::string name;
  std::int64_t once = 0;   // milliseconds, before the first copy
  std::int64_t each = 0;   // for a copy
  std::int64_t copies = 0; // that it is done on
  std::int64_t waits = 0;  // for a batch, hands free
  bool timed = false;      // the edition says how long it takes
  Drying drying = Drying::nothing;
  std::vector<std::int64_t> of_run{}; // of `copies`, by run; empty: all are of one
  bool on_sheets = false;             // flat ones, those of spares too
  bool after_all = false;             // begins when the step before is done with every copy
  std::int64_t total() const { return once + each * copies; }
};
std::vector<WorkOfTask> works(const Making &making);

// Copies of one run that go from step to step together.
struct PlanBatch {
  std::size_t run = 0;
  std::int64_t first = 0, copies = 0; // of the run's
};

// One stretch of one hand's time on one task.
struct Stretch {
  int hand = 0; // from 0
  std::size_t task = 0;
  std::int64_t begin = 0, end = 0;          // milliseconds from the start
  std::int64_t copies = 0;                  // 0: making ready
  std::size_t from_batch = 0, to_batch = 0; // these, and all between
};

// From when the first copies of a task dry or lie under a weight to when the last ones are ready.
struct Waiting {
  std::size_t task = 0;
  std::int64_t begin = 0, end = 0;
};

std::int64_t copies_in(const WorkOfTask &work, const PlanBatch &batch);

struct Evening {
  int hands = 1;
  std::vector<PlanBatch> batches;
  std::int64_t first_copy = 0;    // so long one whole copy takes, before all others; 0: none does
  std::vector<Stretch> stretches; // in order of beginning, then hand
  std::vector<Waiting> waits;     // in order of tasks
  std::int64_t hands_free = 0;    // when the last work ends
  std::int64_t ends = 0;          // and the last waiting
};
Evening plan_evening(const std::vector<WorkOfTask> &works, int hands);
// Likewise, with one whole copy of each run before the others.
Evening plan_from_first_copy(const std::vector<WorkOfTask> &works, int hands);
// What is left of the work when those are made, with nothing to make ready; all of it of a few.
std::vector<WorkOfTask> without_first_copies(std::vector<WorkOfTask> works);

// What one pair of hands does, as it is told: batches that go through the same steps one after the
// other, with no wait between, are one turn.
struct Turn {
  std::vector<std::size_t> tasks; // in order
  std::int64_t begin = 0, end = 0;
  std::int64_t copies = 0;  // 0: making ready
  std::int64_t at_once = 0; // copies in each round; 0: a single round, or rounds that differ
  std::size_t from_batch = 0, to_batch = 0;
};
std::vector<Turn> turns_of(const Evening &evening, int hand);

// To the minute, from one minute on: "8 min"; nobody works to the second.
std::string about_so_long(std::int64_t milliseconds);

// Who reads of the evening: whoever has nothing but the guide, or the maker, who can change what
// the edition says.
enum class PlanReader { at_the_table, maker };
// As blocks of a guide or of a report; nothing where no work says its time.
void tell_evening(const Making &making, PlanReader reader, Leaflet &leaflet);
// The same for a terminal, with a heading; empty where there is nothing to tell.
std::string evening_as_text(const Making &making, int columns);

} // namespace bodkin::paperwork
