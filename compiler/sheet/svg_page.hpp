// An SVG 1.1 file (W3C recommendation) of drawings, as it grows; in points.
#pragma once

#include "sheet/figure.hpp"

#include <string>
#include <string_view>

namespace bodkin {

class SvgPage {
public:
  void add(const Figure &figure, double y);
  std::string finished(double width, double height, std::string_view title) const;

private:
  void draw(const FigureBox &box, double y);
  void draw(const FigureLine &line, double y);
  void draw(const FigureNumber &number, double y);
  void draw(const FigureWords &words, double y);
  void draw(const FigureCurve &curve, double y);
  std::string body_;
};

} // namespace bodkin
