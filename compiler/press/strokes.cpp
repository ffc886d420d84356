#include "press/strokes.hpp"

#include "press/letters.hpp"
#include "press/number.hpp"

namespace bodkin::press {

Strokes::Strokes(double height) {
  map({.xx = 1, .yx = 0, .xy = 0, .yy = -1, .x0 = 0, .y0 = height});
}

void Strokes::map(const Transform &map) { append_matrix(text_, map); }

void Strokes::grey(double value) {
  numbers({value}, "g\n");
  numbers({value}, "G\n");
}

void Strokes::colour(double red, double green, double blue) {
  numbers({red, green, blue}, "rg\n");
  numbers({red, green, blue}, "RG\n");
}

void Strokes::fill_colour(Colour colour) {
  numbers({colour.red / 255.0, colour.green / 255.0, colour.blue / 255.0}, "rg\n");
}

void Strokes::line_width(double width) { numbers({width}, "w\n"); }

void Strokes::dashes(std::initializer_list<double> lengths) {
  text_ += '[';
  numbers(lengths, "] 0 d\n");
}

void Strokes::rectangle(double x, double y, double width, double height) {
  numbers({x, y, width, height}, "re\n");
}

void Strokes::letters(std::string_view text, double x, double y, double height) {
  letters(text, x, y, height, letters_pen(height));
}

void Strokes::letters(std::string_view text, double x, double y, double height, double pen) {
  line_width(pen);
  round_ends();
  trace_letters(text, x, y, height, [this](double to_x, double to_y, bool down) {
    if (down)
      line_to(to_x, to_y);
    else
      move_to(to_x, to_y);
  });
  stroke();
}

void Strokes::numbers(std::initializer_list<double> values, const char *op) {
  for (const double value : values) {
    append_number(text_, value);
    text_ += ' ';
  }
  text_ += op;
}

} // namespace bodkin::press
