#include "money/spreadsheet_sales.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::spread {
namespace {

struct SaleRows {
  const Edition &edition;
  const Estimate &estimate;
  const CopyRows &copies;
  const CostCells &costs;
  Rows &rows;
  int given = 0;

  std::size_t run_of(const SaleFigures &way) const {
    const auto run = std::find_if(estimate.runs.begin(), estimate.runs.end(),
                                  [&](const RunFigures &of) { return of.name == way.run; });
    return static_cast<std::size_t>(run - estimate.runs.begin());
  }
  std::string makes(const SaleFigures &way) const {
    return way.run.empty() ? costs.a_copy : costs.of_runs[run_of(way)];
  }
  // No more copies than these can be sold so.
  std::string most(const SaleFigures &way) const {
    const std::string all = fmt::format("MAX(0;{}-{})", copies.good({}), at('B', given));
    return way.run.empty()
               ? all
               : fmt::format("MIN({};{})", all,
                             copies.good(RunSet(static_cast<std::uint32_t>(run_of(way)))));
  }

  // The fewest copies whose price pays for so much; words where no number of them does. A
  // thousandth of a cent is floating point and no debt.
  static std::string copies_for(const std::string &money, const std::string &brings,
                                const std::string &most, std::string_view never) {
    return fmt::format("IF({0}<=0.00001;0;IF({1}<=0;{3};IF(CEILING(({0}-0.00001)/{1};1)<={2};"
                       "CEILING(({0}-0.00001)/{1};1);{3})))",
                       money, brings, most, never);
  }

  // B copies, C price, D kept, F and G costs, H brings, I margin, J pays for the run, K owed
  // before, L sold before, M paid after.
  void way(const SaleFigures &of, bool is_first) {
    const int here = rows.next();
    const auto cell = [&](char column) { return at(column, here); };
    const std::string owed =
        is_first ? costs.run : fmt::format("{}-{}", at('K', here - 1), at('E', here - 1));
    const std::string sold =
        is_first ? "0" : fmt::format("{}+{}", at('L', here - 1), at('B', here - 1));
    const std::string enough =
        copies_for("(" + cell('K') + "+" + cell('G') + ")", cell('H'), cell('B'), "\"\"");
    rows.row({words(of.run.empty() ? of.where : of.where + ", " + of.run), figure(Exact(of.copies)),
              figure(of.price), figure(of.keeps),
              formula(fmt::format("IF({0}=0;0;{0}*{1}-{2})", cell('B'), cell('H'), cell('G'))),
              figure(of.costs), figure(of.costs_once),
              formula(fmt::format("{}-{}-{}", cell('C'), cell('D'), cell('F'))),
              formula(fmt::format("{}-{}", cell('H'), makes(of))),
              count_formula(copies_for("(" + costs.run + "+" + cell('G') + ")", cell('H'), most(of),
                                       "\"never\"")),
              formula(owed), count_formula(sold),
              count_formula(fmt::format("IF({0}=0;\"\";IF(ISNUMBER({1});{2}+{1};\"\"))", cell('B'),
                                        enough, cell('L')))});
  }

  void gifts() {
    given = rows.row({words("given away"), figure(Exact(estimate.sales->given)), nothing(),
                      nothing(), nothing()});
  }

  void sums(int first, int last) {
    rows.total("given away, at what they cost to make", at('B', given) + "*" + costs.a_copy);
    if (first > last)
      return;
    const int all = rows.total("all sold", "SUM(" + range('E', first, last) + ")");
    rows.total("remains", at('E', all) + "-" + costs.run);
    count("copies sold", "SUM(" + range('B', first, last) + ")");
    count("neither sold nor given",
          fmt::format("{}-{}-SUM({})", copies.good({}), at('B', given), range('B', first, last)));
    const std::string after = range('M', first, last);
    count("paid after", fmt::format("IF(COUNT({0})=0;\"never\";MIN({0}))", after));
  }
  void count(std::string_view name, const std::string &of) {
    rows.row({words(name), nothing(), nothing(), nothing(), count_formula(of)});
  }
};

} // namespace

void write_sales(const Edition &edition, const Estimate &estimate, const CopyRows &copies,
                 const CostCells &costs, Rows &rows) {
  if (!estimate.sales)
    return;
  SaleRows sales{edition, estimate, copies, costs, rows};
  rows.titles({"selling", "copies", "price", "seller keeps", "total", "costs a copy", "costs once",
               "brings", "margin", "pays for the run", "owed before", "sold before", "paid after"});
  sales.gifts();
  const int first = rows.next();
  for (const SaleFigures &way : estimate.sales->ways)
    sales.way(way, rows.next() == first);
  sales.sums(first, rows.next() - 1);
}

} // namespace bodkin::spread
