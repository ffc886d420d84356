// Sheets that show the number of the copy that they come into: each of them is printed once, and is
// a page of its own in its pass.
#pragma once

#include "edition/copy_numbers.hpp"
#include "sheet/imposition.hpp"

namespace bodkin {

bool is_numbered(const Sheet &sheet);
// By page, 0 unused.
std::vector<bool> pages_with_numbers(const Edition &edition);
// Finds the sides of one part's sheets that show a number.
void find_numbered(const Edition &edition, Imposition &imposition);

// How many of a sheet the run needs, spares with them, and how many of these are for spares alone.
struct SheetsNeeded {
  std::int64_t all = 0, spare = 0;
};
SheetsNeeded sheets_needed(const Edition &edition, const Sheet &sheet);

// Not one of a run's sheets: one without numbers.
inline constexpr std::int64_t without_number = -1;

// By place of a side, the copy that what is cut out there belongs to, on the `nth` of these sheets
// from 0; spare_copy for what no good copy gets. Of several up each place has a stretch of the
// numbers, so that the piles that the knife makes, laid on one another, are in order.
std::vector<std::int64_t> copies_on(const Edition &edition, const Sheet &sheet, int side,
                                    std::int64_t nth);

} // namespace bodkin
