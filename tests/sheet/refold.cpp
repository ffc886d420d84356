#include "sheet/refold.hpp"

#include "sheet/bed.hpp"
#include "sheet/hanging.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <set>

namespace bodkin::test {
namespace {

// Where heads point when the spine is turned to the left.
Arrow head_of_book(Part spine) {
  switch (spine) {
  case Part::left:
    return {0, -1};
  case Part::right:
    return {0, 1};
  case Part::top:
    return {1, 0};
  case Part::bottom:
    return {-1, 0};
  }
  return {};
}

// Pages as read from the top of the folded sheet; empty where they do not stand as in a book.
std::vector<int> turn_leaves(Bed bed, const Folding &folding, bool one_side) {
  for (const FoldStep &step : folding.steps)
    if (!fold_once(bed, step))
      return {};
  std::sort(bed.scraps.begin(), bed.scraps.end(),
            [](const Scrap &a, const Scrap &b) { return a.height > b.height; });
  const Arrow up = head_of_book(folding.spine ? **folding.spine : folding.steps.back().moving);
  std::vector<int> pages;
  std::set<std::int64_t> heights;
  for (const Scrap &scrap : bed.scraps) {
    if (!(scrap.head == up) || !scrap.over(bed.scraps.front()) ||
        !heights.insert(scrap.height).second)
      return {};
    for (const bool front : {scrap.front_up, !scrap.front_up})
      if (front || !one_side)
        pages.push_back(front ? scrap.front : scrap.back);
  }
  return pages;
}

struct Shown {
  std::int64_t x, y;
  int page, number;
  bool front;
  Arrow head;
};

// Whole pages that nothing lies on, from above (or, from below, as the paper is turned over).
std::vector<Shown> shown(const Bed &bed, bool above) {
  std::vector<Shown> pages;
  for (const Scrap &scrap : bed.scraps) {
    const bool covered = std::any_of(bed.scraps.begin(), bed.scraps.end(), [&](const Scrap &other) {
      return scrap.over(other) &&
             (above ? other.height > scrap.height : other.height < scrap.height);
    });
    const bool front = scrap.front_up == above;
    if (!covered)
      pages.push_back({above ? scrap.left : -scrap.left, scrap.top,
                       front ? scrap.front : scrap.back, scrap.number, front,
                       front ? scrap.head : scrap.back_head});
  }
  std::sort(pages.begin(), pages.end(),
            [](const Shown &a, const Shown &b) { return std::tie(a.y, a.x) < std::tie(b.y, b.x); });
  return pages;
}

std::set<int> moved(const Bed &before, const Bed &after) {
  std::set<int> numbers;
  for (const Scrap &scrap : after.scraps)
    for (const Scrap &was : before.scraps)
      if (was.number == scrap.number &&
          (was.left != scrap.left || was.top != scrap.top || was.front_up != scrap.front_up))
        numbers.insert(scrap.number);
  return numbers;
}

bool lie_on_each_other(const Bed &bed, const std::set<int> &some, const std::set<int> &others) {
  for (const Scrap &one : bed.scraps)
    for (const Scrap &other : bed.scraps)
      if (some.count(one.number) > 0 && others.count(other.number) > 0 &&
          (one.number == other.number || one.over(other)))
        return true;
  return false;
}

// Pages as met while fold after fold is undone, flaps that lie nowhere on each other at once, and
// last on the back; empty where a head is not up.
std::vector<int> undo_folds(Bed bed, const Folding &folding, bool one_side) {
  std::vector<Bed> stages{bed};
  for (const FoldStep &step : folding.steps) {
    if (!fold_once(bed, step))
      return {};
    stages.push_back(bed);
  }
  std::vector<int> pages;
  std::set<std::pair<int, bool>> met;
  bool heads_up = true;
  const auto meet = [&](const std::vector<Shown> &now) {
    for (const Shown &page : now)
      if ((page.front || !one_side) && met.insert({page.number, page.front}).second) {
        heads_up = heads_up && page.head == Arrow{0, -1};
        pages.push_back(page.page);
      }
  };
  std::size_t stage = stages.size() - 1;
  meet(shown(stages[stage], true));
  while (stage > 0) {
    std::size_t open = stage - 1;
    std::set<int> flaps = moved(stages[open], stages[stage]);
    while (open > 0) {
      const std::set<int> more = moved(stages[open - 1], stages[open]);
      if (lie_on_each_other(stages[stage], flaps, more))
        break;
      flaps.insert(more.begin(), more.end());
      --open;
    }
    stage = open;
    meet(shown(stages[stage], true));
  }
  meet(shown(stages[0], false));
  return heads_up ? pages : std::vector<int>{};
}

std::vector<int> bind(const std::vector<std::vector<int>> &sheets, const Imposition &imposition) {
  std::vector<int> book, section;
  for (std::size_t i = 0; i < sheets.size(); ++i) {
    const std::size_t half = section.size() / 2;
    section.insert(section.begin() + static_cast<std::ptrdiff_t>(half), sheets[i].begin(),
                   sheets[i].end());
    if (i + 1 == sheets.size() ||
        imposition.sheets[i + 1].section != imposition.sheets[i].section) {
      book.insert(book.end(), section.begin(), section.end());
      section.clear();
    }
  }
  return book;
}

std::vector<int> expected(const Imposition &imposition) {
  std::vector<int> pages;
  for (int page = 1; page <= imposition.folds_into; ++page)
    pages.push_back(page <= imposition.page_count ? page : 0);
  return pages;
}

std::string places_wrong(const Imposition &imposition) {
  for (int page = 1; page <= imposition.page_count; ++page) {
    const Spotted &spot = imposition.where[static_cast<std::size_t>(page)];
    if (spot.sheet < 0 || imposition.place_of(page).page != page)
      return fmt::format("page {} is not where it is said to be", page);
    const SpineAt wanted = !imposition.leaves_turn ? SpineAt::none
                           : page % 2 != 0         ? SpineAt::left
                                                   : SpineAt::right;
    if (imposition.place_of(page).spine != wanted)
      return fmt::format("page {} has its spine on the wrong side", page);
  }
  return "";
}

// What a strip is too long for its pages by is cut off before it is folded.
void cut_off_the_rest(Bed &bed, int panels) {
  bed.scraps.resize(static_cast<std::size_t>(panels));
  bed.left = bed.right = bed.scraps.front().left;
  for (const Scrap &scrap : bed.scraps) {
    bed.left = std::min(bed.left, scrap.left);
    bed.right = std::max(bed.right, scrap.right);
  }
}

} // namespace

std::string refold(const Imposition &imposition, const Folding &folding) {
  if (std::string wrong = places_wrong(imposition); !wrong.empty())
    return wrong;
  if (std::any_of(folding.steps.begin(), folding.steps.end(),
                  [](const FoldStep &step) { return step.kind == FoldKind::ends_together; }))
    return imposition.page_count == imposition.folds_into ? hangs_together(imposition, folding)
                                                          : "";
  // Which face is up and which edge is near when folding starts is the folder's to know: one way of
  // the four must give the book.
  const std::vector<int> wanted = expected(imposition);
  for (const bool face_down : {false, true})
    for (const bool half : {false, true}) {
      std::vector<std::vector<int>> sheets;
      for (std::size_t i = 0; i < imposition.sheets.size(); ++i) {
        const std::size_t end = folding.tab ? imposition.sheets.size() : i + 1;
        Bed bed;
        if (std::string wrong = lay(imposition, folding, i, end, bed); !wrong.empty())
          return wrong;
        if (folding.tab)
          cut_off_the_rest(bed, imposition.folds_into / (imposition.one_side ? 1 : 2));
        if (face_down)
          turn_face_down(bed);
        if (half)
          turn_half(bed);
        sheets.push_back(imposition.leaves_turn ? turn_leaves(bed, folding, imposition.one_side)
                                                : undo_folds(bed, folding, imposition.one_side));
        if (folding.tab)
          break;
      }
      if (bind(sheets, imposition) == wanted)
        return "";
    }
  return "no way of laying the sheets down folds them into the book";
}

} // namespace bodkin::test
