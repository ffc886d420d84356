#include "sheet/layout.hpp"

#include "measure/limits.hpp"

#include <algorithm>

namespace bodkin {

int Layout::recto_of(int sheet, int leaf) const {
  const int half = leaves_a_sheet / 2;
  int place = sheet * leaves_a_sheet + leaf;
  if (nested) // the inner sheets lie in the middle of this one
    place = leaf < half ? sheet * half + leaf
                        : sheets * leaves_a_sheet - (sheet + 1) * half + (leaf - half);
  return 2 * place + 1;
}

int Layout::pair_of(int sheet, int leaf) const {
  const int half = leaves_a_sheet / 2;
  const int pair = leaf < half ? leaf : leaves_a_sheet - 1 - leaf;
  return nested ? sheet * half + pair : pair;
}

Layout layout(const FoldedSheet &folded, const Folding &folding, int page_count) {
  Layout result;
  result.leaves_a_sheet = static_cast<int>(folded.leaves.size());
  result.nested = *folding.gather == Gather::nested;
  const int each = result.pages_a_sheet();
  const int needed = std::max(1, (page_count + each - 1) / each);
  if (!folding.sheets) {
    result.sheets = needed;
    result.folds = page_count == needed * each;
    result.fewer = (needed - 1) * each;
    result.more = needed * each;
    return result;
  }
  const int most = std::max(1, static_cast<int>(limits::pages) / each);
  const int fixed = std::clamp(**folding.sheets, 1, most);
  result.sheets = std::max(fixed, needed);
  result.folds = page_count == fixed * each;
  result.fewer = page_count > fixed * each ? fixed * each : 0;
  result.more = page_count < fixed * each ? fixed * each : 0;
  return result;
}

} // namespace bodkin
