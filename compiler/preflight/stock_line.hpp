// Lines about a paper: where its problem is told, and what is typed to change it.
#pragma once

#include "preflight/preflight.hpp"

#include <string>

namespace bodkin {

// The fact's own place; of a paper of the shelf, where the edition asks for it.
Range stock_range(const Inspection &inspection, StockId stock, Range fact);

// A fact of a paper typed anew. Nobody edits the shelf: a paper of one's own is made like it.
void retype_stock(const Inspection &inspection, Problem &problem, StockId stock, Range fact,
                  const std::string &part, const std::string &line, const std::string &remark);

} // namespace bodkin
