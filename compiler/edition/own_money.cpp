#include "edition/own_money.hpp"

#include "edition/currency.hpp"
#include "edition/own_runs.hpp"
#include "edition/problems.hpp"
#include "edition/values.hpp"
#include "measure/limits.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <utility>

namespace bodkin {
namespace {

constexpr PricedBy copy_or_run{
    {Per::copy, Per::each, Per::run, Per::once}, "a budget is for a copy or for the run", "a copy"};
constexpr PricedBy an_hour{
    {Per::hour, Per::hour, Per::hour, Per::hour}, "work is paid by the hour", "an hour"};
constexpr PricedBy each_sold{
    {Per::copy, Per::each, Per::run, Per::once}, "selling costs so much a copy, or once", "a copy"};
constexpr PricedBy one_copy{{Per::copy, Per::each, Per::copy, Per::each},
                            "a price is what one copy costs to buy",
                            "a copy",
                            true};

constexpr ShareOf of_seller{"a shop keeps a part of what the buyer pays, and hands you the rest",
                            "40%", true};

Problem idle_exchange(Range line, std::string why) {
  return {.check = "idle-exchange",
          .range = line,
          .message = "this rate exchanges nothing",
          .why = std::move(why),
          .type = {{"exchange   £1 is $1.27", "foreign money first, then what it comes to"}}};
}

void take_exchange(Reader &reader, FactLine line) {
  auto first = value_in<Price>(line, "foreign");
  auto second = value_in<Price>(line, "own");
  if (!first || !second)
    return;
  const auto meant = [&](Known<Price> &price) {
    price.value.currency = currency_meant(price.value.currency, reader.sources.text(price.from),
                                          reader.edition.currency.value);
  };
  meant(*first);
  meant(*second);
  if (first->value.amount.digits <= 0 || second->value.amount.digits <= 0)
    return reader.report(idle_exchange(
        line.range(), "money that is worth nothing would make everything that costs it free"));
  if (first->value.currency == second->value.currency)
    return reader.report(idle_exchange(line.range(), "both sums are in the same money"));
  reader.edition.exchanges.push_back({**first, **second, line.range()});
}

// Where one run alone goes at the price that no run is named beside, it is that run's copies which
// are sold for it.
std::optional<Known<std::uint32_t>> run_at_the_price(const Edition &edition) {
  std::optional<Known<std::uint32_t>> found;
  for (std::uint32_t run = 0; edition.price && run < edition.runs.size(); ++run) {
    const auto &own = edition.runs[run].price;
    if (own && !(**own == **edition.price))
      continue;
    if (found)
      return std::nullopt;
    found = known(run, edition.price->from);
  }
  return found;
}

void take_sale(Reader &reader, FactLine line) {
  Sale sale;
  sale.range = line.range();
  sale.where = line.words("where");
  if (const auto copies = count_in(reader, line, "copies", 1, "a copy is sold at the least"))
    sale.copies = std::min(**copies, limits::copies);
  sale.price = rate_by(reader, line, "price", one_copy);
  sale.costs = rate_by(reader, line, "costs", each_sold);
  sale.only = only_in(reader, Facts(line).find("only"));
  if (!sale.only && !line.has("price"))
    sale.only = run_at_the_price(reader.edition);
  sale.share = share_in(reader, line, "share", of_seller);
  reader.edition.sales.push_back(std::move(sale));
}

void take_gift(Reader &reader, FactLine line) {
  const auto copies = count_in(reader, line, "copies", 1, "none given away is not worth a line");
  if (copies)
    reader.edition.gifts.push_back(
        {std::min(**copies, limits::copies), std::string(line.words("to")), line.range()});
}

PaidFor paid_for(std::string_view word) {
  return word == "printing" ? PaidFor::printing
         : word == "paper"  ? PaidFor::paper
         : word == "work"   ? PaidFor::work
                            : PaidFor::everything;
}

void take_paid(Reader &reader, FactLine line) {
  const auto amount = value_in<Price>(line, "paid");
  if (!amount)
    return;
  const std::string_view written = reader.sources.text(amount->from);
  if (amount->value.amount.digits < 0)
    return reader.report(too_small(amount->from, fmt::format("{} is less than nothing", written),
                                   "what was paid went out of the purse",
                                   "paid       $51.30 for printing"));
  Price price = **amount;
  price.currency = currency_meant(price.currency, money_in_words(line, written, price.currency),
                                  reader.edition.currency.value);
  reader.edition.paid.push_back({price, paid_for(line.words("what")), line.range(),
                                 only_in(reader, Facts(line).find("only"))});
}

Problem too_many_cards(const Reader &reader, Range line, Range written) {
  return {.check = "number-too-big",
          .range = written,
          .message = fmt::format("{} cards are more than any table holds; {} is the most",
                                 reader.sources.text(written), limits::cards),
          .why = "a card lies beside a pile of copies, and tells what one costs",
          .type = {{typed(reader, line, written, "8"), "with the number that was meant"}}};
}

Problem cards_without_price(Range line) {
  return {.check = "cards-without-price",
          .range = line,
          .message = "cards for the table are to tell a price, and this edition has none",
          .why = "whoever picks a copy up wants to know what it costs",
          .type = {{"price      $5 a copy", "under edition, with your own"}}};
}

// What is written beside a price that has a slip in it is left alone: the slip is told already.
void take_cards(Reader &reader) {
  const FactLine line = reader.edition_facts.find("cards");
  if (!line)
    return;
  const auto cards = count_in(reader, line, "count", 1, "without a card, leave the line out");
  if (!cards)
    return;
  if (**cards > limits::cards)
    return reader.report(too_many_cards(reader, line.range(), cards->from));
  if (reader.edition.price)
    reader.edition.cards = cards;
  else if (!reader.edition_facts.find("price"))
    reader.report(cards_without_price(line.range()));
}

// What all copies cost to buy, and those of a run that says so.
void take_prices(Reader &reader) {
  Edition &edition = reader.edition;
  take_lines_by_run(reader, "price");
  for (const RunLine &of : reader.by_run["price"])
    if (const auto rate = rate_by(reader, of.line, "price", one_copy)) {
      const Known<Price> price = known(rate->value.price, rate->from);
      if (of.run)
        edition.runs[*of.run].price = price;
      else
        edition.price = price;
    }
  if (!edition.price && !edition.runs.empty())
    edition.price = edition.runs.front().price;
}

} // namespace

void take_money(Reader &reader) {
  Edition &edition = reader.edition;
  const Facts &facts = reader.edition_facts;
  if (const auto limit = rate_by(reader, facts.find("budget"), "limit", copy_or_run))
    edition.budget = known(
        Budget{limit->value.price, limit->value.per == Per::run || limit->value.per == Per::once},
        limit->from);
  take_prices(reader);
  take_cards(reader);
  edition.labour = rate_by(reader, facts.find("labour"), "wage", an_hour);
  edition.impression =
      count_in(reader, facts.find("impression"), "number", 1, "the first printing is impression 1");
  facts.each("exchange", [&](FactLine line) { take_exchange(reader, line); });
  facts.each("sells", [&](FactLine line) { take_sale(reader, line); });
  facts.each("gives", [&](FactLine line) { take_gift(reader, line); });
  facts.each("paid", [&](FactLine line) { take_paid(reader, line); });
}

namespace {

// Work that is paid once, and any that an earlier impression has paid.
struct Tools {
  std::string paid_again;
  Range costs;
  bool any_kept = false;

  void look(const Work &work, const std::string &name) {
    any_kept = any_kept || !work.kept.empty();
    for (const Known<Rate> &rate : work.costs)
      if (rate->per == Per::once && paid_again.empty()) {
        paid_again = name;
        costs = rate.from;
      }
  }
};

Tools tools_of(const Edition &edition) {
  Tools tools;
  for (const Element &element : edition.elements) {
    const auto *hand = std::get_if<Hand>(&element.what);
    tools.look(element.work, hand ? fmt::format("{} {}", name_of(hand->kind), hand->text)
                                  : std::string(name_of(element)));
  }
  for (const FinishStep &step : edition.finish)
    tools.look(step.work, std::string(name_of(step.kind)));
  return tools;
}

Problem nothing_kept(const Reader &reader, const Tools &tools) {
  const auto &impression = *reader.edition.impression;
  return {.kind = Kind::note,
          .check = "nothing-kept",
          .range = impression.from,
          .message = fmt::format("this is printing {}, and nothing is kept from the first: {} is "
                                 "paid again",
                                 *impression, tools.paid_again),
          .why = "a tool that was paid once and is still there costs nothing now",
          .type = {{fmt::format("costs      {}, kept", reader.sources.text(tools.costs)),
                    "where the tool is still there; else leave it as it is"}},
          .related = {{tools.costs, "what is paid again"}}};
}

} // namespace

void note_nothing_kept(Reader &reader) {
  if (!reader.edition.impression || **reader.edition.impression < 2)
    return;
  const Tools tools = tools_of(reader.edition);
  if (!tools.any_kept && !tools.paid_again.empty())
    reader.report(nothing_kept(reader, tools));
}

void settle_exchanges(Reader &reader) {
  const Currency own = *reader.edition.currency;
  std::vector<Exchange> all = std::move(reader.edition.exchanges);
  reader.edition.exchanges.clear();
  for (Exchange &exchange : all) {
    if (exchange.foreign.currency == own)
      std::swap(exchange.foreign, exchange.own);
    if (exchange.own.currency == own || own.empty())
      reader.edition.exchanges.push_back(exchange);
    else
      reader.report(
          idle_exchange(exchange.range, fmt::format("this edition counts in {}", own.code())));
  }
}

} // namespace bodkin
