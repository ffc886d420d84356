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

} // namespace

void words_in(Strokes &drawn, std::string_view text, double width, double height) {
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
    drawn.letters(text.substr(0, end), 4, y, letter_height);
    text.remove_prefix(std::min(text.size(), text.find_first_not_of(' ', end)));
    y += letter_height * 1.6;
  }
}

void note(Strokes &drawn, std::string_view text, double width, double height) {
  constexpr double beside = 100;
  if (longest_word(text) <= width - 8)
    return words_in(drawn, text, width, height);
  drawn.save();
  drawn.map({.xx = 1, .yx = 0, .xy = 0, .yy = 1, .x0 = width, .y0 = 0});
  words_in(drawn, text, beside, beside);
  drawn.restore();
}

} // namespace bodkin::press
