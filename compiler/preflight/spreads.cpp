#include "preflight/about.hpp"
#include "preflight/families.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {
namespace {

bool something_crosses(const Inspection &inspection, const Spread &spread) {
  const auto &items = inspection.drawings[spread.left].items;
  return std::any_of(items.begin(), items.end(),
                     [&](const Item &item) { return item.crosses_fold && !item.running; });
}

std::string paper_of(const Inspection &inspection, int page) {
  const Sheet &sheet = inspection.imposition.sheet_of(page);
  return sheet.stock == StockId::none ? std::string("paper") : inspection.edition[sheet.stock].name;
}

Length drift_of(const Inspection &inspection, int page) {
  const Spotted &spot = inspection.imposition.where[static_cast<std::size_t>(page)];
  const MachineId id = inspection.imposition.sheets[static_cast<std::size_t>(spot.sheet)]
                           .sides[static_cast<std::size_t>(spot.side)]
                           .machine;
  return id == MachineId::none ? Length{} : *inspection.edition[id].drift;
}

// Facing pages that are one piece of paper on one side.
std::vector<int> whole_spreads(const Inspection &inspection) {
  std::vector<int> lefts;
  for (int left = 2; left + 1 <= inspection.imposition.page_count; left += 2) {
    const Spotted &a = inspection.imposition.where[static_cast<std::size_t>(left)];
    const Spotted &b = inspection.imposition.where[static_cast<std::size_t>(left) + 1];
    if (a.sheet == b.sheet && a.side == b.side)
      lefts.push_back(left);
  }
  return lefts;
}

Problem split_spread(const Inspection &inspection, const Spread &spread) {
  const int l = spread.left, r = spread.right;
  const std::string left = paper_of(inspection, l), right = paper_of(inspection, r);
  Problem problem;
  problem.kind = Kind::warning;
  problem.check = "split-spread";
  problem.range = spread.opened;
  problem.message = fmt::format("pages {} and {} face each other but are two pieces of paper: {} "
                                "is {}, sheet {}; {} is {}, sheet {}",
                                l, r, l, left, inspection.imposition.sheet_of(l).number, r, right,
                                inspection.imposition.sheet_of(r).number);
  const Length drift = std::max(drift_of(inspection, l), drift_of(inspection, r));
  problem.why =
      fmt::format("the halves may miss each other by {} (drift){}", length(inspection, drift),
                  left == right ? "" : " and change colour at the fold");
  const std::vector<int> whole = whole_spreads(inspection);
  if (!whole.empty()) {
    problem.why += fmt::format("; only {}-{} is one piece", whole.front(), whole.front() + 1);
    problem.type = {{fmt::format("spread {}-{}", whole.front(), whole.front() + 1), {}}};
  }
  return problem;
}

} // namespace

void check_spreads(const Inspection &inspection, Problems &problems) {
  for (const Spread &spread : inspection.edition.spreads) {
    const Spotted &a = inspection.imposition.where[static_cast<std::size_t>(spread.left)];
    const Spotted &b = inspection.imposition.where[static_cast<std::size_t>(spread.right)];
    const bool one_piece = a.sheet == b.sheet && a.side == b.side;
    if (!one_piece && something_crosses(inspection, spread))
      problems.push_back(split_spread(inspection, spread));
  }
}

} // namespace bodkin
