// Where an edition names several machines (`machine corner-copier or library-copier`), the sheets
// of each stock go to the one where the whole run costs least, among those that can print them.
//
// Sheets of one stock, one part of the copy and one mode go together: they are what a pass is made
// of. Every way of sending them is priced for the whole run, since steps, setup and the least that
// a machine is paid hang on all of it; where there are too many ways, all sheets of a stock go
// together, and at last all sheets. Pages that say `by` hold, and so does the machine of their
// sheets.
#pragma once

#include "edition/edition.hpp"
#include "sheet/parts.hpp"
#include "sheet/passes.hpp"

#include <span>
#include <vector>

namespace bodkin {

// Settles the machines of all sides. `inks` is by page, numbered on through the parts; before pages
// are set it is what they are asked to hold.
void send_to_machines(const Edition &edition, std::vector<CopyPart> &parts,
                      std::span<const PageInk> inks, const Sources &sources);

// What pages will draw, as far as can be told before they are set.
std::vector<PageInk> inks_asked_for(const std::vector<CopyPart> &parts);

} // namespace bodkin
