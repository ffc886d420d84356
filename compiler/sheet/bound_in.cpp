#include "sheet/bound_in.hpp"

#include "sheet/creep.hpp"
#include "sheet/live.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <optional>

namespace bodkin {
namespace {

bool nested(const Imposition &book) {
  return !book.sheets.empty() && book.leaves_turn &&
         book.sheets.back().section == book.sheets.front().section;
}

Length caliper_of(const Edition &edition, StockId stock) {
  return stock == StockId::none ? Length{} : *edition[stock].caliper;
}

// From the outermost wrap to this one.
std::vector<Length> wraps_to(const Edition &book, const Piece &wrap) {
  std::vector<Length> calipers;
  const std::vector<const Piece *> wraps = wraps_of(book);
  for (auto it = wraps.rbegin(); it != wraps.rend(); ++it) {
    if (lie_together(**it, wrap))
      calipers.push_back(caliper_of(book, *(*it)->edition.paper));
    if (*it == &wrap)
      break;
  }
  return calipers;
}

Length pushed_out(const CopyPart &book, const CopyPart &part) {
  const bool round = book.edition->folding->round;
  if (part.piece->is_wrap())
    return creep_of(wraps_to(*book.edition, *part.piece), round).back();
  const Sheet &innermost = book.imposition.sheets.back();
  return innermost.creep + creep_of({caliper_of(*book.edition, innermost.stock),
                                     caliper_of(*book.edition, *part.edition->paper)},
                                    round)
                               .back();
}

// Going outwards from the spine, panel by panel, each folded back on the one before: how far from
// the spine the furthest fold comes to lie.
Length furthest_fold(std::vector<Length> distances) {
  std::sort(distances.begin(), distances.end());
  Length at, before, furthest;
  bool outwards = true;
  for (const Length distance : distances) {
    at += outwards ? distance - before : before - distance;
    before = distance;
    outwards = !outwards;
    furthest = std::max(furthest, at);
  }
  return furthest;
}

Length furthest_fold(const Sheet &sheet) {
  const auto spine = bound_at(sheet);
  if (!spine)
    return {};
  std::vector<Length> left, right;
  for (const Sheet::FoldLine &fold : sheet.folds)
    if (fold.start.x == fold.end.x && fold.start.x != *spine)
      (fold.start.x < *spine ? left : right)
          .push_back(fold.start.x < *spine ? *spine - fold.start.x : fold.start.x - *spine);
  return std::max(furthest_fold(std::move(left)), furthest_fold(std::move(right)));
}

Problem knife_through_fold(const CopyPart &book, const CopyPart &part, Length fold, Length out) {
  const Ruler ruler = book.edition->ruler;
  const Length cut = book.edition->size->width - trims_of(*book.edition).fore_edge;
  Problem problem;
  problem.check = "knife-through-fold";
  problem.range =
      part.edition->folding.from.somewhere() ? part.edition->folding.from : part.piece->range;
  problem.message = fmt::format("the knife would cut {} apart at its fold", part.piece->name);
  problem.why = fmt::format("its fold lies {} from the spine and is pushed out {} more by the "
                            "sheets round it; the copy is cut {} from the spine",
                            written(fold, ruler), rounded(out, ruler), written(cut, ruler));
  problem.type = {{{},
                   fmt::format("make the panels that fold in narrower: the fold no further than "
                               "{} from the spine",
                               rounded(cut - out - Length::inches(1, 16), ruler))}};
  return problem;
}

} // namespace

std::optional<Length> bound_at(const Sheet &sheet) {
  const Sheet::FoldLine *last = nullptr;
  for (const Sheet::FoldLine &fold : sheet.folds)
    if (fold.start.x == fold.end.x && (!last || (fold.spine && !last->spine) ||
                                       (fold.spine == last->spine && fold.step > last->step)))
      last = &fold;
  return last ? std::optional(last->start.x) : std::nullopt;
}

void lie_in_the_pile(const CopyPart &book, CopyPart &part) {
  if ((*part.piece->goes != Goes::centre && !part.piece->is_wrap()) || !nested(book.imposition))
    return;
  const Length out = pushed_out(book, part);
  for (Sheet &sheet : part.imposition.sheets) {
    sheet.creep += out;
    for (Side &side : sheet.sides)
      for (Place &place : side.places)
        if (place.spine != SpineAt::none) {
          place.creep += out;
          if (part.edition->creep_made_up_for)
            place.shift += out;
        }
  }
}

void check_knife(const CopyPart &book, const CopyPart &part, Problems &problems) {
  const Length fore_edge = trims_of(*book.edition).fore_edge;
  if (*part.piece->goes != Goes::centre || fore_edge <= Length{} || part.imposition.sheets.empty())
    return;
  const Length fold = furthest_fold(part.imposition.sheets.front());
  const Length out = nested(book.imposition) ? pushed_out(book, part) : Length{};
  if (fold + out > book.edition->size->width - fore_edge)
    problems.push_back(knife_through_fold(book, part, fold, out));
}

} // namespace bodkin
