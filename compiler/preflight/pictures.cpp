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
  const double smaller = ppi / (line ? line_art : thin);
  Box box = set.window;
  box.width = Length::nearest_points(box.width.in_points() * smaller);
  box.height = Length::nearest_points(box.height.in_points() * smaller);
  problem.type = {{at_line(inspection, box),
                   "or ask for the camera's own file, or make the coarseness the look"}};
  return problem;
}

Problem cannot_be_read(const Element &element, const Picture &picture,
                       const art::Refusal &refusal) {
  Problem problem;
  problem.check =
      refusal.trouble == art::Trouble::too_big || refusal.trouble == art::Trouble::too_hard
          ? "picture-too-big"
          : "unreadable-picture";
  problem.range = picture.path.from.somewhere() ? picture.path.from : element.range;
  problem.message = fmt::format("{} {}", *picture.path, refusal.reason);
  problem.why = "the page is drawn with a dashed keyline so that you can see the rest";
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
  if (!set || set->window.width <= Length{} || set->window.height <= Length{})
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
  for (const Element &element : inspection.edition.elements) {
    const auto *picture = std::get_if<Picture>(&element.what);
    if (!picture || picture->path->empty())
      continue;
    const auto &facts = inspection.gallery.facts(*picture);
    if (!facts)
      problems.push_back(cannot_be_read(element, *picture, facts.refusal()));
    if (!element.describe)
      problems.push_back(no_description(element));
  }
}

} // namespace bodkin
