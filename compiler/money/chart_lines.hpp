// The lines of a chart: what a copy costs by each way to make it, over how many are made.
#pragma once

#include "money/crossings.hpp"
#include "money/way.hpp"
#include "sheet/figure.hpp"

#include <cstddef>
#include <vector>

namespace bodkin {

// Copies run by powers, cost evenly from nothing up to `most`.
struct ChartAxes {
  double left = 70, right = 548, top = 52, foot = 320;
  std::int64_t first = 1, last = 1000; // copies
  double most = 1;                     // money

  double x(double copies) const;
  double y(double cost) const; // at the top for all that costs more
};

double cost_a_copy(const Stretch &stretch, std::int64_t copies);

// From a tenth of the run to ten times it, and beyond the last crossing. A way that costs a
// multiple of the cheapest would press all others flat: it lies above the chart.
void scale(ChartAxes &axes, const std::vector<Way> &ways, std::int64_t run,
           const std::vector<Crossing> &crossings);

// A point of a way's line, before it is cut off at the top.
struct CostPoint {
  double x, cost;
  bool operator==(const CostPoint &) const = default;
};
// Each whole number of copies once at the most; none where no such run is offered.
std::vector<CostPoint> points_of(const Way &way, const ChartAxes &axes);

// What costs more than the axis shows is left out: along its top it would look like a price.
std::vector<std::vector<FigurePoint>> shown_of(const std::vector<CostPoint> &points,
                                               const ChartAxes &axes);

// 1, 2 or 5 times a power of ten, at least so much.
double round_step(double least);

// Labels in a row keep `apart`, as near to where they belong as goes; none passes `last`.
std::vector<double> spread(std::vector<double> wanted, double apart, double last);

} // namespace bodkin
