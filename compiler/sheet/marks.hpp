// Marks for folding, cutting, stapling and collating. They stand only on paper that is both printed
// (inside the bare edge) and cut off; where there is no such strip they are left out. The places of
// sewing holes are marked where they are pierced, smaller than any hole; collating steps stand on a
// spine that is covered. Black, never shifted for creep, and no reason to print a side.
#pragma once

#include "edition/edition.hpp"
#include "sheet/imposition.hpp"

#include <string>
#include <vector>

namespace bodkin {

inline constexpr Length mark_line_width = Length::points(1) / 4;

// On the side as seen, from the sheet's top left.
struct MarkLine {
  enum class Kind { fold, cut, staple, hole, step } kind = Kind::fold;
  Spot start, end;
  Length width = mark_line_width;
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

// None where the edition says `marks none`. `sheet` is an index into Imposition::sheets, whose
// sheets are numbered on after so many before them.
Marks marks_of(const Edition &edition, const Imposition &imposition, int sheet, SideName side,
               int sheets_before = 0);

} // namespace bodkin
