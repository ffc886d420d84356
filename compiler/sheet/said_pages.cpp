#include "sheet/said_pages.hpp"

#include "sheet/fold_problems.hpp"

#include <algorithm>
#include <tuple>

namespace bodkin {
namespace {

// The pages of one side (indices into FoldedSheet::pages), row by row as seen.
std::vector<std::size_t> as_seen(const FoldedSheet &sheet, bool front) {
  std::vector<std::size_t> pages;
  for (std::size_t i = 0; i < sheet.pages.size(); ++i)
    if (sheet.pages[i].front == front)
      pages.push_back(i);
  const auto key = [&](std::size_t i) {
    const PagePlace &page = sheet.pages[i];
    const bool x = !front && sheet.turns_upright, y = !front && !sheet.turns_upright;
    return std::tuple(y ? -page.row : page.row, x ? -page.column : page.column);
  };
  std::sort(pages.begin(), pages.end(),
            [&](std::size_t a, std::size_t b) { return key(a) < key(b); });
  return pages;
}

} // namespace

bool number_as_said(const Folding &folding, FoldedSheet &sheet, Problems &problems) {
  if (folding.front->empty() && folding.back->empty())
    return true;
  std::vector<std::optional<PagePlace>> told(sheet.pages.size());
  for (const bool front : {true, false}) {
    const std::vector<int> &said = front ? *folding.front : *folding.back;
    const std::vector<std::size_t> seen = as_seen(sheet, front);
    if (said.size() != seen.size()) {
      problems.push_back(pages_miscounted(folding, front, static_cast<int>(seen.size())));
      return false;
    }
    for (std::size_t i = 0; i < seen.size(); ++i) {
      const bool there = said[i] >= 1 && static_cast<std::size_t>(said[i]) <= told.size();
      if (!there || told[static_cast<std::size_t>(said[i]) - 1]) {
        problems.push_back(page_claimed(folding, front, i, static_cast<int>(told.size())));
        return false;
      }
      if (sheet.leaves_turn() && static_cast<std::size_t>(said[i]) != seen[i] + 1) {
        problems.push_back(said_otherwise(folding, said[i], static_cast<int>(seen[i]) + 1));
        return false;
      }
      told[static_cast<std::size_t>(said[i]) - 1] = sheet.pages[seen[i]];
    }
  }
  for (std::size_t i = 0; i < told.size(); ++i)
    sheet.pages[i] = *told[i];
  return true;
}

} // namespace bodkin
