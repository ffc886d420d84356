#include "sheet/hanging.hpp"

#include "sheet/bed.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <vector>

namespace bodkin::test {
namespace {

enum class BookEdge { spine, head, fore_edge, foot };

// Odd pages lie face up, the spine at their left; even ones face down, the spine at their right.
BookEdge book_edge(const Scrap &scrap, Arrow way) {
  if (way == scrap.head)
    return BookEdge::head;
  if (way == Arrow{-scrap.head.x, -scrap.head.y})
    return BookEdge::foot;
  const bool right_of_page = way == Arrow{-scrap.head.y, scrap.head.x};
  return right_of_page == (scrap.front % 2 != 0) ? BookEdge::fore_edge : BookEdge::spine;
}

struct Hinge {
  BookEdge edge;
  int upper, lower; // pages
};

} // namespace

std::string hangs_together(const Imposition &imposition, const Folding &folding) {
  Bed bed;
  if (std::string wrong = lay(imposition, folding, 0, 1, bed); !wrong.empty())
    return wrong;
  std::vector<Hinge> hinges;
  for (const Scrap &scrap : bed.scraps)
    for (const Arrow way : {Arrow{1, 0}, Arrow{0, 1}}) {
      const int number = neighbour(bed, scrap, way);
      if (number < 0)
        continue;
      const Scrap &other = bed.scraps[static_cast<std::size_t>(number)];
      const BookEdge edge = book_edge(scrap, way);
      if (edge != book_edge(other, {-way.x, -way.y}))
        return fmt::format("pages {} and {} would be torn apart", scrap.front, other.front);
      hinges.push_back(
          {edge, std::min(scrap.front, other.front), std::max(scrap.front, other.front)});
    }
  for (const Hinge &one : hinges)
    for (const Hinge &two : hinges)
      if (one.edge == two.edge && one.upper < two.upper && two.upper < one.lower &&
          one.lower < two.lower)
        return fmt::format("the folds {}-{} and {}-{} interlock", one.upper, one.lower, two.upper,
                           two.lower);
  for (int page = 2; page < imposition.page_count; page += 2)
    for (const Hinge &hinge : hinges)
      if (hinge.edge != BookEdge::spine && hinge.upper <= page && page < hinge.lower)
        return fmt::format("pages {} and {} do not open: {} and {} hold them together", page,
                           page + 1, hinge.upper, hinge.lower);
  return "";
}

} // namespace bodkin::test
