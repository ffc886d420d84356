#include "press/dummy_steps.hpp"

#include "edition/machine.hpp"
#include "press/letters.hpp"

#include <array>
#include <cmath>
#include <fmt/format.h>
#include <numbers>
#include <string>

namespace bodkin::press {
namespace {

constexpr double name_height = 4, name_room = 7;

void name(Strokes &drawn, std::string_view text, double x, double y) {
  drawn.grey(0);
  drawn.letters(text, x, y + name_height, name_height);
}

// ---- greys

void draw_greys(Strokes &drawn, double width) {
  constexpr int steps = 10;
  const double each = width / steps;
  name(drawn, "greys, percent of black", 0, 0);
  for (int i = 1; i <= steps; ++i) {
    drawn.grey(1 - i / static_cast<double>(steps));
    drawn.rectangle((i - 1) * each, name_room, each, 16);
    drawn.fill();
    const std::string percent = std::to_string(i * 10);
    name(drawn, percent, (i - 0.5) * each - letters_width(percent, name_height) / 2,
         name_room + 18);
  }
}

// ---- screens

// Round dots at 45 degrees that cover so much of the paper: each is a line of no length with round
// ends, as wide as the dot.
void draw_screen(Strokes &drawn, double x, double y, double size, double lines_an_inch,
                 double cover) {
  const double pitch = 72 / lines_an_inch, half = std::numbers::sqrt2 / 2;
  const double dot = 2 * pitch * std::sqrt(cover / std::numbers::pi);
  drawn.save();
  drawn.rectangle(x, y, size, size);
  drawn.clip();
  drawn.grey(0);
  drawn.round_ends();
  drawn.line_width(dot);
  const int reach = static_cast<int>(size / pitch) + 1;
  for (int i = 0; i <= 2 * reach; ++i)
    for (int j = -reach; j <= reach; ++j) {
      const double px = (i + j) * pitch * half, py = (i - j) * pitch * half;
      if (px < -pitch || py < -pitch || px > size + pitch || py > size + pitch)
        continue;
      drawn.move_to(x + px, y + py);
      drawn.line_to(x + px, y + py);
    }
  drawn.stroke();
  drawn.restore();
}

void draw_screens(Strokes &drawn, double width) {
  constexpr std::array rulings{25, 35, 45, 60, 85, 106};
  const double each = width / rulings.size();
  name(drawn, "screens, lines an inch", 0, 0);
  for (std::size_t i = 0; i < rulings.size(); ++i) {
    const double x = static_cast<double>(i) * each;
    draw_screen(drawn, x, name_room, std::min(each - 2, 24.0), rulings[i], 0.35);
    name(drawn, std::to_string(rulings[i]), x, name_room + 26);
  }
}

// ---- lines

void draw_lines(Strokes &drawn, double width) {
  constexpr std::array widths{0.1, 0.15, 0.25, 0.35, 0.5, 0.75, 1.0, 2.0};
  constexpr double apart = 6.4, first = 26;
  const double half = (width - first - 6) / 2, high = apart * widths.size();
  name(drawn, "lines, points", 0, 0);
  drawn.grey(0);
  drawn.rectangle(first + half + 6, name_room - 1, half, high + 1);
  drawn.fill();
  for (std::size_t i = 0; i < widths.size(); ++i) {
    const double y = name_room + (static_cast<double>(i) + 0.5) * apart;
    constexpr double small = 3.4;
    drawn.grey(0);
    drawn.letters(fmt::format("{}", widths[i]), 0, y + small / 2, small);
    drawn.solid();
    for (const bool reversed : {false, true}) {
      const double x = first + (reversed ? half + 6 : 0);
      drawn.grey(reversed ? 1 : 0);
      drawn.line_width(widths[i]);
      drawn.move_to(x + (reversed ? 4 : 0), y);
      drawn.line_to(x + half - (reversed ? 4 : 0), y);
      drawn.stroke();
    }
  }
}

// ---- blues

constexpr std::array blues{Colour{0x6c, 0xb8, 0xe6}, Colour{0x8c, 0xca, 0xec}, dropped_blue,
                           Colour{0xbe, 0xe3, 0xf5}, Colour{0xd6, 0xee, 0xfa}};

void draw_blues(Strokes &drawn, double width) {
  const double each = width / blues.size();
  name(drawn, "blues that should drop out", 0, 0);
  for (std::size_t i = 0; i < blues.size(); ++i) {
    const double x = static_cast<double>(i) * each;
    drawn.colour(blues[i].red / 255.0, blues[i].green / 255.0, blues[i].blue / 255.0);
    drawn.rectangle(x, name_room, each - 3, 14);
    drawn.fill();
    drawn.line_width(0.75);
    drawn.move_to(x, name_room + 18);
    drawn.line_to(x + each - 3, name_room + 18);
    drawn.stroke();
    const std::string code = written(blues[i]);
    const double fits =
        std::min(name_height, name_height * (each - 3) / letters_width(code, name_height));
    drawn.grey(0);
    drawn.letters(code, x, name_room + 22 + fits, fits);
  }
}

constexpr std::array blocks{StepBlock{30, draw_greys}, StepBlock{38, draw_screens},
                            StepBlock{60, draw_lines}, StepBlock{36, draw_blues}};

} // namespace

std::span<const StepBlock> step_blocks() { return blocks; }

std::span<const Colour> blues_to_try() { return blues; }

} // namespace bodkin::press
