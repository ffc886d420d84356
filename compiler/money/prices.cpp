#include "measure/limits.hpp"
#include "money/absurd_prices.hpp"
#include "money/bids.hpp"
#include "money/budget.hpp"
#include "money/charge.hpp"
#include "money/money_lines.hpp"
#include "money/offers.hpp"
#include "money/sale_problems.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {
namespace {

// Where the edition's own file asks for a paper, or else where the paper is made.
Range asked_at(const Edition &edition, StockId id) {
  if (edition.cover_stock && **edition.cover_stock == id)
    return edition.cover_stock->from;
  if (*edition.paper == id && edition.paper.from.somewhere())
    return edition.paper.from;
  for (const Page &page : edition.pages)
    if (page.asked.stock && **page.asked.stock == id)
      return page.asked.stock->from;
  return edition[id].range;
}

std::string to_fill_in(Currency currency, std::string_view rest) {
  return fmt::format("{} {}", money_to_fill_in(currency), rest);
}

Problem no_paper_price(const Edition &edition, const Unpriced &unpriced, const Sources &sources) {
  const Stock &stock = edition[unpriced.stock];
  const bool of_shelf = stock.range.somewhere() && sources.is_shelf(stock.range.file);
  const std::string costs = "costs      " + to_fill_in(*edition.currency, "per 500 sheets");
  Problem problem;
  problem.kind = Kind::warning;
  problem.check = "no-price";
  problem.range = of_shelf ? asked_at(edition, unpriced.stock) : stock.range;
  problem.message = fmt::format("{} has no price, and this run uses {} sheet{} of it", stock.name,
                                unpriced.quantity, unpriced.quantity == 1 ? "" : "s");
  problem.why = of_shelf ? "the shelf holds no prices, since every shop has its own; until one is "
                           "written the estimate leaves this paper out and is too low"
                         : "until one is written the estimate leaves this paper out and is too low";
  const std::string included = "or `costs included` where the price of a side holds the paper";
  if (of_shelf)
    problem.type = {{fmt::format("stock own-{0} like {0}\n  {1}", stock.name, costs),
                     fmt::format("and ask for own-{}; {}", stock.name, included)}};
  else
    problem.type = {{costs, included}};
  return problem;
}

std::string_view mode_word(Mode mode) { return mode == Mode::colour ? "colour" : "black"; }

Problem no_side_price(const Edition &edition, const Unpriced &unpriced, const Sources &sources) {
  const Machine &machine = edition[unpriced.machine];
  const std::string_view mode = mode_word(unpriced.mode);
  const bool too_few = unpriced.reason == Unpriced::Reason::below_least_step;
  const bool of_shelf = machine.range.somewhere() && sources.is_shelf(machine.range.file);
  Problem problem;
  problem.kind = Kind::warning;
  problem.check = "no-price";
  problem.range = of_shelf ? edition.machine.from : machine.range;
  problem.message =
      fmt::format("{} has no price for {}{} side{}", machine.name,
                  too_few ? fmt::format("as few as {} ", unpriced.quantity) : std::string{}, mode,
                  unpriced.quantity == 1 && too_few ? "" : "s");
  problem.why = fmt::format("this run prints {} of them, and the estimate leaves them out until a "
                            "price is written: it is too low",
                            unpriced.quantity);
  const std::string prints =
      fmt::format("prints     {} at {}", mode, to_fill_in(*edition.currency, "a side"));
  problem.type = {
      {of_shelf ? fmt::format("machine own-{0} like {0}\n  {1}", machine.name, prints) : prints,
       of_shelf ? fmt::format("and ask for own-{}", machine.name) : std::string{}}};
  return problem;
}

std::string only_the_sign(Currency own) {
  return fmt::format("where only the sign is wrong; else what it comes to in {}", money_sign(own));
}

// "£1", "1 CAD".
std::string written_one(Currency currency) {
  std::string text = money_to_fill_in(currency);
  return text.replace(text.find("…"), std::string_view("…").size(), "1");
}

struct Money {
  const Price *price;
  Range from;
};

// The one price that all the others disagree with, where nobody wrote what the edition counts in.
Problem odd_currency(const Edition &edition, const Money &other, std::size_t others,
                     const Sources &sources) {
  Problem problem;
  problem.check = "two-currencies";
  problem.range = edition.currency.from;
  problem.message =
      fmt::format("this is in {}, and the {} other prices are in {}", money_sign(*edition.currency),
                  others, money_sign(other.price->currency));
  problem.why = "no rate of exchange is ever assumed";
  problem.type = {{with_money_in(sources, edition.currency.from, other.price->currency),
                   only_the_sign(other.price->currency)}};
  problem.related = {{other.from, fmt::format("counts in {}", money_sign(other.price->currency))}};
  return problem;
}

void add(std::vector<Money> &all, const Work &work) {
  for (const Known<Rate> &rate : work.costs)
    all.push_back({&rate->price, rate.from});
}

void add_machine(std::vector<Money> &all, const Machine &machine) {
  for (const SidePrice &price : machine.prints)
    all.push_back({&price.rate.price, price.range});
  for (const auto *rate : {&machine.least, &machine.setup})
    if (*rate)
      all.push_back({&(**rate)->price, (*rate)->from});
}

void add_bids(std::vector<Money> &all, const Edition &edition) {
  for (const Bid &bid : edition.bids) {
    for (const BidStep &step : bid.steps)
      all.push_back({&step.rate.price, step.range});
    for (const BidStep &step : bid.postage)
      all.push_back({&step.rate.price, step.range});
    if (bid.setup)
      all.push_back({&(*bid.setup)->price, bid.setup->from});
  }
}

// Everything that the edition names a price for, but for the prices of its papers and machines,
// which only concern it where they are used.
std::vector<Money> money_of(const Edition &edition, const Imposition &imposition,
                            const ChargedSides &sides) {
  std::vector<Money> all;
  if (edition.budget)
    all.push_back({&(*edition.budget)->limit, edition.budget->from});
  if (edition.price)
    all.push_back({&**edition.price, edition.price->from});
  for (const NamedRun &run : edition.runs)
    if (run.price && !(edition.price && run.price->from == edition.price->from))
      all.push_back({&**run.price, run.price->from});
  if (edition.labour)
    all.push_back({&(*edition.labour)->price, edition.labour->from});
  for (const Sale &sale : edition.sales) {
    if (sale.price)
      all.push_back({&(*sale.price)->price, sale.price->from});
    if (sale.costs)
      all.push_back({&(*sale.costs)->price, sale.costs->from});
  }
  for (const Paid &paid : edition.paid)
    all.push_back({&paid.amount, paid.range});
  std::vector<bool> stock_used(edition.stocks.size()), machine_used(edition.machines.size());
  for (const Sheet &sheet : imposition.sheets)
    if (sheet.stock != StockId::none)
      stock_used[at(sheet.stock)] = true;
  for (const ChargedSide &side : sides)
    if (side.machine != MachineId::none)
      machine_used[at(side.machine)] = true;
  for (std::size_t i = 0; i < edition.stocks.size(); ++i)
    if (stock_used[i] && edition.stocks[i].costs)
      all.push_back({&(*edition.stocks[i].costs)->price, edition.stocks[i].costs->from});
  for (std::size_t i = 0; i < edition.machines.size(); ++i)
    if (machine_used[i])
      add_machine(all, edition.machines[i]);
  add_bids(all, edition);
  for (const Element &element : edition.elements)
    add(all, element.work);
  for (const FinishStep &step : edition.finish)
    add(all, step.work);
  for (const ArtSource &source : edition.sources)
    if (source.costs)
      all.push_back({&(*source.costs)->price, source.costs->from});
  return all;
}

void judge_currencies(Problems &problems, const Edition &edition, const std::vector<Money> &all,
                      const Sources &sources) {
  std::vector<Money> foreign;
  for (const Money &money : all)
    if (!counts(edition, money.price->currency))
      foreign.push_back(money);
  const bool alike = std::ranges::all_of(foreign, [&](const Money &money) {
    return same_money(foreign.front().price->currency, money.price->currency);
  });
  const bool written = !edition.currency.from.somewhere() ||
                       first_word(sources, edition.currency.from) == "currency";
  if (foreign.size() > 1 && alike && !written && foreign.size() + 1 == all.size())
    return problems.push_back(odd_currency(edition, foreign.front(), foreign.size(), sources));
  for (const Money &money : foreign)
    problems.push_back(two_currencies(edition, *money.price, money.from, sources));
}

Problem cheap_run(const Edition &edition, const std::string &whose, const CheaperRun &cheaper,
                  const Exact &now, const Sources &sources) {
  const Currency currency = *edition.currency;
  const std::int64_t copies = edition.run->copies;
  Problem problem;
  problem.kind = Kind::note;
  problem.check = "cheap-run";
  problem.range = edition.run.from;
  const std::string beside =
      cheaper.total == now ? fmt::format("the same as {}", copies)
                           : fmt::format("less than the {} of {}", shown(now, currency), copies);
  problem.message = fmt::format("{} copies {} cost {}, {}", cheaper.copies, whose,
                                shown(cheaper.total, currency), beside);
  problem.why = fmt::format("a lower price begins at {} copies and holds for every one of them",
                            cheaper.copies);
  if (edition.run.from.somewhere())
    problem.type = {
        {line_with_first_number(sources, edition.run.from, in_first_run(edition, cheaper.copies)),
         whose.starts_with("from ") ? "if you order there" : ""}};
  if (edition.run.from.somewhere())
    problem.edits = {{edition.run.from, problem.type.front().line}};
  return problem;
}

void cheap_runs(Problems &problems, const Edition &edition, const Bill &bill,
                const Sources &sources) {
  const std::int64_t copies = edition.run->copies;
  const auto ask = [&](const Way &way, const std::string &whose) {
    if (const auto cheaper = cheaper_run(way, copies))
      problems.push_back(cheap_run(edition, whose, *cheaper, way.at(copies).at(copies), sources));
  };
  ask(own_way(edition, bill), "of your own making");
  for (const Bid &bid : compared_bids(edition))
    ask(bare_way(edition, bid), "from " + bid.name);
}

Problem too_many(std::string_view what, std::size_t count, std::size_t most, Range at) {
  Problem problem;
  problem.check = "number-too-big";
  problem.range = at;
  problem.message =
      fmt::format("{} {} are more than anyone compares; {} are taken in", count, what, most);
  problem.why = "every one of them is priced for every length of run";
  return problem;
}

void too_many(Problems &problems, const Edition &edition) {
  const auto steps = [&](std::size_t count, Range at) {
    if (count > limits::price_steps)
      problems.push_back(too_many("price steps", count, limits::price_steps, at));
  };
  if (edition.bids.size() > limits::bids)
    problems.push_back(
        too_many("bids", edition.bids.size(), limits::bids, edition.bids[limits::bids].range));
  for (const Bid &bid : compared_bids(edition)) {
    steps(bid.steps.size(), bid.range);
    steps(bid.postage.size(), bid.range);
  }
  for (const Machine &machine : edition.machines)
    steps(machine.prints.size(), machine.range);
}

} // namespace

Problem two_currencies(const Edition &edition, const Price &price, Range from,
                       const Sources &sources) {
  const Currency own = *edition.currency;
  const std::string word = first_word(sources, edition.currency.from);
  const std::string counted =
      edition.currency.from.somewhere()
          ? fmt::format(" ({}, line {})", word, sources.line_number(edition.currency.from))
          : std::string{};
  Problem problem;
  problem.check = "two-currencies";
  problem.range = from;
  problem.message = fmt::format("this edition counts in {}{} and this is in {}", money_sign(own),
                                counted, money_sign(price.currency));
  problem.why = "no rate of exchange is ever assumed";
  problem.type = {
      {with_money_in(sources, from, own), only_the_sign(own)},
      {fmt::format("exchange   {} is {}", written_one(price.currency), money_to_fill_in(own)),
       "or this under edition, with the rate that you would pay"}};
  if (edition.currency.from.somewhere())
    problem.related = {{edition.currency.from, fmt::format("counts in {}", money_sign(own))}};
  return problem;
}

Problems price_problems(const Edition &edition, const Imposition &imposition,
                        const ChargedSides &sides, const Estimate &estimate,
                        const Sources &sources) {
  Problems problems;
  for (const Unpriced &unpriced : estimate.unpriced) {
    if (unpriced.reason == Unpriced::Reason::other_currency)
      continue;
    problems.push_back(unpriced.stock != StockId::none ? no_paper_price(edition, unpriced, sources)
                                                       : no_side_price(edition, unpriced, sources));
  }
  judge_currencies(problems, edition, money_of(edition, imposition, sides), sources);
  const Bill used = bill(edition, imposition, sides, jobs(edition, imposition));
  cheap_runs(problems, edition, used, sources);
  judge_offers(problems, edition, sources);
  judge_prices(edition, imposition, sides, problems);
  judge_sales(problems, edition, estimate, sources);
  too_many(problems, edition);
  return problems;
}

} // namespace bodkin
