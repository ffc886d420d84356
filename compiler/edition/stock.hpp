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
};

} // namespace bodkin
