#include "sheet/spine.hpp"

#include "measure/paper.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {
namespace {

Problem wrap_too_narrow(const Piece &wrap, Length spine, const Sheet &sheet) {
  const Ruler ruler = wrap.edition.ruler;
  const Length page = wrap.edition.size->width;
  Problem problem;
  problem.check = "wrap-too-narrow";
  problem.range = wrap.range;
  problem.message = fmt::format("a wrap round this spine is {} wide, and {} gives {}",
                                rounded(page * 2 + spine, ruler), wrap.edition[sheet.stock].name,
                                written(sheet.size.width, ruler));
  problem.why = fmt::format("two pages of {} and the {} that the book's leaves are thick together",
                            written(page, ruler), rounded(spine, ruler));
  problem.type = {{{}, "wrap it in a paper with larger sheets, or make the pages narrower"}};
  return problem;
}

// Away from the fold, which lies at the page's spine edge as it is seen on the sheet.
void move_away(Place &place, Length by) {
  const bool spine_left = (place.spine == SpineAt::left) == (place.turn == 0);
  place.box.x += spine_left ? by : -by;
  (place.spine == SpineAt::left ? place.slack.right : place.slack.left) -= by;
}

void part_fold(Sheet &sheet, Length spine) {
  if (sheet.folds.size() != 1)
    return;
  Sheet::FoldLine left = sheet.folds.front(), right = left;
  for (Spot *end : {&left.start, &left.end})
    end->x -= spine / 2;
  for (Spot *end : {&right.start, &right.end})
    end->x += spine / 2;
  sheet.folds = {left, right};
}

} // namespace

Length spine_of(const Edition &book, const Imposition &imposition) {
  Length spine;
  if (imposition.sheets.empty() ||
      imposition.sheets.back().section == imposition.sheets.front().section)
    return spine;
  for (const Sheet &sheet : imposition.sheets)
    if (sheet.stock != StockId::none)
      spine += *book[sheet.stock].caliper * imposition.pages_a_sheet / 2;
  return spine;
}

void open_for_spine(const Piece &wrap, Length spine, Imposition &imposition, Problems &problems) {
  constexpr Length least = Length::inches(1, 1000); // finer than paper is
  if (spine < least)
    return;
  for (Sheet &sheet : imposition.sheets) {
    if (sheet.stock != StockId::none && sheet.size.width < wrap.edition.size->width * 2 + spine)
      problems.push_back(wrap_too_narrow(wrap, spine, sheet));
    for (Side &side : sheet.sides)
      for (Place &place : side.places)
        move_away(place, spine / 2);
    part_fold(sheet, spine);
  }
}

} // namespace bodkin
