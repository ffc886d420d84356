// Two wraps, the outer translucent: what is printed beneath shows through, wanted, but not behind
// words.
#include "preflight/about.hpp"
#include "preflight/copy.hpp"
#include "preflight/shown.hpp"
#include "preflight/stock_line.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {
namespace {

// As for the two sides of one sheet: common practice, no source.
constexpr double hides_enough = 0.9, dark = 0.5, troubled = 0.1;
constexpr int steps = 6; // spots looked at along a run

struct Beneath {
  int all = 0, dark = 0;
  const Item *item = nullptr;
};

// How light the inner wrap is at a spot of the same page, and what makes it so.
void look_at(const Inspection &inner, int page, const Point &spot, Beneath &found) {
  double light = 1;
  const Item *darkest = nullptr;
  for (const Item &item : inner.drawings[page].items)
    if (const auto shown = shown_at(inner, item, spot, light)) {
      light = *shown;
      darkest = &item;
    }
  ++found.all;
  if (darkest && light < dark) {
    ++found.dark;
    found.item = darkest;
  }
}

Beneath beneath(const Inspection &inner, int page, const Item &words) {
  const Transform map = words.to_page * Transform::moved(words.place.x, words.place.y);
  Beneath found;
  for (const Line &line : std::get<SetWords>(words.what).lines)
    for (const GlyphRun &run : line.runs)
      for (int i = 0; i < steps && !run.glyphs.empty(); ++i)
        look_at(inner, page,
                map({run.left + (run.right - run.left) * (i + 0.5) / steps,
                     line.baseline - run.size.in_points() * 0.25}),
                found);
  return found;
}

Problem seen_through(const Inspection &outer, const Inspection &inner, const Stock &stock,
                     const Item &words, const Beneath &found) {
  const int share = std::max(1, found.dark * 100 / found.all);
  Problem problem;
  problem.kind = Kind::warning;
  problem.check = "show-through";
  problem.range = element_of(outer, words).range;
  problem.message = fmt::format("{} of these words lie over the {} of the wrap beneath, and {} "
                                "lets it through",
                                share >= 95 ? "all" : fmt::format("{}%", share),
                                name_of(inner, *found.item), stock.name);
  problem.why = fmt::format("{} hides {:.0f}% of what is under it; dark words over a dark area are "
                            "not read",
                            stock.name, (*stock.opacity)->value() * 100);
  problem.type = {{"", "put the words over a light part of the wrap beneath"}};
  problem.related = {{element_of(inner, *found.item).range, "it stands here"}};
  return problem;
}

void look_through(const Inspection &outer, const Inspection &inner, const Stock &stock,
                  Problems &problems) {
  for (const int page : {1, 4})
    for (const Item &item : outer.drawings[page].items) {
      if (!std::holds_alternative<SetWords>(item.what))
        continue;
      const Beneath found = beneath(inner, page, item);
      if (found.dark > 0 && found.dark >= found.all * troubled)
        problems.push_back(seen_through(outer, inner, stock, item, found));
    }
}

} // namespace

void check_layers(const CopyInspection &copy, Problems &problems) {
  const auto wraps = wraps_of(*copy.parts.front().edition);
  for (std::size_t i = 1; i < wraps.size(); ++i) {
    const Inspection &outer = copy.of(part_called(copy.parts, wraps[i]->name));
    const StockId paper = *wraps[i]->edition.paper;
    if (paper == StockId::none || !lie_together(*wraps[i - 1], *wraps[i]))
      continue;
    const Stock &stock = outer.edition[paper];
    if (stock.opacity && (*stock.opacity)->value() < hides_enough)
      look_through(outer, copy.of(part_called(copy.parts, wraps[i - 1]->name)), stock, problems);
  }
}

} // namespace bodkin
