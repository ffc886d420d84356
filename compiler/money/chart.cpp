#include "money/chart.hpp"

#include "money/bids.hpp"
#include "problems/characters.hpp"
#include "sheet/svg_page.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <fmt/format.h>

namespace bodkin {
namespace {

constexpr double left = 70, right = 480, top = 52, foot = 320, height = 372;
constexpr double names_apart = 12, letter = 4.8; // about the width of one, for placing words

std::string words_for(const std::string &way) { return way == "own" ? "your own making" : way; }

struct Axes {
  std::int64_t first = 1, last = 1000;
  double most = 1;

  double x(double copies) const {
    const double from = std::log(static_cast<double>(first));
    return left + (right - left) * (std::log(copies) - from) /
                      (std::log(static_cast<double>(last)) - from);
  }
  double y(double cost) const { return foot - (foot - top) * std::min(cost / most, 1.0); }
};

// What one way costs: a point on the way's line, before it is cut off at the top.
struct CostPoint {
  double x, cost;
};

double a_copy(const Stretch &stretch, std::int64_t copies) {
  return (stretch.at(copies) / Exact(copies)).value();
}

// 1, 2 or 5 times a power of ten, at least so much.
double round_step(double least) {
  const double power = std::pow(10.0, std::floor(std::log10(least)));
  for (const double times : {1.0, 2.0, 5.0})
    if (times * power >= least * (1 - 1e-9))
      return times * power;
  return 10 * power;
}

struct Said {
  double x = 0, y = 0;
  std::string text;
};

struct Charting {
  const Estimate &estimate;
  const std::vector<Way> &ways;
  Axes axes{};
  Figure figure{height, {}};
  std::vector<Said> marks{};

  std::int64_t last_crossing() const {
    return estimate.crossings.empty() ? 1 : estimate.crossings.back().copies;
  }

  void scale() {
    const std::int64_t run = std::max<std::int64_t>(estimate.copies, 1);
    axes.first = std::max<std::int64_t>(1, run / 10);
    axes.last = std::clamp<std::int64_t>(std::max(run * 10, last_crossing() * 2), axes.first * 10,
                                         std::max(longest_compared, axes.first * 10));
    // A first copy that bears all the setup would press every other figure flat.
    double at_run = 0;
    for (const Way &way : ways)
      if (const Stretch stretch = way.at(run); stretch.offered)
        at_run = std::max(at_run, a_copy(stretch, run));
    axes.most = at_run > 0 ? at_run * 2 : 1;
  }

  void words(double x, double y, std::string text, WordLook look = WordLook::small) {
    figure.items.push_back(FigureWords{x, y, std::move(text), look});
  }
  void words_before(double x, double y, const std::string &text) {
    words(x - letter * static_cast<double>(text.size()), y, text);
  }
  void words_at(double x, double y, const std::string &text) {
    words(x - letter * static_cast<double>(text.size()) / 2, y, text);
  }
  void curve(std::vector<FigurePoint> points, CurveLook look) {
    figure.items.push_back(FigureCurve{std::move(points), look});
  }

  void frame() {
    curve({{left, top}, {left, foot}, {right, foot}}, CurveLook::hair);
    const double step = round_step(axes.most / 6);
    for (int i = 0; step * i <= axes.most * (1 + 1e-9); ++i) {
      const double y = axes.y(step * i);
      curve({{left - 4, y}, {left, y}}, CurveLook::hair);
      const Exact cents = Exact::ratio(std::llround(step * i * 100), 100);
      words_before(left - 8, y + 3, shown(cents, estimate.currency));
    }
    words(figure_margin, top - 14, "a copy");
    copies_below();
    words_at((left + right) / 2, foot + 34, "copies");
  }

  void copies_below() {
    for (std::int64_t power = 1; power <= axes.last; power *= 10)
      for (const std::int64_t times : {1, 2, 5}) {
        const std::int64_t copies = power * times;
        if (copies < axes.first || copies > axes.last)
          continue;
        const double x = axes.x(static_cast<double>(copies));
        curve({{x, foot}, {x, foot + 4}}, CurveLook::hair);
        words_at(x, foot + 16, std::to_string(copies));
      }
  }

  // The points of one way, each whole number of copies once at the most.
  std::vector<CostPoint> points_of(const Way &way) const {
    constexpr double dots_apart = 3;
    std::vector<CostPoint> points;
    const double grows =
        std::exp(dots_apart / (right - left) *
                 std::log(static_cast<double>(axes.last) / static_cast<double>(axes.first)));
    for (std::int64_t copies = axes.first; copies <= axes.last;) {
      const Stretch stretch = way.at(copies);
      const std::int64_t until = std::min(stretch.last, axes.last);
      for (;;) {
        if (stretch.offered)
          points.push_back({axes.x(static_cast<double>(copies)), a_copy(stretch, copies)});
        if (copies == until)
          break;
        const auto next = static_cast<std::int64_t>(static_cast<double>(copies) * grows);
        copies = std::min(until, std::max(copies + 1, next));
      }
      copies = until + 1;
    }
    return points;
  }

  // What costs more than the axis shows is not drawn: along its top it would look like a price.
  std::vector<std::vector<FigurePoint>> shown_of(const std::vector<CostPoint> &points) const {
    std::vector<std::vector<FigurePoint>> parts(1);
    for (std::size_t i = 0; i < points.size(); ++i) {
      const CostPoint &point = points[i];
      const bool above = point.cost > axes.most;
      if (i > 0 && above != (points[i - 1].cost > axes.most)) {
        const CostPoint &last = points[i - 1];
        const double way = (axes.most - last.cost) / (point.cost - last.cost);
        parts.back().push_back({last.x + (point.x - last.x) * way, top});
      }
      if (!above)
        parts.back().push_back({point.x, axes.y(point.cost)});
      else if (!parts.back().empty())
        parts.emplace_back();
    }
    std::erase_if(parts, [](const auto &part) { return part.size() < 2; });
    return parts;
  }

  struct Name {
    double y = 0;
    std::string text;
  };

  void lines() {
    constexpr std::array looks{CurveLook::plain, CurveLook::dashed, CurveLook::dotted,
                               CurveLook::dash_dotted};
    std::vector<Name> names;
    for (std::size_t i = 0; i < ways.size(); ++i) {
      const std::vector<CostPoint> points = points_of(ways[i]);
      if (points.empty())
        continue;
      names.push_back({axes.y(points.back().cost) + 3, words_for(ways[i].name)});
      for (std::vector<FigurePoint> &part : shown_of(points))
        curve(std::move(part), looks[i % looks.size()]);
    }
    std::ranges::stable_sort(names, {}, &Name::y);
    spread(names);
    for (const Name &name : names)
      words(right + 8, name.y, harmless(name.text));
  }

  // Names that would stand on one another are parted, and none goes below the foot.
  static void spread(std::vector<Name> &names) {
    for (std::size_t i = 1; i < names.size(); ++i)
      names[i].y = std::max(names[i].y, names[i - 1].y + names_apart);
    double lowest = foot + 3;
    for (auto name = names.rbegin(); name != names.rend(); ++name) {
      name->y = std::min(name->y, lowest);
      lowest = name->y - names_apart;
    }
  }

  void mark(const Crossing &crossing, std::size_t number) {
    if (crossing.copies < axes.first || crossing.copies > axes.last)
      return;
    const auto way = std::ranges::find(ways, crossing.to, &Way::name);
    if (way == ways.end())
      return;
    const double x = axes.x(static_cast<double>(crossing.copies));
    const double y = axes.y(a_copy(way->at(crossing.copies), crossing.copies));
    curve({{x, y}, {x, foot}}, CurveLook::hair);
    figure.items.push_back(FigureBox{x - 3, y - 3, 6, 6, BoxLook::paper});
    // Down where no line runs; marks near one another have their words at different heights.
    const double height_of_words = foot - 7 - 11 * static_cast<double>(number % 3);
    const std::string said =
        fmt::format("from {} on {}", crossing.copies, harmless(words_for(crossing.to)));
    const double wide = letter * static_cast<double>(said.size());
    marks.push_back({x + 5 + wide > right ? x - 5 - wide : x + 5, height_of_words, said});
  }

  // Last, so that no line runs through them.
  void words_of_marks() {
    for (const Said &said : marks)
      words(said.x, said.y, said.text, WordLook::over_lines);
  }

  void run() {
    const double x = axes.x(static_cast<double>(estimate.copies));
    curve({{x, top}, {x, foot}}, CurveLook::hair);
    std::string text = fmt::format("this run: {}", estimate.copies);
    if (!estimate.currency.empty())
      text += fmt::format(", {} a copy", shown(estimate.per_copy, estimate.currency));
    words_at(x, top - 4, text);
  }

  // On the line of one's own making.
  void mark_run() {
    const double x = axes.x(static_cast<double>(estimate.copies));
    const double y = axes.y(estimate.per_copy.value());
    figure.items.push_back(FigureBox{x - 3, y - 3, 6, 6, BoxLook::paper});
  }
};

} // namespace

Figure draw_costs(const Edition &edition, const Imposition &imposition, const ChargedSides &sides,
                  const Estimate &estimate) {
  const Bill used = bill(edition, imposition, sides, jobs(edition, imposition));
  const bool compared = !estimate.cheapest_at_one_copy.empty();
  const std::vector<Way> ways = compared ? ways_to_make(edition, used, estimate.bids)
                                         : std::vector<Way>{own_way(edition, used)};
  Charting chart{estimate, ways};
  chart.scale();
  chart.words(figure_margin, 16, fmt::format("What a copy of {} costs", harmless(*edition.title)),
              WordLook::title);
  chart.frame();
  chart.run();
  chart.lines();
  for (std::size_t i = 0; i < estimate.crossings.size(); ++i)
    chart.mark(estimate.crossings[i], i);
  chart.mark_run();
  chart.words_of_marks();
  if (!estimate.unpriced.empty())
    chart.words(figure_margin, height - 4, "Not everything has a price: the true cost is higher.");
  return std::move(chart.figure);
}

std::string costs_as_svg(const Edition &edition, const Figure &costs) {
  SvgPage page;
  page.add(costs, figure_margin);
  return page.finished(figure_width, costs.height + 2 * figure_margin, *edition.title);
}

} // namespace bodkin
