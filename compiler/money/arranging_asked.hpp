// An edition as the search of an order asks about it.
#pragma once

#include "money/arranging_pricing.hpp"
#include "money/arranging_works.hpp"

#include <vector>

namespace bodkin::arranging {

// The edition with what is asked of it again and again.
struct Question {
  explicit Question(const AsWritten &of);

  AsWritten written;
  std::vector<RunBook> books;
  std::vector<SheetWork> works;
  Exact share; // of a sheet for each sheet of a copy, where the book is laid several up

  const Page &page(std::size_t run, int number) const {
    return books[run].edition->pages[static_cast<std::size_t>(number)];
  }
  bool draws(std::size_t run, int page) const;
  // Sheets of all copies of a run for one of a copy: whole ones, where no other run shares them.
  Exact of_run(std::size_t run) const {
    const Exact sheets = share * Exact(books[run].printed);
    return books.size() == 1 ? Exact(sheets.ceiling()) : sheets;
  }
};

// Whether a run takes whole sheets for each of a copy's, whatever is laid several up.
bool on_whole_sheets(const Question &question);

// Whether an order's cost hangs on more than sums over its sides and sheets: on which sides share a
// sheet, or on sums that are rounded up.
bool sheets_matter(const Question &question);

} // namespace bodkin::arranging
