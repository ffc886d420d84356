#include "sheet/refold.hpp"

#include <algorithm>
#include <cstdint>
#include <fmt/format.h>
#include <set>
#include <vector>

namespace bodkin::test {
namespace {

// Twice the units, so that middles are whole.
struct Vector {
  std::int64_t x = 0, y = 0;
  bool operator==(const Vector &) const = default;
};
struct Paper {
  Vector middle, head; // head: a unit vector, in the paper, as the leaf lies
  int front = 0, back = 0;
  bool front_up = true;
  std::int64_t height = 0; // in the pile
};
struct Bed {
  std::int64_t left, top, right, bottom;
  std::vector<Paper> papers;
};

std::int64_t twice(Length length) { return length.units() * 2; }
Vector middle(const Box &box) {
  return {box.x.units() * 2 + box.width.units(), box.y.units() * 2 + box.height.units()};
}
Vector head(int turn) {
  return turn == 0     ? Vector{0, -1}
         : turn == 90  ? Vector{1, 0}
         : turn == 180 ? Vector{0, 1}
                       : Vector{-1, 0};
}

// A back as given is the sheet turned about an axis through its middle; this turns it back.
Vector through(const Sheet &sheet, Vector seen) {
  return sheet.turns_upright ? Vector{twice(sheet.size.width) - seen.x, seen.y}
                             : Vector{seen.x, twice(sheet.size.height) - seen.y};
}
Vector heads_through(const Sheet &sheet, Vector seen) {
  return sheet.turns_upright ? Vector{-seen.x, seen.y} : Vector{seen.x, -seen.y};
}

std::string lay(const Sheet &sheet, Bed &bed) {
  bed = {0, 0, twice(sheet.size.width), twice(sheet.size.height), {}};
  for (const Place &front : sheet.sides[0].places) {
    const auto behind = std::find_if(
        sheet.sides[1].places.begin(), sheet.sides[1].places.end(),
        [&](const Place &back) { return through(sheet, middle(back.box)) == middle(front.box); });
    if (behind == sheet.sides[1].places.end())
      return fmt::format("sheet {}: nothing lies exactly behind page {}", sheet.number, front.page);
    if (heads_through(sheet, head(behind->turn)) != head(front.turn))
      return fmt::format("sheet {}: page {} is not head to head with {}", sheet.number,
                         behind->page, front.page);
    bed.papers.push_back({middle(front.box), head(front.turn), front.page, behind->page, true, 0});
  }
  return "";
}

void turn_face_down(Bed &bed) {
  for (Paper &paper : bed.papers) {
    paper.middle.x = bed.left + bed.right - paper.middle.x;
    paper.head.x = -paper.head.x;
    paper.front_up = !paper.front_up;
  }
}

void turn_half(Bed &bed) {
  for (Paper &paper : bed.papers) {
    paper.middle = {bed.left + bed.right - paper.middle.x, bed.top + bed.bottom - paper.middle.y};
    paper.head = {-paper.head.x, -paper.head.y};
  }
}

void fold_once(Bed &bed, const FoldStep &step) {
  const bool upright = step.moving == Part::left || step.moving == Part::right;
  const std::int64_t line = upright ? (bed.left + bed.right) / 2 : (bed.top + bed.bottom) / 2;
  const bool beyond = step.moving == Part::right || step.moving == Part::bottom;
  const std::int64_t highest =
      std::max_element(bed.papers.begin(), bed.papers.end(), [](const Paper &a, const Paper &b) {
        return a.height < b.height;
      })->height;
  for (Paper &paper : bed.papers) {
    std::int64_t &across = upright ? paper.middle.x : paper.middle.y;
    if ((across > line) != beyond)
      continue;
    across = 2 * line - across;
    (upright ? paper.head.x : paper.head.y) *= -1;
    paper.front_up = !paper.front_up;
    // Over: the topmost of the moving half comes to lie lowest, just above all that rests.
    paper.height = step.under ? -1 - paper.height : 2 * highest + 1 - paper.height;
  }
  std::int64_t &edge = upright ? (beyond ? bed.right : bed.left) : (beyond ? bed.bottom : bed.top);
  edge = line;
  const std::int64_t lowest =
      std::min_element(bed.papers.begin(), bed.papers.end(), [](const Paper &a, const Paper &b) {
        return a.height < b.height;
      })->height;
  for (Paper &paper : bed.papers)
    paper.height -= lowest;
}

// Where heads point when the crease of the last fold is turned to the left.
Vector head_of_book(Part last) {
  switch (last) {
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
std::vector<int> read(Bed bed, const Folding &folding) {
  for (const FoldStep &step : folding.steps)
    fold_once(bed, step);
  std::sort(bed.papers.begin(), bed.papers.end(),
            [](const Paper &a, const Paper &b) { return a.height > b.height; });
  const Vector up = head_of_book(folding.steps.back().moving);
  std::vector<int> pages;
  std::set<std::int64_t> heights;
  for (const Paper &paper : bed.papers) {
    const bool inside = paper.middle.x > bed.left && paper.middle.x < bed.right &&
                        paper.middle.y > bed.top && paper.middle.y < bed.bottom;
    if (paper.head != up || !inside || !heights.insert(paper.height).second)
      return {};
    pages.push_back(paper.front_up ? paper.front : paper.back);
    pages.push_back(paper.front_up ? paper.back : paper.front);
  }
  return pages;
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
    const Place &place = imposition.place_of(page);
    const Meets spine = page % 2 != 0 ? place.left : place.right;
    const Meets fore_edge = page % 2 != 0 ? place.right : place.left;
    if (spine != Meets::spine || fore_edge == Meets::spine)
      return fmt::format("page {} has its spine on the wrong side", page);
  }
  return "";
}

} // namespace

std::string refold(const Imposition &imposition, const Folding &folding) {
  if (std::string wrong = places_wrong(imposition); !wrong.empty())
    return wrong;
  // Which face is up and which edge is near when folding starts is the folder's to know: one way of
  // the four must give the book.
  const std::vector<int> wanted = expected(imposition);
  for (const bool face_down : {false, true})
    for (const bool half : {false, true}) {
      std::vector<std::vector<int>> sheets;
      for (const Sheet &sheet : imposition.sheets) {
        Bed bed{};
        if (std::string wrong = lay(sheet, bed); !wrong.empty())
          return wrong;
        if (face_down)
          turn_face_down(bed);
        if (half)
          turn_half(bed);
        sheets.push_back(read(std::move(bed), folding));
      }
      if (bind(sheets, imposition) == wanted)
        return "";
    }
  return "no way of laying the sheets down folds them into the book";
}

} // namespace bodkin::test
