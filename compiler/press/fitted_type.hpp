// Words set as large as the room that they get.
#pragma once

#include "press/leaflet_type.hpp"

#include <string_view>
#include <vector>

namespace bodkin::press {

// Points; `leading` a share of the size.
struct TypeRoom {
  double most = 0; // the size that is tried first
  double width = 0, height = 0;
  double leading = 1.2;
};

class FittedType {
public:
  explicit FittedType(const FaceOffer &offer);

  // Characters that the face has no glyph for, told of words that stand at `from`.
  Problems lacking(std::string_view words, Range from) const;
  // Paragraphs end with a line feed. In as many lines as it takes, at the largest size that fits;
  // no word is broken. What would be smaller than 4pt is cut short.
  std::vector<Line> set(std::string_view words, const TypeRoom &room);

private:
  std::vector<Line> lines(std::string_view words, double size, const TypeRoom &room);

  Edition edition_; // holds the face and one style
  const OpenFaces *faces_;
};

// The first face that has a glyph for every character of the words; else the first.
FittedType face_for(const std::vector<FaceOffer> &offers, std::string_view words);

} // namespace bodkin::press
