#include "sheet/paper_problems.hpp"

#include "sheet/speech.hpp"

#include <algorithm>
#include <cstdlib>
#include <fmt/format.h>

namespace bodkin {
namespace {

using spoken::listed;
using spoken::on_line;
using spoken::pages_listed;

// The page's line with one name in it exchanged, where the line speaks of no page off this sheet;
// else a line for these pages alone.
WayOut line_with(const AllSheets &all, const std::vector<int> &asking, const std::vector<int> &here,
                 Range from, std::string_view little_word, const std::string &name,
                 std::vector<Edit> &edits) {
  const Edition &edition = all.edition;
  const Range opened = edition.pages[static_cast<std::size_t>(asking.front())].opened;
  bool others = !opened.somewhere();
  for (std::size_t page = 1; page < edition.pages.size() && !others; ++page)
    others = edition.pages[page].opened == opened &&
             std::find(here.begin(), here.end(), static_cast<int>(page)) == here.end();
  const bool inside =
      opened.file == from.file && opened.begin <= from.begin && from.end <= opened.end;
  if (!others && inside) {
    const std::string_view line = all.sources.text(opened);
    const std::size_t at = bytes(from.begin) - bytes(opened.begin);
    const std::size_t length = bytes(from.end) - bytes(from.begin);
    edits = {{from, name}};
    return {fmt::format("{}{}{}", line.substr(0, at), name, line.substr(at + length)), ""};
  }
  std::string pages;
  for (const int page : asking)
    pages += (pages.empty() ? "" : ", ") + std::to_string(page);
  return {fmt::format("page {} {} {}", pages, little_word, name),
          others && opened.somewhere()
              ? fmt::format("out of the list{}", on_line(all.sources, opened))
              : ""};
}

// Pages of the nearest sheet that is the wanted paper.
const Sheet *near_by(const Imposition &imposition, const Sheet &sheet, StockId wanted) {
  const Sheet *nearest = nullptr;
  for (const Sheet &other : imposition.sheets)
    if (other.number != sheet.number && other.stock == wanted && !pages_of(other).empty() &&
        (nearest == nullptr ||
         std::abs(other.number - sheet.number) < std::abs(nearest->number - sheet.number)))
      nearest = &other;
  return nearest;
}

int nearest_page(const std::vector<int> &pages, int page) {
  return *std::min_element(pages.begin(), pages.end(),
                           [&](int a, int b) { return std::abs(a - page) < std::abs(b - page); });
}

std::string_view matter_of(const Edition &edition, const std::vector<int> &pages) {
  if (pages.size() > 1)
    return "what is on them";
  const std::vector<ElementId> &elements =
      edition.pages[static_cast<std::size_t>(pages.front())].elements;
  const bool words = std::all_of(elements.begin(), elements.end(), [&](ElementId id) {
    return std::holds_alternative<Words>(edition[id].what);
  });
  return words && !elements.empty() ? "its words" : "what is on it";
}

std::string_view verb(const std::vector<int> &pages) { return pages.size() == 1 ? "is" : "are"; }

} // namespace

std::string sides_in_words(const Sheet &sheet) {
  const std::vector<int> front = pages_of(sheet.sides[0]), back = pages_of(sheet.sides[1]);
  std::string text = fmt::format("{} on its front", pages_listed(front));
  if (!back.empty())
    text += fmt::format(", {} on its back", listed(back));
  return text;
}

Problem no_cover(const Edition &edition, const Imposition &imposition) {
  const Sheet &sheet = imposition.sheets.front();
  const std::vector<int> pages = pages_of(sheet);
  Problem problem;
  problem.check = "no-cover";
  problem.range = edition.cover_stock ? edition.cover_stock->from : edition.cover_mode->from;
  problem.message =
      fmt::format("{} has no sheet for a cover alone: sheet 1 carries {} pages{}",
                  edition.folding->name, imposition.pages_a_sheet,
                  imposition.pages_a_sheet == 4
                      ? fmt::format(", and page {} is on another", imposition.page_count)
                      : "");
  problem.why = fmt::format("sheet 1 of {} is one piece of paper: {}; a cover is a sheet with the "
                            "first two and the last two pages and no others",
                            imposition.sheets.size(), sides_in_words(sheet));
  if (edition.cover_stock && **edition.cover_stock != StockId::none)
    problem.type = {{fmt::format("page 1 on {}", edition[**edition.cover_stock].name),
                     fmt::format("which puts {} on it; and take `cover` out", pages_listed([&] {
                                   std::vector<int> rising = pages;
                                   std::sort(rising.begin(), rising.end());
                                   return rising;
                                 }()))}};
  return problem;
}

Problem mixed_stock(const AllSheets &all, const Sheet &sheet, const Request<StockId> &first,
                    const Request<StockId> &other) {
  const std::string &is = all.edition[first.wanted].name;
  const std::string &wants = all.edition[other.wanted].name;
  Problem problem;
  problem.check = "mixed-stock";
  problem.range = other.from;
  problem.message =
      fmt::format("{} {} asked on {}, but {}{} {} the same sheet on {}", pages_listed(other.pages),
                  verb(other.pages), wants, pages_listed(first.pages),
                  on_line(all.sources, first.from), first.pages.size() == 1 ? "puts" : "put", is);
  problem.why = fmt::format("sheet {} of {} is one piece of paper: {}", sheet.number,
                            all.imposition.sheets.size(), sides_in_words(sheet));
  WayOut way = line_with(all, other.pages, pages_of(sheet), other.from, "on", is, problem.edits);
  if (const Sheet *near = near_by(all.imposition, sheet, other.wanted)) {
    std::vector<int> pages = pages_of(*near);
    std::sort(pages.begin(), pages.end());
    problem.why +=
        fmt::format("; {} pages near by are {}, on sheet {}", wants, listed(pages), near->number);
    way.remark +=
        fmt::format("{}or move {} to page {}", way.remark.empty() ? "" : "; ",
                    matter_of(all.edition, other.pages), nearest_page(pages, other.pages.front()));
  } else {
    problem.why += fmt::format("; no other sheet is {}", wants);
  }
  problem.type = {std::move(way)};
  problem.related = {{first.from, fmt::format("{} {} asked on {} here", pages_listed(first.pages),
                                              verb(first.pages), is)}};
  return problem;
}

Problem mixed_machine(const AllSheets &all, const Sheet &sheet, const Side &side,
                      const Request<MachineId> &first, const Request<MachineId> &other) {
  const std::string &is = all.edition[first.wanted].name;
  const std::string &wants = all.edition[other.wanted].name;
  Problem problem;
  problem.check = "mixed-machine";
  problem.range = other.from;
  problem.message =
      fmt::format("{} {} asked by {}, but {}{} {} the same side through {}",
                  pages_listed(other.pages), verb(other.pages), wants, pages_listed(first.pages),
                  on_line(all.sources, first.from), first.pages.size() == 1 ? "puts" : "put", is);
  problem.why = fmt::format("{} lie side by side on sheet {}, {}, and a side goes through one "
                            "machine; its front and its back may go through two",
                            pages_listed(pages_of(side)), sheet.number,
                            side.name == SideName::front ? "front" : "back");
  problem.type = {line_with(all, other.pages, pages_of(side), other.from, "by", is, problem.edits)};
  problem.related = {{first.from, fmt::format("{} {} asked by {} here", pages_listed(first.pages),
                                              verb(first.pages), is)}};
  return problem;
}

} // namespace bodkin
