#include "sheet/thickness.hpp"

#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <utility>

namespace bodkin {
namespace {

// Board: common practice, no source.
constexpr Length thickest_fold = Length::mm(10), thickest_flat = Length::mm(30);

Problem no_such_paper(const Edition &edition, const Stock &stock) {
  Problem problem;
  problem.check = "too-thick";
  problem.range = stock.caliper.from.somewhere() ? stock.caliper.from : stock.range;
  problem.message =
      fmt::format("{} is {} thick", stock.name, written(*stock.caliper, edition.ruler));
  problem.why = fmt::format("no paper, card or board of more than {} is cut by hand",
                            written(thickest_flat, edition.ruler));
  problem.type = {{spoken::fact("caliper", "0.08in"), "for a thick grey board"}};
  return problem;
}

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

// Of another part of the copy, on the same paper.
bool is_told(const Problems &problems, const Problem &problem) {
  return std::any_of(problems.begin(), problems.end(), [&](const Problem &told) {
    return told.check == problem.check && told.range == problem.range;
  });
}

} // namespace

void check_thickness(const Edition &edition, const FoldedSheet &folded,
                     const Imposition &imposition, Problems &problems) {
  std::vector<bool> told(edition.stocks.size());
  for (const Sheet &sheet : imposition.sheets) {
    if (sheet.stock == StockId::none || told[at(sheet.stock)])
      continue;
    const Stock &stock = edition[sheet.stock];
    if (folded.steps.empty() && *stock.caliper <= thickest_flat)
      continue;
    const bool pushed_off = sheet.creep * 2 > imposition.page_size.width;
    if (*stock.caliper <= thickest_fold && !pushed_off)
      continue;
    told[at(sheet.stock)] = true;
    Problem problem = folded.steps.empty() ? no_such_paper(edition, stock)
                                           : too_thick(edition, imposition, sheet);
    if (!is_told(problems, problem))
      problems.push_back(std::move(problem));
  }
}

} // namespace bodkin
