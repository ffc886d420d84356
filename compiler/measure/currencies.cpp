#include "measure/currencies.hpp"

#include <algorithm>
#include <array>

namespace bodkin {
namespace {

constexpr std::array<std::string_view, 181> codes{
    "AED", "AFN", "ALL", "AMD", "ANG", "AOA", "ARS", "AUD", "AWG", "AZN", "BAM", "BBD", "BDT",
    "BGN", "BHD", "BIF", "BMD", "BND", "BOB", "BOV", "BRL", "BSD", "BTN", "BWP", "BYN", "BZD",
    "CAD", "CDF", "CHE", "CHF", "CHW", "CLF", "CLP", "CNY", "COP", "COU", "CRC", "CUC", "CUP",
    "CVE", "CZK", "DJF", "DKK", "DOP", "DZD", "EGP", "ERN", "ETB", "EUR", "FJD", "FKP", "GBP",
    "GEL", "GHS", "GIP", "GMD", "GNF", "GTQ", "GYD", "HKD", "HNL", "HRK", "HTG", "HUF", "IDR",
    "ILS", "INR", "IQD", "IRR", "ISK", "JMD", "JOD", "JPY", "KES", "KGS", "KHR", "KMF", "KPW",
    "KRW", "KWD", "KYD", "KZT", "LAK", "LBP", "LKR", "LRD", "LSL", "LYD", "MAD", "MDL", "MGA",
    "MKD", "MMK", "MNT", "MOP", "MRU", "MUR", "MVR", "MWK", "MXN", "MXV", "MYR", "MZN", "NAD",
    "NGN", "NIO", "NOK", "NPR", "NZD", "OMR", "PAB", "PEN", "PGK", "PHP", "PKR", "PLN", "PYG",
    "QAR", "RON", "RSD", "RUB", "RWF", "SAR", "SBD", "SCR", "SDG", "SEK", "SGD", "SHP", "SLE",
    "SLL", "SOS", "SRD", "SSP", "STN", "SVC", "SYP", "SZL", "THB", "TJS", "TMT", "TND", "TOP",
    "TRY", "TTD", "TWD", "TZS", "UAH", "UGX", "USD", "USN", "UYI", "UYU", "UYW", "UZS", "VED",
    "VES", "VND", "VUV", "WST", "XAF", "XAG", "XAU", "XBA", "XBB", "XBC", "XBD", "XCD", "XDR",
    "XOF", "XPD", "XPF", "XPT", "XSU", "XTS", "XUA", "XXX", "YER", "ZAR", "ZMW", "ZWL"};

// ISO 4217, column "minor unit" (from memory).
constexpr std::array<std::string_view, 17> whole{"BIF", "CLP", "DJF", "GNF", "ISK", "JPY",
                                                 "KMF", "KRW", "PYG", "RWF", "UGX", "UYI",
                                                 "VND", "VUV", "XAF", "XOF", "XPF"};
constexpr std::array<std::string_view, 7> in_thousandths{"BHD", "IQD", "JOD", "KWD",
                                                         "LYD", "OMR", "TND"};

} // namespace

std::span<const std::string_view> currency_codes() { return codes; }

bool is_currency_code(std::string_view code) { return std::ranges::binary_search(codes, code); }

int minor_digits(Currency currency) {
  const std::string_view code = currency.code();
  if (std::ranges::find(whole, code) != whole.end())
    return 0;
  return std::ranges::find(in_thousandths, code) != in_thousandths.end() ? 3 : 2;
}

} // namespace bodkin
