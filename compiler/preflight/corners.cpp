// Rounded corners: what must be read and stands where the corner is punched off.
#include "page/outline.hpp"
#include "preflight/about.hpp"
#include "preflight/families.hpp"
#include "sheet/live.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <fmt/format.h>

namespace bodkin {
namespace {

// A corner of the copy as it is cut, on one of its pages, in points.
struct Corner {
  Point tip, middle; // of the page, and of the curve
  double radius = 0;
  std::string_view name;
};

// Four corners are all; two are those of the fore-edge, where a spine is known.
std::vector<Corner> corners_on(const Inspection &inspection, const FinishStep &step, int page) {
  const LiveArea live = live_area(inspection.edition, inspection.imposition, page);
  const auto cut = [&](PageEdge edge) { return (live[edge].trim + live[edge].creep).in_points(); };
  const Size size = inspection.imposition.size_of(page);
  const double left = cut(PageEdge::left), top = cut(PageEdge::top);
  const double right = size.width.in_points() - cut(PageEdge::right);
  const double foot = size.height.in_points() - cut(PageEdge::bottom);
  const double r = step.radius.in_points();
  const SpineAt spine = inspection.imposition.place_of(page).spine;
  std::vector<Corner> corners;
  for (const bool at_left : {true, false}) {
    const bool bound = spine == (at_left ? SpineAt::left : SpineAt::right);
    if (step.corners < 4 && (bound || spine == SpineAt::none))
      continue;
    const double x = at_left ? left : right, in = at_left ? r : -r;
    corners.push_back({{x, top}, {x + in, top + r}, r, bound ? "top inner" : "top outer"});
    corners.push_back({{x, foot}, {x + in, foot - r}, r, bound ? "bottom inner" : "bottom outer"});
  }
  return corners;
}

bool between(double a, double b, double x) { return std::min(a, b) <= x && x <= std::max(a, b); }

// How far a point lies outside the curve, in the square that the corner takes.
double cut_off(const Corner &corner, const Point &p) {
  if (!between(corner.tip.x, corner.middle.x, p.x) || !between(corner.tip.y, corner.middle.y, p.y))
    return 0;
  return std::hypot(p.x - corner.middle.x, p.y - corner.middle.y) - corner.radius;
}

// Of an outline: its farthest point is one of its corners, or where a side leaves the square.
double cut_off(const Corner &corner, const Polygon &outline) {
  constexpr int steps = 32;
  double most = 0;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const Point &a = outline[i], &b = outline[(i + 1) % outline.size()];
    for (int k = 0; k < steps; ++k) {
      const double t = static_cast<double>(k) / steps;
      most = std::max(most, cut_off(corner, Point{a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t}));
    }
  }
  return most;
}

struct Loss {
  const Item *item = nullptr;
  std::string_view corner;
  double by = 0; // points
  std::vector<int> pages;
};

void look_at(const Corner &corner, const Item &item, int page, Loss &worst) {
  for (const Polygon &outline : outlines_of(item)) {
    const double by = cut_off(corner, outline);
    if (by < 0.01)
      continue;
    if (worst.pages.empty() || worst.pages.back() != page)
      worst.pages.push_back(page);
    if (by > worst.by)
      worst = {&item, corner.name, by, std::move(worst.pages)};
  }
}

Problem words_cut_off(const Inspection &inspection, const FinishStep &step, const Loss &loss) {
  const std::string by = length(inspection, ruled(inspection, Length::nearest_points(loss.by)));
  Problem problem;
  problem.check = "unsafe-words";
  problem.range = place_range(inspection, *loss.item);
  problem.message = fmt::format("up to {} of the {} at the {} corner of {} is rounded off", by,
                                name_of(inspection, *loss.item), loss.corner,
                                pages_in_words(inspection, loss.pages));
  problem.why = fmt::format("the corners are punched to a curve of {}, so that what stands in the "
                            "tip of one falls with it",
                            length(inspection, step.radius));
  problem.type = {{"", fmt::format("move it {} inwards, or round the corners less", by)}};
  problem.related = {{step.range, "this rounds them"}};
  return problem;
}

} // namespace

void check_corners(const Inspection &inspection, Problems &problems) {
  for (const FinishStep &step : inspection.edition.finish) {
    if (step.kind != StepKind::round || step.radius <= Length{})
      continue;
    Loss worst;
    for (int page = 1; page <= inspection.imposition.page_count; ++page) {
      const std::vector<Corner> corners = corners_on(inspection, step, page);
      for (const Item &item : inspection.drawings[page].items)
        if (is_words(item) && !place_is_broken(inspection, item))
          for (const Corner &corner : corners)
            look_at(corner, item, page, worst);
    }
    if (worst.item != nullptr)
      problems.push_back(words_cut_off(inspection, step, worst));
  }
}

} // namespace bodkin
