// One line of a shaped paragraph put in its place: parts shaped anew where the line's ends cut what
// was joined, runs in the order of seeing, spaces stretched or closed up.
#pragma once

#include "type/set.hpp"
#include "type/shape.hpp"

#include <cstddef>
#include <vector>

namespace bodkin {

struct LineAsked {
  const Paragraph &paragraph;
  const Shaped &shaped;
  std::size_t from = 0, to = 0; // points
  Lines lines = Lines::left;    // a last line of justified ones comes ranged
  Length left, measure;         // where its words may stand
  Length top;
};

class LineSetter {
public:
  explicit LineSetter(Shaper &shaper) : shaper_(shaper) {}
  Line set(const LineAsked &asked);

private:
  struct Piece {
    const ShapedRun *run = nullptr;
    std::uint32_t begin = 0, end = 0; // bytes
    bool anew = false;                // its glyphs are in anew_, else in the paragraph
    std::size_t first = 0, last = 0;  // glyphs
    std::int64_t units = 0, space_units = 0, spaces = 0;
  };
  struct Fitted {
    Length width;            // as set
    double more_a_space = 0; // points
    bool too_wide = false;
  };

  void cut(const LineAsked &asked);
  Piece piece_of(const LineAsked &asked, const ShapedRun &run, std::uint32_t begin,
                 std::uint32_t end);
  Fitted fit(const LineAsked &asked) const;
  const std::vector<ShapedGlyph> &glyphs_of(const Shaped &shaped, const Piece &piece) const {
    return piece.anew ? anew_ : shaped.glyphs;
  }
  double add(const LineAsked &asked, const Piece &piece, double pen, double more, Line &line) const;
  static void add_clusters(const std::vector<ShapedGlyph> &glyphs, const Piece &piece,
                           GlyphRun &run);

  Shaper &shaper_;
  std::vector<Piece> pieces_;
  std::vector<ShapedGlyph> anew_;
};

} // namespace bodkin
