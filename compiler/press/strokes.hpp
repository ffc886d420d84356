// Lines, boxes and small letters written as PDF content: what the compiler itself draws round and
// beside an edition's matter (marks, the frames of proofs, hand work). Points, y down from the
// drawing's top left.
#pragma once

#include "edition/element.hpp"
#include "page/transform.hpp"

#include <initializer_list>
#include <string>
#include <string_view>

namespace bodkin::press {

class Strokes {
public:
  // In a drawing so many points high.
  explicit Strokes(double height);

  void save() { text_ += "q\n"; }
  void restore() { text_ += "Q\n"; }
  void map(const Transform &map);
  void grey(double value);                            // 0 is black; lines and fills
  void colour(double red, double green, double blue); // for proofs alone: no black side has it
  void fill_colour(Colour colour);                    // lines stay as they are
  void line_width(double width);
  void dashes(std::initializer_list<double> lengths); // dash, gap, dash, gap …
  void solid() { text_ += "[] 0 d\n"; }
  void round_ends() { text_ += "1 J 1 j\n"; }
  void move_to(double x, double y) { numbers({x, y}, "m\n"); }
  void line_to(double x, double y) { numbers({x, y}, "l\n"); }
  void rectangle(double x, double y, double width, double height);
  void stroke() { text_ += "S\n"; }
  void fill() { text_ += "f\n"; }
  void fill_and_stroke() { text_ += "B\n"; }
  void clip() { text_ += "W n\n"; }
  // Letters by strokes (letters.hpp): `height` of a capital; x, y the baseline's start.
  void letters(std::string_view text, double x, double y, double height);
  void letters(std::string_view text, double x, double y, double height, double pen);

  const std::string &text() const { return text_; }

private:
  void numbers(std::initializer_list<double> values, const char *op);
  std::string text_;
};

} // namespace bodkin::press
