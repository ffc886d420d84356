#include "paperwork/evening.hpp"

#include <algorithm>
#include <doctest/doctest.h>
#include <map>
#include <random>

using namespace bodkin::paperwork;

namespace {

constexpr std::int64_t minute = 60'000;

WorkOfTask work(std::string name, std::int64_t each, std::int64_t copies, std::int64_t once = 0) {
  return {std::move(name), once * minute, each * minute, copies, 0, true};
}

WorkOfTask wait(std::int64_t minutes, std::int64_t copies) {
  return {"dry", 0, 0, copies, minutes * minute, false};
}

std::int64_t minutes_of(const std::vector<WorkOfTask> &works, int hands) {
  return plan_evening(works, hands).ends / minute;
}

} // namespace

TEST_CASE("one pair of hands needs the sum of all work") {
  CHECK(minutes_of({work("fold", 1, 10), work("staple", 2, 10)}, 1) == 30);
}

// Twelve copies go in four batches of three: the second step is three minutes behind the first.
TEST_CASE("two pairs of hands follow each other from step to step") {
  CHECK(minutes_of({work("fold", 1, 12), work("staple", 1, 12)}, 2) == 15);
}

TEST_CASE("two hands never share a step, since there is one of each tool") {
  CHECK(minutes_of({work("staple", 1, 10)}, 3) == 10);
}

TEST_CASE("what is made ready is made beside the steps before it") {
  const std::vector<WorkOfTask> works{work("fold", 1, 8), work("stamp", 1, 8, 8)};
  CHECK(minutes_of(works, 1) == 24);
  // The stamp is ready at 8; eight minutes of stamping follow.
  CHECK(minutes_of(works, 2) == 16);
}

TEST_CASE("while the first batch dries the others are worked on") {
  // Four batches of two: the last is wet till 8 and dry at 38.
  CHECK(minutes_of({work("glue", 1, 8), wait(30, 8), work("trim", 1, 8)}, 1) == 40);
}

TEST_CASE("a batch after another on one task is one stretch") {
  const Evening evening = plan_evening({work("fold", 1, 10)}, 1);
  REQUIRE(evening.stretches.size() == 1);
  CHECK(evening.stretches[0].copies == 10);
  CHECK(evening.stretches[0].end == 10 * minute);
}

TEST_CASE("what lies and dries is told from the first copy that is wet to the last that is dry") {
  const Evening evening = plan_evening({work("glue", 1, 8), wait(30, 8), work("trim", 1, 8)}, 1);
  REQUIRE(evening.waits.size() == 1);
  CHECK(evening.waits[0].task == 1);
  CHECK(evening.waits[0].begin == 2 * minute);
  CHECK(evening.waits[0].end == 38 * minute);
}

TEST_CASE("hands are free when the last work is done, whatever still dries") {
  std::vector<WorkOfTask> works{work("fold", 1, 8), work("stamp", 1, 8)};
  works[1].waits = 10 * minute;
  const Evening evening = plan_evening(works, 1);
  CHECK(evening.hands_free == 16 * minute);
  CHECK(evening.ends == 26 * minute);
}

TEST_CASE("batches that go through the same steps are one turn of a pair of hands") {
  Evening evening;
  const auto add = [&](std::size_t task, std::int64_t begin, std::int64_t copies) {
    evening.stretches.push_back({0, task, begin * minute, (begin + 1) * minute, copies});
  };
  add(0, 0, 40);
  for (const std::int64_t begin : {1, 4, 7})
    for (const std::int64_t step : {0, 1, 2})
      add(static_cast<std::size_t>(step) + 1, begin + step, 14);
  add(1, 10, 11);
  add(4, 11, 0);
  const std::vector<Turn> turns = turns_of(evening, 0);
  REQUIRE(turns.size() == 4);
  CHECK(turns[0].tasks == std::vector<std::size_t>{0});
  CHECK(turns[0].copies == 40);
  CHECK(turns[0].at_once == 0);
  CHECK(turns[1].tasks == std::vector<std::size_t>{1, 2, 3});
  CHECK(turns[1].begin == 1 * minute);
  CHECK(turns[1].end == 10 * minute);
  CHECK(turns[1].copies == 42);
  CHECK(turns[1].at_once == 14);
  CHECK(turns[2].copies == 11);
  CHECK(turns[3].copies == 0); // making ready
  CHECK(turns_of(evening, 1).empty());
}

TEST_CASE("what is done to one batch step after step is one turn, to all copies a turn each") {
  Evening evening;
  evening.stretches = {{0, 0, 0, minute, 40},
                       {0, 1, minute, 2 * minute, 40},
                       {0, 2, 2 * minute, 3 * minute, 11},
                       {0, 3, 3 * minute, 4 * minute, 11}};
  const std::vector<Turn> turns = turns_of(evening, 0);
  REQUIRE(turns.size() == 3);
  CHECK(turns[2].tasks == std::vector<std::size_t>{2, 3});
  CHECK(turns[2].copies == 11);
  CHECK(turns[2].at_once == 0);
}

TEST_CASE("no batch has copies of two runs, and work of one run alone is done to its own") {
  std::vector<WorkOfTask> works{work("fold", 1, 14), work("sew", 5, 4), work("stamp", 1, 14)};
  works[0].of_run = works[2].of_run = {10, 4};
  works[1].of_run = {0, 4};
  const Evening evening = plan_evening(works, 1);
  // A quarter of fourteen is four at the most: three batches of the ten, one of the four.
  REQUIRE(evening.batches.size() == 4);
  CHECK(evening.batches[2].run == 0);
  CHECK(evening.batches[2].copies == 2);
  CHECK(evening.batches[3].run == 1);
  CHECK(evening.batches[3].copies == 4);
  for (const Stretch &stretch : evening.stretches)
    if (stretch.task == 1) {
      CHECK(stretch.from_batch == 3);
      CHECK(stretch.copies == 4);
    }
}

TEST_CASE("one whole copy is made before all others, and of each run one") {
  std::vector<WorkOfTask> works{work("fold", 1, 10, 2), work("staple", 2, 10)};
  const Evening evening = plan_from_first_copy(works, 1);
  CHECK(evening.first_copy == 5 * minute); // made ready in it
  CHECK(evening.stretches.front().begin == 5 * minute);
  CHECK(evening.stretches.front().copies == 9);
  CHECK(evening.hands_free == 32 * minute);
  for (WorkOfTask &of : works)
    of.of_run = {6, 4};
  CHECK(plan_from_first_copy(works, 1).first_copy == 8 * minute);
}

TEST_CASE("of three copies each is as much the first as the others") {
  CHECK(plan_from_first_copy({work("fold", 1, 3)}, 1).first_copy == 0);
}

TEST_CASE("numbers go on when the last copy is made") {
  std::vector<WorkOfTask> works{work("fold", 1, 8), work("number", 1, 8)};
  works[0].waits = 10 * minute; // the last batch is ready at 18
  works[1].after_all = true;
  const Evening evening = plan_evening(works, 2);
  REQUIRE(evening.stretches.size() == 2);
  CHECK(evening.stretches[1].begin == 18 * minute);
  CHECK(evening.stretches[1].copies == 8);
}

TEST_CASE("a turn ends where whoever follows it has to wait") {
  Evening evening;
  evening.stretches = {{0, 0, 0, minute, 5},
                       {0, 1, minute, 2 * minute, 5},
                       {0, 0, 4 * minute, 5 * minute, 5},
                       {0, 1, 5 * minute, 6 * minute, 5}};
  CHECK(turns_of(evening, 0).size() == 4);
  evening.stretches[2].begin = 2 * minute;
  CHECK(turns_of(evening, 0).size() == 1);
}

// Bounds of any schedule: neither under the work divided by hands nor under one task's own work,
// and never over the sum of work and waiting.
TEST_CASE("a hundred evenings keep to what any plan must") {
  std::mt19937 random(4);
  const auto some = [&](int most) {
    return static_cast<std::int64_t>(random() % static_cast<unsigned>(most));
  };
  for (int round = 0; round < 100; ++round) {
    std::vector<WorkOfTask> works;
    const std::int64_t copies = 1 + some(40);
    for (std::int64_t task = 0; task <= some(6); ++task) {
      works.push_back(work("w", some(5), copies, some(3) == 0 ? some(20) : 0));
      works.back().waits = some(4) == 0 ? some(60) * minute : 0;
    }
    const int hands = 1 + static_cast<int>(some(4));
    const Evening evening = plan_evening(works, hands);
    std::int64_t all = 0, longest = 0, waits = 0;
    for (const WorkOfTask &of : works) {
      all += of.total();
      longest = std::max(longest, of.total());
      waits += of.waits;
    }
    CHECK(evening.ends * hands >= all);
    CHECK(evening.ends >= longest);
    CHECK(evening.ends <= all + 8 * waits);
    std::map<int, std::int64_t> free;
    std::map<std::size_t, std::int64_t> worked;
    for (const Stretch &stretch : evening.stretches) {
      CHECK(stretch.begin >= free[stretch.hand]);
      free[stretch.hand] = stretch.end;
      worked[stretch.task] += stretch.end - stretch.begin;
    }
    for (std::size_t task = 0; task < works.size(); ++task)
      CHECK(worked[task] == works[task].total());
  }
}
