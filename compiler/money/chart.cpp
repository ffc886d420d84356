#include "money/chart.hpp"

#include "money/bids.hpp"
#include "money/chart_lines.hpp"
#include "problems/characters.hpp"
#include "problems/wrap.hpp"
#include "sheet/svg_page.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <fmt/format.h>

namespace bodkin {
namespace {

// About the width of one, for placing words.
constexpr double letter = 4.8, title_letter = 7.6;
constexpr double rows_apart = 13;
// More lines could not be told apart.
constexpr std::size_t most_lines = 8;

double width_of(std::string_view text) { return letter * static_cast<double>(text.size()); }

std::string words_for(const std::string &way) {
  return way == "own" ? "your own making" : harmless(way);
}

std::vector<std::string> lines_of(const std::string &text, double width, double of_a_letter) {
  const std::string set = wrapped(text, static_cast<int>(width / of_a_letter), 0);
  std::vector<std::string> lines;
  for (std::size_t begin = 0; begin <= set.size();) {
    const std::size_t end = std::min(set.find('\n', begin), set.size());
    lines.push_back(set.substr(begin, end - begin));
    begin = end + 1;
  }
  return lines;
}

// A way with its letter; those that are not drawn have their place in the key alone.
struct DrawnWay {
  const Way &way;
  char name = 'A';
  std::vector<CostPoint> points;
  CurveLook look = CurveLook::plain;
  char as = 0; // of the way whose line this one lies on throughout
};

struct Charting {
  const Estimate &estimate;
  const std::vector<Way> &ways;
  ChartAxes axes{};
  Figure figure{};
  std::vector<DrawnWay> drawn{};
  std::vector<std::string> not_drawn{};
  std::vector<FigurePoint> marks{};
  double key_top = 0;

  std::int64_t run() const { return std::max<std::int64_t>(estimate.copies, 1); }
  std::string money(const Exact &amount) const { return shown(amount, estimate.currency); }

  void words(double x, double y, std::string text, WordLook look = WordLook::small) {
    figure.items.push_back(FigureWords{x, y, std::move(text), look});
  }
  void curve(std::vector<FigurePoint> points, CurveLook look) {
    figure.items.push_back(FigureCurve{std::move(points), look});
  }
  // Over the lines.
  void draw_marks() {
    for (const FigurePoint &at : marks)
      figure.items.push_back(FigureBox{at.x - 2.5, at.y - 2.5, 5, 5, BoxLook::paper});
  }

  void title(const std::string &text) {
    double y = 16;
    for (const std::string &line : lines_of(text, figure_width - 2 * figure_margin, title_letter)) {
      words(figure_margin, y, line, WordLook::title);
      y += 16;
    }
    axes.top = y + 26;
    axes.foot = axes.top + 268;
  }

  bool leads_somewhere(const Way &way) const {
    return way.name == estimate.cheapest_at_one_copy ||
           std::ranges::find(estimate.crossings, way.name, &Crossing::to) !=
               estimate.crossings.end();
  }

  // One's own making, the ways that are the cheapest somewhere, and of the rest the cheapest.
  std::vector<bool> chosen() const {
    std::vector<std::size_t> by_use(ways.size());
    for (std::size_t i = 0; i < ways.size(); ++i)
      by_use[i] = i;
    std::ranges::stable_sort(by_use, {}, [&](std::size_t i) {
      const Stretch stretch = ways[i].at(run());
      const int use = i == 0 ? 0 : leads_somewhere(ways[i]) ? 1 : stretch.offered ? 2 : 3;
      return std::pair(use, use == 2 ? cost_a_copy(stretch, run()) : 0.0);
    });
    std::vector<bool> chosen(ways.size());
    for (std::size_t i = 0; i < std::min(by_use.size(), most_lines); ++i)
      chosen[by_use[i]] = true;
    return chosen;
  }

  void name_ways() {
    constexpr std::array looks{CurveLook::plain, CurveLook::dashed, CurveLook::dotted,
                               CurveLook::dash_dotted};
    const std::vector<bool> take = chosen();
    for (std::size_t i = 0; i < ways.size(); ++i) {
      if (!take[i]) {
        not_drawn.push_back(words_for(ways[i].name) + ", since others cost less");
        continue;
      }
      DrawnWay way{ways[i], static_cast<char>('A' + drawn.size()), points_of(ways[i], axes)};
      way.look = looks[drawn.size() % looks.size()];
      const auto same = std::ranges::find(drawn, way.points, &DrawnWay::points);
      if (same != drawn.end() && !way.points.empty())
        way.as = same->name;
      drawn.push_back(std::move(way));
    }
    for (const BidFigures &bid : estimate.bids)
      if (!bid.left_out.empty())
        not_drawn.push_back(fmt::format("{}: {}", words_for(bid.name), harmless(bid.left_out)));
  }

  void money_beside() {
    const double step = round_step(axes.most / 6);
    std::vector<std::string> labels;
    for (int i = 0; step * i <= axes.most * (1 + 1e-9); ++i)
      labels.push_back(
          shown(Exact::ratio(std::llround(step * i * 10'000), 10'000), estimate.currency, 4));
    for (const std::string &label : labels)
      axes.left = std::max(axes.left, figure_margin + width_of(label) + 8);
    for (std::size_t i = 0; i < labels.size(); ++i) {
      const double y = axes.y(step * static_cast<double>(i));
      curve({{axes.left - 4, y}, {axes.left, y}}, CurveLook::hair);
      words(axes.left - 8 - width_of(labels[i]), y + 3, labels[i]);
    }
    words(figure_margin, axes.top - 18, "a copy");
    curve({{axes.left, axes.top}, {axes.left, axes.foot}, {axes.right, axes.foot}},
          CurveLook::hair);
  }

  void copies_below(double y) {
    for (std::int64_t power = 1; power <= axes.last; power *= 10)
      for (const std::int64_t times : {1, 2, 5}) {
        const std::int64_t copies = power * times;
        if (copies < axes.first || copies > axes.last)
          continue;
        const double x = axes.x(static_cast<double>(copies));
        const std::string label = std::to_string(copies);
        curve({{x, axes.foot}, {x, axes.foot + 4}}, CurveLook::hair);
        words(x - width_of(label) / 2, y, label);
      }
    words((axes.left + axes.right) / 2 - width_of("copies") / 2, y + 16, "copies");
    key_top = y + 42;
  }

  void lines() {
    for (const DrawnWay &way : drawn)
      if (way.as == 0)
        for (std::vector<FigurePoint> &part : shown_of(way.points, axes))
          curve(std::move(part), way.look);
  }

  // At the ends of the lines, those that end together as one.
  void letters() {
    struct End {
      double y;
      std::string names;
    };
    std::vector<End> ends;
    for (const DrawnWay &way : drawn) {
      if (way.points.empty() || way.points.back().cost > axes.most)
        continue;
      const double y = axes.y(way.points.back().cost);
      const auto same =
          std::ranges::find_if(ends, [&](const End &end) { return std::abs(end.y - y) < 0.5; });
      if (same == ends.end())
        ends.push_back({y, {way.name}});
      else
        same->names += way.name;
    }
    std::ranges::stable_sort(ends, {}, &End::y);
    std::vector<double> wanted(ends.size());
    std::ranges::transform(ends, wanted.begin(), &End::y);
    const std::vector<double> places = spread(wanted, 11, axes.foot);
    for (std::size_t i = 0; i < ends.size(); ++i) {
      curve({{axes.right, ends[i].y}, {axes.right + 8, places[i]}}, CurveLook::hair);
      words(axes.right + 11, places[i] + 3, ends[i].names);
    }
  }

  bool is_shown(const Crossing &crossing) const {
    return crossing.copies >= axes.first && crossing.copies <= axes.last;
  }

  // Each crossing is marked on the line that is the cheapest from there on, with its number below
  // the axis, where no line runs. Gives where the row of numbers ends.
  double crossings() {
    std::vector<double> wanted;
    std::vector<std::size_t> which;
    for (std::size_t i = 0; i < estimate.crossings.size(); ++i)
      if (is_shown(estimate.crossings[i])) {
        which.push_back(i);
        wanted.push_back(axes.x(static_cast<double>(estimate.crossings[i].copies)));
      }
    if (which.empty())
      return axes.foot + 16;
    const double apart = estimate.crossings.size() > 9 ? 17 : 12;
    const std::vector<double> places = spread(wanted, apart, axes.right);
    for (std::size_t i = 0; i < which.size(); ++i)
      cross(estimate.crossings[which[i]], which[i] + 1, wanted[i], places[i]);
    return axes.foot + 34;
  }

  void cross(const Crossing &crossing, std::size_t number, double x, double place) {
    const auto way = std::ranges::find(ways, crossing.to, &Way::name);
    if (way == ways.end())
      return;
    const double cost = cost_a_copy(way->at(crossing.copies), crossing.copies);
    curve({{x, axes.y(cost)}, {x, axes.foot + 4}, {place, axes.foot + 10}}, CurveLook::hair);
    if (cost <= axes.most)
      marks.push_back({x, axes.y(cost)});
    const std::string text = std::to_string(number);
    const double wide = width_of(text) + 5;
    figure.items.push_back(FigureBox{place - wide / 2, axes.foot + 10, wide, 10, BoxLook::paper});
    words(place - width_of(text) / 2 + 0.3, axes.foot + 17.6, text);
  }

  void this_run() {
    const double x = axes.x(static_cast<double>(run()));
    curve({{x, axes.top}, {x, axes.foot}}, CurveLook::hair);
    std::string text = fmt::format("this run: {}", estimate.copies);
    if (!estimate.currency.empty())
      text += fmt::format(", {} a copy of your own making", money(estimate.per_copy));
    words(std::clamp(x - width_of(text) / 2, axes.left, axes.right - width_of(text)), axes.top - 5,
          text);
  }

  std::string told(const DrawnWay &way) const {
    std::string text = words_for(way.way.name);
    const Stretch stretch = way.way.at(run());
    if (stretch.offered)
      text += fmt::format(", {}", money(stretch.at(run()) / Exact(run())));
    else
      text += fmt::format(", no run of {}", run());
    if (way.points.empty())
      return text + ", nor any that is drawn";
    if (way.as != 0)
      return fmt::format("{}, on the line of {}", text, way.as);
    if (std::ranges::all_of(way.points,
                            [&](const CostPoint &point) { return point.cost > axes.most; }))
      return text + ", above the chart";
    return text;
  }

  char letter_of(const std::string &name) const {
    const auto way =
        std::ranges::find_if(drawn, [&](const DrawnWay &d) { return d.way.name == name; });
    return way == drawn.end() ? '?' : way->name;
  }

  // Below one another from `y`; gives where they end.
  double rows(double x, double y, double right, const std::string &text) {
    for (const std::string &line : lines_of(text, right - x, letter)) {
      words(x, y, line);
      y += rows_apart;
    }
    return y;
  }

  double key_of_ways() {
    double y = rows(figure_margin, key_top, 330, fmt::format("a copy of {}, like for like", run()));
    for (const DrawnWay &way : drawn) {
      if (way.as == 0)
        curve({{figure_margin, y - 3}, {figure_margin + 32, y - 3}}, way.look);
      words(figure_margin + 40, y, std::string(1, way.name));
      y = rows(figure_margin + 52, y, 330, told(way));
    }
    return y;
  }

  double key_of_crossings() {
    constexpr double x = 344;
    double y = key_top;
    if (estimate.crossings.empty())
      return y;
    y = rows(x, y, figure_width - figure_margin,
             fmt::format("{} costs least up to {} copies", letter_of(estimate.cheapest_at_one_copy),
                         estimate.crossings.front().copies - 1));
    for (std::size_t i = 0; i < estimate.crossings.size(); ++i) {
      const Crossing &crossing = estimate.crossings[i];
      words(x, y, std::to_string(i + 1));
      y = rows(x + 14, y, figure_width - figure_margin,
               fmt::format("from {} copies on {}{}", crossing.copies, letter_of(crossing.to),
                           is_shown(crossing) ? "" : ", left of the chart"));
    }
    return y;
  }

  void key() {
    double y = std::max(key_of_ways(), key_of_crossings()) + 4;
    const double right = figure_width - figure_margin;
    for (const std::string &text : not_drawn)
      y = rows(figure_margin, y, right, "not drawn: " + text);
    if (!estimate.unpriced.empty())
      y = rows(figure_margin, y, right,
               estimate.bids.empty()
                   ? "Not everything has a price: the true cost is higher."
                   : "Not everything of your own has a price: its true cost is higher, and offers "
                     "are not drawn beside it.");
    figure.height = y;
  }
};

} // namespace

Figure draw_ways(const std::string &title, const Estimate &estimate, const std::vector<Way> &ways) {
  Charting chart{estimate, ways};
  chart.title(title);
  scale(chart.axes, ways, chart.run(), estimate.crossings);
  chart.money_beside();
  chart.name_ways();
  chart.this_run();
  chart.copies_below(chart.crossings());
  chart.lines();
  chart.draw_marks();
  chart.letters();
  chart.key();
  return std::move(chart.figure);
}

Figure draw_costs(const Edition &edition, const Imposition &imposition, const ChargedSides &sides,
                  const Estimate &estimate) {
  const Bill used = bill(edition, imposition, sides, jobs(edition, imposition));
  const bool compared = !estimate.cheapest_at_one_copy.empty();
  return draw_ways(fmt::format("What a copy of {} costs", harmless(*edition.title)), estimate,
                   compared ? ways_to_make(edition, used, estimate.bids)
                            : std::vector<Way>{own_way(edition, used)});
}

std::string costs_as_svg(const Edition &edition, const Figure &costs) {
  SvgPage page;
  page.add(costs, figure_margin);
  return page.finished(figure_width, costs.height + 2 * figure_margin, *edition.title);
}

} // namespace bodkin
