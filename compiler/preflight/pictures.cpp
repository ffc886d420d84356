#include "preflight/about.hpp"
#include "preflight/families.hpp"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <set>

namespace bodkin {
namespace {

// Samples an inch of final size, by common practice: none of these has a published source.
constexpr double coarse = 100, thin = 200, fine = 300, line_art = 400;

double samples_an_inch(const art::Facts &facts, const SetPicture &set) {
  const double across = static_cast<double>(facts.width) / set.whole.width.in_inches();
  const double down = static_cast<double>(facts.height) / set.whole.height.in_inches();
  return std::min(across, down);
}

bool is_line_art(const art::Facts &facts, const Picture &picture) {
  return picture.tone->kind == ToneKind::line || facts.bits == 1;
}

// Down to what a ruler shows.
Length ruled_down(const Inspection &inspection, double points) {
  const Length step = ruled(inspection, Length::units(1));
  const auto steps = static_cast<std::int64_t>(points / step.in_points());
  return step * std::max<std::int64_t>(steps, 1);
}

// The place of a picture, small enough for its samples; its top left stays.
void type_smaller(const Inspection &inspection, Problem &problem, const Element &element,
                  const SetPicture &set, double smaller) {
  const Ruler ruler = inspection.edition.ruler;
  const auto scaled = [&](Length length) {
    return written(ruled_down(inspection, length.in_points() * smaller), ruler);
  };
  const auto *at = std::get_if<At>(&element.placement.where);
  const bool plain = at && at->across.from == From::start && at->down.from == From::start;
  const std::string line = fmt::format("at       {} {}, {} x {}",
                                       written(plain ? at->across.offset : set.window.x, ruler),
                                       written(plain ? at->down.offset : set.window.y, ruler),
                                       scaled(set.window.width), scaled(set.window.height));
  const std::string remark = "or ask for the camera's own file, or make the coarseness the look";
  if (plain)
    retype(inspection, problem, element.placement.from, line, remark);
  else
    problem.type.push_back({line, remark});
}

Problem coarse_picture(const Inspection &inspection, const Element &element,
                       const art::Facts &facts, const SetPicture &set, double ppi) {
  const auto &picture = std::get<Picture>(element.what);
  const bool line = is_line_art(facts, picture);
  const double width = set.window.width.in_inches();
  const double seen = static_cast<double>(facts.width) * width / set.whole.width.in_inches();
  const bool metric = inspection.edition.ruler == Ruler::millimetres;
  const auto carries = [&](double at) {
    return metric ? fmt::format("{:.0f}mm", seen / at * 25.4) : fmt::format("{:.1f}in", seen / at);
  };
  Problem problem;
  problem.kind = ppi < coarse ? Kind::error : Kind::warning;
  problem.check = "coarse-picture";
  problem.range = element.range;
  problem.message =
      ppi < coarse
          ? fmt::format("{:.0f} samples an inch at this size; under 100 shows as squares", ppi)
      : line
          ? fmt::format("{:.0f} samples an inch at this size; line art under 400 shows steps", ppi)
          : fmt::format("{:.0f} samples an inch at this size; under 200 looks soft", ppi);
  problem.why =
      fmt::format("{:.0f} pixels over {}: it carries {} at {:.0f}, {} at {:.0f}", seen,
                  length(inspection, set.window.width), carries(line ? 600 : fine),
                  line ? 600 : fine, carries(line ? line_art : thin), line ? line_art : thin);
  type_smaller(inspection, problem, element, set, ppi / (line ? line_art : thin));
  return problem;
}

// "3in x 3in at 300 an inch takes 900 x 900 pixels"
std::string enough_pixels(const Inspection &inspection, ElementId id) {
  for (const PageDrawing &page : inspection.drawings.pages)
    for (const Item &item : page.items)
      if (item.element == id && item.place.width > Length{})
        return fmt::format(
            "{} x {} at 300 an inch takes {:.0f} x {:.0f} pixels",
            length(inspection, item.place.width), length(inspection, item.place.height),
            item.place.width.in_inches() * fine, item.place.height.in_inches() * fine);
  return "300 pixels an inch of its place are enough";
}

Problem cannot_be_read(const Inspection &inspection, ElementId id, const Picture &picture,
                       const art::Refusal &refusal) {
  const Element &element = inspection.edition[id];
  const bool too_big =
      refusal.trouble == art::Trouble::too_big || refusal.trouble == art::Trouble::too_hard;
  Problem problem;
  problem.check = too_big ? "picture-too-big" : "unreadable-picture";
  problem.range = picture.path.from.somewhere() ? picture.path.from : element.range;
  problem.message = fmt::format("{} {}", *picture.path, refusal.reason);
  problem.why = "the page is drawn with a dashed keyline so that you can see the rest";
  if (too_big)
    problem.why += "; " + enough_pixels(inspection, id);
  problem.type = {{"", too_big ? "save a smaller copy of it, or name another picture"
                               : "save it again as PNG or JPEG from the program that made it, or "
                                 "name another picture"}};
  return problem;
}

Problem no_description(const Element &element) {
  Problem problem;
  problem.kind = Kind::note;
  problem.check = "no-description";
  problem.range = element.range;
  problem.message = "nothing says what this picture shows";
  problem.why = "a reader who cannot see it has only your words";
  problem.type = {{"describe \"…\"", "under it, in a sentence"}};
  return problem;
}

void check_size(const Inspection &inspection, const Item &item, std::set<ElementId> &said,
                Problems &problems) {
  const auto *set = std::get_if<SetPicture>(&item.what);
  if (!set || set->window.width <= Length{} || set->window.height <= Length{} ||
      place_is_broken(inspection, item))
    return;
  const Element &element = inspection.edition[item.element];
  const auto &picture = std::get<Picture>(element.what);
  const auto &facts = inspection.gallery.facts(picture);
  if (!facts || facts->is_drawing())
    return;
  const double ppi = samples_an_inch(*facts, *set);
  const bool poor = ppi < (is_line_art(*facts, picture) ? line_art : thin) - 0.5;
  if (poor && said.insert(item.element).second)
    problems.push_back(coarse_picture(inspection, element, *facts, *set, ppi));
}

} // namespace

void check_pictures(const Inspection &inspection, Problems &problems) {
  std::set<ElementId> said;
  for (const PageDrawing &page : inspection.drawings.pages)
    for (const Item &item : page.items)
      check_size(inspection, item, said, problems);
  for (std::size_t i = 0; i < inspection.edition.elements.size(); ++i) {
    const Element &element = inspection.edition.elements[i];
    const auto *picture = std::get_if<Picture>(&element.what);
    if (!picture || picture->path->empty())
      continue;
    const auto &facts = inspection.gallery.facts(*picture);
    if (!facts)
      problems.push_back(
          cannot_be_read(inspection, static_cast<ElementId>(i), *picture, facts.refusal()));
    if (!element.describe)
      problems.push_back(no_description(element));
  }
}

} // namespace bodkin
