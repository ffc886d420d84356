#include "measure/length.hpp"

#include <cmath>
#include <fmt/format.h>
#include <numeric>

namespace bodkin {
namespace {

// Trailing zeros of a decimal fraction say nothing.
std::string trimmed(std::string number) {
  if (number.find('.') == std::string::npos)
    return number;
  while (number.back() == '0')
    number.pop_back();
  if (number.back() == '.')
    number.pop_back();
  return number == "-0" ? "0" : number;
}

std::string fraction_of_inch(std::int64_t sixty_fourths) {
  const std::int64_t whole = sixty_fourths / 64;
  const std::int64_t rest = sixty_fourths % 64;
  if (rest == 0)
    return fmt::format("{}in", whole);
  const std::int64_t divisor = std::gcd(rest, std::int64_t{64});
  const std::string fraction = fmt::format("{}/{}in", rest / divisor, 64 / divisor);
  return whole == 0 ? fraction : fmt::format("{} {}", whole, fraction);
}

std::string in_millimetres(Length length, int places) {
  return trimmed(fmt::format("{:.{}f}", length.in_mm(), places)) + "mm";
}

// As a fraction where it is a whole number of sixteenths, else with so many decimals.
std::string in_inches(Length length, int places) {
  constexpr std::int64_t sixty_fourth = Length::per_inch / 64;
  const std::int64_t magnitude = length.units() < 0 ? -length.units() : length.units();
  if (magnitude % (sixty_fourth * 4) == 0)
    return (length.units() < 0 ? "-" : "") + fraction_of_inch(magnitude / sixty_fourth);
  return trimmed(fmt::format("{:.{}f}", length.in_inches(), places)) + "in";
}

} // namespace

Length Length::nearest_points(double points) {
  return units(std::llround(points * static_cast<double>(per_point)));
}

std::string written(Length length, Ruler ruler) {
  if (length == Length{})
    return "0";
  return ruler == Ruler::millimetres ? in_millimetres(length, 2) : in_inches(length, 4);
}

std::string written_down(Length length, Ruler ruler) {
  const bool metric = ruler == Ruler::millimetres;
  const std::int64_t unit = metric ? Length::per_mm : Length::per_inch;
  const bool exact = length.units() % (unit / (metric ? 1000 : 10'000)) == 0 ||
                     (!metric && length.units() % (Length::per_inch / 16) == 0);
  const std::int64_t coarser = unit / (metric ? 100 : 1000);
  if (!exact)
    length = Length::units(length.units() / coarser * coarser);
  if (length == Length{})
    return "0";
  return metric ? in_millimetres(length, 3) : in_inches(length, 4);
}

Length ruled_up(Length length, Ruler ruler) {
  const Length step =
      ruler == Ruler::inches ? Length::inches(1, 16) : Length::units(Length::per_mm / 2);
  const std::int64_t magnitude = length.units() < 0 ? -length.units() : length.units();
  const std::int64_t steps = (magnitude + step.units() - 1) / step.units();
  return step * (length.units() < 0 ? -steps : steps);
}

std::string rounded(Length length, Ruler ruler) {
  if (length == Length{})
    return "0";
  if (ruler == Ruler::inches)
    return in_inches(length, 3);
  return in_millimetres(length, length > -Length::mm(1) && length < Length::mm(1) ? 2 : 1);
}

} // namespace bodkin
