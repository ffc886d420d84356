#include "money/more_sheets.hpp"

#include "money/saving.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {
namespace {

// The most pages that fold without the sheet that is not filled; 0 where there is no such number,
// or where the folding says how many sheets it takes.
int pages_without(const Edition &edition, const Imposition &imposition) {
  const int fewer = imposition.folds_into - imposition.pages_a_sheet;
  return edition.folding->sheets || fewer >= imposition.page_count ? 0 : std::max(0, fewer);
}

Exact cost_with(Edition edition, int pages, const std::vector<bool> &draws,
                const Sources &sources) {
  // What pieces draw is numbered on after the book's own pages.
  std::vector<bool> kept(draws.begin(),
                         draws.begin() + std::min<std::ptrdiff_t>(
                                             pages + 1, static_cast<std::ptrdiff_t>(draws.size())));
  kept.resize(static_cast<std::size_t>(pages) + 1);
  const auto book = static_cast<std::size_t>(*edition.page_count) + 1;
  if (draws.size() > book)
    kept.insert(kept.end(), draws.begin() + static_cast<std::ptrdiff_t>(book), draws.end());
  edition.page_count.value = pages;
  edition.pages.resize(static_cast<std::size_t>(pages) + 1);
  const Laid laid = lay(edition, kept, sources);
  return estimate(edition, laid.imposition, laid.sides).per_copy;
}

} // namespace

void price_more_sheets(const Edition &edition, const Imposition &imposition,
                       const ChargedSides &sides, const std::vector<bool> &draws,
                       const Sources &sources, Problems &problems) {
  const auto problem = std::find_if(problems.begin(), problems.end(),
                                    [](const Problem &p) { return p.check == "does-not-fold"; });
  const int fewer = pages_without(edition, imposition);
  if (problem == problems.end() || fewer == 0)
    return;
  const Edition light = without_matter(edition);
  const Exact now = estimate(light, imposition, sides).per_copy;
  const Exact more = now - cost_with(light, fewer, draws, sources);
  if (more >= Exact::ratio(1, 200))
    problem->why += fmt::format(", for {} a copy more", shown(more, *edition.currency));
}

} // namespace bodkin
