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
  std::vector<arranging::RunBook> books;
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

  bool draws_on(const arranging::RunBook &book, int page) const {
    const auto index = static_cast<std::size_t>(book.pages_before) + static_cast<std::size_t>(page);
    return page <= *edition.page_count && index < draws.size() && draws[index];
  }

  bool coloured(const arranging::RunBook &book, int page) const {
    return draws_on(book, page) &&
           *book.edition->pages[static_cast<std::size_t>(page)].mode == Mode::colour;
  }

  // Laid several up, a page stands on its side several times.
  static std::vector<int> each_once(const std::vector<int> &pages) {
    const std::set<int> once(pages.begin(), pages.end());
    return {once.begin(), once.end()};
  }

  // Of some run's copies.
  std::vector<int> drawing(const std::vector<int> &pages) const {
    std::vector<int> draw;
    std::ranges::copy_if(pages, std::back_inserter(draw), [&](int page) {
      return std::ranges::any_of(books, [&](const auto &book) { return draws_on(book, page); });
    });
    return draw;
  }

  bool in_colour(const arranging::RunBook &book, const std::vector<int> &side) const {
    return std::ranges::any_of(side, [&](int page) { return coloured(book, page); });
  }

  // Black in some run's copies, and on a side that is colour already wherever it is drawn.
  bool is_free(int page, const std::vector<int> &side) const {
    bool black = false;
    for (const auto &book : books) {
      if (!draws_on(book, page))
        continue;
      if (!in_colour(book, side))
        return false;
      black = black || !coloured(book, page);
    }
    return black;
  }

  void look_at(const Side &side, const Exact &now, ColourRoom &room, std::vector<Extra> &found) {
    const std::vector<int> pages = each_once(pages_of(side));
    for (std::size_t run = 0; run < books.size(); ++run)
      room.colour_pages[run] += static_cast<int>(
          std::ranges::count_if(pages, [&](int page) { return coloured(books[run], page); }));
    std::ranges::copy_if(pages, std::back_inserter(room.free),
                         [&](int page) { return is_free(page, pages); });
    const std::vector<int> draw = drawing(pages);
    const bool black_in_one = std::ranges::any_of(books, [&](const auto &book) {
      return !in_colour(book, pages) &&
             std::ranges::any_of(pages, [&](int page) { return draws_on(book, page); });
    });
    if (!black_in_one || priced >= most_priced)
      return;
    const Edition changed = arranging::in_every_book(light, [&](Edition &book) {
      for (const int page : draw)
        book.pages[static_cast<std::size_t>(page)].mode.value = Mode::colour;
    });
    found.push_back({draw, StockId::none, cost_of(changed) - now, 0});
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
    const Edition changed = arranging::in_every_book(light, [&](Edition &book) {
      for (const int page : pages)
        book.pages[static_cast<std::size_t>(page)].asked.stock = Known<StockId>{stock, {}};
    });
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

int colour_sides(const Laid &laid, std::optional<std::uint32_t> run) {
  return static_cast<int>(std::ranges::count_if(laid.sides, [&](const ChargedSide &side) {
    const auto &only = laid.imposition.sheets[static_cast<std::size_t>(side.sheet)].only;
    return side.printed && side.mode == Mode::colour && (!run || only.holds(*run));
  }));
}

ColourRoom colour_room(const Edition &edition, const std::vector<bool> &draws,
                       const Sources &sources) {
  Looking looking{edition,
                  draws,
                  sources,
                  arranging::books_of(edition),
                  without_matter(edition),
                  lay(edition, draws, sources),
                  {},
                  0};
  looking.work = jobs(edition, looking.laid.imposition);
  ColourRoom room;
  room.colour_pages.resize(looking.books.size());
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
