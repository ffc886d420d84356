// Words that lie on other words.
#include "page/outline.hpp"
#include "page/placement.hpp"
#include "preflight/about.hpp"
#include "preflight/families.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <map>

namespace bodkin {
namespace {

bool overlap(const Extent &a, const Extent &b) {
  return a.left < b.right && b.left < a.right && a.top < b.foot && b.top < a.foot;
}

std::vector<Extent> line_extents(const Item &item) {
  std::vector<Extent> extents;
  for (const Polygon &polygon : outlines_of(item)) {
    Extent extent{polygon.front().x, polygon.front().y, polygon.front().x, polygon.front().y};
    for (const Point &p : polygon) {
      extent.left = std::min(extent.left, p.x);
      extent.top = std::min(extent.top, p.y);
      extent.right = std::max(extent.right, p.x);
      extent.foot = std::max(extent.foot, p.y);
    }
    extents.push_back(extent);
  }
  return extents;
}

// A patch or picture laid between hides the lower words on purpose.
bool hidden_between(const std::vector<Item> &items, std::size_t lower, std::size_t upper) {
  for (std::size_t i = lower + 1; i < upper; ++i)
    if (std::holds_alternative<SetFill>(items[i].what) ||
        std::holds_alternative<SetPicture>(items[i].what))
      return true;
  return false;
}

// Two words without a place are told as such.
bool both_fill_margins(const Inspection &inspection, const Item &a, const Item &b) {
  const auto fills = [&](const Item &item) {
    const Element &element = inspection.edition[item.element];
    return std::holds_alternative<Words>(element.what) && !element.placement.from.somewhere();
  };
  return fills(a) && fills(b);
}

struct Crossing {
  const Item *lower = nullptr, *upper = nullptr;
  std::vector<int> pages;
};
using Crossings = std::map<std::pair<ItemKey, ItemKey>, Crossing>;

// For words that fill the margins: what is left of them below.
void type_rest_of_margins(const Inspection &inspection, Problem &problem, int page, Length down) {
  const Box margins = ground_of(inspection.edition, inspection.imposition, page).margins;
  const Ruler ruler = inspection.edition.ruler;
  if (down < margins.foot())
    problem.type.push_back(
        {fmt::format("at       {} {}, {} x {}", written(margins.x, ruler), written(down, ruler),
                     written(margins.width, ruler), written(margins.foot() - down, ruler)),
         "under them, which is the rest of the margins"});
}

// A place right below the other words, where the page has room for it.
void type_below(const Inspection &inspection, Problem &problem, const Crossing &crossing) {
  const Element &element = element_of(inspection, *crossing.upper);
  const auto *at = std::get_if<At>(&element.placement.where);
  const auto extent = extent_of(*crossing.lower);
  if (!extent)
    return;
  const Length down = ruled(inspection, Length::nearest_points(extent->foot));
  if (!element.placement.from.somewhere() && std::holds_alternative<Words>(element.what))
    return type_rest_of_margins(inspection, problem, crossing.pages.front(), down);
  if (!at || !at->size || at->across.from != From::start || at->down.from != From::start)
    return;
  if (down + at->size->height > inspection.imposition.page_size.height - Length::inches(1, 4))
    return;
  const Ruler ruler = inspection.edition.ruler;
  retype(inspection, problem, element.placement.from,
         fmt::format("at       {} {}, {} x {}", written(at->across.offset, ruler),
                     written(down, ruler), written(at->size->width, ruler),
                     written(at->size->height, ruler)),
         "below them");
}

Problem words_on_words(const Inspection &inspection, const Crossing &crossing) {
  const Range lower = element_of(inspection, *crossing.lower).range;
  Problem problem;
  problem.kind = Kind::warning;
  problem.check = "words-on-words";
  problem.range = element_of(inspection, *crossing.upper).range;
  problem.message = fmt::format("these words lie on other words{} on {}",
                                spoken::on_line(inspection.sources, lower),
                                pages_in_words(inspection, crossing.pages));
  problem.why = "neither can be read where their letters cross";
  problem.related = {{lower, "the words below stand here"}};
  type_below(inspection, problem, crossing);
  return problem;
}

void note(Crossings &crossings, int page, const Item &lower, const Item &upper) {
  Crossing &crossing = crossings[{key_of(lower), key_of(upper)}];
  if (crossing.upper == nullptr)
    crossing = {&lower, &upper, {}};
  if (crossing.pages.empty() || crossing.pages.back() != page)
    crossing.pages.push_back(page);
}

void look_at(const Inspection &inspection, int page, Crossings &crossings) {
  const auto &items = inspection.drawings[page].items;
  std::vector<std::pair<std::size_t, std::vector<Extent>>> words;
  for (std::size_t i = 0; i < items.size(); ++i) {
    if (!std::holds_alternative<SetWords>(items[i].what) || !leaves_ink(items[i]) ||
        place_is_broken(inspection, items[i]))
      continue;
    std::vector<Extent> extents = line_extents(items[i]);
    for (const auto &[index, others] : words) {
      const std::vector<Extent> &lower = others;
      const bool touch = std::any_of(extents.begin(), extents.end(), [&](const Extent &a) {
        return std::any_of(lower.begin(), lower.end(),
                           [&](const Extent &b) { return overlap(a, b); });
      });
      if (touch && !hidden_between(items, index, i) &&
          !both_fill_margins(inspection, items[index], items[i])) {
        note(crossings, page, items[index], items[i]);
        break;
      }
    }
    words.emplace_back(i, std::move(extents));
  }
}

} // namespace

void check_overlaps(const Inspection &inspection, Problems &problems) {
  Crossings crossings;
  for (int page = 1; page <= inspection.imposition.page_count; ++page)
    look_at(inspection, page, crossings);
  for (const auto &[keys, crossing] : crossings)
    problems.push_back(words_on_words(inspection, crossing));
}

} // namespace bodkin
