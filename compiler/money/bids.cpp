#include "money/bids.hpp"

#include "edition/piece.hpp"
#include "measure/limits.hpp"
#include "money/bid_fit.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <limits>

namespace bodkin {
namespace {

// What a printer's bill is made of, each a straight line up to the next step.
struct PrintersBill {
  Amount copies, setup, postage, tax; // money, by copies and once
  std::int64_t last = std::numeric_limits<std::int64_t>::max();
  bool offered = false;
  Amount all() const { return copies + setup + postage + tax; }
};

Amount money_of(const Edition &edition, const Rate &rate) {
  const bool each_copy = rate.per == Per::copy || rate.per == Per::each;
  const Exact price = price_of_one(edition, rate);
  return each_copy ? Amount{0, price, 0} : Amount{0, 0, price};
}

// The step that so many copies have reached; `last` is brought down to where the next begins.
const BidStep *reached(const std::vector<BidStep> &steps, std::int64_t copies, std::int64_t &last) {
  const BidStep *found = nullptr;
  for (const BidStep &step : first_of(steps, limits::price_steps))
    if (step.from_copies > copies)
      last = std::min(last, step.from_copies - 1);
    else if (!found || step.from_copies >= found->from_copies)
      found = &step;
  return found;
}

PrintersBill printers_bill(const Edition &edition, const Bid &bid, std::int64_t copies) {
  PrintersBill out;
  const BidStep *price = reached(bid.steps, copies, out.last);
  const BidStep *postage = reached(bid.postage, copies, out.last);
  const auto counted = [&](const Rate &rate) { return counts(edition, rate.price.currency); };
  if (!price || !counted(price->rate) || (postage && !counted(postage->rate)) ||
      (bid.setup && !counted(**bid.setup)))
    return out;
  out.offered = true;
  out.copies = money_of(edition, price->rate);
  if (postage)
    out.postage = money_of(edition, postage->rate);
  if (bid.setup)
    out.setup = money_of(edition, **bid.setup);
  if (bid.tax)
    out.tax = (out.copies + out.setup + out.postage) * Exact(**bid.tax);
  return out;
}

Stretch bare_stretch(const Edition &edition, const Bid &bid, std::int64_t copies) {
  const PrintersBill bill = printers_bill(edition, bid, copies);
  const Amount all = bill.all();
  return {all.once, all.good, bill.last, bill.offered};
}

// A bid needs no spares, so what stays the maker's counts good copies only.
Amount without_spares(Amount amount) {
  amount.of_spares = 0;
  return amount;
}

std::string still_yours(const Job &job, Currency currency, std::int64_t copies) {
  std::vector<std::string> parts;
  const Exact money = without_spares(money_of(job)).of(copies, 0);
  const Exact minutes = without_spares(job.minutes).of(copies, 0);
  if (!money.is_zero())
    parts.push_back(shown(money, currency));
  if (!minutes.is_zero())
    parts.push_back(minutes.rounded(1) + " min");
  return parts.empty() ? job.what : fmt::format("{}: {}", job.what, fmt::join(parts, ", "));
}

// A bid needs no spares, so pieces are made for good copies alone there.
void add_pieces(Stretch &stretch, const Edition &edition, const Bill &bill, std::int64_t copies) {
  if (bill.sides_of_pieces.printed.empty() && bill.sides_of_pieces.blank.empty())
    return;
  const Printing priced = printing(edition, bill.sides_of_pieces, copies);
  const Amount mine =
      without_spares(bill.papers_of_pieces + sum(priced.charges) + sum(priced.taxes));
  stretch.each += mine.printed;
  stretch.at_none += mine.once;
  stretch.last = std::min(stretch.last, priced.holds_to);
  for (const RoundedUp &sheets : priced.rounded) {
    stretch.at_none -= sheets.unused(copies);
    stretch.rounded.push_back(sheets);
  }
  stretch.rounded.insert(stretch.rounded.end(), bill.rounded_papers_of_pieces.begin(),
                         bill.rounded_papers_of_pieces.end());
}

void add_printer(BidFigures &out, const Edition &edition, const Bill &bill, const Bid &bid) {
  const std::int64_t copies = edition.run->copies;
  const PrintersBill theirs = printers_bill(edition, bid, copies);
  if (!theirs.offered)
    return;
  out.setup = theirs.setup.of(copies, 0);
  out.postage = theirs.postage.of(copies, 0);
  out.tax = theirs.tax.of(copies, 0);
  out.run_total = theirs.all().of(copies, 0);
  out.per_copy = *out.run_total / Exact(copies);
  out.like_for_like = like_for_like_way(edition, bid, bill).at(copies).at(copies);
}

std::vector<std::string> all_still_yours(const Edition &edition, const Bill &bill) {
  std::vector<std::string> all;
  const std::int64_t copies = edition.run->copies;
  for (const Job &job : bill.jobs)
    if (!job.covered_by_bids)
      all.push_back(still_yours(job, *edition.currency, copies));
  if (edition.pieces.empty())
    return all;
  Stretch pieces{{}, {}, std::numeric_limits<std::int64_t>::max(), true};
  add_pieces(pieces, edition, bill, copies);
  std::vector<std::string> names;
  for (const auto &piece : edition.pieces)
    names.push_back(piece->is_other_book() ? "sheets of copies " + piece->name : piece->name);
  all.push_back(
      fmt::format("{}: {}", listed(std::move(names)), shown(pieces.at(copies), *edition.currency)));
  return all;
}

BidFigures figures(const Edition &edition, const Imposition &imposition, const Bill &bill,
                   const Bid &bid) {
  BidFit fit = fit_of(edition, imposition, bill, bid);
  BidFigures out;
  out.name = bid.name;
  out.from = bid.range;
  out.left_out = std::move(fit.left_out);
  out.cannot = std::move(fit.cannot);
  out.still_yours = all_still_yours(edition, bill);
  if (bid.until)
    out.until = written(**bid.until);
  add_printer(out, edition, bill, bid);
  return out;
}

} // namespace

std::span<const Bid> compared_bids(const Edition &edition) {
  return first_of(edition.bids, limits::bids);
}

Way bare_way(const Edition &edition, const Bid &bid) {
  return {bid.name, [&](std::int64_t copies) { return bare_stretch(edition, bid, copies); }};
}

Way like_for_like_way(const Edition &edition, const Bid &bid, const Bill &bill) {
  return {bid.name, [&edition, &bid, &bill](std::int64_t copies) {
            Stretch stretch = bare_stretch(edition, bid, copies);
            add_pieces(stretch, edition, bill, copies);
            for (const Job &job : bill.jobs)
              if (!job.covered_by_bids) {
                const Amount mine = money_of(job);
                stretch.at_none += mine.once;
                stretch.each += mine.printed + mine.good;
              }
            return stretch;
          }};
}

std::vector<Way> ways_to_make(const Edition &edition, const Bill &bill,
                              const std::vector<BidFigures> &bids) {
  std::vector<Way> ways{own_way(edition, bill)};
  for (std::size_t i = 0; i < bids.size(); ++i)
    if (bids[i].left_out.empty())
      ways.push_back(like_for_like_way(edition, edition.bids[i], bill));
  return ways;
}

std::vector<BidFigures> bid_figures(const Edition &edition, const Imposition &imposition,
                                    const Bill &bill) {
  std::vector<BidFigures> all;
  for (const Bid &bid : compared_bids(edition))
    all.push_back(figures(edition, imposition, bill, bid));
  return all;
}

} // namespace bodkin
