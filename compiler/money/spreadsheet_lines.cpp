#include "money/spreadsheet_lines.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::spread {
namespace {

bool is_least(const Charge &charge) { return charge.in_one_sum; }
bool is_printing_at(const Charge &charge, MachineId machine) {
  return charge.group == Group::printing && charge.counted.machine == machine;
}

} // namespace

LineRows::LineRows(const Edition &edition, const CopyRows &copies, const StepRows &steps,
                   bool with_spares)
    : edition_(edition), copies_(copies), steps_(steps), with_spares_(with_spares) {}

void LineRows::write(Rows &rows, const std::vector<Charge> &charges) {
  for (const Charge &charge : charges)
    lines_.push_back({charge});
  for (std::uint32_t machine = 0; machine < edition_.machines.size(); ++machine)
    add_least(static_cast<MachineId>(machine));
  rows.titles({"what", "group", "quantity", "rate", "total"});
  first_ = rows.next();
  for (std::size_t i = 0; i < lines_.size(); ++i)
    lines_[i].row = first_ + static_cast<int>(i);
  for (const Line &line : lines_)
    write_line(rows, line.charge);
}

// A machine's least has a line, and its tax, though this run costs more: another may not.
void LineRows::add_least(MachineId machine) {
  const Machine &of = edition_[machine];
  if (!of.least || !counts(edition_, (*of.least)->price.currency))
    return;
  const auto ours = [&](const Line &line) { return is_printing_at(line.charge, machine); };
  const auto last = std::find_if(lines_.rbegin(), lines_.rend(), ours);
  if (last == lines_.rend() || is_least(last->charge))
    return;
  Charge least{"least at " + of.name, Group::printing, {}, 1, of.least->from};
  least.in_one_sum = true;
  least.counted.machine = machine;
  lines_.insert(last.base(), {least});
  const bool is_taxed = std::any_of(lines_.begin(), lines_.end(), [&](const Line &line) {
    return line.charge.group == Group::tax && line.charge.counted.machine == machine &&
           !line.charge.only;
  });
  if (!of.tax || is_taxed)
    return;
  Charge tax{"tax at " + of.name, Group::tax, {}, Exact(**of.tax), of.tax->from};
  tax.counted.machine = machine;
  lines_.push_back({tax});
}

void LineRows::write_line(Rows &rows, const Charge &charge) const {
  const int here = rows.next();
  const std::string what = words(charge.what), group = words(name_of(charge.group));
  const std::string product = formula(at('C', here) + "*" + at('D', here));
  if (is_least(charge)) {
    const Rate &of = **edition_[charge.counted.machine].least;
    rows.row({what, group, nothing(), figure(price_of_one(edition_, of)),
              formula(fmt::format("MAX(0;{}-({}))", at('D', here), least(charge)))});
  } else if (charge.group == Group::tax) {
    rows.row({what, group, formula(taxed(charge)), figure(charge.rate), product});
  } else {
    rows.row({what, group, count_formula(copies_.counted(charge, with_spares_)),
              steps_.rate(charge, charge.counted.mode ? sides(charge.counted) : ""), product});
  }
}

// What the machine takes before its least is asked for.
std::string LineRows::least(const Charge &charge) const {
  return sum('E', [&](const Charge &other) {
    return is_printing_at(other, charge.counted.machine) && !is_least(other);
  });
}

std::string LineRows::taxed(const Charge &tax) const {
  return sum('E', [&](const Charge &other) {
    return is_printing_at(other, tax.counted.machine) && other.only == tax.only;
  });
}

// All of one mode at a machine, whatever their size and whosever they are.
std::string LineRows::sides(const Counted &of) const {
  return sum('C', [&](const Charge &other) {
    return other.counted.machine == of.machine && other.counted.mode == of.mode;
  });
}

std::string LineRows::total() const {
  return lines_.empty() ? "0" : "SUM(" + range('E', first(), last()) + ")";
}

} // namespace bodkin::spread
