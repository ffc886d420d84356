#include "sheet/topology.hpp"

#include <algorithm>
#include <tuple>

namespace bodkin {
namespace {

constexpr std::array page_edges{Toward::left, Toward::up, Toward::right, Toward::down};

Toward rotated(Toward way, Toward head) {
  return static_cast<Toward>((static_cast<int>(way) + static_cast<int>(head)) % 4);
}

Toward mirrored(Toward way, bool upright_axis) {
  const bool sideways = way == Toward::left || way == Toward::right;
  return sideways == upright_axis ? static_cast<Toward>((static_cast<int>(way) + 2) % 4) : way;
}

Meets met(const FoldedSheet &folded, const Leaf &leaf, Toward way) {
  if (way == leaf.spine)
    return Meets::spine;
  const bool edge = (way == Toward::left && leaf.column == 0) ||
                    (way == Toward::right && leaf.column == folded.columns - 1) ||
                    (way == Toward::up && leaf.row == 0) ||
                    (way == Toward::down && leaf.row == folded.rows - 1);
  return edge ? Meets::sheet_edge : Meets::fold;
}

SideCell cell_of(const FoldedSheet &folded, int index, bool front) {
  const Leaf &leaf = folded.leaves[static_cast<std::size_t>(index)];
  SideCell cell{index, leaf.column, leaf.row, leaf.recto_on_front == front, {}};
  if (!front && folded.spine_upright)
    cell.column = folded.columns - 1 - leaf.column;
  if (!front && !folded.spine_upright)
    cell.row = folded.rows - 1 - leaf.row;
  for (std::size_t i = 0; i < page_edges.size(); ++i) {
    const Toward seen = rotated(page_edges[i], leaf.head);
    cell.meets[i] = met(folded, leaf, front ? seen : mirrored(seen, folded.spine_upright));
  }
  return cell;
}

Place place_of(const SideCell &cell, const Leaf &leaf, const Layout &layout, int sheet,
               int page_count) {
  Place place;
  const int page = layout.recto_of(sheet, cell.leaf) + (cell.recto ? 0 : 1);
  place.page = page <= page_count ? page : 0;
  place.turn = turn_of(leaf.head); // the axis that the sheet turns about keeps heads where they are
  place.left = cell.meets[0];
  place.top = cell.meets[1];
  place.right = cell.meets[2];
  place.bottom = cell.meets[3];
  return place;
}

} // namespace

SheetPattern pattern_of(const FoldedSheet &folded) {
  SheetPattern pattern;
  for (int side = 0; side < 2; ++side) {
    std::vector<SideCell> &cells = pattern.sides[static_cast<std::size_t>(side)];
    for (int leaf = 0; leaf < static_cast<int>(folded.leaves.size()); ++leaf)
      cells.push_back(cell_of(folded, leaf, side == 0));
    std::sort(cells.begin(), cells.end(), [](const SideCell &a, const SideCell &b) {
      return std::tie(a.row, a.column) < std::tie(b.row, b.column);
    });
  }
  return pattern;
}

Imposition lay_out(const FoldedSheet &folded, const SheetPattern &pattern, const Layout &layout,
                   int page_count) {
  Imposition result;
  result.page_count = page_count;
  result.folds_into = layout.pages();
  result.pages_a_sheet = layout.pages_a_sheet();
  result.where.resize(static_cast<std::size_t>(page_count) + 1);
  result.sheets.resize(static_cast<std::size_t>(layout.sheets));
  for (int number = 0; number < layout.sheets; ++number) {
    Sheet &sheet = result.sheets[static_cast<std::size_t>(number)];
    sheet.number = number + 1;
    sheet.section = layout.section_of(number);
    sheet.turns_upright = folded.spine_upright;
    for (int s = 0; s < 2; ++s) {
      Side &side = sheet.sides[static_cast<std::size_t>(s)];
      side.name = s == 0 ? SideName::front : SideName::back;
      for (const SideCell &cell : pattern.sides[static_cast<std::size_t>(s)]) {
        const Leaf &leaf = folded.leaves[static_cast<std::size_t>(cell.leaf)];
        side.places.push_back(place_of(cell, leaf, layout, number, page_count));
        if (const int page = side.places.back().page; page > 0)
          result.where[static_cast<std::size_t>(page)] = {number, s,
                                                          static_cast<int>(side.places.size()) - 1};
      }
    }
  }
  return result;
}

} // namespace bodkin
