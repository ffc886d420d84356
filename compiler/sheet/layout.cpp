#include "sheet/layout.hpp"

#include "measure/limits.hpp"

#include <algorithm>

namespace bodkin {
namespace {

constexpr int shortest_strip = 2; // one panel has nothing to be folded on

int divided_up(int number, int by) { return (number + by - 1) / by; }

int panels_a_sheet(const Folding &folding) {
  return folding.tab && folding.tab->at == Part::bottom ? folding.rows : folding.columns;
}

// Any number of panels folds, so long as both sides of each are counted; what is over is cut off.
Layout strip_layout(const Folding &folding, int page_count) {
  const int sides = folding.one_side ? 1 : 2;
  Layout result;
  result.kind = Layout::Kind::strip;
  result.strip_panels = panels_of_strip(folding, page_count);
  result.sheets = divided_up(result.strip_panels, panels_a_sheet(folding));
  result.pages_a_sheet = panels_a_sheet(folding) * sides;
  result.leaves_a_sheet = panels_a_sheet(folding);
  result.sheets_a_section = result.sheets;
  result.pages = result.strip_panels * sides;
  result.folds = page_count == result.pages;
  result.more = result.pages;
  result.fewer = result.strip_panels > shortest_strip ? result.pages - sides : 0;
  if (folding.sheets && result.sheets != **folding.sheets) {
    const int most = **folding.sheets * result.pages_a_sheet;
    const int least = (**folding.sheets - 1) * result.pages_a_sheet + sides;
    result.folds = false;
    result.fewer = page_count > most ? most : 0;
    result.more = page_count < least ? least : 0;
  }
  return result;
}

// The smallest step in which whole copies grow: a sheet, or one sheet for each of two books.
void count_sheets(Layout &result, const Folding &folding, int page_count) {
  const int step = folding.back_to_back ? 2 : 1, each = result.pages_a_sheet * step;
  const int needed = std::max(1, divided_up(page_count, each));
  if (!folding.sheets) {
    result.sheets = needed * step;
    result.folds = page_count == needed * each;
    result.fewer = (needed - 1) * each;
    result.more = needed * each;
    return;
  }
  const int most = std::max(1, static_cast<int>(limits::pages) / result.pages_a_sheet);
  const int fixed = std::clamp(**folding.sheets, 1, most), holds = fixed * result.pages_a_sheet;
  result.sheets = std::max(fixed, needed * step);
  result.folds = page_count == holds;
  result.fewer = page_count > holds ? holds : 0;
  result.more = page_count < holds ? holds : 0;
}

} // namespace

int panels_of_strip(const Folding &folding, int page_count) {
  return folding.tab ? std::max(shortest_strip, divided_up(page_count, folding.one_side ? 1 : 2))
                     : 0;
}

int Layout::sheets_in_section(int sheet) const {
  return std::min(sheets_a_section, sheets - first_sheet(sheet));
}

int Layout::page_of(int sheet, int page) const {
  if (kind == Kind::strip)
    return page + 1;
  if (kind == Kind::gathered)
    return sheet * pages_a_sheet + page + 1;
  // The inner sheets lie in the middle of this one.
  const int half = pages_a_sheet / 2, inside = sheet - first_sheet(sheet);
  const int before = first_sheet(sheet) * pages_a_sheet;
  const int all = sheets_in_section(sheet) * pages_a_sheet;
  return before + 1 +
         (page < half ? inside * half + page : all - (inside + 1) * half + (page - half));
}

int Layout::section_of(int sheet) const {
  return kind == Kind::nested ? sheet / sheets_a_section + 1 : kind == Kind::strip ? 1 : sheet + 1;
}

int Layout::pair_of(int sheet, int layer) const {
  const int pair = std::min(layer, leaves_a_sheet - 1 - layer);
  return kind == Kind::nested ? (sheet - first_sheet(sheet)) * (leaves_a_sheet / 2) + pair : pair;
}

Layout layout(const FoldedSheet &folded, const Folding &folding, int page_count) {
  if (folding.tab)
    return strip_layout(folding, page_count);
  Layout result;
  // Only leaves that hang in a fold in pairs can lie round others.
  const bool pairs = folded.leaves_turn() && !folded.bound_at_side && folded.layers % 2 == 0;
  result.kind =
      *folding.gather == Gather::nested && pairs ? Layout::Kind::nested : Layout::Kind::gathered;
  result.pages_a_sheet = static_cast<int>(folded.pages.size());
  result.leaves_a_sheet = folded.layers;
  count_sheets(result, folding, page_count);
  result.pages = result.sheets * result.pages_a_sheet;
  result.sheets_a_section = folding.back_to_back           ? result.sheets / 2
                            : folding.sheets_a_section > 0 ? folding.sheets_a_section
                                                           : result.sheets;
  return result;
}

} // namespace bodkin
