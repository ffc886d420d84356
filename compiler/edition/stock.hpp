// A paper: its weight, the sheet it comes in, its colour and its price.
#pragma once

#include "edition/known.hpp"
#include "measure/box.hpp"
#include "measure/few.hpp"
#include "measure/price.hpp"
#include "measure/weight.hpp"

#include <optional>
#include <string>

namespace bodkin {

enum class Grain { unsaid, along_long_edge, along_short_edge };

// Bought in larger sheets, so many cut out of each.
struct CutFrom {
  Size parent; // upright: short edge across
  int out = 1;
};

struct Stock {
  std::string name;
  std::string title; // as written after the name, else empty
  Range range;       // the line that makes it
  std::optional<Known<Weight>> weight;
  std::optional<Known<Size>> sheet; // upright: short edge across
  Known<Grain> grain;
  Known<Colour> tint{{255, 255, 255}, {}};
  Known<Length> caliper; // always filled: estimated from the weight where not stated
  bool caliper_estimated = false;
  std::optional<Known<Rate>> costs; // none: no price written
  bool included = false;            // `costs included`: the machine's side price holds the paper
  std::optional<Known<std::int64_t>> have; // sheets at hand
  std::optional<Known<CutFrom>> cut_from;  // then `costs` is the larger sheet's
  std::optional<Known<Share>> opacity;     // none: not said
  Known<bool> one_side{false, {}};         // only one of its sides takes print
};

} // namespace bodkin
