// Where a paragraph's lines end. The line maker is one function that can be exchanged for another.
#pragma once

#include "measure/length.hpp"

#include <cstddef>
#include <cstdint>
#include <functional>
#include <span>
#include <vector>

namespace bodkin {

// A place where a line may end. Widths are sums from the paragraph's start, so the words between
// two points measure `to.end_x - from.next_x` and the spaces among them `to.end_spaces -
// from.next_spaces`. The first point of a paragraph is its start, the last its end.
struct BreakPoint {
  enum class Kind : std::uint8_t {
    may,       // between words
    must,      // a hard break, or the paragraph's end
    in_a_word, // between the letters of a word wider than the measure: the last resort
  };
  std::uint32_t end = 0;  // byte after the line's last word, its spaces left hanging
  std::uint32_t next = 0; // byte where the next line begins
  Length end_x, next_x;
  Length end_spaces, next_spaces; // widths of the spaces that can stretch
  Kind kind = Kind::may;
};

// Line n (from 0: the first line after the point begun at) is so wide.
using LineWidth = std::function<Length(std::size_t)>;

struct LinesAsked {
  std::span<const BreakPoint> points;
  std::size_t from = 0; // the point that the first line begins at
  std::size_t most = 0; // lines wanted
  bool justified = false;
};

// The points that the next lines end at, ascending, at most `most` of them.
using LineMaker = std::vector<std::size_t> (*)(const LinesAsked &asked, const LineWidth &width);

// As many words a line as fit; a justified line may close its spaces up by a fifth for one more
// (common practice, no source). A word wider than its line is broken only at the line's start.
std::vector<std::size_t> first_fit(const LinesAsked &asked, const LineWidth &width);

} // namespace bodkin
