#include "preflight/side_prices.hpp"

#include "preflight/about.hpp"

namespace bodkin {
namespace {

std::optional<Price> side_price(const Inspection &inspection, MachineId id, Mode mode) {
  if (id == MachineId::none)
    return std::nullopt;
  std::optional<Price> price;
  for (const SidePrice &line : inspection.edition[id].prints)
    if (line.mode == mode && line.rate.per == Per::side && !price)
      price = line.rate.price;
  return price;
}

} // namespace

std::optional<SidePrices> prices_of(const Inspection &inspection, int page) {
  const MachineId id = side_of(inspection, page).machine;
  const auto colour = side_price(inspection, id, Mode::colour);
  const auto black = side_price(inspection, id, Mode::black);
  if (!colour || !black)
    return std::nullopt;
  return SidePrices{*colour, *black};
}

SideKey side_key(const Inspection &inspection, int page) {
  const Spotted &spot = inspection.imposition.where[static_cast<std::size_t>(page)];
  return {spot.sheet, spot.side};
}

bool is_colour(const Inspection &inspection, const SideKey &key) {
  return inspection
             .modes[static_cast<std::size_t>(key.first)][static_cast<std::size_t>(key.second)] ==
         Mode::colour;
}

} // namespace bodkin
