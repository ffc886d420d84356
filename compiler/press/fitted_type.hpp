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

  bool has(std::string_view words) const; // a glyph for each character
  // Paragraphs end with a line feed. In as many lines as it takes, at the largest size that fits;
  // no word is broken.
  std::vector<Line> set(std::string_view words, const TypeRoom &room);

private:
  std::vector<Line> lines(std::string_view words, double size, const TypeRoom &room);

  Edition edition_; // holds the face and one style
  const OpenFaces *faces_;
};

// The first face that has a glyph for every character of the words; else the first.
FittedType face_for(const std::vector<FaceOffer> &offers, std::string_view words);

} // namespace bodkin::press
