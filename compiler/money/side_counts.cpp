#include "money/side_counts.hpp"

#include <utility>

namespace bodkin {
namespace {

// A bid needs no spares, so what its copies hold beside it is counted for good ones.
SideCount sides_on(const Edition &edition, const Sheet &sheet, const ChargedSide &side,
                   Whose whose) {
  const Exact a_copy = Exact::ratio(sheet.in_a_copy, sheet.up);
  const Amount amount = for_run(edition, sheet.only, {a_copy, 0, 0});
  SideCount count{side.machine,
                  sheet.size.upright(),
                  side.printed ? side.mode : Mode::black,
                  amount.printed,
                  whose == Whose::all ? amount.once + amount.of_spares : amount.once,
                  sheet.only};
  add_whole(count.whole, {count.sides, count.once});
  count.counted.amount.printed = a_copy;
  add_whole(count.counted.whole, {a_copy, 0});
  return count;
}

} // namespace

void add(Counted &counted, const Counted &more) {
  counted.amount = counted.amount + more.amount;
  for (const InWhole &whole : more.whole)
    add_whole(counted.whole, whole);
}

void add(std::vector<SideCount> &counts, const SideCount &more) {
  for (SideCount &count : counts)
    if (count.machine == more.machine && count.size == more.size && count.mode == more.mode &&
        count.only == more.only) {
      count.sides += more.sides;
      count.once += more.once;
      for (const InWhole &whole : more.whole)
        add_whole(count.whole, whole);
      add(count.counted, more.counted);
      return;
    }
  counts.push_back(more);
}

SideCounts count_sides(const Edition &edition, const Imposition &imposition,
                       const ChargedSides &sides, Whose whose) {
  SideCounts counts;
  std::map<std::pair<MachineId, int>, RunSet> passes;
  for (const ChargedSide &side : sides) {
    if (side.machine == MachineId::none)
      continue;
    const Sheet &sheet = imposition.sheets[static_cast<std::size_t>(side.sheet)];
    if (whose == Whose::pieces && sheet.piece.empty())
      continue;
    const auto [pass, first] = passes.try_emplace({side.machine, side.pass}, sheet.only);
    if (!first)
      pass->second = pass->second.with(sheet.only);
    if (side.printed)
      add(counts.printed, sides_on(edition, sheet, side, whose));
    else if (*edition[side.machine].blank_charged && side.fed_both)
      add(counts.blank, sides_on(edition, sheet, side, whose));
  }
  for (const auto &[pass, only] : passes)
    ++counts.passes[pass.first][only];
  return counts;
}

} // namespace bodkin
