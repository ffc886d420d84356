#include "press/overlay.hpp"

#include "press/letters.hpp"

#include <algorithm>
#include <array>

namespace bodkin::press {
namespace {

struct Rgb {
  double red, green, blue;
};
// A pencil's red and blue: no ink of an edition's is meant by them.
constexpr Rgb hand_pencil{0.72, 0.22, 0.16};
constexpr Rgb missing_pencil{0.24, 0.36, 0.62};
constexpr double letter_height = 5.5;

void pencil(cairo_t *cairo, Rgb colour) {
  cairo_set_source_rgb(cairo, colour.red, colour.green, colour.blue);
}

void frame(cairo_t *cairo, double width, double height, double dash) {
  const std::array<double, 2> dashes{dash, dash * 0.7};
  cairo_set_dash(cairo, dashes.data(), static_cast<int>(dashes.size()), 0);
  cairo_set_line_width(cairo, 0.8);
  cairo_rectangle(cairo, 0, 0, width, height);
  cairo_stroke(cairo);
  cairo_set_dash(cairo, nullptr, 0, 0);
}

void hatch(cairo_t *cairo, double width, double height) {
  cairo_save(cairo);
  cairo_rectangle(cairo, 0, 0, width, height);
  cairo_clip(cairo);
  cairo_set_source_rgb(cairo, 0.82, 0.86, 0.93);
  cairo_set_line_width(cairo, 0.5);
  for (double x = -height; x < width; x += 7) {
    cairo_move_to(cairo, x, height);
    cairo_line_to(cairo, x + height, 0);
  }
  cairo_stroke(cairo);
  cairo_restore(cairo);
}

// Words broken to a width between blanks, at most as many lines as the height takes.
void words_in(cairo_t *cairo, std::string_view text, double width, double height) {
  const double room = width - 8;
  double y = 6 + letter_height;
  while (!text.empty() && y < height) {
    std::size_t end = text.size();
    while (end > 0 && letters_width(text.substr(0, end), letter_height) > room) {
      const std::size_t blank = text.rfind(' ', end - 1);
      end = blank == std::string_view::npos || blank == 0 ? 0 : blank;
    }
    if (end == 0) { // one word wider than the place: as much of it as fits
      while (end < text.size() && letters_width(text.substr(0, end + 1), letter_height) <= room)
        ++end;
      if (end == 0)
        return;
    }
    draw_letters(cairo, text.substr(0, end), 4, y, letter_height);
    text.remove_prefix(std::min(text.size(), text.find_first_not_of(' ', end)));
    y += letter_height * 1.6;
  }
}

double longest_word(std::string_view text) {
  double longest = 0;
  while (!text.empty()) {
    const std::size_t end = std::min(text.find(' '), text.size());
    longest = std::max(longest, letters_width(text.substr(0, end), letter_height));
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return longest;
}

// In a place too narrow for its words the note stands beside it.
void note(cairo_t *cairo, std::string_view text, double width, double height) {
  constexpr double beside = 100;
  if (longest_word(text) <= width - 8)
    return words_in(cairo, text, width, height);
  cairo_save(cairo);
  cairo_translate(cairo, width, 0);
  words_in(cairo, text, beside, beside);
  cairo_restore(cairo);
}

void draw_what(cairo_t *cairo, const SetHand &hand, double width, double height) {
  pencil(cairo, hand_pencil);
  frame(cairo, width, height, 3);
  const double corner = std::min({width, height, 9.0});
  cairo_move_to(cairo, width - corner, 0);
  cairo_line_to(cairo, width, corner);
  cairo_stroke(cairo);
  const std::string text = hand.text.empty() ? std::string(name_of(hand.kind))
                                             : std::string(name_of(hand.kind)) + ": " + hand.text;
  note(cairo, text, width, height);
}

void draw_what(cairo_t *cairo, const SetMissing &missing, double width, double height) {
  hatch(cairo, width, height);
  pencil(cairo, missing_pencil);
  frame(cairo, width, height, 5);
  words_in(cairo, missing.reason, width, height);
}

template <typename Printed>
void draw_what(cairo_t *, const Printed &, double, double) {}

} // namespace

void draw_on_proof(cairo_t *cairo, const Item &item) {
  cairo_save(cairo);
  const Transform map = item.to_page * Transform::moved(item.place.x, item.place.y);
  const cairo_matrix_t matrix{map.xx, map.yx, map.xy, map.yy, map.x0, map.y0};
  cairo_transform(cairo, &matrix);
  std::visit(
      [&](const auto &what) {
        draw_what(cairo, what, item.place.width.in_points(), item.place.height.in_points());
      },
      item.what);
  cairo_restore(cairo);
}

} // namespace bodkin::press
