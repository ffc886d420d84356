// The points where a shaped paragraph's lines may end, with the widths up to each.
#pragma once

#include "type/breaks.hpp"
#include "type/lines.hpp"
#include "type/shaped.hpp"

#include <cstdint>
#include <string_view>
#include <vector>

namespace bodkin {

// A composing stick: measures a shaped paragraph's text from its start, forwards only.
class Stick {
public:
  Stick(const Paragraph &paragraph, const Shaped &shaped)
      : paragraph_(paragraph), shaped_(shaped) {}
  void go_to(std::uint32_t byte); // takes in every glyph whose cluster begins before it
  Length x() const;
  Length spaces() const; // of that, what can stretch
  std::uint32_t
  next_cluster() const; // byte of the first glyph not taken in; the text's end at last

private:
  const ShapedGlyph &glyph() const;

  const Paragraph &paragraph_;
  const Shaped &shaped_;
  std::size_t run_ = 0;
  std::uint32_t taken_ = 0; // glyphs of the run
  std::int64_t units_ = 0, space_units_ = 0;
  Length x_, spaces_; // of the runs before
};

// A space that a justified line may stretch: U+0020 and U+00A0.
inline bool stretches(std::string_view text, std::uint32_t at) {
  return text[at] == ' ' || (text[at] == '\xC2' && text.substr(at, 2) == "\u00A0");
}

std::vector<BreakPoint> points_of(const Paragraph &paragraph, const Shaped &shaped,
                                  const std::vector<LineBreak> &breaks);

// Appends those of `letters` (bytes) that lie between points `point` and `point` + 1 and at which a
// glyph begins. `stick` stands before them.
void add_points_between(Stick &stick, const Shaped &shaped,
                        const std::vector<std::uint32_t> &letters, std::size_t point,
                        std::vector<BreakPoint> &points);

} // namespace bodkin
