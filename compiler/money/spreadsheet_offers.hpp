// The offers of printers in a spreadsheet: their steps, their bill, and what is made beside them.
#pragma once

#include "money/bill.hpp"
#include "money/spreadsheet_copies.hpp"

#include <vector>

namespace bodkin::spread {

// What stays the maker's own beside any offer, as lines.
std::vector<Charge> charges_beside_offers(const Edition &edition, const Bill &bill);

// `yours` is the cell of what those come to. Offers in money that does not count are left out.
void write_offers(const Edition &edition, const CopyRows &copies, const std::string &yours,
                  Rows &rows);

} // namespace bodkin::spread
