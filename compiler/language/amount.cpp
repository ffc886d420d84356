#include "language/amount.hpp"

#include "measure/limits.hpp"

#include <array>
#include <utility>

namespace bodkin::language {
namespace {

struct Drawn {
  std::string_view sign;
  int numerator, denominator;
};
constexpr std::array<Drawn, 9> drawn_fractions{{{"\u00bc", 1, 4},
                                                {"\u00bd", 1, 2},
                                                {"\u00be", 3, 4},
                                                {"\u2153", 1, 3},
                                                {"\u2154", 2, 3},
                                                {"\u215b", 1, 8},
                                                {"\u215c", 3, 8},
                                                {"\u215d", 5, 8},
                                                {"\u215e", 7, 8}}};

constexpr std::int64_t power_of_ten(int exponent) {
  std::int64_t power = 1;
  for (int i = 0; i < exponent; ++i)
    power *= 10;
  return power;
}
constexpr int fraction_digits = 6;

constexpr bool is_digit(char c) { return c >= '0' && c <= '9'; }

// Takes an amount's characters one by one.
class Reading {
public:
  explicit Reading(std::string_view text) : text_(text) {}

  Amount all() {
    if (text_.empty() || !is_digit(text_[0]))
      amount_.negative = take("-") || take("\u2212");
    int count = 0;
    amount_.digits = digits(limits::number_digits, count);
    if (take("."))
      decimals(count);
    const std::size_t before = at_;
    while (take(" ") || take("\t") || take("\u00a0"))
      ;
    if (!drawn() && !fraction(before != at_))
      at_ = before;
    unit();
    return amount_;
  }

private:
  bool take(std::string_view sign) {
    if (!text_.substr(at_).starts_with(sign))
      return false;
    at_ += sign.size();
    return true;
  }
  std::int64_t digits(int most, int &count) {
    std::int64_t value = 0;
    for (; at_ < text_.size() && is_digit(text_[at_]); ++at_) {
      if (count == 0 && text_[at_] == '0')
        continue;
      if (++count > most)
        amount_.too_big = true;
      else
        value = value * 10 + (text_[at_] - '0');
    }
    return value;
  }
  void decimals(int count) {
    for (; at_ < text_.size() && is_digit(text_[at_]); ++at_) {
      if (++amount_.places > limits::number_places || ++count > limits::number_digits)
        amount_.too_big = true;
      else
        amount_.digits = amount_.digits * 10 + (text_[at_] - '0');
    }
  }
  bool drawn() {
    if (at_ == text_.size() || static_cast<unsigned char>(text_[at_]) < 0x80)
      return false;
    for (const Drawn &drawn : drawn_fractions)
      if (take(drawn.sign)) {
        amount_.numerator = drawn.numerator;
        amount_.denominator = drawn.denominator;
        return amount_.fraction = true;
      }
    return false;
  }
  // After a whole number and a space the fraction's numerator comes first, else it was read
  // already.
  bool fraction(bool apart) {
    int count = 0;
    const std::int64_t numerator =
        apart ? digits(fraction_digits, count) : std::exchange(amount_.digits, 0);
    if (!take("/")) {
      if (!apart)
        amount_.digits = numerator;
      return false;
    }
    count = 0;
    amount_.numerator = numerator;
    amount_.denominator = digits(fraction_digits, count);
    if (numerator >= power_of_ten(fraction_digits))
      amount_.too_big = true;
    return amount_.fraction = true;
  }
  void unit() {
    amount_.unit = text_.substr(at_);
    if (amount_.unit.empty() || (amount_.unit[0] >= 'a' && amount_.unit[0] <= 'z'))
      return;
    for (const std::string_view mark : {"\"", "\u2033", "\u201d", "''"})
      if (amount_.unit == mark) {
        amount_.inch_mark = true;
        amount_.unit = "in";
      }
  }

  std::string_view text_;
  std::size_t at_ = 0;
  Amount amount_;
};

} // namespace

Amount read_amount(std::string_view text) { return Reading(text).all(); }

std::optional<std::int64_t> scaled(const Amount &amount, std::int64_t per, std::int64_t most) {
  if (amount.too_big || amount.denominator == 0)
    return std::nullopt;
  const auto part = [per](std::int64_t over, std::int64_t under) {
    return (over * per + under / 2) / under;
  };
  // A number is at most 15 digits and a fraction's parts at most six, so that only this product can
  // be past 64 bits.
  std::int64_t whole = amount.digits;
  std::int64_t rest = 0;
  if (amount.places != 0) {
    const std::int64_t ten = power_of_ten(amount.places);
    whole = amount.digits / ten;
    rest = part(amount.digits % ten, ten);
  }
  std::int64_t sum = 0;
  if (__builtin_mul_overflow(whole, per, &sum) || sum > most)
    return std::nullopt;
  sum += rest;
  if (amount.fraction)
    sum += amount.numerator / amount.denominator * per +
           part(amount.numerator % amount.denominator, amount.denominator);
  if (sum > most)
    return std::nullopt;
  return amount.negative ? -sum : sum;
}

std::optional<std::int64_t> units_in(std::string_view unit) {
  if (unit == "in")
    return Length::per_inch;
  if (unit == "mm")
    return Length::per_mm;
  if (unit == "cm")
    return Length::per_mm * 10;
  if (unit == "pt")
    return Length::per_point;
  if (unit == "pc")
    return Length::per_point * 12;
  return std::nullopt;
}

std::optional<Decimal> decimal_of(const Amount &amount) {
  if (amount.too_big || amount.denominator == 0)
    return std::nullopt;
  const std::int64_t sign = amount.negative ? -1 : 1;
  if (!amount.fraction)
    return Decimal{sign * amount.digits, amount.places};
  for (int places = 0; places <= limits::number_places; ++places) {
    const std::int64_t ten = power_of_ten(places);
    if (amount.numerator * ten % amount.denominator == 0 && amount.digits < 1'000'000)
      return Decimal{sign * (amount.digits * ten + amount.numerator * ten / amount.denominator),
                     places};
  }
  return std::nullopt;
}

} // namespace bodkin::language
