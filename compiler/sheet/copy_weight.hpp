// How heavy and how thick a finished copy is, and each of its parts: a sheet's mass is its area
// after the knife times its grammage (ISO 536). The fore-edge is cut flush, so a leaf that creep
// pushes out loses that much more: the inner leaves of a booklet are narrower. Glue, thread,
// staples and ink are not counted; hand matter is, where it says its `mass`.
#pragma once

#include "sheet/parts.hpp"

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace bodkin {

struct PartWeight {
  std::string name; // "book", or the piece's
  std::int64_t in_a_copy = 1;
  std::optional<Mass> mass; // of one; none: the weight of one of its papers is not known
  Length thickness;         // of one, folded; at its thickest
};

struct CopyWeight {
  std::vector<PartWeight> parts; // as impose_parts() gives them; a reverse weighs nothing
  Mass by_hand;                  // what hand matter says that it adds
  std::optional<Mass> mass;      // of the whole; none where that of a part is not known
  Length thickness;              // of all parts laid on each other, pressed flat
};

Length thickness_of(const CopyPart &part); // of one
// Of a sheet of the part, were it of that paper; none where its weight is not known.
std::optional<Mass> mass_of_sheet(const CopyPart &part, const Sheet &sheet, StockId paper);
// A finished copy, lying closed: its pages after the knife with what paper they leave uncut, or
// boards that stand out round them.
Size size_of_copy(std::span<const CopyPart> parts);

// A copy of one run; of the first, or of all, where none is asked.
CopyWeight weigh(std::span<const CopyPart> parts, std::optional<std::uint32_t> run = {});
// Of several runs' copies the heaviest.
CopyWeight weigh_heaviest(std::span<const CopyPart> parts);

// "12.4 g", "0.8 g"; of a whole number without decimals.
std::string in_grams(Mass mass);

} // namespace bodkin
