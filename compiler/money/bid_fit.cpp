#include "money/bid_fit.hpp"

#include "edition/copy_numbers.hpp"
#include "edition/laid.hpp"
#include "edition/piece.hpp"
#include "measure/paper.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <set>

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
  // The first reason is enough.
  void cannot_at_all(const std::string &what, const std::string &left_out) {
    cannot(what);
    leave_out(left_out);
  }
  void leave_out(const std::string &why) {
    if (out.left_out.empty())
      out.left_out = why;
  }

  void mode() {
    if (asks_for(bill, Mode::colour) && lacks(bid, Mode::colour))
      cannot_at_all("colour: it prints black only", "it prints black only");
  }

  void size() {
    if (bid.sizes.empty() || std::ranges::any_of(bid.sizes, [&](const Known<Size> &size) {
          return same_size(*size, *edition.size);
        }))
      return;
    std::vector<std::string> names;
    for (const Known<Size> &size : bid.sizes)
      names.push_back(written(*size, ruler_of(*size)));
    const std::string makes = fmt::format("it makes {}, not {}", listed(std::move(names)),
                                          written(*edition.size, edition.ruler));
    cannot_at_all("this size: " + makes, makes);
  }

  void pages() {
    if (!bid.pages)
      return;
    const BidPages &may = **bid.pages;
    const std::int64_t asked = imposition.page_count;
    const std::int64_t bound = (std::max(asked, may.least) + may.by - 1) / may.by * may.by;
    if (may.most > 0 && bound > may.most)
      return cannot_at_all(
          fmt::format("{} pages: it binds {} at the most", asked, may.most / may.by * may.by),
          fmt::format("it binds {} pages at the most, not {}", may.most / may.by * may.by, asked));
    if (bound != asked)
      cannot(fmt::format("{} pages: it binds {}, {} of them blank", asked, bound, bound - asked));
  }

  // Of a printer that names no papers it is not known whether they mix: its offer is taken for one
  // white house stock throughout.
  void house_stock(const std::vector<StockId> &stocks) {
    std::vector<std::string> names, tinted;
    for (const StockId stock : stocks) {
      names.push_back(edition[stock].name);
      if (coloured(*edition[stock].tint))
        tinted.push_back(edition[stock].name);
    }
    if (names.size() > 1)
      cannot(fmt::format("a second paper, as far as it says (it names no `papers`): one stock "
                         "throughout, where this edition has {}",
                         listed(names)));
    if (!tinted.empty())
      cannot("coloured stock, as far as it says: " + listed(tinted));
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

  // "map (a fold-out)", "sleeve (a pocket)".
  std::string with_kind(const Piece &piece) const {
    if (piece.is_wrap() || piece.is_boards() || piece.is_reverse())
      return piece.name;
    const Size book = edition.size->upright(), own = piece.edition.size->upright();
    const std::string_view kind = piece.is_band()        ? "round the copy"
                                  : piece.is_pocket()    ? "a pocket"
                                  : piece.is_tipped_in() ? "tipped in"
                                  : own.width > book.width || own.height > book.height
                                      ? "a fold-out"
                                      : "an insert";
    return fmt::format("{} ({})", piece.name, kind);
  }

  void beside() {
    std::vector<std::string> pieces, others;
    for (const auto &piece : edition.pieces)
      if (piece->is_other_book())
        others.push_back(piece->name);
      else
        pieces.push_back(with_kind(*piece));
    if (!pieces.empty())
      cannot("what is beside the book: " + listed(std::move(pieces)));
    if (!others.empty())
      cannot("copies printed otherwise: " + listed(std::move(others)));
  }

  // Each copy would need a file of its own.
  void numbers() {
    std::set<int> pages;
    each_laid(edition, [&](ElementId id, int page) {
      if (bears_number(edition[id]))
        pages.insert(page);
    });
    if (!pages.empty())
      cannot("a number of its own printed in each copy: " +
             spoken::pages_listed({pages.begin(), pages.end()}));
  }

  void work() {
    std::vector<std::string> by_hand, steps;
    for (const Job &job : bill.jobs)
      if (job.group == Group::hand)
        by_hand.push_back(job.what);
    for (const FinishStep &step : edition.finish) {
      const bool waits = step.kind == StepKind::dry || step.kind == StepKind::press;
      if (!waits && !comes_with_a_bid(step.kind) && !cuts_sheets(step))
        steps.push_back(name_of(step));
    }
    if (!by_hand.empty())
      cannot("hand work: " + listed(std::move(by_hand)));
    if (!steps.empty())
      cannot("work after printing: " + listed(std::move(steps)));
  }

  void day() {
    if (bid.until && edition.dated && surely_before(**bid.until, **edition.dated))
      cannot_at_all(fmt::format("an edition of {}: the offer holds until {}",
                                written(**edition.dated), written(**bid.until)),
                    fmt::format("the offer ended {}", written(**bid.until)));
  }

  // Prices that hold for no run, or that do not count.
  void prices() {
    if (bid.steps.empty())
      return leave_out("it names no price");
    const auto foreign = [&](const Rate &rate) { return !counts(edition, rate.price.currency); };
    if (std::ranges::any_of(bid.steps, foreign, &BidStep::rate) ||
        std::ranges::any_of(bid.postage, foreign, &BidStep::rate) ||
        (bid.setup && foreign(**bid.setup)))
      leave_out("a price of it is in other money, and no rate of exchange is written");
    const std::int64_t least =
        std::ranges::min_element(bid.steps, {}, &BidStep::from_copies)->from_copies;
    if (edition.run->copies < least)
      cannot(fmt::format("a run of {}: its prices begin at {} copies", edition.run->copies, least));
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
  fitting.numbers();
  fitting.work();
  fitting.day();
  fitting.prices();
  return std::move(fitting.out);
}

} // namespace bodkin
