// Dark matter on one side of a thin sheet is seen behind the words of the other.
#include "preflight/about.hpp"
#include "preflight/families.hpp"
#include "preflight/shown.hpp"
#include "preflight/stock_line.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {
namespace {

// Paper that hides less shows dark areas behind words; an area is dark below half the light, and a
// line of words is troubled when a tenth of it lies over one. Common practice, no source.
constexpr double hides_enough = 0.9, dark = 0.5, troubled = 0.1;
constexpr int steps = 6; // spots looked at along a run

// A page's frame on its side of the sheet, both with y down from the top left.
Transform page_on_side(const Place &place, const Size &page) {
  const double w = page.width.in_points(), h = page.height.in_points();
  Transform turned;
  if (place.turn == 90)
    turned = {.xx = 0, .yx = 1, .xy = -1, .yy = 0, .x0 = h, .y0 = 0};
  else if (place.turn == 180)
    turned = {.xx = -1, .yx = 0, .xy = 0, .yy = -1, .x0 = w, .y0 = h};
  else if (place.turn == 270)
    turned = {.xx = 0, .yx = -1, .xy = 1, .yy = 0, .x0 = 0, .y0 = w};
  return Transform::moved(place.box.x, place.box.y) * turned;
}

// The same spot of the paper as the other side is given.
Point from_behind(const Sheet &sheet, const Point &p) {
  return sheet.turns_upright ? Point{sheet.size.width.in_points() - p.x, p.y}
                             : Point{p.x, sheet.size.height.in_points() - p.y};
}

bool holds(const Box &box, const Point &p) {
  return p.x >= box.x.in_points() && p.x <= box.right().in_points() && p.y >= box.y.in_points() &&
         p.y <= box.foot().in_points();
}

struct Behind {
  int page = 0;
  double light = 1;
  const Item *item = nullptr; // the darkest thing there
};

// What a spot of the sheet shows on one of its sides.
Behind seen_on(const Inspection &inspection, const Side &side, const Point &spot) {
  for (const Place &place : side.places) {
    if (place.page == 0 || place.page > inspection.imposition.page_count || !holds(place.box, spot))
      continue;
    Behind behind{place.page, 1, nullptr};
    const Point on_page =
        back(page_on_side(place, inspection.imposition.size_of(place.page)), spot);
    for (const Item &item : inspection.drawings[place.page].items)
      if (const auto light = shown_at(inspection, item, on_page, behind.light)) {
        behind.light = *light;
        behind.item = &item;
      }
    return behind;
  }
  return {};
}

struct Troubled {
  int all = 0, poor = 0;
  Behind behind;
};

Troubled judge(const Inspection &inspection, const Sheet &sheet, std::size_t side,
               const Place &place, const Item &item) {
  const Transform map = page_on_side(place, inspection.imposition.size_of(place.page)) *
                        item.to_page * Transform::moved(item.place.x, item.place.y);
  Troubled found;
  for (const Line &line : std::get<SetWords>(item.what).lines)
    for (const GlyphRun &run : line.runs)
      for (int i = 0; i < steps && !run.glyphs.empty(); ++i) {
        const double x = run.left + (run.right - run.left) * (i + 0.5) / steps;
        const Point spot = map({x, line.baseline - run.size.in_points() * 0.25});
        const Behind behind = seen_on(inspection, sheet.sides[1 - side], from_behind(sheet, spot));
        ++found.all;
        if (behind.item != nullptr && behind.light < dark) {
          ++found.poor;
          found.behind = behind;
        }
      }
  return found;
}

Problem show_through(const Inspection &inspection, StockId id, int page, const Item &words,
                     const Troubled &found) {
  const Stock &stock = inspection.edition[id];
  const Element &art = element_of(inspection, *found.behind.item);
  const int share = std::max(1, found.poor * 100 / found.all);
  Problem problem;
  problem.kind = Kind::note;
  problem.check = "show-through";
  problem.range = element_of(inspection, words).range;
  problem.message = fmt::format("the {} on page {} will be seen through {} of these words on {}",
                                name_of(inspection, *found.behind.item), found.behind.page,
                                share >= 95 ? "all" : fmt::format("{}%", share),
                                pages_in_words(inspection, {page}));
  problem.why = fmt::format("pages {} and {} are the two sides of one leaf; {} hides {:.0f}% of "
                            "what is behind it, and below {:.0f}% a dark area makes words tired",
                            std::min(page, found.behind.page), std::max(page, found.behind.page),
                            stock.name, (*stock.opacity)->value() * 100, hides_enough * 100);
  problem.type = {{"", "put words behind its light parts, or take a heavier paper"}};
  problem.related = {{art.range, "it stands here"}};
  if (stock.opacity->from.somewhere() && !inspection.sources.is_shelf(stock.opacity->from.file))
    problem.related.push_back({stock.opacity->from, "the opacity is said here"});
  return problem;
}

void check_side(const Inspection &inspection, const Sheet &sheet, std::size_t side,
                Problems &problems) {
  for (const Place &place : sheet.sides[side].places) {
    if (place.page == 0 || place.page > inspection.imposition.page_count)
      continue;
    for (const Item &item : inspection.drawings[place.page].items) {
      if (!std::holds_alternative<SetWords>(item.what))
        continue;
      const Troubled found = judge(inspection, sheet, side, place, item);
      if (found.poor > 0 && found.poor >= found.all * troubled)
        problems.push_back(show_through(inspection, sheet.stock, place.page, item, found));
    }
  }
}

} // namespace

void check_show_through(const Inspection &inspection, Problems &problems) {
  for (const Sheet &sheet : inspection.imposition.sheets) {
    if (sheet.stock == StockId::none)
      continue;
    const auto &opacity = inspection.edition[sheet.stock].opacity;
    if (!opacity || (*opacity)->value() >= hides_enough)
      continue;
    for (std::size_t side = 0; side < 2; ++side)
      check_side(inspection, sheet, side, problems);
  }
}

} // namespace bodkin
