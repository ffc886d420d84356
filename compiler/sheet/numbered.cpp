#include "sheet/numbered.hpp"

#include "edition/laid.hpp"

#include <algorithm>

namespace bodkin {
namespace {

std::int64_t divided_up(std::int64_t number, std::int64_t by) { return (number + by - 1) / by; }

Box box_round(const Box &a, const Box &b) {
  const Length x = std::min(a.x, b.x), y = std::min(a.y, b.y);
  return {x, y, std::max(a.right(), b.right()) - x, std::max(a.foot(), b.foot()) - y};
}

// What is cut out, as it lies on the front: in rows from the head, each from the left.
std::vector<Box> cells_of(const Sheet &sheet) {
  const std::vector<Place> &places = sheet.sides[0].places;
  const std::size_t in_one = places.size() / static_cast<std::size_t>(std::max(sheet.up, 1));
  std::vector<Box> cells;
  for (std::size_t i = 0; in_one > 0 && i < places.size(); ++i)
    if (i % in_one == 0)
      cells.push_back(places[i].box);
    else
      cells.back() = box_round(cells.back(), places[i].box);
  return cells;
}

// The middle of a place, as its leaf lies on the front.
Spot middle_on_front(const Sheet &sheet, int side, const Box &box) {
  const Spot middle{box.x + box.width / 2, box.y + box.height / 2};
  if (side == 0)
    return middle;
  return sheet.turns_upright ? Spot{sheet.size.width - middle.x, middle.y}
                             : Spot{middle.x, sheet.size.height - middle.y};
}

bool holds(const Box &box, const Spot &spot) {
  return spot.x >= box.x && spot.x <= box.right() && spot.y >= box.y && spot.y <= box.foot();
}

// Which of several up a place belongs to.
std::int64_t stack_of(const Sheet &sheet, const std::vector<Box> &cells, int side,
                      const Place &place) {
  const Spot middle = middle_on_front(sheet, side, place.box);
  const auto found = std::find_if(cells.begin(), cells.end(),
                                  [&](const Box &cell) { return holds(cell, middle); });
  return found == cells.end() ? 0 : found - cells.begin();
}

} // namespace

bool is_numbered(const Sheet &sheet) { return sheet.sides[0].numbered || sheet.sides[1].numbered; }

std::vector<bool> pages_with_numbers(const Edition &edition) {
  std::vector<bool> shows(edition.pages.size(), false);
  each_laid(edition, [&](ElementId id, int page) {
    if (!bears_number(edition[id]))
      return;
    const auto &spread = edition.pages[static_cast<std::size_t>(page)].spread;
    for (const int on : {page, spread ? edition.spreads[*spread].right : page})
      if (static_cast<std::size_t>(on) < shows.size())
        shows[static_cast<std::size_t>(on)] = true;
  });
  return shows;
}

void find_numbered(const Edition &edition, Imposition &imposition) {
  const std::vector<bool> shows = pages_with_numbers(edition);
  for (Sheet &sheet : imposition.sheets)
    for (Side &side : sheet.sides)
      side.numbered = std::any_of(side.places.begin(), side.places.end(), [&](const Place &place) {
        return static_cast<std::size_t>(place.page) < shows.size() &&
               shows[static_cast<std::size_t>(place.page)];
      });
}

SheetsNeeded sheets_needed(const Edition &edition, const Sheet &sheet) {
  const CopiesCounted copies = copies_of(edition, sheet.only);
  const auto needed = [&](std::int64_t number) {
    return divided_up(number * sheet.in_a_copy, std::max(sheet.up, 1));
  };
  return {needed(copies.all()), needed(copies.all()) - needed(copies.good)};
}

std::vector<std::int64_t> copies_on(const Edition &edition, const Sheet &sheet, int side,
                                    std::int64_t nth) {
  const CopiesCounted copies = copies_of(edition, sheet.only);
  const std::int64_t sheets = sheets_needed(edition, sheet).all;
  const std::vector<Box> cells = cells_of(sheet);
  const std::vector<Place> &places = sheet.sides[static_cast<std::size_t>(side)].places;
  if (nth == without_number)
    return std::vector<std::int64_t>(places.size(), spare_copy);
  std::vector<std::int64_t> on;
  on.reserve(places.size());
  for (const Place &place : places)
    on.push_back(copies.place((stack_of(sheet, cells, side, place) * sheets + nth) /
                              std::max<std::int64_t>(sheet.in_a_copy, 1)));
  return on;
}

} // namespace bodkin
