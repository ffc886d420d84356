#include "sheet/printings.hpp"

#include "sheet/machine_of.hpp"
#include "sheet/numbered.hpp"

#include <map>
#include <tuple>

namespace bodkin {
namespace {

// What may go through a machine in one pass.
using PassKey = std::tuple<StockId, std::string, RunSet, MachineId, int, bool>;

// Sheets that differ from copy to copy are fed by themselves; a machine that turns sheets over
// prints both sides of them then.
PassKey key_of(const Edition &edition, const Sheet &sheet, int side, Mode mode) {
  const Side &here = sheet.sides[static_cast<std::size_t>(side)];
  const Machine &machine = machine_of(edition, here.machine);
  const int apart = *machine.modes_apart ? static_cast<int>(mode) : -1;
  const bool numbered = *machine.duplex == Duplex::by_machine ? is_numbered(sheet) : here.numbered;
  return {sheet.stock, sheet.piece, sheet.only, here.machine, apart, numbered};
}

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
  std::map<PassKey, std::size_t> known;
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
      const auto [entry, fresh] = known.emplace(key_of(edition, sheet, side, *mode), runs.size());
      if (fresh) {
        PassPrinting run;
        run.stock_order = order;
        run.stock = sheet.stock;
        run.piece = sheet.piece;
        run.only = sheet.only;
        run.machine = sheet.sides[static_cast<std::size_t>(side)].machine;
        runs.push_back(std::move(run));
      }
      PassPrinting &run = runs[entry->second];
      add_side(run, static_cast<int>(i), side, *mode);
      run.shows[static_cast<std::size_t>(side)] |=
          sheet.sides[static_cast<std::size_t>(side)].numbered;
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
  half.shows[1 - side] = false;
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
