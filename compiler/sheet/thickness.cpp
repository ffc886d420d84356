#include "sheet/thickness.hpp"

#include "sheet/speech.hpp"

#include <fmt/format.h>

namespace bodkin {
namespace {

// Board: common practice, no source.
constexpr Length thickest_fold = Length::mm(10);

Problem too_thick(const Edition &edition, const Imposition &imposition, const Sheet &sheet) {
  const Stock &stock = edition[sheet.stock];
  Problem problem;
  problem.check = "too-thick";
  problem.range = stock.caliper.from.somewhere() ? stock.caliper.from : stock.range;
  problem.message = fmt::format("{} is {} thick and does not fold", stock.name,
                                written(*stock.caliper, edition.ruler));
  problem.why = fmt::format("board of more than {} breaks along a fold",
                            written(thickest_fold, edition.ruler));
  if (*stock.caliper <= thickest_fold) {
    problem.message = fmt::format("the pages of sheet {} stand out {} past those of the outermost",
                                  sheet.number, written(sheet.creep, edition.ruler));
    problem.why = fmt::format(
        "{} is {} thick, a page is {} wide, and {} sheets lie round this one at the fold",
        stock.name, written(*stock.caliper, edition.ruler),
        written(imposition.page_size.width, edition.ruler), sheet.number - 1);
  }
  problem.type = {{spoken::fact("caliper", "0.004in"), "for office paper; a card is about 0.01in"}};
  return problem;
}

} // namespace

void check_thickness(const Edition &edition, const FoldedSheet &folded,
                     const Imposition &imposition, Problems &problems) {
  std::vector<bool> told(edition.stocks.size());
  for (const Sheet &sheet : imposition.sheets) {
    if (sheet.stock == StockId::none || folded.steps.empty() || told[at(sheet.stock)])
      continue;
    const Stock &stock = edition[sheet.stock];
    const bool pushed_off = sheet.creep * 2 > imposition.page_size.width;
    if (*stock.caliper <= thickest_fold && !pushed_off)
      continue;
    told[at(sheet.stock)] = true;
    problems.push_back(too_thick(edition, imposition, sheet));
  }
}

} // namespace bodkin
