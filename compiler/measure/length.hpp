// A length on paper, exact.
//
// One unit is 1/457,200,000 inch: the least common measure of 1/64 in, 1/100,000 in, 1/1000 mm and
// 1/1000 pt, so every length that a maker writes is a whole number of units. The inch is 25.4 mm
// (ISO 1:2022 tables; international inch of 1959) and 72 pt; a pica is 12 pt.
#pragma once

#include <compare>
#include <cstdint>
#include <string>

namespace bodkin {

class Length {
public:
  static constexpr std::int64_t per_inch = 457'200'000;
  static constexpr std::int64_t per_mm = per_inch * 10 / 254;
  static constexpr std::int64_t per_point = per_inch / 72;

  constexpr Length() = default;
  static constexpr Length units(std::int64_t n) {
    Length length;
    length.units_ = n;
    return length;
  }
  static constexpr Length inches(std::int64_t numerator, std::int64_t denominator = 1) {
    return units(numerator * per_inch / denominator);
  }
  static constexpr Length mm(std::int64_t n) { return units(n * per_mm); }
  static constexpr Length points(std::int64_t n) { return units(n * per_point); }
  // The nearest unit to a number of points that was computed, not written.
  static Length nearest_points(double points);

  constexpr std::int64_t units() const { return units_; }
  constexpr double in_points() const { return static_cast<double>(units_) / per_point; }
  constexpr double in_inches() const { return static_cast<double>(units_) / per_inch; }
  constexpr double in_mm() const { return static_cast<double>(units_) / per_mm; }

  constexpr auto operator<=>(const Length &) const = default;
  constexpr Length operator-() const { return units(-units_); }
  constexpr Length &operator+=(Length other) {
    units_ += other.units_;
    return *this;
  }
  constexpr Length &operator-=(Length other) {
    units_ -= other.units_;
    return *this;
  }
  friend constexpr Length operator+(Length a, Length b) { return units(a.units_ + b.units_); }
  friend constexpr Length operator-(Length a, Length b) { return units(a.units_ - b.units_); }
  friend constexpr Length operator*(Length a, std::int64_t n) { return units(a.units_ * n); }
  friend constexpr Length operator/(Length a, std::int64_t n) { return units(a.units_ / n); }

private:
  std::int64_t units_ = 0;
};

// As a maker would write it: `1/4in`, `5 1/2in`, `0.058in`, or `3mm` for a metric edition. Inches
// come as a fraction where it is a whole number of sixteenths, else with at most four decimals.
enum class Ruler { inches, millimetres };
std::string written(Length length, Ruler ruler);
// The same, and never longer than it is: what is cut or typed by it fits. Up to a thousandth of a
// millimetre, or the fractions and four decimals of an inch, are exact; else it is a little less.
std::string written_down(Length length, Ruler ruler);
// As a sentence tells it: the same, no finer than a thousandth of an inch, a tenth of a millimetre
// or, under one millimetre, a hundredth. Nobody reads creep of 0.2385in off a ruler.
std::string rounded(Length length, Ruler ruler);
// Away from nothing to a length that a ruler shows: 1/16in, or half a millimetre.
Length ruled_up(Length length, Ruler ruler);

} // namespace bodkin
