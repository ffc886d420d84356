#include "press/box_words.hpp"

#include "press/letters.hpp"

#include <algorithm>

namespace bodkin::press {
namespace {

constexpr double letter_height = 5.5;

double longest_word(std::string_view text) {
  double longest = 0;
  while (!text.empty()) {
    const std::size_t end = std::min(text.find(' '), text.size());
    longest = std::max(longest, letters_width(text.substr(0, end), letter_height));
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return longest;
}

// A white rim keeps the words apart from whatever they lie on.
void rim(Strokes &drawn, std::string_view line, double x, double y) {
  drawn.save();
  drawn.colour(1, 1, 1);
  drawn.letters(line, x, y, letter_height, 3.2);
  drawn.restore();
}

enum class Ground { paper, art };

void set_lines(Strokes &drawn, std::string_view text, double width, double height, Ground ground) {
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
    const std::string_view line = text.substr(0, end);
    if (ground == Ground::art)
      rim(drawn, line, 4, y);
    drawn.letters(line, 4, y, letter_height);
    text.remove_prefix(std::min(text.size(), text.find_first_not_of(' ', end)));
    y += letter_height * 1.6;
  }
}

} // namespace

void words_in(Strokes &drawn, std::string_view text, double width, double height) {
  set_lines(drawn, text, width, height, Ground::paper);
}

void note(Strokes &drawn, std::string_view text, double width, double height) {
  constexpr double beside = 100;
  if (longest_word(text) <= width - 8)
    return set_lines(drawn, text, width, height, Ground::art);
  drawn.save();
  drawn.map({.xx = 1, .yx = 0, .xy = 0, .yy = 1, .x0 = width, .y0 = 0});
  set_lines(drawn, text, beside, beside, Ground::art);
  drawn.restore();
}

} // namespace bodkin::press
