#include "measure/price.hpp"

#include "measure/currencies.hpp"

#include <fmt/format.h>

namespace bodkin {
namespace {

std::string_view sign_of(Currency currency) {
  if (currency == currency_of("USD"))
    return "$";
  if (currency == currency_of("GBP"))
    return "£";
  if (currency == currency_of("EUR"))
    return "€";
  return {};
}

} // namespace

std::string written(const Decimal &amount, Currency currency) {
  const std::string_view sign = sign_of(currency);
  std::string number = written(amount, minor_digits(currency));
  if (currency.empty())
    return number;
  if (sign.empty())
    return fmt::format("{} {}", number, currency.code());
  if (amount.digits < 0)
    return fmt::format("-{}{}", sign, std::string_view(number).substr(1));
  return fmt::format("{}{}", sign, number);
}

std::string written(const Price &price) { return written(price.amount, price.currency); }

std::string written(const Rate &rate) {
  std::string money = written(rate.price);
  switch (rate.per) {
  case Per::side:
    return money + " a side";
  case Per::sheet:
    return money + " a sheet";
  case Per::copy:
    return money + " a copy";
  case Per::plate:
    return money + " a plate";
  case Per::pass:
    return money + " a pass";
  case Per::run:
    return money + " a run";
  case Per::each:
    return money + " each";
  case Per::sheets:
    return fmt::format("{} per {} sheets", money, rate.count);
  case Per::sides:
    return fmt::format("{} per {} sides", money, rate.count);
  case Per::hour:
    return money + " an hour";
  case Per::once:
    return money + " once";
  }
  return money;
}

} // namespace bodkin
