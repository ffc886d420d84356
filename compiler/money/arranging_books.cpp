#include "money/arranging_books.hpp"

#include <memory>
#include <utility>

namespace bodkin::arranging {
namespace {

template <typename Thing>
std::vector<Thing> by_place(const std::vector<Thing> &by_page, const std::vector<int> &order,
                            std::size_t pages_before = 0) {
  std::vector<Thing> anew = by_page;
  for (std::size_t place = 1; place < order.size(); ++place) {
    const std::size_t to = pages_before + place;
    const std::size_t from = pages_before + static_cast<std::size_t>(order[place]);
    if (to < by_page.size())
      anew[to] = from < by_page.size() ? by_page[from] : Thing{};
  }
  return anew;
}

void put_in_order(Edition &edition, const std::vector<int> &order) {
  std::vector<Page> pages(edition.pages.size());
  std::vector<int> becomes(edition.pages.size());
  for (std::size_t place = 1; place < pages.size(); ++place) {
    pages[place] = std::move(edition.pages[static_cast<std::size_t>(order[place])]);
    becomes[static_cast<std::size_t>(order[place])] = static_cast<int>(place);
  }
  edition.pages = std::move(pages);
  for (Spread &spread : edition.spreads) {
    spread.left = becomes[static_cast<std::size_t>(spread.left)];
    spread.right = becomes[static_cast<std::size_t>(spread.right)];
  }
  for (Running &running : edition.runnings)
    running.on_page = by_place(running.on_page, order);
}

} // namespace

std::vector<RunBook> books_of(const Edition &edition) {
  if (!has_other_books(edition))
    return {{&edition, nullptr, 0, edition.run->copies + edition.run->spare}};
  const auto printed = [&](std::size_t run) {
    return edition.runs[run].run.copies + edition.runs[run].run.spare;
  };
  std::vector<RunBook> books{{&edition, nullptr, 0, printed(0)}};
  int before = *edition.page_count;
  for (const auto &piece : edition.pieces) {
    if (piece->is_other_book())
      books.push_back({&piece->edition, piece.get(), before, printed(**piece->only)});
    before += *piece->edition.page_count;
  }
  return books;
}

namespace {

using ChangePiece = std::function<void(Piece &)>;

void change_other_books(Edition &edition, const ChangePiece &change) {
  for (std::shared_ptr<const Piece> &piece : edition.pieces) {
    if (!piece->is_other_book())
      continue;
    auto other = std::make_shared<Piece>(*piece);
    change(*other);
    piece = std::move(other);
  }
}

} // namespace

Edition in_every_book(Edition edition, const std::function<void(Edition &)> &change) {
  change(edition);
  change_other_books(edition, [&](Piece &other) { change(other.edition); });
  return edition;
}

Edition in_order(Edition edition, const std::vector<int> &order) {
  put_in_order(edition, order);
  change_other_books(edition, [&](Piece &other) {
    put_in_order(other.edition, order);
    other.matter_of = by_place(other.matter_of, order);
    other.matter_but_price = by_place(other.matter_but_price, order);
  });
  return edition;
}

std::vector<bool> in_order(const Edition &edition, const std::vector<bool> &draws,
                           const std::vector<int> &order) {
  std::vector<bool> anew = draws;
  for (const RunBook &book : books_of(edition))
    anew = by_place(anew, order, static_cast<std::size_t>(book.pages_before));
  return anew;
}

} // namespace bodkin::arranging
