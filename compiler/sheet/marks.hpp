// Marks for folding, cutting, stapling and collating. They stand only on paper that is both printed
// (inside the bare edge) and cut off; where there is no such strip they are left out. The places of
// sewing holes are marked where they are pierced, smaller than any hole. Black, never
// shifted for creep, and no reason to print a side.
#pragma once

#include "edition/edition.hpp"
#include "sheet/imposition.hpp"

#include <string>
#include <vector>

namespace bodkin {

// On the side as seen, from the sheet's top left.
struct MarkLine {
  enum class Kind { fold, cut, staple, hole } kind = Kind::fold;
  Spot start, end;
  bool operator==(const MarkLine &) const = default;
};
struct MarkText {
  Box box;          // to set one line in, no larger than this
  int turn = 0;     // 0, or 90 or 270 degrees clockwise in an upright strip
  std::string text; // "2 front"
};
struct Marks {
  std::vector<MarkLine> lines;
  std::vector<MarkText> texts;
};

inline constexpr Length mark_line_width = Length::points(1) / 4;

// None where the edition says `marks none`. `sheet` is an index into Imposition::sheets.
Marks marks_of(const Edition &edition, const Imposition &imposition, int sheet, SideName side);

} // namespace bodkin
