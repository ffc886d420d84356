// The smaller kinds of value: angles, shares, times, dates and colours.
#pragma once

#include "measure/decimal.hpp"

#include <compare>
#include <cstdint>
#include <optional>
#include <string>

namespace bodkin {

struct Angle {
  std::int32_t thousandths = 0; // of a degree; clockwise is positive
  constexpr double degrees() const { return thousandths / 1000.0; }
  auto operator<=>(const Angle &) const = default;
};

struct Share {
  std::int64_t millionths = 0; // 1,000,000 is the whole
  constexpr double value() const { return static_cast<double>(millionths) / 1e6; }
  auto operator<=>(const Share &) const = default;
};
std::string written(Share share); // "8.5%"

struct Duration {
  std::int64_t milliseconds = 0;
  auto operator<=>(const Duration &) const = default;
};

std::string written(Duration duration); // "40 s", "20 min", "1 h 30 min", no finer than a second

struct Date {
  int year = 0, month = 0, day = 0; // month and day are 0 where not written
  auto operator<=>(const Date &) const = default;
};
std::string written(const Date &date); // "2026-11"
// Whether the last day that one may mean lies before the first that the other may.
bool surely_before(const Date &one, const Date &other);

struct Colour {
  std::uint8_t red = 0, green = 0, blue = 0;
  auto operator<=>(const Colour &) const = default;
};
std::string written(Colour colour); // "#f6a5b8"
// Relative luminance, 0 to 1: linear light by IEC 61966-2-1, weights of ITU-R BT.709.
double luminance(Colour colour);
// The grey, 0 to 1 in the sRGB transfer curve, of the same luminance.
double grey_of(Colour colour);
// (lighter + 0.05) ÷ (darker + 0.05) of two luminances.
double contrast(double luminance_a, double luminance_b);

} // namespace bodkin
