#include "money/chart_lines.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

namespace bodkin {
namespace {

constexpr double much_dearer = 4;

double log_of(std::int64_t copies) { return std::log(static_cast<double>(copies)); }

std::optional<double> cost_at(const Way &way, std::int64_t copies) {
  const Stretch stretch = way.at(copies);
  return stretch.offered ? std::optional(cost_a_copy(stretch, copies)) : std::nullopt;
}

// Of one's own making, which stands first, and of the cheapest.
double cost_to_show(const std::vector<Way> &ways, std::int64_t run, std::int64_t last) {
  for (const std::int64_t copies : {run, last}) {
    std::optional<double> least;
    for (const Way &way : ways)
      if (const auto cost = cost_at(way, copies); cost && (!least || *cost < *least))
        least = cost;
    const std::optional<double> own = cost_at(ways.front(), copies);
    if (least)
      return own ? std::max(*own, *least) : *least;
  }
  return 0;
}

} // namespace

double ChartAxes::x(double copies) const {
  return left +
         (right - left) * (std::log(copies) - log_of(first)) / (log_of(last) - log_of(first));
}

double ChartAxes::y(double cost) const { return foot - (foot - top) * std::min(cost / most, 1.0); }

double cost_a_copy(const Stretch &stretch, std::int64_t copies) {
  return (stretch.at(copies) / Exact(copies)).value();
}

void scale(ChartAxes &axes, const std::vector<Way> &ways, std::int64_t run,
           const std::vector<Crossing> &crossings) {
  const std::int64_t last_crossing = crossings.empty() ? 1 : crossings.back().copies;
  axes.first = std::max<std::int64_t>(1, run / 10);
  axes.last = std::clamp<std::int64_t>(std::max(run * 10, last_crossing * 2), axes.first * 10,
                                       std::max(longest_compared, axes.first * 10));
  const double shown = cost_to_show(ways, run, axes.last);
  axes.most = shown > 0 ? shown * 2 : 1;
  const auto show = [&](const Way &way, std::int64_t copies) {
    if (const auto cost = cost_at(way, copies); cost && *cost <= shown * much_dearer)
      axes.most = std::max(axes.most, *cost * 1.2);
  };
  for (const Way &way : ways) {
    show(way, run);
    for (const Crossing &crossing : crossings)
      if (crossing.to == way.name && crossing.copies >= axes.first)
        show(way, crossing.copies);
  }
}

std::vector<CostPoint> points_of(const Way &way, const ChartAxes &axes) {
  constexpr double dots_apart = 3;
  const double grows =
      std::exp(dots_apart / (axes.right - axes.left) * (log_of(axes.last) - log_of(axes.first)));
  std::vector<CostPoint> points;
  for (std::int64_t copies = axes.first; copies <= axes.last;) {
    const Stretch stretch = way.at(copies);
    const std::int64_t until = std::min(stretch.last, axes.last);
    for (;;) {
      if (stretch.offered)
        points.push_back({axes.x(static_cast<double>(copies)), cost_a_copy(stretch, copies)});
      if (copies == until)
        break;
      const auto next = static_cast<std::int64_t>(static_cast<double>(copies) * grows);
      copies = std::min(until, std::max(copies + 1, next));
    }
    copies = until + 1;
  }
  return points;
}

std::vector<std::vector<FigurePoint>> shown_of(const std::vector<CostPoint> &points,
                                               const ChartAxes &axes) {
  std::vector<std::vector<FigurePoint>> parts(1);
  for (std::size_t i = 0; i < points.size(); ++i) {
    const CostPoint &point = points[i];
    const bool above = point.cost > axes.most;
    if (i > 0 && above != (points[i - 1].cost > axes.most)) {
      const CostPoint &last = points[i - 1];
      const double way = (axes.most - last.cost) / (point.cost - last.cost);
      parts.back().push_back({last.x + (point.x - last.x) * way, axes.top});
    }
    if (!above)
      parts.back().push_back({point.x, axes.y(point.cost)});
    else if (!parts.back().empty())
      parts.emplace_back();
  }
  std::erase_if(parts, [](const auto &part) { return part.size() < 2; });
  return parts;
}

double round_step(double least) {
  const double power = std::pow(10.0, std::floor(std::log10(least)));
  for (const double times : {1.0, 2.0, 5.0})
    if (times * power >= least * (1 - 1e-9))
      return times * power;
  return 10 * power;
}

std::vector<double> spread(std::vector<double> wanted, double apart, double last) {
  for (std::size_t i = 1; i < wanted.size(); ++i)
    wanted[i] = std::max(wanted[i], wanted[i - 1] + apart);
  for (auto place = wanted.rbegin(); place != wanted.rend(); ++place) {
    *place = std::min(*place, last);
    last = *place - apart;
  }
  return wanted;
}

} // namespace bodkin
