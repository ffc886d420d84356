#include "money/arranging_task.hpp"

#include <algorithm>

namespace bodkin::arranging {

namespace {

bool add_page(SheetInRun &sheet, const PageInRun &page, std::size_t side_number) {
  SheetSide &side = sheet.sides[side_number];
  if (page.stock != unasked && sheet.stock != unasked && page.stock != sheet.stock)
    return false;
  if (page.machine != unasked && side.machine != unasked && page.machine != side.machine)
    return false;
  sheet.stock = std::max(sheet.stock, page.stock);
  side.machine = std::max(side.machine, page.machine);
  side.printed = side.printed || page.draws;
  side.mode = std::max(side.mode, page.mode);
  side.numbered = side.numbered || page.numbered;
  side.works |= page.works;
  return true;
}

bool can_be_printed(const SheetInRun &sheet, const Costs &costs) {
  if (!sheet.sides[0].printed || !sheet.sides[1].printed)
    return true;
  const int machine = sheet.sides[0].machine;
  return !costs.prints_one_side[static_cast<std::size_t>(sheet.stock)] &&
         !(machine == sheet.sides[1].machine &&
           costs.turns_none[static_cast<std::size_t>(machine)]);
}

Nano work_on(const SheetInRun &sheet, const Costs &costs) {
  Nano cost = 0;
  for (std::size_t work = 0; work < costs.work_on_sheet.size(); ++work) {
    const std::uint32_t bit = 1U << work;
    const bool front = (sheet.sides[0].works & bit) != 0;
    const bool back = (sheet.sides[1].works & bit) != 0;
    cost += (front || back ? costs.work_on_sheet[work] : 0) +
            ((front ? 1 : 0) + (back ? 1 : 0)) * costs.work_on_side[work];
  }
  return cost;
}

// Runs that stay together have both alike.
void part(AlikeRuns &alike, const AlikeRuns &more) {
  if (more.empty())
    return;
  if (alike.empty()) {
    alike = more;
    return;
  }
  const AlikeRuns before = alike;
  for (std::size_t run = 0; run < alike.size(); ++run)
    for (std::size_t first = 0; first <= run; ++first)
      if (before[first] == before[run] && more[first] == more[run]) {
        alike[run] = static_cast<std::uint32_t>(first);
        break;
      }
}

// By paper and machines.
AlikeRuns printed_alike(const SheetUse &use) {
  const auto same = [](const SheetInRun &one, const SheetInRun &other) {
    return one.stock == other.stock && one.sides[0].machine == other.sides[0].machine &&
           one.sides[1].machine == other.sides[1].machine;
  };
  AlikeRuns alike;
  for (const SheetInRun &sheet : use.runs) {
    const auto first =
        std::ranges::find_if(use.runs, [&](const SheetInRun &other) { return same(other, sheet); });
    alike.push_back(static_cast<std::uint32_t>(first - use.runs.begin()));
  }
  const bool all = std::ranges::all_of(alike, [](std::uint32_t run) { return run == 0; });
  return all ? AlikeRuns{} : alike;
}

} // namespace

bool add_page(SheetUse &use, const PageKind &page, int side) {
  for (std::size_t run = 0; run < use.runs.size(); ++run)
    if (!add_page(use.runs[run], page.runs[run], static_cast<std::size_t>(side)))
      return false;
  part(use.alike, page.alike);
  return true;
}

bool settle(SheetUse &use, const SheetDefaults &defaults, const Costs &costs) {
  for (std::size_t run = 0; run < use.runs.size(); ++run) {
    SheetInRun &sheet = use.runs[run];
    if (sheet.stock == unasked)
      sheet.stock = defaults.stocks[run];
    for (std::size_t side = 0; side < 2; ++side)
      if (sheet.sides[side].machine == unasked)
        sheet.sides[side].machine = defaults.machine[side];
    if (!can_be_printed(sheet, costs))
      return false;
  }
  part(use.alike, printed_alike(use));
  return true;
}

Nano cost_of(const SheetUse &settled, const Costs &costs) {
  Nano cost = 0;
  for (std::size_t run = 0; run < settled.runs.size(); ++run) {
    const SheetInRun &sheet = settled.runs[run];
    cost += costs.runs[run].sheet[static_cast<std::size_t>(sheet.stock)];
    for (const SheetSide &side : sheet.sides)
      if (side.printed)
        cost += costs.runs[run].side[costs.of_side(sheet.stock, side.machine, side.mode)];
    cost += work_on(sheet, costs);
  }
  return cost;
}

std::vector<SheetUse> sheets_of(const Task &task, const std::vector<int> &order) {
  std::vector<int> kind_of(order.size());
  for (const MovingBlock &block : task.blocks)
    std::ranges::copy(block.kinds, kind_of.begin() + block.first);
  std::vector<SheetUse> uses(task.sheets.size(), task.empty_sheet());
  for (std::size_t page = 1; page < order.size(); ++page) {
    const PagePlaceInBook &place = task.places[page];
    const auto kind = static_cast<std::size_t>(kind_of[static_cast<std::size_t>(order[page])]);
    if (!add_page(uses[static_cast<std::size_t>(place.sheet)], task.kinds[kind], place.side))
      return {};
  }
  for (std::size_t sheet = 0; sheet < uses.size(); ++sheet)
    if (!settle(uses[sheet], task.sheets[sheet], task.costs))
      return {};
  return uses;
}

} // namespace bodkin::arranging
