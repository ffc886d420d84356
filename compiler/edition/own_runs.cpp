#include "edition/own_runs.hpp"

#include "edition/problems.hpp"
#include "edition/values.hpp"
#include "measure/limits.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {
namespace {

// More than a handful of kinds of copy is a slip, or a price list.
constexpr std::size_t most_runs = 20;

Problem missing_run(const Reader &reader) {
  return missing_fact(reader.edition_line.range(), "this edition does not say its run",
                      "paper, time and money are counted for a number of copies",
                      "run        50 copies, 3 spare");
}

Problem too_many_copies(const Reader &reader, FactLine line, const Known<std::int64_t> &copies) {
  return {.check = "number-too-big",
          .range = copies.from,
          .message = fmt::format("{} copies are more than hands can fold; {} is the most", *copies,
                                 limits::copies),
          .why = "a copy folded every ten seconds, day and night, makes three million a "
                 "year",
          .type = {{typed(reader, line.range(), copies.from, "500"), {}}}};
}

Problem run_twice(const Reader &reader, FactLine line, const NamedRun &first) {
  return {.check = "same-fact-twice",
          .range = line.range(),
          .message = fmt::format("the run is written already, on line {}",
                                 reader.sources.line_number(first.range)),
          .why = "one fact is written once, so that there is never a question which line counts; "
                 "runs that differ have each a name of their own",
          .type = {{fmt::format("{} called de-luxe", reader.sources.text(line.range())),
                    "where some copies differ from the others; else take one of the lines out"}},
          .related = {{first.range, "the first of them"}}};
}

void take_run(Reader &reader, FactLine line, std::vector<NamedRun> &runs) {
  NamedRun taken{std::string(line.words("called")), {1, 0}, {}};
  if (const auto copies =
          count_in(reader, line, "copies", 1, "an edition of no copies is not made")) {
    taken.run.copies = std::min(copies->value, limits::copies);
    taken.range = line.range();
    if (copies->value > limits::copies)
      reader.report(too_many_copies(reader, line, *copies));
  }
  if (const auto spare = value_in<language::Count>(line, "spare"))
    taken.run.spare = std::clamp<std::int64_t>(spare->value.value, 0, limits::copies);
  const auto same = std::find_if(runs.begin(), runs.end(), [&](const NamedRun &other) {
    return other.name == taken.name || other.name.empty() || taken.name.empty();
  });
  if (same != runs.end())
    return reader.report(run_twice(reader, line, *same));
  if (runs.size() < most_runs)
    runs.push_back(std::move(taken));
}

} // namespace

void take_runs(Reader &reader) {
  std::vector<NamedRun> runs;
  reader.edition_facts.each("run", [&](FactLine line) { take_run(reader, line, runs); });
  if (runs.empty()) {
    if (!reader.edition_facts.find("run"))
      reader.report(missing_run(reader));
    runs.push_back({"", {1, 0}, {}});
  }
  Run all;
  for (const NamedRun &run : runs) {
    all.copies += run.run.copies;
    all.spare += run.run.spare;
  }
  reader.edition.run = known(all, runs.front().range);
  if (runs.size() > 1)
    reader.edition.runs = std::move(runs);
}

std::optional<Known<std::uint32_t>> only_in(Reader &reader, FactLine line) {
  if (!line || !line.has("run"))
    return std::nullopt;
  const std::vector<NamedRun> &runs = reader.edition.runs;
  const std::string_view name = line.words("run");
  const auto found =
      std::find_if(runs.begin(), runs.end(), [&](const NamedRun &run) { return run.name == name; });
  if (found != runs.end())
    return known(static_cast<std::uint32_t>(found - runs.begin()), line.range());
  std::vector<std::string_view> names;
  for (const NamedRun &run : runs)
    names.push_back(run.name);
  Problem problem{.check = "unknown-name",
                  .range = line.range("run"),
                  .message = fmt::format("no run is called {}", name),
                  .why = runs.empty() ? std::string("this edition has one run, and all its copies "
                                                    "are alike; runs that differ each have a name")
                                      : fmt::format("the runs are {}", list_of(names))};
  if (runs.empty())
    problem.type = {{fmt::format("run        10 copies called {}", name),
                     "a second run under edition, beside the first, called otherwise"}};
  else
    problem.type = {{typed(reader, line.range(), line.range("run"), names.front()), {}}};
  reader.report(std::move(problem));
  return std::nullopt;
}

} // namespace bodkin
