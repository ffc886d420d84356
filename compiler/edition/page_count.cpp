#include "edition/page_list.hpp"
#include "edition/pages.hpp"
#include "edition/problems.hpp"
#include "edition/values.hpp"
#include "measure/limits.hpp"

#include <fmt/format.h>

namespace bodkin {
namespace {

Problem called_twice(const Reader &reader, FactLine line, int other) {
  const std::string_view name = line.words("called");
  return {
      .check = "duplicate-name",
      .range = line.range("called"),
      .message = fmt::format("page {} is called {} already", other, name),
      .why = "a link to a page by its name could lead to either",
      .type = {{typed(reader, line.range(), line.range("called"), fmt::format("{}-2", name)), {}}},
      .edits = {{line.range("called"), fmt::format("{}-2", name)}}};
}

Problem too_many_pages(const Reader &reader, FactLine line, Range where) {
  return {.check = "too-many-pages",
          .range = where,
          .message = fmt::format("{} pages are more than any booklet has; {} is the most",
                                 reader.sources.text(where), limits::pages),
          .why = "a number so high is a slip of the finger",
          .type = {{typed(reader, line.range(), where, "24"), "with the number that was meant"}}};
}

Problem no_pages(const Reader &reader) {
  return missing_fact(
      reader.edition_line.range(), fmt::format("this {} has no page", reader.edition_line.word()),
      "it has as many pages as its highest page number, or as `pages` says", "page 1");
}

std::optional<Known<int>> written_count(Reader &reader) {
  if (reader.wraps())
    return known(4, reader.piece.range());
  const FactLine line = reader.edition_facts.find("pages");
  const auto count = count_in(reader, line, "count", 1, "an edition has a page at the least");
  if (!count)
    return std::nullopt;
  if (count->value > limits::pages) {
    reader.report(too_many_pages(reader, line, count->from));
    return std::nullopt;
  }
  return known(static_cast<int>(count->value), count->from);
}

void take_called(Reader &reader, FactLine line, int page) {
  if (page == 0 || !line.has("called"))
    return;
  const auto [found, added] = reader.called.emplace(line.words("called"), page);
  if (!added)
    reader.report(called_twice(reader, line, found->second));
}

void claim(Reader &reader, const PageList &list) {
  const auto last = static_cast<std::size_t>(list.pages.back());
  if (last >= reader.claimed.size())
    reader.claimed.resize(last + 1);
  for (const int page : list.pages)
    reader.claimed[static_cast<std::size_t>(page)] = true;
}

} // namespace

void count_pages(Reader &reader) {
  const auto written = written_count(reader);
  PageScope scope{.count = written ? written->value : 0, .count_written = written.has_value()};
  int highest = 0;
  Range from;
  reader.each_page_line([&](FactLine line) {
    const PageList list = pages_foreseen(reader, line, "pages", scope);
    if (list.pages.empty())
      return;
    take_called(reader, line, list.first);
    claim(reader, list);
    scope.next = list.pages.back() + 1;
    if (list.pages.back() > highest) {
      highest = list.pages.back();
      from = line.range("pages");
    }
  });
  // A sheet has a back, named or not.
  if (reader.piece && highest == 1)
    highest = 2;
  reader.edition.page_count = written ? *written : known(highest, from);
  if (highest == 0 && !written && reader.edition_line)
    reader.report(no_pages(reader));
}

} // namespace bodkin
