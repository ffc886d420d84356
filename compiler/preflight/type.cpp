#include "page/outline.hpp"
#include "preflight/about.hpp"
#include "preflight/families.hpp"

#include <fmt/format.h>
#include <set>

namespace bodkin {
namespace {

constexpr Length least_type = Length::points(5), least_line = Length::units(Length::per_point / 4);

std::string points(Length length) { return fmt::format("{:.4g}", length.in_points()); }

Problem small_type(const Style &style, Length size) {
  Problem problem;
  problem.kind = Kind::warning;
  problem.check = "small-type";
  problem.range = style.size.from.somewhere() ? style.size.from : style.range;
  problem.message =
      fmt::format("type of {} points; under 5 a copier fills the letters in", points(size));
  problem.why = "toner spreads by a few hundredths of a millimetre, and the eyes of e and a close";
  return problem;
}

Problem thin_line(const Element &element, Length width) {
  Problem problem;
  problem.kind = Kind::warning;
  problem.check = "thin-line";
  problem.range = element.outline ? element.outline->from : element.range;
  problem.message = fmt::format("a line of {} points; under 1/4 it breaks up", points(width));
  problem.why = "a quarter of a point is two dots of a 600 dpi machine";
  return problem;
}

void check_words(const Inspection &inspection, const Item &item, std::set<StyleId> &said,
                 Problems &problems) {
  const auto *set = std::get_if<SetWords>(&item.what);
  const auto *words = std::get_if<Words>(&inspection.edition[item.element].what);
  if (!set || !words || *words->style == StyleId::none)
    return;
  for (const Line &line : set->lines)
    for (const GlyphRun &run : line.runs)
      if (!run.glyphs.empty() && run.size < least_type && said.insert(*words->style).second)
        problems.push_back(small_type(inspection.edition[*words->style], run.size));
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
  for (const PageDrawing &page : inspection.drawings.pages)
    for (const Item &item : page.items) {
      check_words(inspection, item, styles, problems);
      const auto width = line_width(item);
      if (width && *width > Length{} && *width < least_line && lines.insert(item.element).second)
        problems.push_back(thin_line(inspection.edition[item.element], *width));
    }
}

} // namespace bodkin
