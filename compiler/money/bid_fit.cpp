#include "money/bid_fit.hpp"

#include "edition/piece.hpp"
#include "measure/paper.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <fmt/ranges.h>

namespace bodkin {
namespace {

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

bool same_size(const Size &a, const Size &b) { return a == b || a.turned() == b; }

struct Fitting {
  const Edition &edition;
  const Imposition &imposition;
  const Bill &bill;
  const Bid &bid;
  BidFit out{};

  void cannot(std::string what) { out.cannot.push_back(std::move(what)); }
  void cannot_at_all(std::string what) {
    cannot(std::move(what));
    out.another_edition = true;
  }

  void mode() {
    if (asks_for(bill, Mode::colour) && lacks(bid, Mode::colour))
      cannot_at_all("colour: it prints black only");
  }

  void size() {
    if (bid.sizes.empty() || std::ranges::any_of(bid.sizes, [&](const Known<Size> &size) {
          return same_size(*size, *edition.size);
        }))
      return;
    std::vector<std::string> names;
    for (const Known<Size> &size : bid.sizes)
      names.push_back(written(*size, ruler_of(*size)));
    cannot_at_all(fmt::format("this size: it makes {}, not {}", listed(std::move(names)),
                              written(*edition.size, edition.ruler)));
  }

  void pages() {
    if (!bid.pages)
      return;
    const BidPages &may = **bid.pages;
    const std::int64_t asked = imposition.page_count;
    const std::int64_t bound = (std::max(asked, may.least) + may.by - 1) / may.by * may.by;
    if (may.most > 0 && bound > may.most)
      return cannot_at_all(
          fmt::format("{} pages: it binds {} at the most", asked, may.most / may.by * may.by));
    if (bound != asked)
      cannot(fmt::format("{} pages: it binds {}, {} of them blank", asked, bound, bound - asked));
  }

  // On its house stock; that is white, and one throughout.
  void house_stock(const std::vector<StockId> &stocks) {
    std::vector<std::string> names, tinted;
    for (const StockId stock : stocks) {
      names.push_back(edition[stock].name);
      if (coloured(*edition[stock].tint))
        tinted.push_back(edition[stock].name);
    }
    if (names.size() > 1)
      cannot(fmt::format("a second paper: one stock throughout, where this edition has {}",
                         listed(names)));
    if (!tinted.empty())
      cannot("coloured stock: " + listed(tinted));
  }

  void papers() {
    const std::vector<StockId> stocks = stocks_used(imposition);
    if (!bid.papers)
      return house_stock(stocks);
    const BidPapers &has = **bid.papers;
    std::vector<std::string> names, lacking;
    for (const StockId stock : stocks) {
      names.push_back(edition[stock].name);
      if (std::ranges::find(has.names, names.back()) == has.names.end())
        lacking.push_back(names.back());
    }
    if (!lacking.empty())
      cannot(fmt::format("this paper: it has {}, not {}", listed(has.names), listed(lacking)));
    if (names.size() > 1 && !has.mixed)
      cannot(fmt::format("a second paper: one stock throughout, where this edition has {}",
                         listed(names)));
  }

  void beside() {
    std::vector<std::string> pieces, others, by_hand;
    for (const auto &piece : edition.pieces)
      (piece->is_other_book() ? others : pieces).push_back(piece->name);
    for (const Job &job : bill.jobs)
      if (job.group == Group::hand)
        by_hand.push_back(job.what);
    if (!pieces.empty())
      cannot("beside the book: " + listed(std::move(pieces)));
    if (!others.empty())
      cannot("copies printed otherwise: " + listed(std::move(others)));
    if (!by_hand.empty())
      cannot("hand work: " + listed(std::move(by_hand)));
  }

  void day() {
    if (bid.until && edition.dated && surely_before(**bid.until, **edition.dated))
      cannot_at_all(fmt::format("an edition of {}: the offer holds until {}",
                                written(**edition.dated), written(**bid.until)));
  }
};

} // namespace

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

BidFit fit_of(const Edition &edition, const Imposition &imposition, const Bill &bill,
              const Bid &bid) {
  Fitting fitting{edition, imposition, bill, bid};
  fitting.mode();
  fitting.size();
  fitting.pages();
  fitting.papers();
  fitting.beside();
  fitting.day();
  return std::move(fitting.out);
}

} // namespace bodkin
