#include "sheet/bed.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <set>

namespace bodkin::test {
namespace {

std::int64_t twice(Length length) { return length.units() * 2; }

Arrow head_of(int turn) {
  return turn == 0     ? Arrow{0, -1}
         : turn == 90  ? Arrow{1, 0}
         : turn == 180 ? Arrow{0, 1}
                       : Arrow{-1, 0};
}

// A back as given is the sheet turned about an axis through its middle; this turns it back.
Scrap scrap_of(const Sheet &sheet, const Place &place, bool front) {
  Scrap scrap{twice(place.box.x),      twice(place.box.y),  twice(place.box.right()),
              twice(place.box.foot()), head_of(place.turn), {}};
  if (front)
    return scrap;
  if (sheet.turns_upright) {
    scrap.left = twice(sheet.size.width - place.box.right());
    scrap.right = twice(sheet.size.width - place.box.x);
    scrap.head.x = -scrap.head.x;
  } else {
    scrap.top = twice(sheet.size.height - place.box.foot());
    scrap.bottom = twice(sheet.size.height - place.box.y);
    scrap.head.y = -scrap.head.y;
  }
  return scrap;
}

bool same_place(const Scrap &a, const Scrap &b) {
  return a.left == b.left && a.top == b.top && a.right == b.right && a.bottom == b.bottom;
}

void move(Scrap &scrap, std::int64_t dx, std::int64_t dy) {
  scrap.left += dx;
  scrap.right += dx;
  scrap.top += dy;
  scrap.bottom += dy;
}

std::string lay_sheet(const Imposition &imposition, const Sheet &sheet, Bed &bed, Arrow offset) {
  for (const Place &front : sheet.sides[0].places) {
    Scrap scrap = scrap_of(sheet, front, true);
    scrap.front = front.page;
    if (!imposition.one_side) {
      const auto behind = std::find_if(
          sheet.sides[1].places.begin(), sheet.sides[1].places.end(),
          [&](const Place &back) { return same_place(scrap_of(sheet, back, false), scrap); });
      if (behind == sheet.sides[1].places.end())
        return fmt::format("sheet {}: nothing lies exactly behind page {}", sheet.number,
                           front.page);
      scrap.back = behind->page;
      scrap.back_head = scrap_of(sheet, *behind, false).head;
      if (imposition.leaves_turn && !(scrap.back_head == scrap.head))
        return fmt::format("sheet {}: page {} is not head to head with {}", sheet.number,
                           behind->page, front.page);
    }
    move(scrap, offset.x, offset.y);
    scrap.number = static_cast<int>(bed.scraps.size());
    bed.scraps.push_back(scrap);
  }
  return "";
}

bool sideways_fold(const FoldStep &step) {
  return step.moving == Part::left || step.moving == Part::right;
}

void cover(Bed &bed) {
  bed.left = bed.scraps.front().left;
  bed.right = bed.scraps.front().right;
  bed.top = bed.scraps.front().top;
  bed.bottom = bed.scraps.front().bottom;
  for (const Scrap &scrap : bed.scraps) {
    bed.left = std::min(bed.left, scrap.left);
    bed.right = std::max(bed.right, scrap.right);
    bed.top = std::min(bed.top, scrap.top);
    bed.bottom = std::max(bed.bottom, scrap.bottom);
  }
}

void flip(Scrap &scrap, bool about_upright, std::int64_t line) {
  std::int64_t &low = about_upright ? scrap.left : scrap.top;
  std::int64_t &high = about_upright ? scrap.right : scrap.bottom;
  std::tie(low, high) = std::pair(2 * line - high, 2 * line - low);
  (about_upright ? scrap.head.x : scrap.head.y) *= -1;
  (about_upright ? scrap.back_head.x : scrap.back_head.y) *= -1;
  scrap.front_up = !scrap.front_up;
}

std::pair<std::int64_t, std::int64_t> heights(const Bed &bed) {
  const auto [low, high] =
      std::minmax_element(bed.scraps.begin(), bed.scraps.end(),
                          [](const Scrap &a, const Scrap &b) { return a.height < b.height; });
  return {low->height, high->height};
}

bool fold_over_line(Bed &bed, const FoldStep &step) {
  const bool upright = sideways_fold(step);
  const bool beyond = step.moving == Part::right || step.moving == Part::bottom;
  std::set<std::int64_t> lines;
  for (const Scrap &scrap : bed.scraps) {
    lines.insert(upright ? scrap.left : scrap.top);
    lines.insert(upright ? scrap.right : scrap.bottom);
  }
  std::int64_t line = upright ? (bed.left + bed.right) / 2 : (bed.top + bed.bottom) / 2;
  if (step.panels > 0) {
    if (static_cast<std::size_t>(step.panels) + 1 >= lines.size())
      return false;
    line =
        beyond ? *std::next(lines.rbegin(), step.panels) : *std::next(lines.begin(), step.panels);
  }
  const auto [lowest, highest] = heights(bed);
  for (Scrap &scrap : bed.scraps) {
    const std::int64_t low = upright ? scrap.left : scrap.top;
    const std::int64_t high = upright ? scrap.right : scrap.bottom;
    if (low < line && high > line)
      return false;
    if ((low >= line) != beyond)
      continue;
    flip(scrap, upright, line);
    // Over: the topmost of the moving part comes to lie lowest, just above all that rests.
    scrap.height = step.under ? 2 * lowest - 1 - scrap.height : 2 * highest + 1 - scrap.height;
  }
  return true;
}

bool meets_cut(const Cut &cut, bool upright, std::int64_t at, std::int64_t from, std::int64_t to) {
  const std::int64_t line = upright ? cut.left : cut.top;
  const bool runs_so = upright ? cut.left == cut.right : cut.top == cut.bottom;
  const std::int64_t first = upright ? cut.top : cut.left, last = upright ? cut.bottom : cut.right;
  return runs_so && line == at && first <= from && to <= last;
}

// One layer: each scrap's neighbour, from the end that comes first row by row.
std::vector<int> path_of(const Bed &bed) {
  constexpr Arrow ways[]{{0, -1}, {1, 0}, {0, 1}, {-1, 0}};
  std::vector<std::vector<int>> on(bed.scraps.size());
  for (const Scrap &scrap : bed.scraps)
    for (const Arrow way : ways)
      if (const int other = neighbour(bed, scrap, way); other >= 0)
        on[static_cast<std::size_t>(scrap.number)].push_back(other);
  int start = -1;
  for (const Scrap &scrap : bed.scraps)
    if (on[static_cast<std::size_t>(scrap.number)].size() == 1 &&
        (start < 0 || std::tie(scrap.top, scrap.left) <
                          std::tie(bed.scraps[static_cast<std::size_t>(start)].top,
                                   bed.scraps[static_cast<std::size_t>(start)].left)))
      start = scrap.number;
  std::vector<int> path;
  for (int before = -1, here = start; here >= 0;) {
    path.push_back(here);
    int next = -1;
    for (const int other : on[static_cast<std::size_t>(here)])
      if (other != before)
        next = other;
    before = here;
    here = next;
  }
  return path;
}

// The rest of the strip goes under along the edge where it hangs, again and again.
bool zigzag(Bed &bed, const FoldStep &step) {
  const std::vector<int> path = path_of(bed);
  if (path.size() != bed.scraps.size() || static_cast<std::size_t>(step.from) >= path.size())
    return false;
  for (std::size_t i = static_cast<std::size_t>(step.from) - 1; i + 1 < path.size(); ++i) {
    const Scrap here = bed.scraps[static_cast<std::size_t>(path[i])];
    const Scrap next = bed.scraps[static_cast<std::size_t>(path[i + 1])];
    const bool upright = here.right == next.left || here.left == next.right;
    const std::int64_t line = here.right == next.left   ? here.right
                              : here.left == next.right ? here.left
                              : here.bottom == next.top ? here.bottom
                                                        : here.top;
    const std::int64_t lowest = heights(bed).first;
    for (std::size_t k = i + 1; k < path.size(); ++k) {
      Scrap &scrap = bed.scraps[static_cast<std::size_t>(path[k])];
      flip(scrap, upright, line);
      scrap.height = lowest - 1 - (scrap.height - lowest);
    }
  }
  return true;
}

} // namespace

int neighbour(const Bed &flat, const Scrap &scrap, Arrow way) {
  for (const Scrap &other : flat.scraps) {
    const bool upright = way.x != 0;
    const bool aligned = upright ? other.top == scrap.top && other.bottom == scrap.bottom
                                 : other.left == scrap.left && other.right == scrap.right;
    const std::int64_t at = way.x > 0   ? scrap.right
                            : way.x < 0 ? scrap.left
                            : way.y > 0 ? scrap.bottom
                                        : scrap.top;
    const std::int64_t met = way.x > 0   ? other.left
                             : way.x < 0 ? other.right
                             : way.y > 0 ? other.top
                                         : other.bottom;
    if (!aligned || at != met)
      continue;
    const std::int64_t from = upright ? scrap.top : scrap.left;
    const std::int64_t to = upright ? scrap.bottom : scrap.right;
    const bool cut = std::any_of(flat.cuts.begin(), flat.cuts.end(), [&](const Cut &one) {
      return meets_cut(one, upright, at, from, to);
    });
    return cut ? -1 : other.number;
  }
  return -1;
}

std::string lay(const Imposition &imposition, const Folding &folding, std::size_t first,
                std::size_t end, Bed &bed) {
  bed = {};
  Arrow offset;
  for (; first < end; ++first) {
    const Sheet &sheet = imposition.sheets[first];
    if (std::string wrong = lay_sheet(imposition, sheet, bed, offset); !wrong.empty())
      return wrong;
    for (const Sheet::FoldLine &slit : sheet.slits)
      bed.cuts.push_back({twice(slit.start.x) + offset.x, twice(slit.start.y) + offset.y,
                          twice(slit.end.x) + offset.x, twice(slit.end.y) + offset.y});
    if (folding.tab && folding.tab->at == Part::right)
      offset.x += twice(sheet.size.width - folding.tab->width);
    if (folding.tab && folding.tab->at == Part::bottom)
      offset.y += twice(sheet.size.height - folding.tab->width);
  }
  cover(bed);
  return "";
}

void turn_face_down(Bed &bed) {
  for (Scrap &scrap : bed.scraps)
    flip(scrap, true, (bed.left + bed.right) / 2);
  for (Cut &cut : bed.cuts)
    std::tie(cut.left, cut.right) =
        std::pair(bed.left + bed.right - cut.right, bed.left + bed.right - cut.left);
}

void turn_half(Bed &bed) {
  for (Scrap &scrap : bed.scraps) {
    flip(scrap, true, (bed.left + bed.right) / 2);
    flip(scrap, false, (bed.top + bed.bottom) / 2);
  }
  for (Cut &cut : bed.cuts) {
    std::tie(cut.left, cut.right) =
        std::pair(bed.left + bed.right - cut.right, bed.left + bed.right - cut.left);
    std::tie(cut.top, cut.bottom) =
        std::pair(bed.top + bed.bottom - cut.bottom, bed.top + bed.bottom - cut.top);
  }
}

bool fold_once(Bed &bed, const FoldStep &step) {
  const bool done =
      step.kind == FoldKind::over_a_line ? fold_over_line(bed, step) : zigzag(bed, step);
  cover(bed);
  return done;
}

} // namespace bodkin::test
