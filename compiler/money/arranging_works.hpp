// Work that is priced by the sheets or sides that carry it: what it costs hangs on the order of
// pages.
#pragma once

#include "edition/edition.hpp"
#include "money/exact.hpp"

#include <vector>

namespace bodkin::arranging {

struct SheetWork {
  std::vector<int> pages;  // of the book
  Exact on_sheet, on_side; // money of the whole run for each
};

std::vector<SheetWork> work_by_sheet(const Edition &edition);

} // namespace bodkin::arranging
