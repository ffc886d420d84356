#include "money/colour_room.hpp"

#include "money/saving.hpp"
#include "sheet/papers.hpp"

#include <algorithm>
#include <set>

namespace bodkin {
namespace {

// Each side and sheet is laid and priced anew; beyond so many nobody chooses.
constexpr std::size_t most_priced = 300;

struct Looking {
  const Edition &edition;
  const std::vector<bool> &draws;
  const Sources &sources;
  Edition light;
  Laid laid;
  std::vector<Job> work;
  std::size_t priced = 0;

  Exact cost_of(const Edition &changed) {
    ++priced;
    const Laid anew = lay(changed, draws, sources);
    return own_stretch(changed, bill(changed, anew.imposition, anew.sides, work),
                       changed.run->copies)
        .at(changed.run->copies);
  }

  bool draws_on(int page) const {
    return page <= *edition.page_count && static_cast<std::size_t>(page) < draws.size() &&
           draws[static_cast<std::size_t>(page)];
  }

  std::vector<int> drawing(const Side &side) const {
    std::vector<int> pages = each_once(pages_of(side));
    std::erase_if(pages, [&](int page) { return !draws_on(page); });
    return pages;
  }

  // Laid several up, a page stands on its side several times.
  static std::vector<int> each_once(const std::vector<int> &pages) {
    const std::set<int> once(pages.begin(), pages.end());
    return {once.begin(), once.end()};
  }

  Mode mode(int page) const { return *edition.pages[static_cast<std::size_t>(page)].mode; }

  void look_at(const Side &side, const Exact &now, ColourRoom &room, std::vector<Extra> &found) {
    const std::vector<int> pages = drawing(side);
    const auto coloured = [&](int page) { return mode(page) == Mode::colour; };
    room.colour_pages += static_cast<int>(std::ranges::count_if(pages, coloured));
    if (std::ranges::any_of(pages, coloured)) {
      std::ranges::copy_if(pages, std::back_inserter(room.free), std::not_fn(coloured));
      return;
    }
    if (pages.empty() || priced >= most_priced)
      return;
    Edition changed = light;
    for (const int page : pages)
      changed.pages[static_cast<std::size_t>(page)].mode.value = Mode::colour;
    found.push_back({pages, StockId::none, cost_of(changed) - now, 0});
  }

  // A sheet whose pages ask for no paper, the cover's own left alone.
  bool may_change(const Sheet &sheet) const {
    const std::vector<int> pages = pages_of(sheet);
    return !pages.empty() && asked_of(edition, sheet).empty() &&
           std::ranges::none_of(pages, [&](int page) { return edition.is_cover(page); });
  }

  void look_at(const Sheet &sheet, StockId stock, const Exact &now, std::vector<Extra> &found) {
    if (!may_change(sheet) || sheet.stock == stock || priced >= most_priced)
      return;
    const std::vector<int> pages = each_once(pages_of(sheet));
    Edition changed = light;
    for (const int page : pages)
      changed.pages[static_cast<std::size_t>(page)].asked.stock = Known<StockId>{stock, {}};
    found.push_back({pages, stock, cost_of(changed) - now, 0});
  }
};

std::vector<Extra> cheapest(const std::vector<Extra> &found) {
  if (found.empty())
    return {};
  Extra best = *std::ranges::min_element(found, {}, &Extra::more);
  best.as_cheap = static_cast<int>(std::ranges::count(found, best.more, &Extra::more)) - 1;
  return {best};
}

std::set<StockId> papers_asked_for(const Edition &edition) {
  std::set<StockId> stocks;
  for (const Page &page : edition.pages)
    if (page.asked.stock && **page.asked.stock != StockId::none)
      stocks.insert(**page.asked.stock);
  stocks.erase(*edition.paper);
  return stocks;
}

} // namespace

int colour_sides(const Laid &laid) {
  return static_cast<int>(std::ranges::count_if(laid.sides, [](const ChargedSide &side) {
    return side.printed && side.mode == Mode::colour;
  }));
}

ColourRoom colour_room(const Edition &edition, const std::vector<bool> &draws,
                       const Sources &sources) {
  Looking looking{edition, draws, sources, without_matter(edition), lay(edition, draws, sources),
                  {},      0};
  looking.work = jobs(edition, looking.laid.imposition);
  ColourRoom room;
  room.colour_sides = colour_sides(looking.laid);
  const Exact now = looking.cost_of(looking.light);
  std::vector<Extra> sides;
  const bool has_colour = std::ranges::any_of(edition.machines, [](const Machine &machine) {
    return std::ranges::any_of(machine.prints,
                               [](const SidePrice &p) { return p.mode == Mode::colour; });
  });
  for (const Sheet &sheet : looking.laid.imposition.sheets)
    for (const Side &side : sheet.sides)
      if (sheet.piece.empty() && has_colour)
        looking.look_at(side, now, room, sides);
  room.sides = cheapest(sides);
  std::ranges::sort(room.free);
  for (const StockId stock : papers_asked_for(edition)) {
    std::vector<Extra> sheets;
    for (const Sheet &sheet : looking.laid.imposition.sheets)
      if (sheet.piece.empty())
        looking.look_at(sheet, stock, now, sheets);
    const std::vector<Extra> best = cheapest(sheets);
    room.papers.insert(room.papers.end(), best.begin(), best.end());
  }
  return room;
}

} // namespace bodkin
