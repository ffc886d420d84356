// Prose in a style, laid flat for the compositor: each block a paragraph of text with the cut, size
// and colour of every part, its insets and the room above it. Soft hyphens are gone, runs of white
// space are one space (but in code), and a hard break is a line feed.
#pragma once

#include "edition/edition.hpp"
#include "type/faces.hpp"
#include "type/findings.hpp"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace bodkin {

struct TypedSpan {
  std::uint32_t begin = 0, end = 0; // bytes of the paragraph's text
  const FaceCut *cut = nullptr;
  FaceId face = FaceId::none;
  Cut asked = Cut::regular;
  Length size;
  Paint paint;
  Figures figures = Figures::of_face;
  Range from;
};

struct Paragraph {
  std::string text;
  std::vector<TypedSpan> spans; // cover the text in order
  TypedSpan typed;              // what it is set in where no span says otherwise
  Length leading;
  Lines lines = Lines::left;
  bool ranged_by_default = false; // `lines` is not written: a right-to-left paragraph ranges right
  Length indent;                  // of its first line
  Length inset_left, inset_right;
  Length above, below; // room kept to its neighbours; none at a box's top
  std::string sign;    // hangs before its first line
  Length hang;         // how far the sign hangs out of the inset

  // The baseline leaves equal room above the ascender and below the descender.
  Length baseline() const;
};

std::vector<Paragraph> paragraphs_of(const Prose &prose, StyleId style, const Edition &edition,
                                     const OpenFaces &faces, Findings &findings);

// One paragraph of plain words in a style, without indent or room above.
Paragraph paragraph_of(std::string_view words, StyleId style, const Edition &edition,
                       const OpenFaces &faces, Range from);

} // namespace bodkin
