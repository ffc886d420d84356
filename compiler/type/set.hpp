// Type as set: glyphs with their places, ready to draw, and the text that they stand for.
//
// Glyph places are points (1/72 in) from the top left corner of the box that was filled, x to the
// right, y down: they are quotients of font units that no exact length holds. All else is a Length.
#pragma once

#include "edition/style.hpp"
#include "measure/box.hpp"
#include "type/cut.hpp"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace bodkin {

struct Glyph {
  std::uint32_t id = 0;
  double x = 0, y = 0; // of its origin, on the baseline
};

// How many bytes of the text stand for how many glyphs: a ligature is 2 bytes to 1 glyph.
struct Cluster {
  std::int32_t bytes = 0, glyphs = 0;
};

// One cut at one size in one colour. Glyphs run from left to right as seen; text and clusters run
// as read, which is the other way round for glyphs where `backward`
// (CAIRO_TEXT_CLUSTER_FLAG_BACKWARD).
struct GlyphRun {
  const FaceCut *cut = nullptr; // owned by OpenFaces
  Length size;
  Paint paint;
  bool backward = false;
  std::vector<Glyph> glyphs;
  std::vector<Cluster> clusters; // their sums are text.size() and glyphs.size()
  std::string text;              // UTF-8
  double left = 0, right = 0;    // from its first glyph's origin to its last one's advance
};

// A line: runs from left to right as seen. `top` and `foot` are its leading; `left` and `right` the
// words' extents without the spaces that hang at its ends.
struct Line {
  std::vector<GlyphRun> runs;
  Length left, right, top, foot;
  double baseline = 0;
  Length size;              // its paragraph's type size; runs of code may have their own
  bool broken_word = false; // ends within a word that is wider than the measure
  bool too_wide = false;    // wider than the measure all the same
};

// Where words, or a part of one, stand on a line: from origin to advance, ascender to descender.
struct WordBox {
  std::string text;
  double left = 0, top = 0, right = 0, foot = 0; // points
};
std::vector<WordBox> words_of(const Line &line);

// True bounds of ink, in points; empty where left >= right.
struct InkBox {
  double left = 0, top = 0, right = 0, foot = 0;
  constexpr bool empty() const { return left >= right || top >= foot; }
  void add(const InkBox &other);
};
InkBox ink_of(const Glyph &glyph, const FaceCut &cut, Length size);
InkBox ink_of(const GlyphRun &run);
InkBox ink_of(const Line &line);
InkBox ink_of(const std::vector<Line> &lines);

// The outlines as polygons, for matter that is turned: curves become chords that leave them by less
// than 1/1000 of the size.
struct InkPoint {
  double x = 0, y = 0;
};
std::vector<InkPoint> outline_of(const GlyphRun &run);

} // namespace bodkin
