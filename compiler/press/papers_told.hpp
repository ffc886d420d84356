// What is wrong with the papers of an edition before they are written: that there is no face to set
// them in, or none that has all their characters.
#pragma once

#include "paperwork/leaflet.hpp"
#include "paperwork/price_cards.hpp"
#include "press/leaflet_type.hpp"
#include "problems/problem.hpp"
#include "problems/sources.hpp"

#include <string>
#include <vector>

namespace bodkin::press {

struct PaperToSet {
  std::string file; // "assembly.pdf"
  const paperwork::Leaflet *leaflet = nullptr;
};

struct PapersAsked {
  const Edition &edition;
  const Sources &sources;
  std::vector<PaperToSet> papers;
  const paperwork::PriceCards *cards = nullptr; // none asked for
};

Problems paper_problems(const PapersAsked &asked, LeafletType &type);

} // namespace bodkin::press
