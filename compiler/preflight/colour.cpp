#include "edition/copy_numbers.hpp"
#include "money/exact.hpp"
#include "page/outline.hpp"
#include "preflight/about.hpp"
#include "preflight/families.hpp"
#include "preflight/side_prices.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <set>

namespace bodkin {
namespace {

bool is_name_character(char c) {
  return c == '-' || (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z');
}

// Where a phrase of a page's line stands, as " in black" does.
std::size_t phrase_at(std::string_view line, std::string_view phrase) {
  std::size_t at = line.find(phrase);
  while (at != std::string_view::npos && at + phrase.size() < line.size() &&
         is_name_character(line[at + phrase.size()]))
    at = line.find(phrase, at + 1);
  return at;
}

std::string without(std::string line, std::initializer_list<std::string_view> phrases) {
  for (const std::string_view phrase : phrases)
    if (const std::size_t at = phrase_at(line, phrase); at != std::string::npos)
      line.erase(at, phrase.size());
  return line;
}

// The line that opens a page, with its mode written: before its paper and its machine.
std::string line_in(std::string_view opened, std::string_view mode) {
  std::string line = without(std::string(opened), {" in black", " in colour", " in color"});
  const std::size_t end = std::min({line.find(" on "), line.find(" by "), line.size()});
  return line.insert(end, fmt::format(" in {}", mode));
}

// The line that opens a page, its first word as it was meant.
std::string opened_by(const Inspection &inspection, int page) {
  const Page &opened = inspection.edition.pages[static_cast<std::size_t>(page)];
  const std::string line(inspection.sources.text(opened.opened));
  const std::size_t end = std::min(line.find(' '), line.size());
  const bool known = line.substr(0, end) == "reverse" || line.substr(0, end) == "wrap";
  return known ? line : (opened.spread ? "spread" : "page") + line.substr(end);
}

// What colour would cost on the sides of these pages that are black now.
std::string colour_would_cost(const Inspection &inspection, const std::vector<int> &pages) {
  std::set<SideKey> black;
  for (const int page : pages)
    if (const SideKey key = side_key(inspection, page); !is_colour(inspection, key))
      black.insert(key);
  if (black.empty())
    return pages.size() == 1
               ? "its side is paid as colour already: in colour it would cost nothing more"
               : "their sides are paid as colour already: in colour they would cost nothing more";
  const auto prices = prices_of(inspection, pages.front());
  if (!prices)
    return "a copier gives greys for colours in black";
  const std::string sides =
      black.size() > 1
          ? fmt::format("each of its {} sides", black.size())
          : fmt::format(
                "its side of sheet {}",
                number_of(
                    inspection,
                    inspection.imposition.sheets[static_cast<std::size_t>(black.begin()->first)]));
  return fmt::format("in colour, {} would cost {} instead of {} a copy", sides,
                     written(prices->colour), written(prices->black));
}

Problem colour_on_black(const Inspection &inspection, const Item &item,
                        const std::vector<int> &pages) {
  const std::string name = name_of(inspection, item);
  Problem problem;
  problem.kind = Kind::note;
  problem.check = "colour-on-black";
  problem.range = element_of(inspection, item).range;
  problem.message =
      fmt::format("{} {} {} coloured and {} {} printed in black, so {} out grey",
                  name == "words" ? "these" : "this", name, name == "words" ? "are" : "is",
                  pages_in_words(inspection, pages), pages.size() == 1 ? "is" : "are",
                  name == "words" ? "they come" : "it comes");
  problem.why = colour_would_cost(inspection, pages);
  const Range opened = inspection.edition.pages[static_cast<std::size_t>(pages.front())].opened;
  const std::string remark = name == "picture" ? "or `tone grey` under it, if grey is meant" : "";
  if (opened.somewhere())
    retype(inspection, problem, opened, line_in(opened_by(inspection, pages.front()), "colour"),
           remark);
  return problem;
}

bool grey_is_meant(const Inspection &inspection, const Item &item) {
  const auto *picture = std::get_if<Picture>(&inspection.edition[item.element].what);
  return picture && picture->tone->kind != ToneKind::as_is;
}

struct OnPages {
  const Item *item = nullptr;
  std::vector<int> pages;
};

void check_black_pages(const Inspection &inspection, Problems &problems) {
  std::map<ItemKey, OnPages> coloured;
  for (int page = 1; page <= inspection.imposition.page_count; ++page) {
    if (*inspection.edition.pages[static_cast<std::size_t>(page)].mode != Mode::black)
      continue;
    for (const Item &item : inspection.drawings[page].items) {
      if (item.running || !leaves_ink(item) || !is_coloured(item) ||
          grey_is_meant(inspection, item))
        continue;
      OnPages &on = coloured[key_of(item)];
      if (on.item == nullptr)
        on.item = &item;
      if (on.pages.empty() || on.pages.back() != page)
        on.pages.push_back(page);
    }
  }
  for (const auto &[id, on] : coloured)
    problems.push_back(colour_on_black(inspection, *on.item, on.pages));
}

// Pages beside one on its side; with several copies on it each of them once.
std::vector<int> beside(const Inspection &inspection, const Side &side, int page) {
  std::vector<int> others;
  for (const Place &place : side.places)
    if (place.page > 0 && place.page != page && place.page <= inspection.imposition.page_count &&
        !inspection.drawings[place.page].coloured)
      others.push_back(place.page);
  std::sort(others.begin(), others.end());
  others.erase(std::unique(others.begin(), others.end()), others.end());
  return others;
}

bool asks_for_colour(const Inspection &inspection, int page) {
  return *inspection.edition.pages[static_cast<std::size_t>(page)].mode == Mode::colour;
}

// A page of a list or a spread that has colour where another has none.
int coloured_by_the_same_line(const Inspection &inspection, int page) {
  const auto &pages = inspection.edition.pages;
  for (int other = 1; other <= inspection.imposition.page_count; ++other)
    if (pages[static_cast<std::size_t>(other)].opened ==
            pages[static_cast<std::size_t>(page)].opened &&
        asks_for_colour(inspection, other) && inspection.drawings[other].coloured)
      return other;
  return 0;
}

std::string line_without_colour(const Inspection &inspection, int page) {
  const Page &asked = inspection.edition.pages[static_cast<std::size_t>(page)];
  const std::string line(opened_by(inspection, page));
  const bool own = asked.asked.mode.has_value();
  return own && *inspection.edition.printing == Mode::black && !inspection.edition.cover_mode
             ? without(line, {" in colour", " in color"})
             : line_in(line, "black");
}

// Every line that asks for the side's colour has to let it go.
void type_without_colour(const Inspection &inspection, Problem &problem,
                         const std::vector<int> &asking) {
  WayOut way;
  std::vector<Edit> edits;
  for (const int page : asking) {
    const Range opened = inspection.edition.pages[static_cast<std::size_t>(page)].opened;
    if (const int other = coloured_by_the_same_line(inspection, page)) {
      problem.type = {
          {{},
           fmt::format("{} is coloured, and the same line opens it: give {} a line of "
                       "its own, in black",
                       pages_in_words(inspection, {other}), pages_in_words(inspection, {page}))}};
      return;
    }
    const bool known = std::any_of(edits.begin(), edits.end(),
                                   [&](const Edit &edit) { return edit.range == opened; });
    if (known)
      continue;
    edits.push_back({opened, line_without_colour(inspection, page)});
    way.line += (way.line.empty() ? "" : "\n") + edits.back().text;
  }
  if (edits.size() > 1)
    way.remark = fmt::format("these {} lines", edits.size());
  problem.type = {way};
  if (std::all_of(edits.begin(), edits.end(),
                  [&](const Edit &edit) { return may_edit(inspection.sources, edit.range); }))
    problem.edits = std::move(edits);
}

Problem colour_unused(const Inspection &inspection, const Sheet &sheet, const Side &side,
                      const std::vector<int> &asking) {
  const int page = asking.front();
  const Page &asked = inspection.edition.pages[static_cast<std::size_t>(page)];
  const std::vector<int> others = beside(inspection, side, page);
  Problem problem;
  problem.kind = Kind::warning;
  problem.check = "colour-unused";
  problem.range = asked.mode.from.somewhere() ? asked.mode.from : asked.opened;
  problem.message = fmt::format(
      "nothing on {} is coloured{}, yet {} side is paid as colour",
      pages_in_words(inspection, {page}),
      others.empty() ? ""
                     : fmt::format(", nor on {} beside it", pages_in_words(inspection, others)),
      others.empty() ? "its" : "their");
  const char *name = side.name == SideName::front ? "front" : "back";
  problem.why = fmt::format("sheet {}, {} is one side and charged by the dearest page on it",
                            number_of(inspection, sheet), name);
  if (const auto prices = prices_of(inspection, page)) {
    const std::int64_t copies = copies_of(inspection.edition, sheet.only).all();
    const Exact sides(Exact::ratio(copies * sheet.in_a_copy, sheet.up).ceiling());
    const Exact more = (Exact(prices->colour.amount) - Exact(prices->black.amount)) * sides;
    problem.why = fmt::format("sheet {}, {} costs {} instead of {}: {} over {} copies",
                              number_of(inspection, sheet), name, written(prices->colour),
                              written(prices->black), shown(more, prices->colour.currency), copies);
  }
  type_without_colour(inspection, problem, asking);
  return problem;
}

// A picture that cannot be read may well be the one that is coloured.
bool something_missing(const PageDrawing &drawing) {
  return std::any_of(drawing.items.begin(), drawing.items.end(), [](const Item &item) {
    return std::holds_alternative<SetMissing>(item.what);
  });
}

void check_side(const Inspection &inspection, const Sheet &sheet, std::size_t number,
                Problems &problems) {
  const Side &side = sheet.sides[number];
  std::vector<int> asking;
  for (const Place &place : side.places) {
    if (place.page == 0 || place.page > inspection.imposition.page_count ||
        !asks_for_colour(inspection, place.page))
      continue;
    const PageDrawing &drawing = inspection.drawings[place.page];
    if (drawing.coloured || something_missing(drawing))
      return;
    if (drawing.draws)
      asking.push_back(place.page);
  }
  std::sort(asking.begin(), asking.end());
  if (!asking.empty())
    problems.push_back(colour_unused(inspection, sheet, side, asking));
}

} // namespace

void check_colour(const Inspection &inspection, Problems &problems) {
  check_black_pages(inspection, problems);
  for (std::size_t i = 0; i < inspection.imposition.sheets.size(); ++i)
    for (std::size_t side = 0; side < 2; ++side)
      if (inspection.modes[i][side] == Mode::colour)
        check_side(inspection, inspection.imposition.sheets[i], side, problems);
}

} // namespace bodkin
