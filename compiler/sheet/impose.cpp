#include "sheet/impose.hpp"

#include "edition/piece.hpp"
#include "sheet/creep.hpp"
#include "sheet/geometry.hpp"
#include "sheet/papers.hpp"
#include "sheet/size_problems.hpp"
#include "sheet/thickness.hpp"
#include "sheet/topology.hpp"

#include <algorithm>

namespace bodkin {
namespace {

// Pages of an edition whose folding cannot be done are drawn as if its sheets were folded once.
Folding folded_once(const Folding &asked) {
  Folding folding;
  folding.columns = 2;
  folding.steps = {{Part::left, false, {}}};
  folding.gather = asked.gather;
  folding.sheets = asked.sheets;
  return folding;
}

std::vector<Length> calipers_of(const Edition &edition, const Imposition &imposition,
                                std::size_t first, std::size_t end, int pairs_a_sheet) {
  std::vector<Length> calipers;
  for (; first < end; ++first) {
    const StockId stock = imposition.sheets[first].stock;
    calipers.insert(calipers.end(), static_cast<std::size_t>(pairs_a_sheet),
                    stock == StockId::none ? Length() : *edition[stock].caliper);
  }
  return calipers;
}

// Wraps lie round nested sheets and push all of them out; round gathered sections they are glued.
// From the outermost in.
std::vector<Length> wrapped_in(const Edition &edition, const Imposition &imposition) {
  std::vector<Length> calipers;
  if (imposition.sheets.back().section != imposition.sheets.front().section)
    return calipers;
  const std::optional<std::uint32_t> first =
      edition.runs.empty() ? std::nullopt : std::optional<std::uint32_t>(0);
  for (const Piece *wrap : wraps_of(edition, first))
    if (*wrap->edition.paper != StockId::none)
      calipers.insert(calipers.begin(), *edition[*wrap->edition.paper].caliper);
  return calipers;
}

std::vector<Length> creep_within(std::vector<Length> calipers, const std::vector<Length> &wraps,
                                 bool round) {
  calipers.insert(calipers.begin(), wraps.begin(), wraps.end());
  std::vector<Length> creep = creep_of(calipers, round);
  creep.erase(creep.begin(), creep.begin() + static_cast<std::ptrdiff_t>(wraps.size()));
  return creep;
}

// `pair` of a section from the outermost, for each leaf that a place shows.
void push_out(const Edition &edition, const std::vector<SheetPattern> &patterns,
              const Layout &layout, Imposition &imposition) {
  std::size_t first = 0;
  while (first < imposition.sheets.size()) {
    std::size_t end = first;
    while (end < imposition.sheets.size() &&
           imposition.sheets[end].section == imposition.sheets[first].section)
      ++end;
    const std::vector<Length> creep =
        creep_within(calipers_of(edition, imposition, first, end, layout.leaves_a_sheet / 2),
                     wrapped_in(edition, imposition), edition.folding->round);
    for (; first < end; ++first) {
      Sheet &sheet = imposition.sheets[first];
      const SheetPattern &pattern = pattern_of(patterns, static_cast<int>(first));
      for (std::size_t s = 0; s < 2; ++s)
        for (std::size_t i = 0; i < sheet.sides[s].places.size(); ++i) {
          Place &place = sheet.sides[s].places[i];
          const int pair = layout.pair_of(sheet.number - 1, pattern.sides[s][i].layer);
          place.creep = creep[static_cast<std::size_t>(pair)];
          place.shift = edition.creep_made_up_for ? place.creep : Length();
          sheet.creep = std::max(sheet.creep, place.creep);
        }
    }
  }
}

void push_out_as_measured(Imposition &imposition, Length measured, bool made_up_for) {
  Length largest;
  for (const Sheet &sheet : imposition.sheets)
    largest = std::max(largest, sheet.creep);
  for (Sheet &sheet : imposition.sheets) {
    sheet.creep = as_measured(sheet.creep, largest, measured);
    for (Side &side : sheet.sides)
      for (Place &place : side.places) {
        place.creep = as_measured(place.creep, largest, measured);
        place.shift = made_up_for ? place.creep : Length();
      }
  }
}

} // namespace

Imposition impose(const Edition &edition, const Sources &sources, Problems &problems) {
  const Folding &asked = *edition.folding;
  const int count = *edition.page_count;
  for (const Folding &other : edition.other_foldings)
    fold(other, problems);
  const auto as_asked = fold(asked, problems, panels_of_strip(asked, count));
  const Folding folding = as_asked ? asked : folded_once(asked);
  Problems none;
  const FoldedSheet folded = as_asked ? *as_asked : *fold(folding, none);
  const Layout layout = bodkin::layout(folded, folding, count);
  // An edition without a page has been told so.
  if (as_asked && !layout.folds && count > 0 && !edition.folding_guessed)
    problems.push_back(does_not_fold(edition, folded, layout, sources));
  const std::vector<SheetPattern> patterns = patterns_of(folded, layout);
  Imposition imposition = lay_out(folded, patterns, layout, count);
  imposition.page_size = *edition.size;
  imposition.layers = folded.layers;
  choose_papers(edition, sources, imposition, problems);
  for (Sheet &sheet : imposition.sheets)
    place_pages(edition, folded, pattern_of(patterns, sheet.number - 1), sheet);
  if (as_asked && !edition.size_guessed && !edition.folding_guessed)
    imposition.wrong_size = check_sizes(edition, folded, imposition, problems);
  if (folded.creeps())
    push_out(edition, patterns, layout, imposition);
  if (edition.creep)
    push_out_as_measured(imposition, **edition.creep, edition.creep_made_up_for);
  if (as_asked) {
    check_thickness(edition, folded, imposition, problems);
    check_folded_in(edition, folded.folded_in, imposition, sources, problems);
  }
  return imposition;
}

} // namespace bodkin
