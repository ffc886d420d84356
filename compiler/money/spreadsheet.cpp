#include "money/spreadsheet.hpp"

#include "money/spreadsheet_lines.hpp"
#include "money/spreadsheet_offers.hpp"
#include "money/spreadsheet_sales.hpp"
#include "money/zip.hpp"

#include <algorithm>
#include <array>
#include <fmt/format.h>

namespace bodkin {
namespace {

using namespace spread;

constexpr std::string_view mime = "application/vnd.oasis.opendocument.spreadsheet";

constexpr std::string_view manifest =
    "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
    "<manifest:manifest xmlns:manifest=\"urn:oasis:names:tc:opendocument:xmlns:manifest:1.0\" "
    "manifest:version=\"1.2\">\n"
    "<manifest:file-entry manifest:full-path=\"/\" "
    "manifest:media-type=\"application/vnd.oasis.opendocument.spreadsheet\"/>\n"
    "<manifest:file-entry manifest:full-path=\"content.xml\" manifest:media-type=\"text/xml\"/>\n"
    "</manifest:manifest>\n";

struct Sheeting {
  const Edition &edition;
  const Estimate &estimate;
  const Bill &bill;
  const std::vector<Charge> charges;
  const std::vector<Charge> beside;
  Rows rows{};
  CostCells costs{};
  std::string purse{};
  int first_bought = 0, last_bought = 0;

  std::string content() {
    rows.titles({*edition.title, std::string(estimate.currency.code())});
    const CopyRows copies(edition, rows);
    std::vector<Charge> all = charges;
    all.insert(all.end(), beside.begin(), beside.end());
    const StepRows steps(edition, rows, all);
    LineRows lines(edition, copies, steps, true);
    lines.write(rows, charges);
    bought(lines);
    sums(lines, copies);
    write_sales(edition, estimate, copies, costs, rows);
    paid(lines);
    offers(copies, steps);
    notes();
    return rows.document();
  }

  void bought(const LineRows &lines) {
    if (estimate.purchases.empty())
      return;
    rows.titles({"bought", "needed", "at hand", "out of each", "total", "in a pack", "price"});
    first_bought = rows.next();
    for (const Purchase &paper : estimate.purchases)
      bought(paper, lines);
    last_bought = rows.next() - 1;
  }

  void bought(const Purchase &paper, const LineRows &lines) {
    std::vector<std::string> needed;
    for (const LineRows::Line &line : lines.lines())
      if (line.charge.bought_as == paper.what)
        needed.push_back(at('C', line.row));
    rows.row({words(paper.what), count_formula(sum_of(needed)), figure(Exact(paper.order.have)),
              figure(Exact(paper.order.out)),
              formula(fmt::format("CEILING(CEILING(MAX(0;CEILING([.B{0}];1)-[.C{0}])/[.D{0}];1)/"
                                  "[.F{0}];1)*[.G{0}]",
                                  rows.next())),
              figure(Exact(std::max<std::int64_t>(paper.order.pack, 1))),
              figure(paper.order.price)});
  }

  void sums(const LineRows &lines, const CopyRows &copies) {
    rows.titles({"sums"});
    costs.run = at('E', rows.total("the run", lines.total()));
    costs.a_copy = at('E', rows.total("a copy", costs.run + "/" + copies.good({})));
    for (std::uint32_t run = 0; run < edition.runs.size(); ++run)
      costs.of_runs.push_back(
          at('E', rows.total("a copy " + edition.runs[run].name, copy_of(run, lines, copies))));
    std::string of = costs.run;
    if (first_bought > 0)
      of += fmt::format("-SUMIF({};\"paper\";{})+SUM({})", range('B', lines.first(), lines.last()),
                        range('E', lines.first(), lines.last()),
                        range('E', first_bought, last_bought));
    purse = at('E', rows.total("out of the purse", of));
    budget();
    prices();
  }

  // What all share, and what is its own.
  std::string copy_of(std::uint32_t run, const LineRows &lines, const CopyRows &copies) const {
    std::vector<std::string> shares;
    for (const LineRows::Line &line : lines.lines())
      if (line.charge.only.holds(run))
        shares.push_back(at('E', line.row) + "/" + copies.good(line.charge.only));
    return sum_of(shares);
  }

  void budget() {
    if (!estimate.budget)
      return;
    const bool of_run = estimate.budget->of_run;
    const int limit = rows.row({words(of_run ? "budget a run" : "budget a copy"), nothing(),
                                nothing(), nothing(), figure(estimate.budget->limit)});
    rows.total("left of the budget", at('E', limit) + "-" + (of_run ? costs.run : costs.a_copy));
  }

  void price(std::string_view whose, const Exact &asked, const std::string &cost) {
    const int here = rows.next();
    rows.row({words(fmt::format("price a copy{}", whose)), nothing(), nothing(), figure(asked),
              formula(at('D', here) + "-" + cost)});
  }

  // What remains of the price of a copy.
  void prices() {
    if (edition.runs.empty() && edition.price && counts(edition, (*edition.price)->currency))
      price(", less what it costs", in_own_money(edition, **edition.price), costs.a_copy);
    for (std::size_t run = 0; run < estimate.runs.size(); ++run)
      if (const RunFigures &of = estimate.runs[run]; of.price)
        price(fmt::format(" {}, less what it costs", of.name), *of.price, costs.of_runs[run]);
  }

  void paid(const LineRows &lines) {
    if (estimate.paid.empty())
      return;
    rows.titles({"really paid", "paid", "estimated", "", "paid more"});
    for (const PaidFigures &of : estimate.paid) {
      const int here = rows.next();
      rows.row({words("paid for " + of.what), figure(of.paid), formula(estimated(of, lines)),
                nothing(), formula(at('B', here) + "-" + at('C', here))});
    }
  }

  std::string estimated(const PaidFigures &of, const LineRows &lines) const {
    if (!of.only && of.kind == PaidFor::everything)
      return purse;
    if (!of.only && of.kind == PaidFor::paper)
      return first_bought > 0 ? "SUM(" + range('E', first_bought, last_bought) + ")" : "0";
    std::vector<std::string> terms;
    for (const LineRows::Line &line : lines.lines())
      if ((!of.only || line.charge.only == of.only) && is_for(of.kind, line.charge.group))
        terms.push_back(line.charge.group == Group::paper ? bought_for(line) : at('E', line.row));
    return sum_of(terms);
  }

  // Its share of the packs that are bought.
  std::string bought_for(const LineRows::Line &line) const {
    int row = first_bought;
    for (const Purchase &paper : estimate.purchases) {
      if (paper.what == line.charge.bought_as)
        return fmt::format("IF([.B{0}]=0;0;[.E{0}]*{1}/[.B{0}])", row, at('C', line.row));
      ++row;
    }
    return at('E', line.row);
  }

  void offers(const CopyRows &copies, const StepRows &steps) {
    if (estimate.bids.empty())
      return;
    std::string yours = "0";
    if (!beside.empty()) {
      rows.titles({"still yours beside any offer, for good copies alone"});
      LineRows lines(edition, copies, steps, false);
      lines.write(rows, beside);
      yours = at('E', rows.total("still yours", lines.total()));
    }
    write_offers(edition, copies, yours, rows);
  }

  // What no formula here follows when the copies are changed.
  void notes() {
    rows.titles({"typed here, and no formulas"});
    rows.note("Sheets, sides, passes and minutes of one copy are those of the manuscript.");
    if (!edition.other_machines.empty())
      rows.note("Which machine prints which sheet was chosen for these copies; for others another "
                "may be cheaper, and bodkin estimate chooses anew.");
    if (!bill.sides.blank.empty())
      rows.note("Blank sides that are charged are counted as the cheaper of black and colour for "
                "these copies.");
    for (const Unpriced &thing : estimate.unpriced)
      rows.note(fmt::format("Left out, since it has no price that counts: {}.", thing.what));
  }
};

} // namespace

std::string estimate_as_spreadsheet(const Edition &edition, const Imposition &imposition,
                                    const ChargedSides &sides, const Estimate &estimate) {
  const Bill made = bill(edition, imposition, sides, jobs(edition, imposition));
  const Printing printed = printing(edition, made.sides, estimate.copies + estimate.spare);
  Sheeting sheeting{edition, estimate, made, charges_of(edition, made, printed),
                    charges_beside_offers(edition, made)};
  const std::string content = sheeting.content();
  const std::array<ZippedFile, 3> files{
      {{"mimetype", mime}, {"META-INF/manifest.xml", manifest}, {"content.xml", content}}};
  return zipped(files);
}

} // namespace bodkin
