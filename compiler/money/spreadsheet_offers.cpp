#include "money/spreadsheet_offers.hpp"

#include "measure/limits.hpp"
#include "money/bids.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <map>

namespace bodkin::spread {
namespace {

bool is_a_copy(const Rate &rate) { return rate.per == Per::copy || rate.per == Per::each; }

bool all_count(const Edition &edition, const Bid &bid) {
  const auto step = [&](const BidStep &of) { return counts(edition, of.rate.price.currency); };
  return !bid.steps.empty() && std::all_of(bid.steps.begin(), bid.steps.end(), step) &&
         std::all_of(bid.postage.begin(), bid.postage.end(), step) &&
         (!bid.setup || counts(edition, (*bid.setup)->price.currency));
}

struct OfferRows {
  const Edition &edition;
  const CopyRows &copies;
  Rows &rows;

  // A price once, and a price a copy: "once", "a copy".
  std::string once(const Rate &rate) const {
    return figure(is_a_copy(rate) ? Exact() : price_of_one(edition, rate));
  }
  std::string each(const Rate &rate) const {
    return figure(is_a_copy(rate) ? price_of_one(edition, rate) : Exact());
  }

  // What the steps come to: none is reached below the first.
  std::string steps(std::string_view what, const std::vector<BidStep> &all, bool from_none) {
    std::map<std::int64_t, const BidStep *> steps;
    for (const BidStep &step : first_of(all, limits::price_steps))
      steps[step.from_copies] = &step;
    const int first = rows.next();
    if (from_none)
      rows.row({words(what), figure(0), figure(0), figure(0)});
    for (const auto &[from, step] : steps)
      rows.row({words(what), figure(from), once(step->rate), each(step->rate)});
    const int last = rows.next() - 1;
    const auto found = [&](char column) {
      return fmt::format("LOOKUP({};{};{})", copies.good({}), range('B', first, last),
                         range(column, first, last));
    };
    return fmt::format("{}+{}*{}", found('C'), copies.good({}), found('D'));
  }

  static std::string or_not_offered(const std::string &of) {
    return fmt::format("IFERROR({};\"no such run is offered\")", of);
  }

  void offer(const Bid &bid, const std::string &yours) {
    rows.titles({"offer of " + bid.name, "from copies", "once", "a copy", "total"});
    const std::string price = steps("price", bid.steps, false);
    const std::string postage =
        bid.postage.empty() ? std::string() : steps("postage", bid.postage, true);
    const int first = rows.total(bid.name + ", copies", or_not_offered(price));
    if (bid.setup)
      setup(bid.name, **bid.setup);
    if (!postage.empty())
      rows.total(bid.name + ", postage", postage);
    const int last = rows.next() - 1;
    // SUM would pass over words, and so over a price that is not offered.
    std::vector<std::string> parts;
    for (int row = first; row <= last; ++row)
      parts.push_back(at('E', row));
    std::string all = sum_of(parts);
    if (bid.tax) {
      const int here = rows.next();
      rows.row({words(bid.name + ", tax"), nothing(), formula(or_not_offered(all)),
                figure(Exact(**bid.tax)),
                formula(or_not_offered(at('C', here) + "*" + at('D', here)))});
      all += "+" + at('E', here);
    }
    const int bare = rows.total(bid.name + ", the run", or_not_offered(all));
    const auto a_copy = [&](int row) {
      return or_not_offered(at('E', row) + "/" + copies.good({}));
    };
    rows.total(bid.name + ", a copy", a_copy(bare));
    const int alike =
        rows.total(bid.name + ", like for like", or_not_offered(at('E', bare) + "+" + yours));
    rows.total(bid.name + ", like for like, a copy", a_copy(alike));
  }

  void setup(const std::string &name, const Rate &rate) {
    const int here = rows.next();
    rows.row({words(name + ", setup"), nothing(), once(rate), each(rate),
              formula(at('C', here) + "+" + copies.good({}) + "*" + at('D', here))});
  }
};

} // namespace

std::vector<Charge> charges_beside_offers(const Edition &edition, const Bill &bill) {
  std::vector<Charge> all;
  if (!bill.sides_of_pieces.printed.empty() || !bill.sides_of_pieces.blank.empty()) {
    const Printing priced = printing(edition, bill.sides_of_pieces, edition.run->copies);
    all = priced.charges;
    all.insert(all.end(), priced.taxes.begin(), priced.taxes.end());
    all.insert(all.end(), bill.lines_of_pieces.begin(), bill.lines_of_pieces.end());
  }
  for (const Job &job : bill.jobs) {
    if (job.covered_by_bids)
      continue;
    all.insert(all.end(), job.charges.begin(), job.charges.end());
    if (job.labour) {
      all.push_back(*job.labour);
      all.back().what += ": " + job.what;
    }
  }
  return all;
}

void write_offers(const Edition &edition, const CopyRows &copies, const std::string &yours,
                  Rows &rows) {
  OfferRows offers{edition, copies, rows};
  for (const Bid &bid : compared_bids(edition))
    if (all_count(edition, bid))
      offers.offer(bid, yours);
}

} // namespace bodkin::spread
