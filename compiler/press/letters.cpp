#include "press/letters.hpp"

#include <array>
#include <cstdint>
#include <utility>

namespace bodkin::press {
namespace {

// Strokes on a grid of 5 by 7 points: two digits a point, across then down from the top left; a
// blank lifts the pen.
using Drawn = std::pair<char, std::string_view>;
constexpr std::array alphabet{
    Drawn{'A', "0603204346 0444"},
    Drawn{'B', "0600304142330333444536 3606"},
    Drawn{'C', "4130100105163645"},
    Drawn{'D', "00304145360600"},
    Drawn{'E', "40000646 0333"},
    Drawn{'F', "400006 0333"},
    Drawn{'G', "41301001051636454323"},
    Drawn{'H', "0006 4046 0343"},
    Drawn{'I', "1030 2026 1636"},
    Drawn{'J', "4045361605"},
    Drawn{'K', "0006 400346"},
    Drawn{'L', "000646"},
    Drawn{'M', "0600234046"},
    Drawn{'N', "06004640"},
    Drawn{'O', "103041453616050110"},
    Drawn{'P', "06003041423303"},
    Drawn{'Q', "103041453616050110 2446"},
    Drawn{'R', "06003041423303 2346"},
    Drawn{'S', "413010010213334445361605"},
    Drawn{'T', "0040 2026"},
    Drawn{'U', "000516364540"},
    Drawn{'V', "002640"},
    Drawn{'W', "0016233640"},
    Drawn{'X', "0046 4006"},
    Drawn{'Y', "002340 2326"},
    Drawn{'Z', "00400646"},
    Drawn{'0', "103041453616050110 3214"},
    Drawn{'1', "112026 1636"},
    Drawn{'2', "01103041420646"},
    Drawn{'3', "004022324345361605"},
    Drawn{'4', "36300444"},
    Drawn{'5', "400002324345361605"},
    Drawn{'6', "30100105163645443303"},
    Drawn{'7', "004016"},
    Drawn{'8', "13020110304142331304051636454433"},
    Drawn{'9', "16364541301001021343"},
    Drawn{'.', "2526"},
    Drawn{',', "2516"},
    Drawn{':', "2122 2526"},
    Drawn{';', "2122 2516"},
    Drawn{'-', "1333"},
    Drawn{'\'', "2021"},
    Drawn{'"', "1011 3031"},
    Drawn{'/', "0640"},
    Drawn{'(', "30212536"},
    Drawn{')', "10212516"},
    Drawn{'+', "0343 2125"},
    Drawn{'#', "1016 3036 0242 0444"},
    Drawn{'%', "0640 0001 4546"},
    Drawn{'?', "01103041322324 2626"},
    Drawn{'!', "2024 2626"},
    Drawn{'_', "0646"},
    Drawn{'=', "0242 0444"},
    Drawn{'$', "413010010213334445361605 2026"},
};
constexpr std::string_view unknown = "1232351512";

constexpr double rows = 6, advance = 6; // in grid steps: a capital's height, a letter's set width

std::string_view strokes_of(char letter) {
  if (letter >= 'a' && letter <= 'z')
    letter = static_cast<char>(letter - 'a' + 'A');
  for (const auto &[character, strokes] : alphabet)
    if (character == letter)
      return strokes;
  return unknown;
}

bool continues_character(char byte) { return (static_cast<unsigned char>(byte) & 0xc0) == 0x80; }

void trace(std::string_view strokes, double x, double top, double grid, const PenStep &step) {
  bool down = false;
  for (std::size_t i = 0; i < strokes.size(); ++i) {
    if (strokes[i] == ' ') {
      down = false;
      continue;
    }
    step(x + (strokes[i] - '0') * grid, top + (strokes[i + 1] - '0') * grid, down);
    down = true;
    ++i;
  }
}

} // namespace

void trace_letters(std::string_view text, double x, double y, double height, const PenStep &step) {
  const double grid = height / rows;
  for (const char letter : text) {
    if (continues_character(letter))
      continue;
    if (letter != ' ')
      trace(strokes_of(letter), x, y - height, grid, step);
    x += advance * grid;
  }
}

double letters_pen(double height) { return height / rows * 0.8; }

double letters_width(std::string_view text, double height) {
  std::size_t letters = 0;
  for (const char letter : text)
    if (!continues_character(letter))
      ++letters;
  return letters == 0 ? 0 : (static_cast<double>(letters) * advance - 2) * height / rows;
}

} // namespace bodkin::press
