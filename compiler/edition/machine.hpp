// A printing machine as its shop charges for it and as its rollers take paper.
#pragma once

#include "edition/index.hpp"
#include "edition/known.hpp"
#include "measure/box.hpp"
#include "measure/few.hpp"
#include "measure/price.hpp"
#include "measure/weight.hpp"

#include <optional>
#include <string>
#include <vector>

namespace bodkin {

enum class Duplex { none, by_machine, by_hand };
enum class SheetEdge { long_edge, short_edge };

// `prints black at $0.12 a side on tabloid, from 500 sides`
struct SidePrice {
  Mode mode = Mode::black;
  Rate rate;
  std::optional<Size> size; // upright; none: any size
  std::int64_t from_sides = 1;
  Range range;
};

// A pale blue that copiers drop: common practice, no source. `bodkin dummy` prints others to try.
inline constexpr Colour dropped_blue{0xa6, 0xd8, 0xf0};

struct Machine {
  std::string name;
  std::string title;
  Range range;
  std::vector<SidePrice> prints;     // as written
  std::vector<Known<Size>> sizes;    // upright; empty: takes any
  Known<Length> bare;                // the unprinted frame of the sheet
  std::optional<Known<Length>> lead; // the unprinted strip at the edge that goes in first, if wider
  std::optional<Known<Weight>> lightest, heaviest; // `feeds A to B`
  Known<Duplex> duplex{Duplex::by_machine, {}};
  Known<Length> drift; // how far backs land off their fronts
  Known<SheetEdge> flip{SheetEdge::short_edge, {}};
  Known<std::int64_t> resolution{600, {}}; // dpi
  Known<bool> modes_apart{false, {}};
  Known<bool> blank_charged{false, {}};
  std::optional<Known<Share>> tax;
  std::optional<Known<Rate>> least;         // of a run: what is paid where its sides come to less
  std::optional<Known<Rate>> setup;         // a pass, or once
  std::optional<Known<std::int64_t>> speed; // sides a minute
  Known<Colour> blue{dropped_blue, {}};
};

} // namespace bodkin
