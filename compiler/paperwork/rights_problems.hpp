// What is wrong with the rights of an edition as its sources state them: arithmetic and duties, not
// legal advice.
#pragma once

#include "paperwork/ledger.hpp"
#include "problems/problem.hpp"
#include "problems/sources.hpp"

namespace bodkin::paperwork {

// Of sources that something on a page names; each is spoken of once.
void check_rights(const Edition &edition, const RightsLedger &ledger, const Sources &sources,
                  Problems &problems);

} // namespace bodkin::paperwork
