#include "money/arranging_task.hpp"

#include <algorithm>

namespace bodkin::arranging {

bool add_page(SheetUse &use, const PageKind &page, int side_number) {
  SheetSide &side = use.sides[static_cast<std::size_t>(side_number)];
  if (page.stock != unasked && use.stock != unasked && page.stock != use.stock)
    return false;
  if (page.machine != unasked && side.machine != unasked && page.machine != side.machine)
    return false;
  use.stock = std::max(use.stock, page.stock);
  side.machine = std::max(side.machine, page.machine);
  side.printed = side.printed || page.draws;
  side.mode = std::max(side.mode, page.mode);
  side.works |= page.works;
  return true;
}

bool settle(SheetUse &use, const SheetDefaults &defaults, const Costs &costs) {
  if (use.stock == unasked)
    use.stock = defaults.stock;
  for (std::size_t side = 0; side < 2; ++side)
    if (use.sides[side].machine == unasked)
      use.sides[side].machine = defaults.machine[side];
  if (!use.sides[0].printed || !use.sides[1].printed)
    return true;
  const int machine = use.sides[0].machine;
  return !costs.prints_one_side[static_cast<std::size_t>(use.stock)] &&
         !(machine == use.sides[1].machine && costs.turns_none[static_cast<std::size_t>(machine)]);
}

Nano cost_of(const SheetUse &settled, const Costs &costs) {
  Nano cost = costs.sheet[static_cast<std::size_t>(settled.stock)];
  for (const SheetSide &side : settled.sides)
    if (side.printed)
      cost += costs.of_side(settled.stock, side.machine, side.mode);
  for (std::size_t work = 0; work < costs.work_on_sheet.size(); ++work) {
    const std::uint32_t bit = 1U << work;
    const bool front = (settled.sides[0].works & bit) != 0;
    const bool back = (settled.sides[1].works & bit) != 0;
    cost += (front || back ? costs.work_on_sheet[work] : 0) +
            ((front ? 1 : 0) + (back ? 1 : 0)) * costs.work_on_side[work];
  }
  return cost;
}

std::vector<SheetUse> sheets_of(const Task &task, const std::vector<int> &order) {
  std::vector<int> kind_of(order.size());
  for (const MovingBlock &block : task.blocks)
    std::ranges::copy(block.kinds, kind_of.begin() + block.first);
  std::vector<SheetUse> uses(task.sheets.size());
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
