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
