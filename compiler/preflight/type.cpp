#include "preflight/about.hpp"
#include "preflight/families.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <set>
#include <vector>

namespace bodkin {
namespace {

constexpr Length least_type = Length::points(5), least_line = Length::units(Length::per_point / 4);

std::string points(Length length) { return fmt::format("{:.4g}", length.in_points()); }

// The style that sets words so small: the element's own, or one that it hands headings and quotes
// to.
StyleId style_of_size(const Edition &edition, StyleId id, Length size) {
  const Style &style = edition[id];
  std::vector<std::optional<Known<StyleId>>> handed{style.quote, style.list, style.code};
  handed.insert(handed.end(), style.headings.begin(), style.headings.end());
  if (*style.size != size)
    for (const auto &other : handed)
      if (other && **other != StyleId::none && *edition[**other].size == size)
        return **other;
  return id;
}

// In the family's own letters an x is about two fifths of the size: common practice, no source.
Problem small_type(const Inspection &inspection, const Style &style, Length size) {
  Problem problem;
  problem.kind = Kind::warning;
  problem.check = "small-type";
  problem.range = style.size.from.somewhere() ? style.size.from : style.range;
  problem.message =
      fmt::format("type of {} points; under 5 a copier fills the letters in", points(size));
  problem.why = fmt::format("an x is about {:.1f}mm high at this size; toner spreads, and the eyes "
                            "of e and a close",
                            size.in_mm() * 2 / 5);
  const std::string larger =
      fmt::format("5/{}", points(std::max(*style.leading, Length::points(6))));
  if (*style.face != FaceId::none)
    retype_part(inspection, problem, style.size.from, larger,
                fmt::format("face       {} {}", inspection.edition[*style.face].name, larger),
                fmt::format("under style {}", style.name));
  return problem;
}

// The line with another width behind its first word.
std::string line_with_width(std::string_view line, std::string_view width) {
  const std::size_t begin = line.find_first_not_of(' ', line.find(' '));
  const std::size_t end = std::min(line.find(' ', begin), line.size());
  return fmt::format("{}{}{}", line.substr(0, begin), width, line.substr(end));
}

const Machine *machine_of(const Inspection &inspection, int page) {
  const MachineId id = side_of(inspection, page).machine;
  return id == MachineId::none ? nullptr : &inspection.edition[id];
}

Problem thin_line(const Inspection &inspection, const Element &element, int page, Length width) {
  const Machine *machine = machine_of(inspection, page);
  const auto dpi = static_cast<double>(machine ? *machine->resolution : 600);
  Problem problem;
  problem.kind = Kind::warning;
  problem.check = "thin-line";
  problem.range = element.outline ? element.outline->from : element.range;
  problem.message = fmt::format("a line of {} points; under 1/4 it breaks up", points(width));
  problem.why = fmt::format(
      "it is {:.1f} dots wide at the {} dpi of {}; 1/4pt is {:.1f}", width.in_inches() * dpi, dpi,
      machine ? machine->name : std::string("most machines"), least_line.in_inches() * dpi);
  retype(inspection, problem, problem.range,
         line_with_width(inspection.sources.text(problem.range), "1/4pt"));
  return problem;
}

void check_words(const Inspection &inspection, const Item &item, std::set<StyleId> &said,
                 Problems &problems) {
  const auto *set = std::get_if<SetWords>(&item.what);
  const auto *words = std::get_if<Words>(&inspection.edition[item.element].what);
  if (!set || !words || *words->style == StyleId::none)
    return;
  for (const Line &line : set->lines)
    for (const GlyphRun &run : line.runs) {
      if (run.glyphs.empty() || run.size >= least_type)
        continue;
      const StyleId style = style_of_size(inspection.edition, *words->style, run.size);
      if (said.insert(style).second)
        problems.push_back(small_type(inspection, inspection.edition[style], run.size));
    }
}

std::optional<Length> line_width(const Item &item) {
  if (const auto *rule = std::get_if<SetRule>(&item.what))
    return rule->width;
  if (const auto *outline = std::get_if<SetOutline>(&item.what))
    return outline->width;
  return std::nullopt;
}

} // namespace

void check_type(const Inspection &inspection, Problems &problems) {
  std::set<StyleId> styles;
  std::set<ElementId> lines;
  for (int page = 1; page <= inspection.imposition.page_count; ++page)
    for (const Item &item : inspection.drawings[page].items) {
      check_words(inspection, item, styles, problems);
      const auto width = line_width(item);
      if (width && *width > Length{} && *width < least_line && lines.insert(item.element).second)
        problems.push_back(thin_line(inspection, inspection.edition[item.element], page, *width));
    }
}

} // namespace bodkin
