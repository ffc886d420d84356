#include "sheet/printings.hpp"

#include "sheet/machine_of.hpp"

#include <map>
#include <tuple>

namespace bodkin {
namespace {

void add_side(PassPrinting &run, int sheet, int side, Mode mode) {
  if (run.sheets.empty() || run.sheets.back() != sheet) {
    run.sheets.push_back(sheet);
    run.prints.push_back({false, false});
  }
  run.prints.back()[static_cast<std::size_t>(side)] = true;
  run.mode = std::max(run.mode, mode);
}

std::vector<PassPrinting> gather(const Edition &edition, const Imposition &imposition,
                                 std::span<const SheetModes> modes) {
  using Key = std::tuple<StockId, std::string, MachineId, int>;
  std::map<Key, std::size_t> known;
  std::map<std::pair<StockId, std::string>, int> stock_order;
  std::vector<PassPrinting> runs;
  for (std::size_t i = 0; i < imposition.sheets.size(); ++i) {
    const Sheet &sheet = imposition.sheets[i];
    const int order =
        stock_order
            .emplace(std::pair(sheet.stock, sheet.piece), static_cast<int>(stock_order.size()))
            .first->second;
    for (int side = 0; side < 2; ++side) {
      const SideMode &mode = modes[i][static_cast<std::size_t>(side)];
      if (!mode)
        continue;
      const MachineId machine = sheet.sides[static_cast<std::size_t>(side)].machine;
      const int apart = *machine_of(edition, machine).modes_apart ? static_cast<int>(*mode) : -1;
      const auto [entry, fresh] =
          known.emplace(Key{sheet.stock, sheet.piece, machine, apart}, runs.size());
      if (fresh) {
        PassPrinting run;
        run.stock_order = order;
        run.stock = sheet.stock;
        run.piece = sheet.piece;
        run.machine = machine;
        runs.push_back(std::move(run));
      }
      add_side(runs[entry->second], static_cast<int>(i), side, *mode);
    }
  }
  return runs;
}

PassPrinting only(const PassPrinting &run, PassSides sides) {
  PassPrinting half = run;
  half.sides = sides;
  half.sheets.clear();
  half.prints.clear();
  const std::size_t side = sides == PassSides::fronts ? 0 : 1;
  for (std::size_t i = 0; i < run.sheets.size(); ++i)
    if (run.prints[i][side]) {
      half.sheets.push_back(run.sheets[i]);
      half.prints.push_back(run.prints[i]);
    }
  return half;
}

// A machine that turns sheets itself prints both sides in one pass; else each side is one.
std::vector<PassPrinting> split(const Edition &edition, const std::vector<PassPrinting> &runs) {
  std::vector<PassPrinting> passes;
  for (const PassPrinting &run : runs) {
    const bool fronts = run.prints_any(0), backs = run.prints_any(1);
    if (fronts && backs && *machine_of(edition, run.machine).duplex == Duplex::by_machine) {
      passes.push_back(run);
      continue;
    }
    if (fronts)
      passes.push_back(only(run, PassSides::fronts));
    if (backs)
      passes.push_back(only(run, PassSides::backs));
  }
  std::stable_sort(passes.begin(), passes.end(), [](const PassPrinting &a, const PassPrinting &b) {
    const auto key = [](const PassPrinting &run) {
      return std::tuple(run.stock_order, -static_cast<int>(run.mode),
                        run.sides == PassSides::backs);
    };
    return key(a) < key(b);
  });
  return passes;
}

} // namespace

std::vector<PassPrinting> printings(const Edition &edition, const Imposition &imposition,
                                    std::span<const SheetModes> modes) {
  return split(edition, gather(edition, imposition, modes));
}

} // namespace bodkin
