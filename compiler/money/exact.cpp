#include "money/exact.hpp"

#include "measure/currencies.hpp"

#include <limits>

namespace bodkin {
namespace {

// Through two halves, since GMP takes a `long`, which need not have 64 bits.
void set_whole(mpz_t target, std::int64_t whole) {
  mpz_set_si(target, static_cast<long>(whole >> 32));
  mpz_mul_2exp(target, target, 32);
  mpz_add_ui(target, target, static_cast<unsigned long>(whole & 0xffffffff));
}

std::int64_t held(const mpz_t value) {
  if (mpz_sizeinbase(value, 2) > 62)
    return mpz_sgn(value) < 0 ? std::numeric_limits<std::int64_t>::min()
                              : std::numeric_limits<std::int64_t>::max();
  mpz_t high, low;
  mpz_init(high);
  mpz_init(low);
  mpz_fdiv_q_2exp(high, value, 32);
  mpz_fdiv_r_2exp(low, value, 32);
  const auto result = static_cast<std::int64_t>(mpz_get_si(high)) * (std::int64_t{1} << 32) +
                      static_cast<std::int64_t>(mpz_get_ui(low));
  mpz_clear(high);
  mpz_clear(low);
  return result;
}

std::string digits_of(const mpz_t value) {
  std::string digits(mpz_sizeinbase(value, 10) + 2, '\0');
  mpz_get_str(digits.data(), 10, value);
  digits.resize(digits.find('\0'));
  return digits;
}

std::string with_point(std::string digits, std::size_t places) {
  const bool negative = digits.starts_with('-');
  if (negative)
    digits.erase(0, 1);
  if (digits.size() <= places)
    digits.insert(0, places + 1 - digits.size(), '0');
  if (places > 0)
    digits.insert(digits.size() - places, ".");
  return negative ? "-" + digits : digits;
}

std::string priced(const std::string &number, Currency currency) {
  // A price of nothing lends its sign, "$0.00", or its code, "0.00 CAD".
  const std::string nothing = written(Decimal{}, minor_digits(currency));
  std::string text = written(Decimal{}, currency);
  return text.replace(text.find(nothing), nothing.size(), number);
}

// "−$2.00": the sign stands before the money.
std::string priced_with_sign(const std::string &number, Currency currency) {
  return number.starts_with('-') ? "−" + priced(number.substr(1), currency)
                                 : priced(number, currency);
}

} // namespace

Exact::Exact() { mpq_init(value_); }

Exact::Exact(std::int64_t whole) : Exact() { set_whole(mpq_numref(value_), whole); }

Exact::Exact(const Decimal &decimal) : Exact(decimal.digits) {
  mpz_ui_pow_ui(mpq_denref(value_), 10, static_cast<unsigned long>(decimal.places));
  mpq_canonicalize(value_);
}

Exact::Exact(Share share) : Exact(Decimal{share.millionths, 6}) {}

Exact Exact::ratio(std::int64_t numerator, std::int64_t denominator) {
  return Exact(numerator) / Exact(denominator);
}

Exact::Exact(const Exact &other) : Exact() { mpq_set(value_, other.value_); }
Exact::Exact(Exact &&other) noexcept : Exact() { mpq_swap(value_, other.value_); }
Exact &Exact::operator=(const Exact &other) {
  mpq_set(value_, other.value_);
  return *this;
}
Exact &Exact::operator=(Exact &&other) noexcept {
  mpq_swap(value_, other.value_);
  return *this;
}
Exact::~Exact() { mpq_clear(value_); }

Exact &Exact::operator+=(const Exact &other) {
  mpq_add(value_, value_, other.value_);
  return *this;
}
Exact &Exact::operator-=(const Exact &other) {
  mpq_sub(value_, value_, other.value_);
  return *this;
}
Exact &Exact::operator*=(const Exact &other) {
  mpq_mul(value_, value_, other.value_);
  return *this;
}
Exact &Exact::operator/=(const Exact &other) {
  if (other.is_zero())
    mpq_set_ui(value_, 0, 1);
  else
    mpq_div(value_, value_, other.value_);
  return *this;
}

bool operator==(const Exact &a, const Exact &b) { return mpq_equal(a.value_, b.value_) != 0; }
std::strong_ordering operator<=>(const Exact &a, const Exact &b) {
  return mpq_cmp(a.value_, b.value_) <=> 0;
}

bool Exact::is_zero() const { return mpq_sgn(value_) == 0; }

std::int64_t Exact::numerator() const { return held(mpq_numref(value_)); }
double Exact::value() const { return mpq_get_d(value_); }
std::int64_t Exact::denominator() const { return held(mpq_denref(value_)); }

std::int64_t Exact::floor() const {
  mpz_t whole;
  mpz_init(whole);
  mpz_fdiv_q(whole, mpq_numref(value_), mpq_denref(value_));
  const std::int64_t result = held(whole);
  mpz_clear(whole);
  return result;
}

std::int64_t Exact::ceiling() const {
  mpz_t whole;
  mpz_init(whole);
  mpz_cdiv_q(whole, mpq_numref(value_), mpq_denref(value_));
  const std::int64_t result = held(whole);
  mpz_clear(whole);
  return result;
}

std::string Exact::rounded(int places) const {
  mpz_t scaled, doubled;
  mpz_init(scaled);
  mpz_init(doubled);
  mpz_ui_pow_ui(scaled, 10, static_cast<unsigned long>(places));
  mpz_mul(scaled, scaled, mpq_numref(value_));
  // Half up: the floor of x + 1/2, as (2n + d) ÷ 2d.
  mpz_mul_2exp(scaled, scaled, 1);
  mpz_add(scaled, scaled, mpq_denref(value_));
  mpz_mul_2exp(doubled, mpq_denref(value_), 1);
  mpz_fdiv_q(scaled, scaled, doubled);
  std::string text = with_point(digits_of(scaled), static_cast<std::size_t>(places));
  mpz_clear(scaled);
  mpz_clear(doubled);
  return text;
}

std::string Exact::rounded(int least, int most) const {
  std::string text = rounded(most);
  for (int dropped = most; dropped > least && text.back() == '0'; --dropped)
    text.pop_back();
  if (text.back() == '.')
    text.pop_back();
  return text;
}

std::string shown(const Exact &money, Currency currency) {
  return priced_with_sign(money.rounded(minor_digits(currency)), currency);
}

std::string shown(const Exact &money, Currency currency, int most_places) {
  return priced_with_sign(money.rounded(minor_digits(currency), most_places), currency);
}

} // namespace bodkin
