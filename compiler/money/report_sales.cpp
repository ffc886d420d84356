#include "money/report_sales.hpp"

#include "money/table.hpp"
#include "problems/characters.hpp"
#include "problems/wrap.hpp"

#include <fmt/format.h>

namespace bodkin {
namespace {

std::string copies_words(std::int64_t copies) {
  return fmt::format("{} {}", copies, copies == 1 ? "copy" : "copies");
}

struct SalesReport {
  const Estimate &estimate;
  std::string out{};

  std::string money(const Exact &amount) const {
    return amount < Exact() ? "−" + shown(Exact() - amount, estimate.currency)
                            : shown(amount, estimate.currency);
  }
  void line(std::string_view text = {}) { out.append(text).append("\n"); }
  void prose(int indent, std::string_view text) {
    out.append(static_cast<std::size_t>(indent), ' ');
    line(wrapped(text, estimate_columns, indent));
  }

  // "$5.00 − $2.00 the seller's − $0.85 the sale = $2.15, less $1.22 to make"
  std::string sum_of(const SaleFigures &way) const {
    std::string text = money(way.price);
    if (!way.keeps.is_zero())
      text += fmt::format(" − {} that the seller keeps", money(way.keeps));
    if (!way.costs.is_zero())
      text += fmt::format(" − {} for the sale", money(way.costs));
    if (!way.keeps.is_zero() || !way.costs.is_zero())
      text += fmt::format(" = {}", money(way.brings));
    return fmt::format("{} a copy, less {} to make it: {}", text, money(way.makes),
                       money(way.margin));
  }

  void way(const SaleFigures &of) {
    const std::string run = of.run.empty() ? "" : " " + harmless(of.run);
    const std::string name =
        of.copies > 0 ? fmt::format("{}, {}{}", harmless(of.where), copies_words(of.copies), run)
        : run.empty() ? harmless(of.where)
                      : fmt::format("{}, copies{}", harmless(of.where), run);
    if (of.copies > 0)
      line(with_leader(name, money(of.income)));
    else
      line("  " + name);
    prose(6, sum_of(of));
    if (!of.costs_once.is_zero())
      prose(6, fmt::format("{} once is taken off", money(of.costs_once)));
    prose(6, of.paid_after
                 ? fmt::format("sold so alone, {} {} for the run", copies_words(*of.paid_after),
                               *of.paid_after == 1 ? "pays" : "pay")
                 : "sold so alone, the run is never paid");
  }

  void sums(const Sales &sales) {
    if (sales.given > 0)
      line(with_leader("given away, at what they cost to make",
                       fmt::format("{}: {}", copies_words(sales.given),
                                   money(estimate.per_copy * Exact(sales.given)))));
    if (sales.sold == 0)
      return;
    line(with_leader(fmt::format("all {} sold", sales.sold), money(sales.income)));
    line(with_leader(sales.remains < Exact() ? "that, less the run: missing"
                                             : "that, less the run: remains",
                     money(sales.remains)));
    if (!estimate.unpriced.empty())
      prose(2, "What a copy costs to make is told without what is left out above.");
    if (sales.left > 0)
      line(with_leader("neither sold nor given", copies_words(sales.left)));
    prose(2, sales.paid_after ? fmt::format("Sold in this order, the run is paid after {}.",
                                            copies_words(*sales.paid_after))
                              : "Sold in this order, the run is not paid by all of them.");
  }
};

} // namespace

std::string sales_as_text(const Estimate &estimate) {
  if (!estimate.sales)
    return {};
  SalesReport report{estimate};
  report.line();
  report.line("Selling");
  report.line();
  for (const SaleFigures &way : estimate.sales->ways)
    report.way(way);
  report.sums(*estimate.sales);
  return std::move(report.out);
}

std::string paid_as_text(const Estimate &estimate) {
  if (estimate.paid.empty())
    return {};
  SalesReport report{estimate};
  report.line();
  report.line("Really paid, beside what the estimate takes out of the purse");
  report.line();
  for (const PaidFigures &of : estimate.paid) {
    const Exact more = of.paid - of.estimated;
    const std::string than = fmt::format(" than {} estimated", report.money(of.estimated));
    report.line(with_leader(fmt::format("{}: {}", of.what, report.money(of.paid)),
                            more.is_zero()   ? std::string("as estimated")
                            : more > Exact() ? report.money(more) + " more" + than
                                             : report.money(Exact() - more) + " less" + than));
  }
  return std::move(report.out);
}

} // namespace bodkin
