#include "type/set.hpp"

#include <algorithm>
#include <ft2build.h>
#include <limits>
#include FT_FREETYPE_H
#include FT_OUTLINE_H

namespace bodkin {
namespace {

double scale_of(const FaceCut &cut, Length size) { return size.in_points() / cut.upem(); }

// A cluster of a run: what it says and where its glyphs stand.
struct Letter {
  std::string_view text;
  double left = 0, right = 0;
};

// As read.
std::vector<Letter> letters_of(const GlyphRun &run) {
  std::vector<Letter> letters;
  letters.reserve(run.clusters.size());
  std::size_t byte = 0, glyph = 0;
  for (const Cluster &cluster : run.clusters) {
    const auto bytes = static_cast<std::size_t>(cluster.bytes);
    const auto count = static_cast<std::size_t>(cluster.glyphs);
    const std::size_t first = run.backward ? run.glyphs.size() - glyph - count : glyph;
    const std::size_t after = first + count;
    letters.push_back({std::string_view(run.text).substr(byte, bytes), run.glyphs[first].x,
                       after < run.glyphs.size() ? run.glyphs[after].x : run.right});
    byte += bytes;
    glyph += count;
  }
  return letters;
}

class WordGatherer {
public:
  explicit WordGatherer(const Line &line) : line_(line) {}

  void take(const GlyphRun &run) {
    if (run.backward || last_was_backward_)
      inside_ = false;
    last_was_backward_ = run.backward;
    const double scale = scale_of(*run.cut, run.size);
    for (const Letter &letter : letters_of(run)) {
      if (letter.text == " " || letter.text == "\u00A0") {
        inside_ = false;
        continue;
      }
      if (!inside_)
        words_.push_back({"", letter.left, line_.baseline, letter.right, line_.baseline});
      inside_ = true;
      WordBox &word = words_.back();
      word.text += letter.text;
      word.left = std::min(word.left, letter.left);
      word.right = std::max(word.right, letter.right);
      word.top = std::min(word.top, line_.baseline - run.cut->ascender() * scale);
      word.foot = std::max(word.foot, line_.baseline + run.cut->descender() * scale);
    }
  }
  std::vector<WordBox> words() { return std::move(words_); }

private:
  const Line &line_;
  std::vector<WordBox> words_;
  bool inside_ = false, last_was_backward_ = false;
};

// Chords that FreeType's walk along an outline is broken into.
class Chords {
public:
  Chords(std::vector<InkPoint> &points, const Glyph &origin, double scale)
      : points_(points), origin_(origin), scale_(scale) {}

  void to(double x, double y) {
    points_.push_back({origin_.x + x * scale_, origin_.y - y * scale_});
    x_ = x;
    y_ = y;
  }
  // A cubic curve (P. Bézier) from where the pen stands.
  void curve(double ax, double ay, double bx, double by, double x, double y) {
    constexpr int chords = 8;
    const double x0 = x_, y0 = y_;
    for (int i = 1; i <= chords; ++i) {
      const double t = static_cast<double>(i) / chords, u = 1 - t;
      to(u * u * u * x0 + 3 * u * u * t * ax + 3 * u * t * t * bx + t * t * t * x,
         u * u * u * y0 + 3 * u * u * t * ay + 3 * u * t * t * by + t * t * t * y);
    }
  }
  double x() const { return x_; }
  double y() const { return y_; }

private:
  std::vector<InkPoint> &points_;
  const Glyph &origin_;
  double scale_, x_ = 0, y_ = 0;
};

Chords &pen(void *walk) { return *static_cast<Chords *>(walk); }

int move_or_line_to(const FT_Vector *to, void *walk) {
  pen(walk).to(static_cast<double>(to->x), static_cast<double>(to->y));
  return 0;
}
int conic_to(const FT_Vector *control, const FT_Vector *to, void *walk) {
  Chords &chords = pen(walk);
  const auto x = static_cast<double>(to->x), y = static_cast<double>(to->y);
  const auto cx = static_cast<double>(control->x), cy = static_cast<double>(control->y);
  // The cubic of the same shape.
  chords.curve((chords.x() + 2 * cx) / 3, (chords.y() + 2 * cy) / 3, (x + 2 * cx) / 3,
               (y + 2 * cy) / 3, x, y);
  return 0;
}
int cubic_to(const FT_Vector *a, const FT_Vector *b, const FT_Vector *to, void *walk) {
  pen(walk).curve(static_cast<double>(a->x), static_cast<double>(a->y), static_cast<double>(b->x),
                  static_cast<double>(b->y), static_cast<double>(to->x),
                  static_cast<double>(to->y));
  return 0;
}

} // namespace

std::vector<WordBox> words_of(const Line &line) {
  WordGatherer gatherer(line);
  for (const GlyphRun &run : line.runs)
    gatherer.take(run);
  return gatherer.words();
}

void InkBox::add(const InkBox &other) {
  if (other.empty())
    return;
  if (empty()) {
    *this = other;
    return;
  }
  left = std::min(left, other.left);
  top = std::min(top, other.top);
  right = std::max(right, other.right);
  foot = std::max(foot, other.foot);
}

InkBox ink_of(const Glyph &glyph, const FaceCut &cut, Length size) {
  const InkUnits ink = cut.ink(glyph.id);
  if (ink.empty())
    return {};
  const double scale = scale_of(cut, size);
  return {glyph.x + ink.left * scale, glyph.y - ink.top * scale, glyph.x + ink.right * scale,
          glyph.y - ink.bottom * scale};
}

InkBox ink_of(const GlyphRun &run) {
  constexpr double far = std::numeric_limits<double>::max();
  InkBox box{far, far, -far, -far};
  const double scale = scale_of(*run.cut, run.size);
  for (const Glyph &glyph : run.glyphs) {
    const InkUnits ink = run.cut->ink(glyph.id);
    if (ink.empty())
      continue;
    box.left = std::min(box.left, glyph.x + ink.left * scale);
    box.top = std::min(box.top, glyph.y - ink.top * scale);
    box.right = std::max(box.right, glyph.x + ink.right * scale);
    box.foot = std::max(box.foot, glyph.y - ink.bottom * scale);
  }
  return box.left > box.right ? InkBox{} : box;
}

InkBox ink_of(const Line &line) {
  InkBox box;
  for (const GlyphRun &run : line.runs)
    box.add(ink_of(run));
  return box;
}

InkBox ink_of(const std::vector<Line> &lines) {
  InkBox box;
  for (const Line &line : lines)
    box.add(ink_of(line));
  return box;
}

std::vector<InkPoint> outline_of(const GlyphRun &run) {
  std::vector<InkPoint> points;
  const double scale = scale_of(*run.cut, run.size);
  FT_Outline_Funcs steps{};
  steps.move_to = move_or_line_to;
  steps.line_to = move_or_line_to;
  steps.conic_to = conic_to;
  steps.cubic_to = cubic_to;
  for (const Glyph &glyph : run.glyphs) {
    const FT_Face face = run.cut->freetype();
    if (!run.cut->draws(glyph.id) ||
        FT_Load_Glyph(face, glyph.id, FT_LOAD_NO_SCALE | FT_LOAD_NO_HINTING) != 0)
      continue;
    Chords chords(points, glyph, scale);
    FT_Outline_Decompose(&face->glyph->outline, &steps, &chords);
  }
  return points;
}

} // namespace bodkin
