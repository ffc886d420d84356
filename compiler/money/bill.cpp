#include "money/bill.hpp"

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
std::vector<std::pair<StockId, std::int64_t>> sheets_by_stock(const Imposition &imposition) {
  std::vector<std::pair<StockId, std::int64_t>> counts;
  for (const Sheet &sheet : imposition.sheets) {
    const auto same = [&](const auto &count) { return count.first == sheet.stock; };
    const auto known = std::ranges::find_if(counts, same);
    if (known != counts.end())
      ++known->second;
    else if (sheet.stock != StockId::none)
      counts.emplace_back(sheet.stock, 1);
  }
  return counts;
}

void add_papers(Bill &bill, const Edition &edition, const Imposition &imposition) {
  const std::int64_t printed_copies = edition.run->copies + edition.run->spare;
  for (const auto &[id, sheets] : sheets_by_stock(imposition)) {
    const Stock &stock = edition[id];
    const std::string what = stock.name + " sheets";
    if (stock.included)
      continue;
    if (!stock.costs || !same_money(*edition.currency, (*stock.costs)->price.currency)) {
      const auto reason =
          stock.costs ? Unpriced::Reason::other_currency : Unpriced::Reason::no_price;
      bill.unpriced_papers.push_back(
          {reason, id, MachineId::none, Mode::black, what, sheets * printed_copies});
      continue;
    }
    const Known<Rate> &rate = *stock.costs;
    const bool packed = rate->per == Per::sheets && rate->count > 0;
    bill.papers.push_back({what,
                           Group::paper,
                           {sheets, 0, 0},
                           price_of_one(*rate),
                           rate.from,
                           packed ? rate->count : 0,
                           Exact(rate->price.amount)});
  }
}

} // namespace

Bill bill(const Edition &edition, const Imposition &imposition, const ChargedSides &sides,
          std::vector<Job> jobs_of_it) {
  Bill bill;
  bill.sides = count_sides(edition, imposition, sides);
  add_papers(bill, edition, imposition);
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
