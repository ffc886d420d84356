#include "command/making.hpp"

#include <cmath>

namespace bodkin {
namespace {

// Laid matter is turned and moved with what lays it: its place where it comes to stand.
paperwork::HandPlace standing(const Item &item, int page) {
  const Point middle = item.to_page(middle_of(item.place));
  const double degrees =
      std::atan2(item.to_page.yx, item.to_page.xx) * 180 / 3.14159265358979323846;
  Box box = item.place;
  box.x = Length::nearest_points(middle.x) - box.width / 2;
  box.y = Length::nearest_points(middle.y) - box.height / 2;
  if (item.to_page.upright() && item.to_page.x0 == 0 && item.to_page.y0 == 0)
    box = item.place;
  return {item.element, page, box, Angle{static_cast<std::int32_t>(std::lround(degrees * 1000))}};
}

bool by_hand(const Edition &edition, const Item &item) {
  return std::holds_alternative<SetHand>(item.what) ||
         std::holds_alternative<SetPasteUp>(item.what) ||
         (item.element != ElementId::none && edition[item.element].work.takes);
}

bool is_made_of(const CopyPart &part, std::size_t page) {
  return part.makes(static_cast<std::size_t>(part.imposition.where[page].sheet));
}

// Work that another run's book shows too is told where the first run's shows it; what is glued on
// an original, wherever a page has an original of its own.
bool is_own(const CopyPart &part, const Edition &edition, const Item &item, std::size_t page) {
  if (std::holds_alternative<SetPasteUp>(item.what))
    return is_made_of(part, page);
  return !part.piece || item.element == ElementId::none ||
         is_own_matter(*part.piece, edition[item.element]);
}

} // namespace

paperwork::Making making_of(const WayThrough &way) {
  paperwork::Making making{way.edition(), way.parts, way.imposition, way.modes,
                           way.passes,    way.sides, way.estimate,   {}};
  for (std::size_t part = 0; part < way.drawings.size(); ++part) {
    const std::vector<PageDrawing> &pages = way.drawings[part].pages;
    for (std::size_t page = 1; page < pages.size(); ++page)
      for (const Item &item : pages[page].items)
        if (by_hand(way.edition(), item) && is_own(way.parts[part], way.edition(), item, page))
          making.hands.push_back(
              standing(item, static_cast<int>(page) + way.parts[part].pages_before));
  }
  return making;
}

} // namespace bodkin
