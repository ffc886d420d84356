// A drawing as it grows: lines, boxes and words of an SVG 1.1 file (W3C recommendation), in points.
#pragma once

#include <string>
#include <string_view>

namespace bodkin {

class SvgPage {
public:
  // A class of the style sheet below: "paper", "page", "fault", "valley", "mountain", "slit",
  // "tab".
  void box(double x, double y, double width, double height, std::string_view kind);
  void line(double x1, double y1, double x2, double y2, std::string_view kind);
  // Centred, turned clockwise about its middle. Where a number reads as another head down, as 6 and
  // 9 do, a line under it says where its foot is.
  void number(double x, double y, std::string_view text, int turn);
  // From x to the right. Kinds: "title", "small", "trouble".
  void words_from(double x, double y, std::string_view text, std::string_view kind);
  std::string finished(double width, double height, std::string_view title) const;

private:
  std::string body_;
};

} // namespace bodkin
