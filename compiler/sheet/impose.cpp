#include "sheet/impose.hpp"

#include "sheet/creep.hpp"
#include "sheet/geometry.hpp"
#include "sheet/papers.hpp"
#include "sheet/size_problems.hpp"
#include "sheet/topology.hpp"

#include <algorithm>

namespace bodkin {
namespace {

// Pages of an edition whose folding cannot be done are drawn as if its sheets were folded once.
FoldedSheet folded_once() {
  Folding folding;
  folding.columns = 2;
  folding.steps = {{Part::left, false, {}}};
  Problems none;
  return *fold(folding, none);
}

// `pair` of a section from the outermost, for each leaf that a place shows.
void push_out(const Edition &edition, const SheetPattern &pattern, const Layout &layout,
              Imposition &imposition) {
  const int pairs_a_sheet = layout.leaves_a_sheet / 2;
  std::size_t first = 0;
  while (first < imposition.sheets.size()) {
    std::size_t end = first;
    std::vector<Length> calipers;
    for (; end < imposition.sheets.size() &&
           imposition.sheets[end].section == imposition.sheets[first].section;
         ++end) {
      const StockId stock = imposition.sheets[end].stock;
      calipers.insert(calipers.end(), static_cast<std::size_t>(pairs_a_sheet),
                      stock == StockId::none ? Length() : *edition[stock].caliper);
    }
    const std::vector<Length> creep = creep_of(calipers);
    for (; first < end; ++first) {
      Sheet &sheet = imposition.sheets[first];
      for (std::size_t s = 0; s < 2; ++s)
        for (std::size_t i = 0; i < sheet.sides[s].places.size(); ++i) {
          Place &place = sheet.sides[s].places[i];
          const int pair = layout.pair_of(sheet.number - 1, pattern.sides[s][i].leaf);
          place.creep = creep[static_cast<std::size_t>(pair)];
          place.shift = place.creep;
          sheet.creep = std::max(sheet.creep, place.creep);
        }
    }
  }
}

} // namespace

Imposition impose(const Edition &edition, const Sources &sources, Problems &problems) {
  const std::optional<FoldedSheet> as_asked = fold(*edition.folding, problems);
  const FoldedSheet folded = as_asked ? *as_asked : folded_once();
  const SheetPattern pattern = pattern_of(folded);
  const Layout layout = bodkin::layout(folded, *edition.folding, *edition.page_count);
  // An edition without a page has been told so.
  if (as_asked && !layout.folds && *edition.page_count > 0)
    problems.push_back(does_not_fold(edition, folded, layout, sources));
  Imposition imposition = lay_out(folded, pattern, layout, *edition.page_count);
  imposition.page_size = *edition.size;
  choose_papers(edition, sources, imposition, problems);
  for (Sheet &sheet : imposition.sheets)
    place_pages(edition, folded, pattern, sheet);
  if (as_asked)
    check_sizes(edition, folded, imposition, problems);
  push_out(edition, pattern, layout, imposition);
  return imposition;
}

} // namespace bodkin
