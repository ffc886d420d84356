#include "money/spreadsheet_steps.hpp"

#include "measure/limits.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <vector>

namespace bodkin::spread {
namespace {

// By sides from which they count, of two alike the later line.
std::map<std::int64_t, Exact> steps_of(const Edition &edition, const Counted &of) {
  std::map<std::int64_t, Exact> steps;
  for (const SidePrice &price : first_of(edition[of.machine].prints, limits::price_steps)) {
    const bool speaks = price.mode == *of.mode && price.size.has_value() == of.size.has_value() &&
                        (!of.size || price.size->upright() == of.size->upright());
    if (speaks)
      steps[std::max<std::int64_t>(price.from_sides, 1)] =
          counts(edition, price.rate.price.currency) ? price_of_one(edition, price.rate) : Exact();
  }
  return steps;
}

// "colour sides at corner on a4", whosever copies they are for.
std::string name_of(const Edition &edition, const Charge &charge) {
  const std::string whose = alone_in(edition, charge.only);
  return charge.what.substr(0, charge.what.size() - whose.size());
}

} // namespace

StepRows::Key StepRows::key_of(const Counted &counted) {
  return {counted.machine, *counted.mode, counted.size ? counted.size->upright() : Size{}};
}

StepRows::StepRows(const Edition &edition, Rows &rows, std::span<const Charge> charges) {
  for (const Charge &charge : charges) {
    if (!charge.counted.mode || tables_.count(key_of(charge.counted)) > 0)
      continue;
    const std::map<std::int64_t, Exact> steps = steps_of(edition, charge.counted);
    if (steps.size() < 2 && (steps.empty() || steps.begin()->first == 1))
      continue;
    rows.titles({name_of(edition, charge), "from sides", "", "price of one"});
    const int first = rows.next();
    if (steps.begin()->first > 1)
      rows.row({words("no price"), figure(0), nothing(), figure(0)});
    for (const auto &[from, price] : steps)
      rows.row({nothing(), figure(from), nothing(), figure(price)});
    tables_[key_of(charge.counted)] = {first, rows.next() - 1};
  }
}

std::string StepRows::rate(const Charge &charge, const std::string &sides) const {
  const auto table = charge.counted.mode ? tables_.find(key_of(charge.counted)) : tables_.end();
  if (table == tables_.end())
    return figure(charge.rate);
  const auto [first, last] = table->second;
  return count_formula(fmt::format("LOOKUP(CEILING({};1);{};{})", sides, range('B', first, last),
                                   range('D', first, last)));
}

} // namespace bodkin::spread
