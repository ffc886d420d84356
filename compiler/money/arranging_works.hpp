// Work that is priced by the sheets or sides that carry it: what it costs hangs on the order of
// pages.
#pragma once

#include "money/arranging_books.hpp"
#include "money/exact.hpp"

#include <vector>

namespace bodkin::arranging {

struct PageOfRun {
  std::size_t run = 0; // of books_of()
  int page = 0;        // of the book
};

struct SheetWork {
  std::vector<PageOfRun> pages;
  Exact on_sheet, on_side; // money of the whole run for each
};

std::vector<SheetWork> work_by_sheet(const Edition &edition);

} // namespace bodkin::arranging
