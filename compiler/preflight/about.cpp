#include "preflight/about.hpp"

#include <fmt/format.h>

namespace bodkin {

const Element &element_of(const Inspection &inspection, const Item &item) {
  return inspection.edition[item.laid_by != ElementId::none ? item.laid_by : item.element];
}

Range place_range(const Inspection &inspection, const Item &item) {
  const Element &element = element_of(inspection, item);
  return element.placement.from.somewhere() ? element.placement.from : element.range;
}

std::string name_of(const Inspection &inspection, const Item &item) {
  const Element &element = inspection.edition[item.element];
  return std::string(name_of(element));
}

std::string where_on_sheet(const Inspection &inspection, int page) {
  const Spotted &spot = inspection.imposition.where[static_cast<std::size_t>(page)];
  const Sheet &sheet = inspection.imposition.sheet_of(page);
  const Place &place = inspection.imposition.place_of(page);
  const bool left = place.box.x + place.box.width / 2 < sheet.size.width / 2;
  return fmt::format("page {} is on the {} half of sheet {}, {}", page, left ? "left" : "right",
                     sheet.number, spot.side == 0 ? "front" : "back");
}

std::string length(const Inspection &inspection, Length length) {
  return written(length, inspection.edition.ruler);
}

Length ruled(const Inspection &inspection, Length length) {
  const Length step = inspection.edition.ruler == Ruler::inches ? Length::inches(1, 16)
                                                                : Length::units(Length::per_mm / 2);
  const std::int64_t magnitude = length.units() < 0 ? -length.units() : length.units();
  const std::int64_t steps = (magnitude + step.units() - 1) / step.units();
  return step * (length.units() < 0 ? -steps : steps);
}

std::string at_line(const Inspection &inspection, const Box &box) {
  return fmt::format("at       {} {}, {} x {}", length(inspection, box.x),
                     length(inspection, box.y), length(inspection, box.width),
                     length(inspection, box.height));
}

bool is_words(const Item &item) {
  return std::holds_alternative<SetWords>(item.what) || std::holds_alternative<SetQr>(item.what);
}

} // namespace bodkin
