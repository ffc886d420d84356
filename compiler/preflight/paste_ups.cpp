// What is glued on originals: which side is copied from where.
#include "preflight/about.hpp"
#include "preflight/families.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <map>

namespace bodkin {
namespace {

struct Glued {
  const Item *item = nullptr;
  std::vector<int> pages;
};

Problem glued_by_hand(const Inspection &inspection, const Glued &glued) {
  Problem problem;
  problem.kind = Kind::note;
  problem.check = "glued-by-hand";
  problem.range = element_of(inspection, *glued.item).range;
  problem.message = fmt::format("the original of {} is not whole until this is glued on it",
                                pages_in_words(inspection, glued.pages));
  problem.why = "sheets and passes print the page without it; copy its side from originals.pdf "
                "instead, printed, glued and dry before it lies on the glass; cut with a sharp "
                "blade along a steel edge, fingers behind it, and glue in an aired room";
  return problem;
}

} // namespace

void check_paste_ups(const Inspection &inspection, Problems &problems) {
  std::map<ItemKey, Glued> all;
  for (int page = 1; page <= inspection.imposition.page_count; ++page)
    for (const Item &item : inspection.drawings[page].items)
      if (std::holds_alternative<SetPasteUp>(item.what)) {
        Glued &glued = all[key_of(item)];
        glued.item = &item;
        if (glued.pages.empty() || glued.pages.back() != page)
          glued.pages.push_back(page);
      }
  for (const auto &[key, glued] : all)
    problems.push_back(glued_by_hand(inspection, glued));
}

} // namespace bodkin
