// The evening's work laid out in time: which hands do what, when, for one pair of hands and for
// several. Copies pass from step to step in batches; a step begins on a batch when the step before
// it is done with that batch, and what must be made ready first (a stamp that is cut) when that is
// ready. There is one of each tool, so two hands never share a step; while something dries or lies
// under a weight, hands are free for other batches.
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
  std::int64_t total() const { return once + each * copies; }
};
std::vector<WorkOfTask> works(const Making &making);

// One stretch of one hand's time on one task.
struct Stretch {
  int hand = 0; // from 0
  std::size_t task = 0;
  std::int64_t begin = 0, end = 0; // milliseconds from the start
  std::int64_t copies = 0;         // 0: making ready
};

// From when the first copies of a task dry or lie under a weight to when the last ones are ready.
struct Waiting {
  std::size_t task = 0;
  std::int64_t begin = 0, end = 0;
};

struct Evening {
  int hands = 1;
  std::vector<Stretch> stretches; // in order of beginning, then hand
  std::vector<Waiting> waits;     // in order of tasks
  std::int64_t hands_free = 0;    // when the last work ends
  std::int64_t ends = 0;          // and the last waiting
};
Evening plan_evening(const std::vector<WorkOfTask> &works, int hands);

// What one pair of hands does, as it is told: batches that go through the same steps one after the
// other are one turn.
struct Turn {
  std::vector<std::size_t> tasks; // in order
  std::int64_t begin = 0, end = 0;
  std::int64_t copies = 0;  // 0: making ready
  std::int64_t at_once = 0; // copies in each round; 0: a single round, or rounds that differ
};
std::vector<Turn> turns_of(const Evening &evening, int hand);

// As blocks of a guide or of a report; nothing where no work says its time.
void tell_evening(const Making &making, Leaflet &leaflet);
// The same for a terminal, with a heading; empty where there is nothing to tell.
std::string evening_as_text(const Making &making, int columns);

} // namespace bodkin::paperwork
