#include "measure/few.hpp"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace bodkin {
namespace {

double linear(double encoded) {
  return encoded <= 0.04045 ? encoded / 12.92 : std::pow((encoded + 0.055) / 1.055, 2.4);
}
double encoded(double linear) {
  return linear <= 0.0031308 ? linear * 12.92 : 1.055 * std::pow(linear, 1 / 2.4) - 0.055;
}

} // namespace

std::string written(Share share) { return written(Decimal{share.millionths, 4}) + "%"; }

std::string written(Duration duration) {
  const std::int64_t seconds = (duration.milliseconds + 500) / 1000;
  if (seconds < 60)
    return fmt::format("{} s", seconds);
  const std::int64_t minutes = (seconds + 30) / 60;
  if (seconds < 3600 && seconds % 60 != 0 && seconds < 600)
    return fmt::format("{} min {} s", seconds / 60, seconds % 60);
  if (minutes < 60)
    return fmt::format("{} min", minutes);
  return minutes % 60 == 0 ? fmt::format("{} h", minutes / 60)
                           : fmt::format("{} h {} min", minutes / 60, minutes % 60);
}

std::string written(const Date &date) {
  if (date.month == 0)
    return fmt::format("{:04}", date.year);
  if (date.day == 0)
    return fmt::format("{:04}-{:02}", date.year, date.month);
  return fmt::format("{:04}-{:02}-{:02}", date.year, date.month, date.day);
}

bool surely_before(const Date &one, const Date &other) {
  const Date last{one.year, one.month == 0 ? 12 : one.month, one.day == 0 ? 31 : one.day};
  return last < other;
}

std::string written(Colour colour) {
  return fmt::format("#{:02x}{:02x}{:02x}", colour.red, colour.green, colour.blue);
}

double luminance(Colour colour) {
  return 0.2126 * linear(colour.red / 255.0) + 0.7152 * linear(colour.green / 255.0) +
         0.0722 * linear(colour.blue / 255.0);
}

double grey_of(Colour colour) {
  if (colour.red == colour.green && colour.green == colour.blue)
    return colour.red / 255.0;
  return encoded(luminance(colour));
}

double contrast(double luminance_a, double luminance_b) {
  return (std::max(luminance_a, luminance_b) + 0.05) / (std::min(luminance_a, luminance_b) + 0.05);
}

} // namespace bodkin
