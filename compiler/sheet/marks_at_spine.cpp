#include "sheet/marks_at_spine.hpp"

#include "edition/finish.hpp"
#include "edition/piece.hpp"
#include "sheet/live.hpp"

#include <algorithm>

namespace bodkin {
namespace {

// A point of the page, told from its own top left, as it lies on the sheet.
Spot on_sheet(const Place &place, Spot spot) {
  const Box &box = place.box;
  switch (place.turn) {
  case 90:
    return {box.right() - spot.y, box.y + spot.x};
  case 180:
    return {box.right() - spot.x, box.foot() - spot.y};
  case 270:
    return {box.x + spot.y, box.foot() - spot.x};
  default:
    return {box.x + spot.x, box.y + spot.y};
  }
}

Size page_at(const Place &place) {
  return place.turn % 180 == 0 ? place.box.size() : place.box.size().turned();
}

bool holds(const Box &box, Spot at, Length arm) {
  return at.x - arm >= box.x && at.y - arm >= box.y && at.x + arm <= box.right() &&
         at.y + arm <= box.foot();
}

// A cross two points wide.
void mark_hole(Marks &marks, Spot at, const Box &printed) {
  constexpr Length arm = Length::points(1);
  if (!holds(printed, at, arm))
    return;
  marks.lines.push_back({MarkLine::Kind::hole, {at.x - arm, at.y}, {at.x + arm, at.y}});
  marks.lines.push_back({MarkLine::Kind::hole, {at.x, at.y - arm}, {at.x, at.y + arm}});
}

const Place *place_on(const Side &side, int page) {
  const auto found = std::find_if(side.places.begin(), side.places.end(),
                                  [page](const Place &place) { return place.page == page; });
  return found == side.places.end() ? nullptr : &*found;
}

void mark_side_holes(Marks &marks, const Holes &holes, const Side &side, const Box &printed) {
  const Place *first = place_on(side, 1);
  if (!first)
    return;
  const Length from = holes.from_head_and_foot, run = page_at(*first).height - from * 2;
  for (int i = 0; i < holes.count; ++i) {
    const Length down =
        holes.count == 1 ? page_at(*first).height / 2 : from + run * i / (holes.count - 1);
    mark_hole(marks, on_sheet(*first, {holes.from_spine, down}), printed);
  }
}

std::vector<int> pages_of(const Sheet &sheet) {
  std::vector<int> pages;
  for (const Side &side : sheet.sides)
    for (const Place &place : side.places)
      if (place.page > 0)
        pages.push_back(place.page);
  std::sort(pages.begin(), pages.end());
  return pages;
}

bool innermost(const Imposition &imposition, std::size_t sheet) {
  return sheet + 1 == imposition.sheets.size() ||
         imposition.sheets[sheet + 1].section != imposition.sheets[sheet].section;
}
bool outermost(const Imposition &imposition, std::size_t sheet) {
  return sheet == 0 || imposition.sheets[sheet - 1].section != imposition.sheets[sheet].section;
}

// The page left of the fold that a section opens at in its middle, if it is on this side.
const Place *left_of_middle(const Imposition &imposition, std::size_t sheet, const Side &side) {
  const std::vector<int> pages = pages_of(imposition.sheets[sheet]);
  if (!innermost(imposition, sheet) || pages.size() < 4)
    return nullptr;
  const Place *left = place_on(side, pages[pages.size() / 2 - 1]);
  const Place *right = place_on(side, pages[pages.size() / 2]);
  return left && right && left->right == Meets::spine && right->left == Meets::spine ? left
                                                                                     : nullptr;
}

Length head_cut_before(const Edition &edition, std::size_t step) {
  Length head;
  for (std::size_t i = 0; i < step; ++i)
    head += edition.finish[i].head;
  return head;
}

// As thick as it is when it is folded.
Length thickness_of(const Edition &edition, const Imposition &imposition, std::size_t first) {
  Length thick;
  for (std::size_t i = first; i < imposition.sheets.size() &&
                              imposition.sheets[i].section == imposition.sheets[first].section;
       ++i)
    if (imposition.sheets[i].stock != StockId::none)
      thick += *edition[imposition.sheets[i].stock].caliper * imposition.pages_a_sheet / 2;
  return thick;
}

bool spine_is_covered(const Edition &edition) {
  return std::any_of(edition.pieces.begin(), edition.pieces.end(),
                     [](const auto &piece) { return piece->is_wrap(); });
}

} // namespace

void mark_holes(Marks &marks, const Edition &edition, const Imposition &imposition, int sheet,
                SideName name, const Box &printed) {
  const auto index = static_cast<std::size_t>(sheet);
  const Side &side = imposition.sheets[index].sides[name == SideName::front ? 0 : 1];
  if (const auto &holes = edition.folding->holes) {
    if (sheet == 0 && name == SideName::front)
      mark_side_holes(marks, *holes, side, printed);
    return;
  }
  for (std::size_t i = 0; i < edition.finish.size(); ++i) {
    const FinishStep &step = edition.finish[i];
    constexpr int most = 1000;
    if (step.kind != StepKind::sew || step.holes < 1 || step.holes > most)
      continue;
    // Copies that are bound otherwise would show them.
    if (step.work.only && imposition.sheets[index].only != RunSet(**step.work.only))
      continue;
    const Place *left = left_of_middle(imposition, index, side);
    if (!left)
      return;
    const Length head = head_cut_before(edition, i);
    for (const Length down :
         places_down(step, step.holes, height_at(edition.finish, i, page_at(*left).height)))
      mark_hole(marks, on_sheet(*left, {page_at(*left).width, head + down}), printed);
  }
}

void mark_collating(Marks &marks, const Edition &edition, const Imposition &imposition, int sheet,
                    SideName name, const Box &printed) {
  constexpr Length long_as = Length::inches(1, 8), from_ends = Length::inches(1, 2);
  const auto index = static_cast<std::size_t>(sheet);
  const Sheet &paper = imposition.sheets[index];
  if (!outermost(imposition, index) || imposition.sheets.back().section < 2 ||
      !spine_is_covered(edition))
    return;
  const std::vector<int> pages = pages_of(paper);
  const Side &side = paper.sides[name == SideName::front ? 0 : 1];
  const Place *first = pages.size() < 4 ? nullptr : place_on(side, pages.front());
  const Place *last = pages.size() < 4 ? nullptr : place_on(side, pages.back());
  if (!first || !last || first->left != Meets::spine || last->right != Meets::spine)
    return;
  const Trims trims = trims_of(edition);
  const Length run = page_at(*first).height - trims.head - trims.foot - from_ends * 2;
  const std::int64_t steps = run.units() / long_as.units();
  if (steps < 2)
    return;
  const Length down = trims.head + from_ends + long_as * ((paper.section - 1) % steps);
  const Length wide = thickness_of(edition, imposition, index);
  const Spot start = on_sheet(*first, {{}, down}), end = on_sheet(*first, {{}, down + long_as});
  if (holds(printed, start, wide / 2) && holds(printed, end, wide / 2))
    marks.lines.push_back({MarkLine::Kind::step,
                           {std::min(start.x, end.x), std::min(start.y, end.y)},
                           {std::max(start.x, end.x), std::max(start.y, end.y)},
                           wide});
}

} // namespace bodkin
