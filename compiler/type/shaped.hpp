// A paragraph shaped: glyphs with their advances in font units, and the points where a line may
// end.
#pragma once

#include "type/lines.hpp"
#include "type/paragraphs.hpp"
#include "type/runs.hpp"

#include <cstdint>
#include <vector>

namespace bodkin {

struct ShapedGlyph {
  std::uint32_t id = 0;
  std::uint32_t cluster = 0; // byte of the paragraph's text
  std::int32_t advance = 0, dx = 0, dy = 0;
  bool joined =
      false; // shaped by what stands before its cluster: a line that begins here is not so
};

struct ShapedRun {
  TextRun text;
  std::uint32_t first = 0, count = 0; // glyphs, from left to right as seen
  bool leftwards() const { return text.level % 2 != 0; }
};

struct Shaped {
  std::uint8_t base_level = 0;
  std::vector<ShapedRun> runs; // as read
  std::vector<ShapedGlyph> glyphs;
  std::vector<BreakPoint> points;
};

} // namespace bodkin
