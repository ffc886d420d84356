#include "measure/paper.hpp"
#include "preflight/about.hpp"
#include "preflight/families.hpp"
#include "preflight/stock_line.hpp"
#include "preflight/weights_sold.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <set>

namespace bodkin {
namespace {

std::string weighed(const Weight &weight) {
  if (!weight.pounds)
    return written(weight);
  return fmt::format("{} is {:.0f} gsm", written(weight), weight.grammage.gsm());
}

std::string range_of(const Machine &machine) {
  const auto gsm = [](const std::optional<Known<Weight>> &weight) {
    return fmt::format("{:.0f}", (*weight)->grammage.gsm());
  };
  return fmt::format("{} to {} gsm", gsm(machine.lightest), gsm(machine.heaviest));
}

Problem will_not_feed(const Inspection &inspection, StockId id, const Machine &machine) {
  const Stock &stock = inspection.edition[id];
  const Weight &weight = **stock.weight;
  const bool heavy = machine.heaviest && (*machine.heaviest)->grammage < weight.grammage;
  Problem problem;
  problem.check = "will-not-feed";
  problem.range = stock_range(inspection, id, stock.weight->from);
  problem.message =
      fmt::format("{}; {} takes {}", weighed(weight), machine.name, range_of(machine));
  problem.why = heavy ? "the card would jam in the bend behind the tray"
                      : "the rollers would take several sheets at once, or crease them";
  const Weight passes =
      nearest_sold(weight, machine).value_or(heavy ? **machine.heaviest : **machine.lightest);
  retype_stock(inspection, problem, id, stock.weight->from, written(passes),
               fmt::format("weight     {}", written(passes)),
               passes.pounds ? fmt::format("{:.0f} gsm; or print these pages by another machine",
                                           passes.grammage.gsm())
                             : "or print these pages by another machine");
  if (machine.heaviest && machine.heaviest->from.somewhere())
    problem.related = {{machine.heaviest->from, "what the machine takes is said here"}};
  return problem;
}

bool takes(const Machine &machine, const Size &sheet) {
  return machine.sizes.empty() ||
         std::any_of(machine.sizes.begin(), machine.sizes.end(), [&](const Known<Size> &size) {
           return *size == sheet || size->turned() == sheet;
         });
}

std::string_view grain_of(const Stock &stock) {
  if (*stock.grain == Grain::unsaid)
    return "";
  return *stock.grain == Grain::along_long_edge ? ", grain long" : ", grain short";
}

Problem machine_size(const Inspection &inspection, StockId id, const Machine &machine) {
  const Stock &stock = inspection.edition[id];
  const Ruler ruler = inspection.edition.ruler;
  std::string sizes;
  for (const Known<Size> &size : machine.sizes)
    sizes += (sizes.empty() ? "" : ", ") + written(*size, ruler);
  Problem problem;
  problem.check = "machine-size";
  problem.range = stock_range(inspection, id, stock.sheet->from);
  problem.message =
      fmt::format("{} does not take {} sheets", machine.name, written(**stock.sheet, ruler));
  problem.why = fmt::format("its trays hold {}", sizes);
  const std::string first = written(*machine.sizes.front(), ruler);
  retype_stock(inspection, problem, id, stock.sheet->from, first,
               fmt::format("sheet      {}{}", first, grain_of(stock)),
               "or print these pages by another machine");
  if (machine.sizes.front().from.somewhere())
    problem.related = {{machine.sizes.front().from, "its sizes are said here"}};
  return problem;
}

} // namespace

void check_machines(const Inspection &inspection, Problems &problems) {
  std::set<std::pair<StockId, MachineId>> checked;
  for (std::size_t i = 0; i < inspection.imposition.sheets.size(); ++i) {
    const Sheet &sheet = inspection.imposition.sheets[i];
    for (std::size_t side = 0; side < 2; ++side) {
      const MachineId id = sheet.sides[side].machine;
      if (!inspection.modes[i][side] || sheet.stock == StockId::none || id == MachineId::none ||
          !checked.insert({sheet.stock, id}).second)
        continue;
      const Stock &stock = inspection.edition[sheet.stock];
      const Machine &machine = inspection.edition[id];
      if (stock.weight && !feeds(machine, (*stock.weight)->grammage))
        problems.push_back(will_not_feed(inspection, sheet.stock, machine));
      if (stock.sheet && !takes(machine, **stock.sheet))
        problems.push_back(machine_size(inspection, sheet.stock, machine));
    }
  }
}

} // namespace bodkin
