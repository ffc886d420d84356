// What the licences of sources ask, held against what the edition does.
#pragma once

#include "paperwork/ledger.hpp"
#include "paperwork/own_words.hpp"
#include "problems/problem.hpp"

#include <string>
#include <vector>

namespace bodkin::paperwork {

struct UsedSource {
  const ArtSource *source = nullptr;
  std::vector<const LedgerWork *> works; // that come from it
  std::string where() const;             // "on page 2", "on pages 2 and 5"
};
std::vector<PageSeen> pages_of(const UsedSource &used); // each once

// In the order of their first use.
std::vector<UsedSource> used_sources(const RightsLedger &ledger);

// Where the edition says that a copy is sold for money; nowhere: it does not.
Range sold_at(const Edition &edition);

void check_duties(const UsedSource &used, const Edition &edition, const CreditsGiven &given,
                  Problems &problems);

} // namespace bodkin::paperwork
