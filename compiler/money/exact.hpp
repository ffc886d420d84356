// Money, shares and minutes as they are added up: exact rational numbers (GMP), never rounded until
// they are shown. $10 per 300 sheets is a thirtieth of a dollar a sheet and stays so.
//
// A value: copies are copies of the number. Memory for it comes from GMP, which ends the program
// when there is none. Dividing by zero is the caller's mistake and gives zero.
#pragma once

#include "measure/decimal.hpp"
#include "measure/few.hpp"
#include "measure/price.hpp"

#include <compare>
#include <cstdint>
#include <gmp.h>
#include <string>

namespace bodkin {

class Exact {
public:
  Exact();
  Exact(std::int64_t whole);
  explicit Exact(const Decimal &decimal);
  explicit Exact(Share share);
  static Exact ratio(std::int64_t numerator, std::int64_t denominator);
  Exact(const Exact &other);
  Exact(Exact &&other) noexcept;
  Exact &operator=(const Exact &other);
  Exact &operator=(Exact &&other) noexcept;
  ~Exact();

  Exact &operator+=(const Exact &other);
  Exact &operator-=(const Exact &other);
  Exact &operator*=(const Exact &other);
  Exact &operator/=(const Exact &other);
  friend Exact operator+(Exact a, const Exact &b) { return a += b; }
  friend Exact operator-(Exact a, const Exact &b) { return a -= b; }
  friend Exact operator*(Exact a, const Exact &b) { return a *= b; }
  friend Exact operator/(Exact a, const Exact &b) { return a /= b; }
  friend bool operator==(const Exact &a, const Exact &b);
  friend std::strong_ordering operator<=>(const Exact &a, const Exact &b);

  bool is_zero() const;
  // In lowest terms; held within 64 bits.
  std::int64_t numerator() const;
  std::int64_t denominator() const;
  double value() const; // for drawing; money is never reckoned in it
  // The greatest whole number not above it, the least not below it; held within 64 bits.
  std::int64_t floor() const;
  std::int64_t ceiling() const;

  // "61.24": rounded half up to that many decimals.
  std::string rounded(int places) const;
  // "0.0238": at least `least` decimals, more where they are needed, at most `most`, rounded half
  // up.
  std::string rounded(int least, int most) const;

private:
  mpq_t value_;
};

// "$61.24", "12.50 CAD", "880 JPY", rounded half up; and the same with more decimals at need.
std::string shown(const Exact &money, Currency currency);
std::string shown(const Exact &money, Currency currency, int most_places);

} // namespace bodkin
