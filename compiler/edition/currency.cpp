#include "edition/currency.hpp"

#include "edition/values.hpp"
#include "measure/currencies.hpp"

#include <algorithm>
#include <array>
#include <fmt/format.h>

namespace bodkin {
namespace {

// ISO 4217 codes of the currencies whose own sign is $ or £ (from memory).
constexpr std::array<std::string_view, 33> dollars{
    "ARS", "AUD", "BBD", "BMD", "BND", "BSD", "BZD", "CAD", "CLP", "COP", "CUP",
    "DOP", "FJD", "GYD", "HKD", "JMD", "KYD", "LRD", "MXN", "NAD", "NZD", "SBD",
    "SGD", "SRD", "TTD", "TWD", "USD", "UYU", "XCD", "CVE", "MOP", "NIO", "TOP"};
constexpr std::array<std::string_view, 8> pounds{"EGP", "FKP", "GBP", "GIP",
                                                 "LBP", "SDG", "SHP", "SSP"};

template <typename Codes>
bool among(const Codes &codes, Currency currency) {
  return std::find(codes.begin(), codes.end(), currency.code()) != codes.end();
}

class First {
public:
  void see(Currency currency, Range from) {
    if (!found_ && !currency.empty())
      found_ = known(currency, from);
  }
  void see(const std::optional<Known<Rate>> &rate) {
    if (rate)
      see(rate->value.price.currency, rate->from);
  }
  void see(const Machine &machine) {
    for (const SidePrice &price : machine.prints)
      see(price.rate.price.currency, price.range);
  }
  const std::optional<Known<Currency>> &found() const { return found_; }

private:
  std::optional<Known<Currency>> found_;
};

// Sums are shown with the code, so a slip of it is in all of them. The edition goes on in the money
// that is likely meant.
void check_code(Reader &reader) {
  Known<Currency> &currency = reader.edition.currency;
  const std::string code(currency->code());
  if (is_currency_code(code))
    return;
  const std::span<const std::string_view> codes = currency_codes();
  const auto meant = reader.near(code, {codes.begin(), codes.end()});
  Problem problem;
  problem.kind = Kind::warning;
  problem.check = "unknown-currency";
  problem.range = currency.from;
  problem.message = fmt::format("no money has the code {}{}", code,
                                meant ? fmt::format("; did you mean {}?", *meant) : "");
  problem.why = "ISO 4217 gives each currency three letters, and every sum is shown with them";
  if (meant) {
    problem.type = {{fmt::format("currency   {}", *meant), ""}};
    currency.value = currency_of(*meant);
  } else {
    problem.type = {
        {{}, "the three letters that a bank writes for your money, as `currency   EUR`"}};
  }
  reader.report(std::move(problem));
}

} // namespace

std::string_view money_in_words(FactLine line, std::string_view written, Currency read) {
  if (!line.statement->meant)
    return written;
  return read.code() == "USD" ? "$" : read.code() == "GBP" ? "\u00a3" : written;
}

Currency currency_meant(Currency read, std::string_view written, Currency of_edition) {
  const auto signed_by = [&](std::string_view sign) {
    return written.find(sign) != std::string_view::npos;
  };
  if ((signed_by("$") && among(dollars, of_edition)) ||
      (signed_by("£") && among(pounds, of_edition)))
    return of_edition;
  return read;
}

void take_written_currency(Reader &reader) {
  const FactLine line = reader.edition_facts.find("currency");
  const auto code = text_in(line, "currency");
  if (!code)
    return;
  reader.edition.currency = known(currency_of(code->value), code->from);
  check_code(reader);
}

void settle_currency(Reader &reader) {
  Edition &edition = reader.edition;
  if (!edition.currency->empty())
    return;
  First first;
  if (edition.budget)
    first.see(edition.budget->value.limit.currency, edition.budget->from);
  if (edition.price)
    first.see(edition.price->value.currency, edition.price->from);
  for (const NamedRun &run : edition.runs)
    if (run.price)
      first.see(run.price->value.currency, run.price->from);
  // A borrowed shelf may price papers of several countries: those that print this edition speak.
  if (*edition.paper != StockId::none)
    first.see(edition[*edition.paper].costs);
  if (*edition.machine != MachineId::none)
    first.see(edition[*edition.machine]);
  for (const Stock &stock : edition.stocks)
    first.see(stock.costs);
  for (const Machine &machine : edition.machines)
    first.see(machine);
  for (const Bid &bid : edition.bids)
    for (const BidStep &step : bid.steps)
      first.see(step.rate.price.currency, step.range);
  for (const FinishStep &step : edition.finish)
    for (const Known<Rate> &rate : step.work.costs)
      first.see(rate);
  for (const Element &element : edition.elements)
    for (const Known<Rate> &rate : element.work.costs)
      first.see(rate);
  if (!first.found())
    return;
  edition.currency = *first.found();
  check_code(reader);
}

} // namespace bodkin
