// The book as the copies of each run have it. Its pages stand in one order for all of them: a page
// is one number in the manuscript, whatever each run prints on it.
#pragma once

#include "edition/piece.hpp"

#include <cstddef>
#include <functional>
#include <vector>

namespace bodkin::arranging {

struct RunBook {
  const Edition *edition = nullptr; // owned by the whole edition
  const Piece *piece = nullptr;     // null: the first run's, or that of all copies
  int pages_before = 0;             // as pages are numbered on through book and pieces
  std::int64_t printed = 0;         // copies and spares
};

// One, or one for each run where they are printed otherwise; the first run's first.
std::vector<RunBook> books_of(const Edition &edition);

// The same change in every book.
Edition in_every_book(Edition edition, const std::function<void(Edition &)> &change);

// The edition with its pages in another order: page p is order[p] as written, in every book.
Edition in_order(Edition edition, const std::vector<int> &order);
// `draws` is by page, numbered on through book and pieces.
std::vector<bool> in_order(const Edition &edition, const std::vector<bool> &draws,
                           const std::vector<int> &order);

} // namespace bodkin::arranging
