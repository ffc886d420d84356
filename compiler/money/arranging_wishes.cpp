#include "money/arranging_wishes.hpp"

#include "edition/piece.hpp"
#include "measure/limits.hpp"
#include "money/arranging_books.hpp"

#include <algorithm>
#include <set>

namespace bodkin::arranging {
namespace {

bool follow_each_other(const std::vector<int> &pages) {
  return pages.back() - pages.front() + 1 == static_cast<int>(pages.size());
}

// Pages that have a place of each text, by text.
struct TextPages {
  const Edition &edition;
  std::vector<std::set<int>> pages = std::vector<std::set<int>>(edition.texts.size());

  void take(const std::vector<ElementId> &elements, int page, std::size_t depth = 0) {
    if (depth > limits::nesting)
      return;
    for (const ElementId id : elements) {
      const Element &element = edition[id];
      if (const auto *words = std::get_if<Words>(&element.what))
        take(*words, page);
      else if (const auto *laid = std::get_if<Lay>(&element.what);
               laid && laid->standing != StandingId::none)
        take(edition.standings[at(laid->standing)].elements, page, depth + 1);
    }
  }

  void take(const Words &words, int page) {
    const auto *text = std::get_if<TextId>(&words.words);
    if (text && *text != TextId::none)
      pages[at(*text)].insert(page);
  }

  void take_all() {
    for (std::size_t page = 1; page < edition.pages.size(); ++page) {
      const int number = static_cast<int>(page);
      take(edition.pages[page].elements, number);
      if (edition.pages[page].spread)
        take(edition.spreads[*edition.pages[page].spread].elements, number);
      for (const Running &running : edition.runnings)
        if (page < running.on_page.size() && running.on_page[page])
          take(running.elements, number);
    }
  }
};

void add_cover(const Edition &edition, std::vector<Wish> &wishes) {
  Wish cover{Wish::Why::cover, true, {}, {}};
  for (int page = 1; page <= *edition.page_count; ++page)
    if (edition.is_cover(page))
      cover.pages.push_back(page);
  if (!cover.pages.empty())
    wishes.push_back(std::move(cover));
}

void add_spreads(const Edition &edition, std::vector<Wish> &wishes) {
  for (const Spread &spread : edition.spreads)
    if (spread.right == spread.left + 1)
      wishes.push_back({Wish::Why::spread, false, {spread.left, spread.right}, spread.opened});
}

bool same_pages(const Wish &one, const Wish &other) {
  return one.why == other.why && one.pages == other.pages && one.from == other.from;
}

// A text that leaps over pages is read in the order of its pages, wherever those between went; they
// stay, so that it leaps as it was written.
void add_texts(const Edition &book, std::vector<Wish> &wishes) {
  TextPages texts{book};
  texts.take_all();
  for (std::size_t text = 0; text < book.texts.size(); ++text) {
    const std::vector<int> pages(texts.pages[text].begin(), texts.pages[text].end());
    if (pages.size() < 2)
      continue;
    const bool whole = follow_each_other(pages);
    Wish wish{whole ? Wish::Why::text : Wish::Why::broken_text, !whole, pages,
              book.texts[text].range};
    if (std::ranges::none_of(wishes, [&](const Wish &w) { return same_pages(w, wish); }))
      wishes.push_back(std::move(wish));
  }
}

// What is gathered in or glued on goes where it goes: the pages there stay.
void add_pieces(const Edition &edition, std::vector<Wish> &wishes) {
  for (const auto &piece : edition.pieces)
    if ((*piece->goes == Goes::after_page || *piece->goes == Goes::on_page) &&
        piece->host.empty() && piece->at_page > 0 && piece->at_page <= *edition.page_count)
      wishes.push_back({Wish::Why::piece, true, {piece->at_page}, piece->goes.from});
}

void add_stays(const Edition &edition, std::vector<Wish> &wishes) {
  for (const Stays &stays : edition.stays) {
    std::set<int> pages(stays.pages.begin(), stays.pages.end());
    pages.insert(stays.with.begin(), stays.with.end());
    wishes.push_back(
        {Wish::Why::maker, stays.with.empty(), {pages.begin(), pages.end()}, stays.from});
  }
}

} // namespace

std::vector<Wish> wishes_of(const Edition &edition) {
  std::vector<Wish> wishes;
  add_cover(edition, wishes);
  add_spreads(edition, wishes);
  for (const RunBook &book : books_of(edition))
    add_texts(*book.edition, wishes);
  add_pieces(edition, wishes);
  add_stays(edition, wishes);
  std::ranges::stable_sort(wishes, {}, [](const Wish &wish) { return wish.pages.front(); });
  return wishes;
}

std::vector<PageBlock> blocks_of(const Edition &edition, const std::vector<Wish> &wishes) {
  const auto count = static_cast<std::size_t>(*edition.page_count);
  std::vector<bool> with_next(count + 2), stays(count + 2), spread(count + 2);
  for (const Wish &wish : wishes)
    for (const int page : wish.pages) {
      const auto i = static_cast<std::size_t>(page);
      stays[i] = stays[i] || wish.stays;
      spread[i] = spread[i] || wish.why == Wish::Why::spread;
      with_next[i] = with_next[i] || (!wish.stays && page != wish.pages.back());
    }
  std::vector<PageBlock> blocks;
  for (std::size_t page = 1; page <= count; ++page) {
    if (blocks.empty() || !with_next[page - 1])
      blocks.push_back({static_cast<int>(page), 0, false, false});
    PageBlock &block = blocks.back();
    ++block.length;
    block.stays = block.stays || stays[page];
    block.holds_spread = block.holds_spread || spread[page];
  }
  return blocks;
}

} // namespace bodkin::arranging
