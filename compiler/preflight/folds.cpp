#include "measure/paper.hpp"
#include "preflight/about.hpp"
#include "preflight/families.hpp"
#include "preflight/stock_line.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <set>

namespace bodkin {
namespace {

// By common practice, no source: above the first, a fold without a crease cracks the surface; above
// the second, one across the grain is rough.
constexpr Grammage needs_crease{150'000}, rough_across{120'000};

bool creased(const Edition &edition, int sheet_number) {
  return std::any_of(edition.finish.begin(), edition.finish.end(), [&](const FinishStep &step) {
    return step.kind == StepKind::crease && (step.all || sheet_number == 1);
  });
}

const FinishStep *step_of(const Edition &edition, StepKind kind) {
  for (const FinishStep &step : edition.finish)
    if (step.kind == kind)
      return &step;
  return nullptr;
}

bool is_card(const Inspection &inspection, const Sheet &sheet) {
  if (sheet.stock == StockId::none)
    return false;
  const Stock &stock = inspection.edition[sheet.stock];
  return stock.weight && (*stock.weight)->grammage > needs_crease;
}

bool card_inside(const Inspection &inspection) {
  const auto &sheets = inspection.imposition.sheets;
  return std::any_of(sheets.begin(), sheets.end(), [&](const Sheet &sheet) {
    return sheet.number > 1 && is_card(inspection, sheet);
  });
}

Problem uncreased_card(const Inspection &inspection, const Sheet &sheet, const Stock &stock) {
  const FinishStep *fold = step_of(inspection.edition, StepKind::fold);
  const bool cover = sheet.number == 1 && !card_inside(inspection);
  Problem problem;
  problem.check = "uncreased-card";
  problem.range = fold ? fold->range : stock_range(inspection, sheet.stock, stock.range);
  problem.message = fmt::format("{} is folded without a crease", stock.name);
  problem.why = fmt::format("{} is {:.0f} gsm; above 150 the surface cracks along a fold that no "
                            "groove was pressed for",
                            written(**stock.weight), (*stock.weight)->grammage.gsm());
  const std::string line = fmt::format("crease     {}", cover ? "cover" : "all");
  if (fold)
    type_before(inspection, problem, fold->range, line, "on a line before the fold");
  else
    problem.type = {{line, "under `finish`, before the fold"}};
  return problem;
}

bool has_spine(const Sheet &sheet) {
  return std::any_of(sheet.folds.begin(), sheet.folds.end(),
                     [](const Sheet::FoldLine &fold) { return fold.spine; });
}

std::string_view comes_of_it(const Sheet &sheet, bool rough) {
  if (!rough)
    return "that matters little";
  return has_spine(sheet) ? "the fold comes out rough and the booklet springs open"
                          : "the fold comes out rough and springs open";
}

std::string_view which_folds(const Sheet &sheet) {
  const bool some_along = std::any_of(sheet.folds.begin(), sheet.folds.end(),
                                      [](const Sheet::FoldLine &fold) { return fold.along_grain; });
  return some_along && !has_spine(sheet) ? "most of its folds lie" : "the fold lies";
}

Problem cross_grain(const Inspection &inspection, const Sheet &sheet) {
  const StockId id = sheet.stock;
  const Stock &stock = inspection.edition[id];
  const Grammage grammage = (*stock.weight)->grammage;
  Problem problem;
  problem.kind = grammage > rough_across ? Kind::warning : Kind::note;
  problem.check = "cross-grain";
  problem.range = stock_range(inspection, id, stock.grain.from);
  problem.message = fmt::format("{} is folded across its grain", stock.name);
  const bool long_grain = *stock.grain == Grain::along_long_edge;
  problem.why =
      fmt::format("its fibres run along the sheet's {} edge and {} across them; at {:.0f} gsm {}",
                  long_grain ? "long" : "short", which_folds(sheet), grammage.gsm(),
                  comes_of_it(sheet, grammage > rough_across));
  if (stock.sheet)
    retype_stock(inspection, problem, id, stock.grain.from, long_grain ? "short" : "long",
                 fmt::format("sheet      {}, grain {}",
                             written(**stock.sheet, ruler_of(**stock.sheet)),
                             long_grain ? "short" : "long"),
                 fmt::format("if you can buy or cut it grain {}", long_grain ? "short" : "long"));
  return problem;
}

// Flaps fold under on three sides, so that two of them may be spared.
bool most_across(const Sheet &sheet) {
  Length across, along;
  for (const Sheet::FoldLine &fold : sheet.folds)
    (fold.along_grain ? along : across) += fold.end.x - fold.start.x + fold.end.y - fold.start.y;
  return across > along;
}

// Leaves should turn along the grain. A folder has no leaves: where its folds run both ways, some
// of them cross the grain however the sheet is cut.
bool across_grain(const Sheet &sheet, const Stock &stock, bool leaves_turn) {
  if (*stock.grain == Grain::unsaid || sheet.folds.empty())
    return false;
  const auto spine = [](const Sheet::FoldLine &fold) { return fold.spine; };
  const auto across = [](const Sheet::FoldLine &fold) { return !fold.along_grain; };
  if (has_spine(sheet))
    return std::any_of(sheet.folds.begin(), sheet.folds.end(),
                       [&](const Sheet::FoldLine &fold) { return spine(fold) && across(fold); });
  if (leaves_turn)
    return most_across(sheet);
  return std::all_of(sheet.folds.begin(), sheet.folds.end(), across);
}

} // namespace

void check_folds(const Inspection &inspection, Problems &problems) {
  std::set<std::pair<StockId, bool>> cards;
  std::set<StockId> crossed;
  for (const Sheet &sheet : inspection.imposition.sheets) {
    if (sheet.stock == StockId::none || sheet.folds.empty())
      continue;
    const Stock &stock = inspection.edition[sheet.stock];
    if (!stock.weight)
      continue;
    if (is_card(inspection, sheet) && !creased(inspection.edition, sheet.number) &&
        cards.insert({sheet.stock, sheet.number == 1}).second)
      problems.push_back(uncreased_card(inspection, sheet, stock));
    if (across_grain(sheet, stock, inspection.imposition.leaves_turn) &&
        crossed.insert(sheet.stock).second)
      problems.push_back(cross_grain(inspection, sheet));
  }
}

} // namespace bodkin
