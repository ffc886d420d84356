#include "money/spreadsheet_copies.hpp"

#include <fmt/format.h>

namespace bodkin::spread {
namespace {

int run_row(Rows &rows, std::string_view name, const Run &run) {
  const int here = rows.next();
  return rows.row({words(name), figure(Exact(run.copies)), figure(Exact(run.spare)),
                   count_formula(at('B', here) + "+" + at('C', here))});
}

// Sheets of which the last is used whole, and what needs no rounding.
std::string in_whole(const Counted &counted, const std::string &printed) {
  std::vector<std::string> terms;
  Exact rest = counted.amount.printed;
  for (const InWhole &whole : counted.whole) {
    terms.push_back(
        fmt::format("CEILING({}{};1){}", printed, times(whole.each), times(whole.alike)));
    rest -= whole.each * whole.alike;
  }
  if (!rest.is_zero())
    terms.push_back(printed + times(rest));
  return sum_of(terms);
}

} // namespace

CopyRows::CopyRows(const Edition &edition, Rows &rows)
    : runs_(static_cast<std::uint32_t>(edition.runs.size())) {
  rows.titles({"copies", "good", "spare", "printed", "change good and spare for another run"});
  first_ = rows.next();
  for (const NamedRun &run : edition.runs)
    run_row(rows, run.name, run.run);
  if (runs_ == 0) {
    all_ = run_row(rows, "in all", *edition.run);
    return;
  }
  const int last = rows.next() - 1;
  const auto all = [&](char name) {
    return count_formula("SUM(" + range(name, first_, last) + ")");
  };
  all_ = rows.row({words("in all"), all('B'), all('C'), all('D')});
}

std::string CopyRows::column(char name, const RunSet &only) const {
  if (!only || runs_ == 0)
    return at(name, all_);
  std::vector<std::string> cells;
  for (std::uint32_t run = 0; run < runs_; ++run)
    if (only.holds(run))
      cells.push_back(at(name, first_ + static_cast<int>(run)));
  return cells.size() == 1 ? cells.front() : "(" + sum_of(cells) + ")";
}

std::string CopyRows::counted(const Charge &charge, bool with_spares) const {
  const Counted &of = charge.counted;
  std::vector<std::string> terms;
  if (!of.amount.printed.is_zero())
    terms.push_back(in_whole(of, with_spares ? printed(charge.only) : good(charge.only)));
  if (!of.amount.good.is_zero())
    terms.push_back(good(charge.only) + times(of.amount.good));
  if (!of.amount.once.is_zero())
    terms.push_back("1" + times(of.amount.once));
  return sum_of(terms);
}

} // namespace bodkin::spread
