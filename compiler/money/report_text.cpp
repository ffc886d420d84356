#include "money/report.hpp"

#include "edition/read.hpp"
#include "money/charge.hpp"
#include "money/report_sales.hpp"
#include "money/table.hpp"
#include "problems/characters.hpp"
#include "problems/wrap.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <map>

namespace bodkin {
namespace {

std::string copies_words(std::int64_t copies) {
  return fmt::format("{} {}", copies, copies == 1 ? "copy" : "copies");
}

std::string way_words(const std::string &name) {
  return name == "own" ? std::string("your own making") : harmless(name);
}

struct Report {
  const Edition &edition;
  const Estimate &estimate;
  const Sources &sources;
  bool anyway;
  std::string out{};

  std::string money(const Exact &amount) const { return shown(amount, estimate.currency); }
  void line(std::string_view text = {}) { out.append(text).append("\n"); }
  void prose(int indent, std::string_view text) {
    out.append(static_cast<std::size_t>(indent), ' ');
    line(wrapped(text, estimate_columns, indent));
  }

  void heading() {
    line(wrapped(harmless(*edition.title), estimate_columns, 0));
    std::string run = copies_words(estimate.copies);
    if (estimate.spare > 0)
      run += fmt::format(" and {} spare: {} printed", estimate.spare,
                         estimate.copies + estimate.spare);
    if (!estimate.currency.empty())
      run += fmt::format(". Money in {}", estimate.currency.code());
    line(run + ".");
    for (const Exchange &exchange : edition.exchanges)
      line(fmt::format("{} counts as {} ({}).", written(exchange.foreign), written(exchange.own),
                       origin_words(exchange.range, sources)));
    if (!estimate.runs.empty())
      line(wrapped(runs(), estimate_columns, 0));
    if (estimate.budget && estimate.budget->over) {
      line();
      line(fmt::format("OVER BUDGET by {}, {}", over_by(),
                       anyway ? "made all the same" : "so no sheets are made"));
    }
  }

  // "40 copies and 3 spare plain, 10 copies de-luxe."
  std::string runs() const {
    std::vector<std::string> all;
    for (const RunFigures &of : estimate.runs)
      all.push_back(fmt::format("{}{} {}", copies_words(of.copies),
                                of.spare > 0 ? fmt::format(" and {} spare", of.spare) : "",
                                harmless(of.name)));
    return fmt::format("{}.", fmt::join(all, ", "));
  }

  std::string over_by() const {
    const Exact &over = estimate.budget->over_by;
    const bool shows = Exact::ratio(1, 200) <= over;
    return fmt::format("{} a {}", shown(over, estimate.currency, shows ? 2 : 12),
                       estimate.budget->of_run ? "run" : "copy");
  }

  FigureRow row(const EstimateLine &of) const {
    const bool tax = of.group == Group::tax;
    return {harmless(of.what), tax ? money(of.quantity) : of.quantity.rounded(0, 6),
            tax ? (of.rate * Exact(100)).rounded(0, 4) + "%"
                : shown(of.rate, estimate.currency, 12),
            money(of.total), of.from.somewhere() ? origin_words(of.from, sources) : std::string{}};
  }

  // All rows are set together, so that one column of totals runs down the page.
  void lines() {
    std::vector<FigureRow> rows;
    for (const EstimateLine &of : estimate.lines)
      rows.push_back(row(of));
    line();
    for (const std::string &text : set_in_columns(rows))
      line(text);
    if (!rows.empty())
      line();
    for (const Unpriced &thing : estimate.unpriced)
      prose(2, fmt::format("left out, {}: {} {}",
                           thing.reason == Unpriced::Reason::other_currency
                               ? "since its price is in another currency"
                               : "since no price is written for it",
                           thing.quantity, harmless(thing.what)));
    if (!estimate.unpriced.empty())
      line();
  }

  void packs() {
    for (const Purchase &paper : estimate.purchases)
      if (paper.order.pack > 0 || paper.order.have > 0 || paper.order.out > 1)
        prose(6, fmt::format("{}: {}", harmless(paper.what), purchase(paper)));
  }

  // "140 at hand, 19 missing; 10 sheets of tabloid, 2 cut out of each: 1 pack of 100 at $9.00"
  std::string purchase(const Purchase &paper) const {
    const StockOrder &order = paper.order;
    std::string text;
    if (order.have > 0 && paper.missing() == 0)
      return fmt::format("all {} at hand, of {}", paper.needed.ceiling(), order.have);
    if (order.have > 0)
      text = fmt::format("{} at hand, {} missing; ", order.have, paper.missing());
    if (order.out > 1)
      text += fmt::format("{} sheet{} of {}, {} cut out of each: ", paper.bought(),
                          paper.bought() == 1 ? "" : "s", order.parent, order.out);
    if (order.pack == 0)
      return text + fmt::format("{} at {}", paper.bought(), money(order.price));
    return text + fmt::format("{} pack{} of {} at {}", paper.packs(), paper.packs() == 1 ? "" : "s",
                              order.pack, money(order.price));
  }

  bool all_priced() const { return estimate.unpriced.empty(); }

  void sums() {
    line(
        with_leader(all_priced() ? "the run, everything used" : "the run, without what is left out",
                    money(estimate.run_total)));
    line(with_leader(fmt::format("a copy, that ÷ {}", estimate.copies), money(estimate.per_copy)));
    for (const RunFigures &of : estimate.runs)
      line(with_leader(fmt::format("a copy {}, with what is its own", harmless(of.name)),
                       money(of.per_copy)));
    line(with_leader("one copy more, at the prices reached", money(estimate.one_more_copy)));
    line(with_leader("out of the purse, paper in whole packs", money(estimate.purse_total)));
    packs();
    line(with_leader(estimate.spare > 0 ? "work by hand, where every spare is made up too"
                                        : "work by hand",
                     estimate.minutes.is_zero() ? std::string("no time is said")
                                                : estimate.minutes.rounded(1) + " min"));
    for (const MachineTime &of : estimate.machines)
      line(with_leader(fmt::format("{} prints {} sides", harmless(of.machine), of.sides.rounded(0)),
                       of.minutes.rounded(1) + " min"));
    for (const std::string &what : estimate.kept)
      prose(6, "kept from the first impression: " + harmless(what));
    budget();
    price();
    line();
    prose(2, "Each figure is rounded half up for show; sums are made of unrounded figures.");
  }

  void budget() {
    if (!estimate.budget)
      return;
    const BudgetHeld &held = *estimate.budget;
    const Exact &cost = held.of_run ? estimate.run_total : estimate.per_copy;
    line(with_leader(fmt::format("budget {} a {} ({})", money(held.limit),
                                 held.of_run ? "run" : "copy", origin_words(held.from, sources)),
                     held.over ? "over by " + money(held.over_by)
                               : money(held.limit - cost) +
                                     (all_priced() ? " to spare" : " left for the rest")));
  }

  void price_line(const std::string &what, const Exact &asked, const Exact &cost, Range from) {
    const std::string name =
        fmt::format("price {} a copy{} ({})", money(asked), what, origin_words(from, sources));
    line(with_leader(name, asked >= cost ? money(asked - cost) + " remains"
                                         : money(cost - asked) + " is missing"));
  }

  // Runs that have each a price are each held against their own cost.
  void price() {
    const bool each = std::any_of(edition.runs.begin(), edition.runs.end(),
                                  [](const NamedRun &run) { return run.price.has_value(); });
    if (each) {
      for (const RunFigures &of : estimate.runs)
        if (of.price)
          price_line(" " + harmless(of.name), *of.price, of.per_copy, of.price_from);
      return;
    }
    if (edition.price && counts(edition, (*edition.price)->currency))
      price_line("", in_own_money(edition, **edition.price), estimate.per_copy,
                 edition.price->from);
  }

  // What a printer's bill holds beside the copies.
  void inside(const BidFigures &of) {
    std::vector<std::string> parts;
    const auto part = [&](std::string_view what, const Exact &amount) {
      if (!amount.is_zero())
        parts.push_back(fmt::format("{} {}", what, money(amount)));
    };
    part("setup", of.setup);
    part("postage", of.postage);
    part("tax", of.tax);
    if (!parts.empty())
      line(fmt::format("    in it           {}", fmt::join(parts, ", ")));
  }

  void bid(const BidFigures &of) {
    line();
    line(fmt::format("  {} ({}){}", harmless(of.name), origin_words(of.from, sources),
                     of.until.empty() ? "" : ", until " + of.until));
    if (of.run_total) {
      line(fmt::format("    bare            {} the run, {} a copy", money(*of.run_total),
                       money(*of.per_copy)));
      line(fmt::format("    like for like   {} the run, {} a copy", money(*of.like_for_like),
                       money(*of.like_for_like / Exact(estimate.copies))));
      inside(of);
    }
    if (!of.left_out.empty())
      prose(4, "compared with nothing: " + harmless(of.left_out));
    for (const std::string &what : of.cannot)
      prose(4, "cannot do " + harmless(what));
    for (const std::string &what : of.still_yours)
      prose(4, "still yours: " + harmless(what));
  }

  void bids() {
    if (estimate.bids.empty())
      return;
    line();
    line(fmt::format("Offers for {}", copies_words(estimate.copies)));
    for (const BidFigures &of : estimate.bids)
      bid(of);
    line();
    prose(2, crossings());
  }

  std::string crossings() const {
    if (estimate.cheapest_at_one_copy.empty())
      return "Nothing is compared, since not everything of your own has a price.";
    std::string text = fmt::format("Like for like, the cheapest way is {}",
                                   way_words(estimate.cheapest_at_one_copy));
    if (estimate.crossings.empty())
      return text + " for any run up to 100,000 copies.";
    text += fmt::format(" up to {}", copies_words(estimate.crossings.front().copies - 1));
    for (const Crossing &crossing : estimate.crossings)
      text += fmt::format("; from {} on {}", crossing.copies, way_words(crossing.to));
    return text + ".";
  }
};

} // namespace

std::string estimate_as_text(const Edition &edition, const Estimate &estimate,
                             const Sources &sources, bool anyway) {
  Report report{edition, estimate, sources, anyway};
  report.heading();
  report.lines();
  report.sums();
  report.out += sales_as_text(estimate);
  report.out += paid_as_text(estimate);
  report.bids();
  return std::move(report.out);
}

} // namespace bodkin
