#include "edition/own_runs.hpp"

#include "edition/problems.hpp"
#include "edition/values.hpp"
#include "measure/limits.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <span>

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

// Of two runs it is the one without a name that is typed anew; of two of one name, the later.
WayOut with_a_name(const Reader &reader, FactLine line, const NamedRun &first) {
  const std::string here(reader.sources.text(line.range()));
  if (!line.has("called"))
    return {fmt::format("{} called de-luxe", here),
            "where some copies differ from the others; else take one of the lines out"};
  if (first.name.empty())
    return {fmt::format("{} called plain", reader.sources.text(first.range)),
            fmt::format("instead of line {}", reader.sources.line_number(first.range))};
  return {fmt::format("{}-too", here), "or a better name; else take one of the lines out"};
}

Problem run_twice(const Reader &reader, FactLine line, const NamedRun &first) {
  return {.check = "same-fact-twice",
          .range = line.range(),
          .message = fmt::format("the run is written already, on line {}",
                                 reader.sources.line_number(first.range)),
          .why = "one fact is written once, so that there is never a question which line counts; "
                 "runs that differ have each a name of their own",
          .type = {with_a_name(reader, line, first)},
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

Problem no_counts(const Reader &reader, FactLine line) {
  return too_small(line.range(), "a run of numbers goes from its first to its last",
                   "each good copy gets one number, and the list to sign off has a box for each",
                   fmt::format("counts     1-{}", reader.edition.run->copies));
}

} // namespace

std::optional<Known<Counts>> counts_in(Reader &reader, FactLine line) {
  const auto pages = value_in<language::Pages>(line, "counts");
  if (!pages)
    return std::nullopt;
  const auto items =
      std::span(line.in->tree.page_items).subspan(pages->value.first, pages->value.count);
  if (items.size() == 1 && items[0].word.empty() && items[0].first >= 0 &&
      items[0].last >= items[0].first)
    return known(Counts{items[0].first, items[0].last}, pages->from);
  reader.report(no_counts(reader, line));
  return std::nullopt;
}

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
  reader.edition.counts = counts_in(reader, reader.edition_facts.find("counts"));
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
  names.reserve(runs.size());
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
    problem.type = {{typed(reader, line.range(), line.range("run"),
                           reader.near(name, names).value_or(names.front())),
                     {}}};
  reader.report(std::move(problem));
  return std::nullopt;
}

namespace {

// Of two lines that tell no run apart the second may be for the last of the runs.
std::vector<WayOut> ways_to_one_line(const Reader &reader, FactLine line, FactLine first) {
  std::vector<WayOut> ways;
  if (reader.edition.runs.size() > 1 && !Facts(line).find("only"))
    ways.push_back({fmt::format("{}\n  only       {}", reader.sources.text(line.range()),
                                reader.edition.runs.back().name),
                    "if it is for these copies alone"});
  ways.push_back(
      {"", fmt::format("{}keep this line or line {}, and take the other out",
                       ways.empty() ? "" : "or ", reader.sources.line_number(first.range()))});
  return ways;
}

Problem written_twice(const Reader &reader, FactLine line, FactLine first) {
  return {.check = "same-fact-twice",
          .range = line.range(),
          .message = fmt::format("{} is already written on line {}", line.word(),
                                 reader.sources.line_number(first.range())),
          .why = "each fact is written once, so that there is no question which line counts; two "
                 "are often the trace of two people's changes put together",
          .type = ways_to_one_line(reader, line, first),
          .related = {{first.range(), "the first one"}}};
}

Problem none_for_run(const Reader &reader, const std::vector<RunLine> &lines, const NamedRun &run) {
  const FactLine line = lines.front().line;
  return {
      .check = "missing-fact",
      .range = line.range(),
      .message = fmt::format("the copies {} have no {}", run.name, line.word()),
      .why = "`only` gives this line to one run, and no line is left for the others",
      .type = {{std::string(reader.sources.text(line.range())),
                fmt::format("a line more, without `only`, or with `only {}` below it", run.name)}}};
}

bool reaches(const std::vector<RunLine> &lines, std::uint32_t run) {
  return std::any_of(lines.begin(), lines.end(),
                     [run](const RunLine &line) { return !line.run || *line.run == run; });
}

} // namespace

Problem only_in_a_piece(const Reader &reader, FactLine only) {
  const std::string_view piece = reader.piece.word();
  return {.check = "only-in-a-piece",
          .range = only.range(),
          .message = fmt::format("one run cannot have another {} than the others", piece),
          .why = "what differs from run to run is laid for each of them, and a piece is laid once",
          .type = piece_for_each_run(reader, reader.piece.range(), reader.piece.words("name"))};
}

std::vector<WayOut> piece_for_each_run(const Reader &reader, Range line, std::string_view name) {
  const std::string_view opens = reader.sources.text(line);
  if (!opens.starts_with("insert") && !opens.starts_with("wrap"))
    return {{{}, "take it to a page of the book, or to an insert that has `only`"}};
  const std::size_t at = name.empty() ? opens.npos : opens.find(name, opens.find(' '));
  std::vector<WayOut> typed;
  for (const NamedRun &run : reader.edition.runs) {
    std::string own(opens);
    if (at != opens.npos && !typed.empty())
      own.insert(at + name.size(), "-" + run.name);
    typed.push_back({fmt::format("{}\n  only       {}", own, run.name),
                     typed.empty() ? "and below it what stands there now, but for what these "
                                     "copies do not have"
                                   : "and the same again"});
  }
  return typed;
}

std::vector<RunLine> lines_by_run(Reader &reader, std::string_view word) {
  std::vector<RunLine> lines;
  reader.edition_facts.each(word, [&](FactLine line) {
    const FactLine only = Facts(line).find("only");
    const auto named = only_in(reader, only);
    if (only && !named)
      return;
    const auto run = named ? std::optional(**named) : std::nullopt;
    const auto same = std::find_if(lines.begin(), lines.end(),
                                   [run](const RunLine &other) { return other.run == run; });
    if (same != lines.end())
      return reader.report(written_twice(reader, line, same->line));
    lines.push_back({run, line});
  });
  return lines;
}

void take_lines_by_run(Reader &reader, std::string_view word) {
  const std::vector<RunLine> &lines = reader.by_run[word] = lines_by_run(reader, word);
  for (std::uint32_t run = 0; run < reader.edition.runs.size() && !lines.empty(); ++run)
    if (word == "paper" && !reaches(lines, run))
      reader.report(none_for_run(reader, lines, reader.edition.runs[run]));
}

FactLine line_for(const Reader &reader, std::string_view word, std::uint32_t run) {
  const auto found = reader.by_run.find(word);
  FactLine for_all;
  if (found == reader.by_run.end())
    return for_all;
  for (const RunLine &line : found->second) {
    if (line.run && *line.run == run)
      return line.line;
    if (!line.run)
      for_all = line.line;
  }
  return for_all;
}

bool has_own_line(const Reader &reader, std::string_view word) {
  const auto found = reader.by_run.find(word);
  return found != reader.by_run.end() &&
         std::any_of(found->second.begin(), found->second.end(),
                     [](const RunLine &line) { return line.run.has_value(); });
}

} // namespace bodkin
