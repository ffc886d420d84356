#include "preflight/about.hpp"

#include "sheet/speech.hpp"

#include <fmt/format.h>

namespace bodkin {
namespace {

// What stands before a range on its line.
std::string_view indentation(const Sources &sources, Range range) {
  const std::string_view line = sources.line(range.file, sources.line_number(range));
  return line.substr(0, std::min(line.find_first_not_of(" \t"), line.size()));
}

std::string_view half_of(const Side &side, const Place &place, const Size &sheet) {
  if (side.places.size() != 2)
    return "";
  const bool side_by_side = side.places[0].box.y == side.places[1].box.y;
  if (side_by_side)
    return place.box.x + place.box.width / 2 < sheet.width / 2 ? "the left half of "
                                                               : "the right half of ";
  return place.box.y + place.box.height / 2 < sheet.height / 2 ? "the upper half of "
                                                               : "the lower half of ";
}

} // namespace

ItemKey key_of(const Item &item) { return {item.laid_by, item.element}; }

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

const Side &side_of(const Inspection &inspection, int page) {
  const Spotted &spot = inspection.imposition.where[static_cast<std::size_t>(page)];
  return inspection.imposition.sheets[static_cast<std::size_t>(spot.sheet)]
      .sides[static_cast<std::size_t>(spot.side)];
}

std::string pages_in_words(const Inspection &inspection, const std::vector<int> &pages) {
  const std::string words = spoken::pages_listed(pages);
  return inspection.piece.empty() ? words : fmt::format("{} of {}", words, inspection.piece);
}

int number_of(const Inspection &inspection, const Sheet &sheet) {
  const auto own = static_cast<std::size_t>(sheet.number) - 1;
  return inspection.is_other_book() ? inspection.numbers[own]
                                    : sheet.number + inspection.sheets_before;
}

std::string where_on_sheet(const Inspection &inspection, int page) {
  const Sheet &sheet = inspection.imposition.sheet_of(page);
  const Side &side = side_of(inspection, page);
  const std::string_view half = half_of(side, inspection.imposition.place_of(page), sheet.size);
  return fmt::format("{} is {}sheet {}, {}", pages_in_words(inspection, {page}),
                     half.empty() ? "on " : half, number_of(inspection, sheet),
                     side.name == SideName::front ? "front" : "back");
}

std::string length(const Inspection &inspection, Length length) {
  return rounded(length, inspection.edition.ruler);
}

Length ruled(const Inspection &inspection, Length length) {
  return ruled_up(length, inspection.edition.ruler);
}

bool may_edit(const Sources &sources, Range range) {
  return range.somewhere() && !sources.is_shelf(range.file);
}

void retype(const Inspection &inspection, Problem &problem, Range range, std::string line,
            std::string remark) {
  std::string whole = line;
  retype_part(inspection, problem, range, std::move(whole), std::move(line), std::move(remark));
}

void retype_part(const Inspection &inspection, Problem &problem, Range range, std::string part,
                 std::string line, std::string remark) {
  if (problem.type.empty() && may_edit(inspection.sources, range))
    problem.edits = {{range, std::move(part)}};
  problem.type.push_back({std::move(line), std::move(remark)});
}

void type_before(const Inspection &inspection, Problem &problem, Range range, std::string line,
                 std::string remark) {
  const std::string further = fmt::format("{}\n{}", line, indentation(inspection.sources, range));
  const Range before{range.file, range.begin, range.begin};
  retype_part(inspection, problem, before, further, std::move(line), std::move(remark));
}

bool place_is_broken(const Inspection &inspection, const Item &item) {
  const Placement &placement = inspection.edition[item.element].placement;
  return placement.from.somewhere() && !placement.written() && *placement.area == Area::place;
}

bool is_words(const Item &item) {
  return std::holds_alternative<SetWords>(item.what) || std::holds_alternative<SetQr>(item.what);
}

} // namespace bodkin
