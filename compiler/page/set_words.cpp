#include "page/left_over.hpp"
#include "page/move_line.hpp"
#include "page/text_run.hpp"

namespace bodkin {
namespace {

// A place that is anchored to one edge ranges its words to that edge.
Length ranging(const Line &line, RangedTo ranged, Lines lines, Length measure) {
  if (lines == Lines::left && ranged == RangedTo::right)
    return measure - line.right;
  if (lines == Lines::right && ranged == RangedTo::left)
    return -line.left;
  return {};
}

} // namespace

Mark fill_place(const WordsPlace &place, Compositor &compositor, const Style &style, Flow &flow,
                Mark from, std::vector<Line> &lines) {
  const int columns = place.words->columns;
  const Length gap = place.words->gap;
  const Length measure = (place.place.width - gap * (columns - 1)) / columns;
  for (int i = 0; i < columns && measure > Length{} && !flow.ends_at(from); ++i) {
    Column column = compositor.fill(flow, from, {measure, place.place.height});
    for (Line &line : column.lines) {
      const Length dx = ranging(line, place.ranged, *style.lines, measure) + (measure + gap) * i;
      if (dx != Length{})
        move_line(line, dx, {});
      lines.push_back(std::move(line));
    }
    from = column.next;
  }
  return from;
}

std::vector<Line> set_alone(const WordsPlace &place, const Prose &prose, int page,
                            const Workshop &workshop, Problems &problems) {
  std::vector<Line> lines;
  const StyleId style = *place.words->style;
  if (style == StyleId::none)
    return lines;
  Flow flow = workshop.compositor.flow(prose, style);
  const Mark end =
      fill_place(place, workshop.compositor, workshop.edition[style], flow, Mark{}, lines);
  if (!flow.ends_at(end)) {
    const Length measure =
        (place.place.width - place.words->gap * (place.words->columns - 1)) / place.words->columns;
    problems.push_back(left_over_alone(
        workshop, place, page, workshop.compositor.left_over(flow, end, measure), flow.words()));
  }
  return lines;
}

} // namespace bodkin
