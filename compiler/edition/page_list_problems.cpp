#include "edition/page_list_problems.hpp"

#include "edition/problems.hpp"
#include "measure/limits.hpp"

#include <fmt/format.h>

namespace bodkin {

Problem needs_pages_written(Range range, std::string_view word) {
  return {.check = "missing-fact",
          .range = range,
          .message = fmt::format("{} is only known where `pages` is written", word),
          .why = "without it the edition has as many pages as its highest page number, which the "
                 "next page put in would change",
          .type = {{"pages      24", "under edition, with the number of yours"}}};
}

Problem backwards(const Reader &reader, FactLine line, Range range, std::int64_t first,
                  std::int64_t last) {
  return {.check = "unknown-page",
          .range = range,
          .message = fmt::format("{}-{} runs backwards", first, last),
          .why = "pages stand in a list from the lower to the higher",
          .type = {{typed(reader, line.range(), range, fmt::format("{}-{}", last, first)), {}}},
          .edits = {{range, fmt::format("{}-{}", last, first)}}};
}

Problem no_page_nought(const Reader &reader, FactLine line, Range range) {
  Problem problem{.check = "unknown-page",
                  .range = range,
                  .message = "there is no page 0",
                  .why = "pages count from 1, which is the front cover"};
  if (reader.sources.text(range) == "0") {
    problem.type = {{typed(reader, line.range(), range, "1"), {}}};
    problem.edits = {{range, "1"}};
  } else {
    problem.type = {{{}, "take the 0 out of the list"}};
  }
  return problem;
}

namespace {

// The fewest pages that hold this one and fill whole sheets, where sheets may be added.
std::int64_t that_folds(const Reader &reader, std::int64_t page) {
  const Folding &folding = *reader.edition.folding;
  const std::int64_t a_sheet =
      std::int64_t{folding.columns} * folding.rows * (folding.one_side ? 1 : 2);
  return folding.sheets ? page : (page + a_sheet - 1) / a_sheet * a_sheet;
}

} // namespace

Problem above_the_last(const Reader &reader, FactLine line, Range range, std::int64_t page,
                       int count) {
  if (count == 0)
    return {.check = "too-many-pages",
            .range = range,
            .message = fmt::format("page {} is more than any booklet has; {} is the most", page,
                                   limits::pages),
            .why = "a number so high is a slip of the finger",
            .type = {{{}, "take a number out of it"}}};
  Problem problem{
      .check = "unknown-page",
      .range = range,
      .message = fmt::format("page {} comes after the last; the edition has {} pages", page, count),
      .why = "pages are never added silently: each asks for paper",
      .type = {{fmt::format("pages      {}", that_folds(reader, page)), "under edition"}}};
  const auto last = static_cast<std::size_t>(count);
  if (last >= reader.claimed.size() || !reader.claimed[last])
    problem.type.push_back({typed(reader, line.range(), range, std::to_string(count)),
                            "or, if the last was meant, this"});
  return problem;
}

Problem too_many_lists(FactLine line) {
  return {.check = "too-many-things",
          .range = line.range(),
          .message = "the page lists of this edition name more pages than a library holds",
          .why = fmt::format("from here on lists are left out; {} pages may be named in all",
                             limits::pages_listed),
          .type = {{{}, "make it several editions"}}};
}

Problem unknown_page(Reader &reader, FactLine line, Range range, std::string_view name,
                     std::span<const std::string_view> page_words) {
  std::vector<std::string_view> names = called_names(reader);
  Problem problem{.check = "unknown-page",
                  .range = range,
                  .message = fmt::format("no page is called {}", name)};
  problem.why = called_list(reader);
  names.insert(names.end(), page_words.begin(), page_words.end());
  if (const auto near = reader.near(name, names)) {
    problem.message += fmt::format("; did you mean {}?", *near);
    const std::string_view whole = reader.sources.text(line.range());
    if (const std::size_t at = whole.find(name); at != std::string_view::npos)
      problem.type.push_back(
          {fmt::format("{}{}{}", whole.substr(0, at), *near, whole.substr(at + name.size())), {}});
  } else {
    problem.type.push_back({fmt::format("page 12 called {}", name), "on the line that opens it"});
  }
  return problem;
}

} // namespace bodkin
