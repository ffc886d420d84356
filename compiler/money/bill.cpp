#include "money/bill.hpp"

#include "measure/paper.hpp"

#include <algorithm>
#include <utility>

namespace bodkin {
namespace {

Amount operator+(Amount a, const Amount &b) {
  a.printed += b.printed;
  a.good += b.good;
  a.once += b.once;
  return a;
}

// Stocks with their sheets of one copy, as first met.
std::vector<std::pair<StockId, Exact>> sheets_by_stock(const Imposition &imposition, Whose whose) {
  std::vector<std::pair<StockId, Exact>> counts;
  for (const Sheet &sheet : imposition.sheets) {
    if (whose == Whose::pieces && sheet.piece.empty())
      continue;
    const auto same = [&](const auto &count) { return count.first == sheet.stock; };
    const auto known = std::ranges::find_if(counts, same);
    if (known != counts.end())
      known->second += Exact::ratio(sheet.in_a_copy, sheet.up);
    else if (sheet.stock != StockId::none)
      counts.emplace_back(sheet.stock, Exact::ratio(sheet.in_a_copy, sheet.up));
  }
  return counts;
}

int out_of_one(const Stock &stock) { return stock.cut_from ? (*stock.cut_from)->out : 1; }

StockOrder order_of(const Stock &stock) {
  StockOrder order;
  order.have = stock.have ? **stock.have : 0;
  order.out = out_of_one(stock);
  if (stock.cut_from)
    order.parent = written((*stock.cut_from)->parent, ruler_of((*stock.cut_from)->parent));
  const Rate &rate = **stock.costs;
  order.pack = rate.per == Per::sheets ? std::max<std::int64_t>(rate.count, 0) : 0;
  order.price = order.pack > 0 ? Exact(rate.price.amount) : price_of_one(rate);
  return order;
}

std::vector<Charge> papers_of(const Edition &edition, const Imposition &imposition, Whose whose,
                              std::vector<Unpriced> &unpriced) {
  std::vector<Charge> papers;
  const std::int64_t printed_copies = edition.run->copies + edition.run->spare;
  for (const auto &[id, sheets] : sheets_by_stock(imposition, whose)) {
    const Stock &stock = edition[id];
    const std::string what = stock.name + " sheets";
    const Exact run_sheets = sheets * Exact(printed_copies);
    const Exact to_whole = Exact(run_sheets.ceiling()) - run_sheets;
    if (stock.included)
      continue;
    if (!stock.costs || !same_money(*edition.currency, (*stock.costs)->price.currency)) {
      const auto reason =
          stock.costs ? Unpriced::Reason::other_currency : Unpriced::Reason::no_price;
      unpriced.push_back({reason, id, MachineId::none, Mode::black, what, run_sheets.ceiling()});
      continue;
    }
    const Known<Rate> &rate = *stock.costs;
    papers.push_back({what,
                      Group::paper,
                      {sheets, 0, to_whole},
                      price_of_one(*rate) / Exact(out_of_one(stock)),
                      rate.from,
                      order_of(stock)});
  }
  return papers;
}

} // namespace

Bill bill(const Edition &edition, const Imposition &imposition, const ChargedSides &sides,
          std::vector<Job> jobs_of_it) {
  Bill bill;
  bill.sides = count_sides(edition, imposition, sides);
  bill.papers = papers_of(edition, imposition, Whose::all, bill.unpriced_papers);
  std::vector<Unpriced> said_above;
  bill.sides_of_pieces = count_sides(edition, imposition, sides, Whose::pieces);
  bill.papers_of_pieces = sum(papers_of(edition, imposition, Whose::pieces, said_above));
  bill.jobs = std::move(jobs_of_it);
  bill.beside_printing = sum(bill.papers);
  for (const Job &job : bill.jobs)
    bill.beside_printing = bill.beside_printing + sum(job.charges);
  return bill;
}

Stretch own_stretch(const Edition &edition, const Bill &bill, std::int64_t copies) {
  const std::int64_t spare = edition.run->spare;
  const Printing priced = printing(edition, bill.sides, copies + spare);
  const Amount all = bill.beside_printing + sum(priced.charges) + sum(priced.taxes);
  const bool offered = std::ranges::none_of(priced.unpriced, [](const Unpriced &side) {
    return side.reason == Unpriced::Reason::below_least_step;
  });
  return {all.printed * Exact(spare) + all.once, all.printed + all.good, priced.holds_to - spare,
          offered};
}

Way own_way(const Edition &edition, const Bill &bill) {
  return {"own", [&](std::int64_t copies) { return own_stretch(edition, bill, copies); }};
}

} // namespace bodkin
