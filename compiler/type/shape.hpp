// Shapes paragraphs by HarfBuzz: each run once, as a whole, with the words around it as context.
// Ligatures and kerning are on, as the face has them.
#pragma once

#include "type/breaks.hpp"
#include "type/findings.hpp"
#include "type/owners.hpp"
#include "type/shaped.hpp"

#include <cstdint>
#include <string>
#include <vector>

struct hb_language_impl_t;

namespace bodkin {

class Shaper {
public:
  explicit Shaper(const std::string &language); // BCP 47

  Shaped shape(const Paragraph &paragraph, Findings &findings);
  // A part of one run anew, for a line that begins or ends inside it; glyphs are appended.
  void shape_part(const Paragraph &paragraph, const TextRun &part,
                  std::vector<ShapedGlyph> &glyphs);
  // Adds points between the letters of every word wider than `measure`.
  void add_letter_points(const Paragraph &paragraph, Shaped &shaped, Length measure);

private:
  void fill_buffer(const Paragraph &paragraph, const TextRun &run);
  void shape_run(const Paragraph &paragraph, const TextRun &run, Findings *findings,
                 std::vector<ShapedGlyph> &glyphs);

  const hb_language_impl_t *language_; // HarfBuzz keeps every language it has met
  Breaker breaker_;
  HbBuffer buffer_;
  std::vector<LineBreak> breaks_;
  std::vector<std::uint32_t> letters_;
};

} // namespace bodkin
