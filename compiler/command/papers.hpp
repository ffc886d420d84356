// The papers of an edition that has walked the way, made once: told of before anything is written,
// then set.
#pragma once

#include "command/way.hpp"
#include "paperwork/leaflet.hpp"
#include "paperwork/price_cards.hpp"
#include "press/leaflet_type.hpp"

#include <optional>

namespace bodkin {

// The columns of papers as text: for a phone, or somebody who has them read aloud.
inline constexpr int paper_columns = 80;

// Of an edition without errors only. Not copied or moved: its parts refer to one another.
struct Papers {
  explicit Papers(const WayThrough &way);
  Papers(const Papers &) = delete;
  Papers &operator=(const Papers &) = delete;

  paperwork::Leaflet guide, ticket;
  std::optional<paperwork::PriceCards> cards;
  press::LeafletType type;
};

// Adds what is wrong with them to the problems of the way.
void tell_papers(WayThrough &way, Papers &papers);

} // namespace bodkin
