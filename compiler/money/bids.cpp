#include "money/bids.hpp"

#include "edition/piece.hpp"
#include "measure/limits.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <limits>

namespace bodkin {
namespace {

void add(Stretch &stretch, const Rate &rate) {
  const bool each_copy = rate.per == Per::copy || rate.per == Per::each;
  (each_copy ? stretch.each : stretch.at_none) += price_of_one(rate);
}

Stretch bare_stretch(const Bid &bid, Currency currency, std::int64_t copies) {
  Stretch stretch{{}, {}, std::numeric_limits<std::int64_t>::max(), false};
  const BidStep *reached = nullptr;
  for (const BidStep &step : first_of(bid.steps, limits::price_steps))
    if (step.from_copies > copies)
      stretch.last = std::min(stretch.last, step.from_copies - 1);
    else if (!reached || step.from_copies >= reached->from_copies)
      reached = &step;
  if (!reached || !same_money(currency, reached->rate.price.currency))
    return stretch;
  if (bid.postage && !same_money(currency, (*bid.postage)->price.currency))
    return stretch;
  stretch.offered = true;
  add(stretch, reached->rate);
  if (bid.postage)
    add(stretch, **bid.postage);
  return stretch;
}

bool asks_for(const Bill &bill, Mode mode) {
  return std::ranges::any_of(bill.sides.printed,
                             [&](const SideCount &count) { return count.mode == mode; });
}

// A printer of colour prints black too; one that names no mode is taken at its offer.
bool lacks(const Bid &bid, Mode mode) {
  return !bid.prints.empty() && std::ranges::none_of(bid.prints, [&](const Known<Mode> &prints) {
    return *prints >= mode;
  });
}

// White and near-white papers are a printer's house stock; the bounds are common practice, no
// source.
bool coloured(Colour tint) {
  const auto [least, most] = std::minmax({tint.red, tint.green, tint.blue});
  return most - least > 32 || least < 200;
}

std::vector<StockId> stocks_used(const Imposition &imposition) {
  std::vector<StockId> used;
  for (const Sheet &sheet : imposition.sheets)
    if (sheet.piece.empty() && sheet.stock != StockId::none &&
        std::ranges::find(used, sheet.stock) == used.end())
      used.push_back(sheet.stock);
  return used;
}

// "board, cream and rose"; of many the first few and how many more.
std::string listed(std::vector<std::string> names) {
  constexpr std::size_t most = 8;
  if (names.size() > most) {
    const std::size_t more = names.size() - (most - 1);
    names.resize(most - 1);
    names.push_back(fmt::format("{} more", more));
  }
  if (names.size() < 2)
    return names.empty() ? std::string{} : names.front();
  const std::string last = names.back();
  names.pop_back();
  return fmt::format("{} and {}", fmt::join(names, ", "), last);
}

std::vector<std::string> names_of(const std::vector<std::shared_ptr<const Piece>> &pieces) {
  std::vector<std::string> names;
  for (const auto &piece : pieces)
    names.push_back(piece->name);
  return names;
}

std::vector<std::string> cannot_do(const Edition &edition, const Imposition &imposition,
                                   const Bill &bill, const Bid &bid) {
  std::vector<std::string> cannot, papers, tinted, by_hand;
  for (const StockId stock : stocks_used(imposition)) {
    papers.push_back(edition[stock].name);
    if (coloured(*edition[stock].tint))
      tinted.push_back(edition[stock].name);
  }
  for (const Job &job : bill.jobs)
    if (job.group == Group::hand)
      by_hand.push_back(job.what);
  if (asks_for(bill, Mode::colour) && lacks(bid, Mode::colour))
    cannot.push_back("colour: it prints black only");
  if (papers.size() > 1)
    cannot.push_back(fmt::format("a second paper: one stock throughout, where this edition has {}",
                                 listed(papers)));
  if (!tinted.empty())
    cannot.push_back("coloured stock: " + listed(tinted));
  if (!edition.pieces.empty())
    cannot.push_back("beside the book: " + listed(names_of(edition.pieces)));
  if (!by_hand.empty())
    cannot.push_back("hand work: " + listed(by_hand));
  return cannot;
}

std::string still_yours(const Job &job, Currency currency, std::int64_t copies) {
  std::vector<std::string> parts;
  const Exact money = sum(job.charges).of(copies, 0);
  const Exact minutes = job.minutes.of(copies, 0);
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
  const Amount mine{bill.papers_of_pieces.printed + sum(priced.charges).printed +
                        sum(priced.taxes).printed,
                    0, 0};
  stretch.each += mine.printed;
  stretch.last = std::min(stretch.last, priced.holds_to);
}

BidFigures figures(const Edition &edition, const Imposition &imposition, const Bill &bill,
                   const Bid &bid) {
  const std::int64_t copies = edition.run->copies;
  const Currency currency = *edition.currency;
  BidFigures out;
  out.name = bid.name;
  out.from = bid.range;
  out.lacks_a_mode = asks_for(bill, Mode::colour) && lacks(bid, Mode::colour);
  out.cannot = cannot_do(edition, imposition, bill, bid);
  for (const Job &job : bill.jobs)
    if (!job.covered_by_bids)
      out.still_yours.push_back(still_yours(job, currency, copies));
  if (!edition.pieces.empty()) {
    Stretch pieces{{}, {}, std::numeric_limits<std::int64_t>::max(), true};
    add_pieces(pieces, edition, bill, copies);
    out.still_yours.push_back(fmt::format("{}: {}", listed(names_of(edition.pieces)),
                                          shown(pieces.at(copies), currency)));
  }
  if (const Stretch bare = bare_way(bid, currency).at(copies); bare.offered) {
    out.run_total = bare.at(copies);
    out.per_copy = *out.run_total / Exact(copies);
    out.like_for_like = like_for_like_way(edition, bid, bill).at(copies).at(copies);
  }
  return out;
}

} // namespace

std::span<const Bid> compared_bids(const Edition &edition) {
  return first_of(edition.bids, limits::bids);
}

Way bare_way(const Bid &bid, Currency currency) {
  return {bid.name,
          [&bid, currency](std::int64_t copies) { return bare_stretch(bid, currency, copies); }};
}

Way like_for_like_way(const Edition &edition, const Bid &bid, const Bill &bill) {
  return {bid.name, [&edition, &bid, &bill](std::int64_t copies) {
            Stretch stretch = bare_stretch(bid, *edition.currency, copies);
            add_pieces(stretch, edition, bill, copies);
            for (const Job &job : bill.jobs)
              if (!job.covered_by_bids) {
                const Amount mine = sum(job.charges);
                stretch.at_none += mine.once;
                stretch.each += mine.printed + mine.good;
              }
            return stretch;
          }};
}

std::vector<BidFigures> bid_figures(const Edition &edition, const Imposition &imposition,
                                    const Bill &bill) {
  std::vector<BidFigures> all;
  for (const Bid &bid : compared_bids(edition))
    all.push_back(figures(edition, imposition, bill, bid));
  return all;
}

} // namespace bodkin
