#include "money/bill.hpp"

#include "measure/paper.hpp"

#include <algorithm>
#include <utility>

namespace bodkin {
namespace {

// The sheets of one stock, of all copies or of those that some runs alone have.
struct StockSheets {
  StockId stock = StockId::none;
  RunSet only;
  Amount sheets{};
  std::vector<InWhole> whole{};
  Counted counted{};
};

// As first met.
std::vector<StockSheets> sheets_by_stock(const Edition &edition, const Imposition &imposition,
                                         Whose whose) {
  std::vector<StockSheets> counts;
  for (const Sheet &sheet : imposition.sheets) {
    if (sheet.stock == StockId::none || (whose == Whose::pieces && sheet.piece.empty()))
      continue;
    const Exact a_copy = Exact::ratio(sheet.in_a_copy, sheet.up);
    const Amount more = for_run(edition, sheet.only, {a_copy, 0, 0});
    const auto known = std::ranges::find_if(counts, [&](const StockSheets &count) {
      return count.stock == sheet.stock && count.only == sheet.only;
    });
    StockSheets &of =
        known != counts.end() ? *known : counts.emplace_back(StockSheets{sheet.stock, sheet.only});
    of.sheets = of.sheets + more;
    of.counted.amount.printed += a_copy;
    add_whole(of.counted.whole, {a_copy, 0});
    // Beside a bid pieces are made for good copies alone.
    add_whole(of.whole,
              {more.printed, whose == Whose::all ? more.once + more.of_spares : more.once});
  }
  return counts;
}

int out_of_one(const Stock &stock) { return stock.cut_from ? (*stock.cut_from)->out : 1; }

StockOrder order_of(const Edition &edition, const Stock &stock) {
  StockOrder order;
  order.have = stock.have ? **stock.have : 0;
  order.out = out_of_one(stock);
  if (stock.cut_from)
    order.parent = written((*stock.cut_from)->parent, ruler_of((*stock.cut_from)->parent));
  const Rate &rate = **stock.costs;
  order.pack = rate.per == Per::sheets ? std::max<std::int64_t>(rate.count, 0) : 0;
  order.price = order.pack > 0 ? in_own_money(edition, rate.price) : price_of_one(edition, rate);
  return order;
}

std::vector<Charge> papers_of(const Edition &edition, const Imposition &imposition, Whose whose,
                              std::vector<Unpriced> &unpriced) {
  std::vector<Charge> papers;
  const Run &run = *edition.run;
  for (const StockSheets &used : sheets_by_stock(edition, imposition, whose)) {
    const Stock &stock = edition[used.stock];
    const std::int64_t printed = run.copies + (whose == Whose::all ? run.spare : 0);
    const Exact run_sheets = used.sheets.of(run.copies, run.spare) + unused(used.whole, printed);
    if (stock.included)
      continue;
    const std::string what = stock.name + " sheets" + alone_in(edition, used.only);
    if (!stock.costs || !counts(edition, (*stock.costs)->price.currency)) {
      const auto reason =
          stock.costs ? Unpriced::Reason::other_currency : Unpriced::Reason::no_price;
      unpriced.push_back(
          {reason, used.stock, MachineId::none, Mode::black, what, run_sheets.ceiling()});
      continue;
    }
    const Known<Rate> &rate = *stock.costs;
    Charge paper{what,        Group::paper,
                 used.sheets, price_of_one(edition, *rate) / Exact(out_of_one(stock)),
                 rate.from,   order_of(edition, stock)};
    paper.bought_as = stock.name + " sheets";
    paper.only = used.only;
    paper.whole = used.whole;
    paper.counted = used.counted;
    if (whose == Whose::pieces)
      paper.amount.of_spares = 0;
    papers.push_back(std::move(paper));
  }
  return papers;
}

// The last of each sheet is used whole, though not all that is cut out of it is wanted. What comes
// of it for this run stands in the charge; for any run it is rounded up anew.
std::vector<RoundedUp> round_up(std::vector<Charge> &papers, std::int64_t printed) {
  std::vector<RoundedUp> rounded;
  for (Charge &paper : papers) {
    for (const InWhole &of : paper.whole)
      rounded.push_back({of.each, of.once, paper.rate * of.alike});
    paper.amount.once += unused(paper.whole, printed);
  }
  return rounded;
}

// All work is paid in one line; that of one run alone in a line of its own.
std::vector<Charge> labour_of(const Edition &edition, const std::vector<Job> &jobs) {
  std::vector<Charge> lines;
  for (const Job &job : jobs) {
    if (!job.labour)
      continue;
    const auto same = std::ranges::find(lines, job.labour->only, &Charge::only);
    if (same != lines.end()) {
      same->amount = same->amount + job.labour->amount;
      same->counted.amount = same->counted.amount + job.labour->counted.amount;
      continue;
    }
    lines.push_back(*job.labour);
    lines.back().what += alone_in(edition, job.labour->only);
  }
  return lines;
}

} // namespace

Bill bill(const Edition &edition, const Imposition &imposition, const ChargedSides &sides,
          std::vector<Job> jobs_of_it) {
  Bill bill;
  bill.sides = count_sides(edition, imposition, sides);
  bill.papers = papers_of(edition, imposition, Whose::all, bill.unpriced_papers);
  bill.beside_printing = sum(bill.papers);
  bill.rounded_papers = round_up(bill.papers, edition.run->copies + edition.run->spare);
  std::vector<Unpriced> said_above;
  bill.sides_of_pieces = count_sides(edition, imposition, sides, Whose::pieces);
  std::vector<Charge> of_pieces = papers_of(edition, imposition, Whose::pieces, said_above);
  bill.papers_of_pieces = sum(of_pieces);
  bill.rounded_papers_of_pieces = round_up(of_pieces, edition.run->copies);
  bill.lines_of_pieces = std::move(of_pieces);
  bill.jobs = std::move(jobs_of_it);
  for (const Job &job : bill.jobs)
    bill.beside_printing = bill.beside_printing + money_of(job);
  return bill;
}

std::vector<Charge> charges_of(const Edition &edition, const Bill &bill, const Printing &printing) {
  std::vector<Charge> all = printing.charges;
  const auto add = [&](const std::vector<Charge> &more) {
    all.insert(all.end(), more.begin(), more.end());
  };
  add(printing.taxes);
  add(bill.papers);
  for (const Group group : {Group::hand, Group::finish, Group::other})
    for (const Job &job : bill.jobs)
      if (job.group == group)
        add(job.charges);
  add(labour_of(edition, bill.jobs));
  return all;
}

Stretch own_stretch(const Edition &edition, const Bill &bill, std::int64_t copies) {
  const std::int64_t spare = edition.run->spare;
  const Printing priced = printing(edition, bill.sides, copies + spare);
  const Amount all = bill.beside_printing + sum(priced.charges) + sum(priced.taxes);
  Stretch stretch{all.printed * Exact(spare) + all.once + all.of_spares, all.printed + all.good,
                  priced.holds_to - spare};
  // The copies of the other runs are made in any case.
  const std::int64_t others =
      edition.runs.empty() ? 0 : edition.run->copies - edition.runs.front().run.copies;
  stretch.offered =
      copies > others && std::ranges::none_of(priced.unpriced, [](const Unpriced &side) {
        return side.reason == Unpriced::Reason::below_least_step;
      });
  if (copies <= others)
    stretch.last = std::min(stretch.last, others);
  stretch.spare = spare;
  stretch.rounded = bill.rounded_papers;
  for (const RoundedUp &sheets : priced.rounded) {
    stretch.at_none -= sheets.unused(copies + spare);
    stretch.rounded.push_back(sheets);
  }
  return stretch;
}

Way own_way(const Edition &edition, const Bill &bill) {
  return {"own", [&](std::int64_t copies) { return own_stretch(edition, bill, copies); }};
}

} // namespace bodkin
