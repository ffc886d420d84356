#include "preflight/edge_problems.hpp"

#include "page/placement.hpp"
#include "preflight/about.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {
namespace {

constexpr std::array<std::string_view, 4> edge_names{"left", "top", "right", "bottom"};
constexpr Length knife_wanders = Length::inches(1, 16); // set by hand: common practice, no source
constexpr Length reading_room = Length::inches(1, 8);

std::size_t worst(const Past &past) {
  return static_cast<std::size_t>(std::max_element(past.begin(), past.end()) - past.begin());
}

std::string machine_name(const Inspection &inspection, int page) {
  const Spotted &spot = inspection.imposition.where[static_cast<std::size_t>(page)];
  const MachineId id = inspection.imposition.sheets[static_cast<std::size_t>(spot.sheet)]
                           .sides[static_cast<std::size_t>(spot.side)]
                           .machine;
  return id == MachineId::none ? "the machine" : inspection.edition[id].name;
}

// Why an edge asks for room, in this edition's own numbers.
std::string why_edge(const Inspection &inspection, int page, const LiveArea &live,
                     std::size_t edge) {
  const EdgeAsk &ask = live.edges[edge];
  std::string why = where_on_sheet(inspection, page);
  if (ask.meets == Meets::sheet_edge)
    why += fmt::format(": its {} edge is the sheet's edge", edge_names[edge]);
  if (ask.for_bare() >= ask.for_knife() && ask.bare > Length{})
    why += fmt::format(", where {} leaves {} bare", machine_name(inspection, page),
                       length(inspection, ask.bare));
  if (ask.trim > Length{})
    why += fmt::format("; the knife takes {}", length(inspection, ask.trim));
  if (ask.trim > Length{} && ask.drift > Length{})
    why += fmt::format(", and backs drift by {}", length(inspection, ask.drift));
  if (ask.shift > Length{})
    why += fmt::format("; creep of {} is made up for", length(inspection, ask.shift));
  return why;
}

// The place moved into the safe area, or made smaller where it is too large to be moved.
Box moved_inside(const Inspection &inspection, const Box &place, const Past &past) {
  Past by;
  for (std::size_t i = 0; i < by.size(); ++i)
    by[i] = ruled(inspection, past[i]);
  Box box = place;
  const auto settle = [](Length &at, Length &extent, Length before, Length after) {
    if (before > Length{} && after > Length{}) {
      at += before;
      extent -= before + after;
    } else {
      at += before - after;
    }
  };
  settle(box.x, box.width, by[0], by[2]);
  settle(box.y, box.height, by[1], by[3]);
  return box;
}

std::vector<WayOut> ways_inside(const Inspection &inspection, const Item &item, const Past &past) {
  const Element &element = element_of(inspection, item);
  if (item.running || std::holds_alternative<Lay>(element.what) ||
      std::holds_alternative<Rule>(element.what))
    return {};
  if (const At *at = std::get_if<At>(&element.placement.where); at && at->size) {
    const bool plain = at->across.from == From::start && at->down.from == From::start;
    if (plain)
      return {{at_line(inspection, moved_inside(inspection, item.place, past)), {}}};
    return {};
  }
  if (std::holds_alternative<Picture>(element.what))
    return {{"fits     live", {}}};
  return {};
}

std::string directions(const Inspection &inspection, const Past &past) {
  constexpr std::array<std::string_view, 4> away{"right", "down", "left", "up"};
  std::string text;
  for (std::size_t i = 0; i < past.size(); ++i)
    if (past[i] > Length{})
      text += fmt::format("{}{} {}", text.empty() ? "" : " and ",
                          length(inspection, ruled(inspection, past[i])), away[i]);
  return text;
}

} // namespace

Problem off_the_page(const Inspection &inspection, int page, const Item &item, const Past &past) {
  const std::size_t edge = worst(past);
  const Place &place = inspection.imposition.place_of(page);
  const Meets meets = std::array{place.left, place.top, place.right, place.bottom}[edge];
  Problem problem;
  problem.check = "off-the-page";
  problem.range = place_range(inspection, item);
  problem.message =
      fmt::format("these {} pass the {} edge of page {} by {}", name_of(inspection, item),
                  edge_names[edge], page, length(inspection, past[edge]));
  if (!is_words(item))
    problem.message =
        fmt::format("this {} passes the {} edge of page {} by {}", name_of(inspection, item),
                    edge_names[edge], page, length(inspection, past[edge]));
  problem.why =
      meets == Meets::spine
          ? fmt::format("{}: past the fold lies another page; only a spread crosses it",
                        where_on_sheet(inspection, page))
          : fmt::format("{}: matter ends at the page's edge", where_on_sheet(inspection, page));
  problem.type = ways_inside(inspection, item, past);
  return problem;
}

Problem unsafe_matter(const Inspection &inspection, int page, const Item &item,
                      const LiveArea &live, const Past &past) {
  const std::size_t edge = worst(past);
  const EdgeAsk &ask = live.edges[edge];
  const bool knife = ask.for_knife() > ask.for_bare();
  Problem problem;
  problem.check = is_words(item) ? "unsafe-words" : "unsafe-art";
  problem.range = place_range(inspection, item);
  const std::string what = name_of(inspection, item);
  const std::string whose = what == "words" ? "the words'" : fmt::format("the {}'s", what);
  problem.message = fmt::format("{} of {} {} side {}", length(inspection, past[edge]), whose,
                                edge_names[edge], knife ? "may be cut off" : "will not print");
  problem.message += fmt::format(" on page {}", page);
  problem.why = why_edge(inspection, page, live, edge);
  problem.type = ways_inside(inspection, item, past);
  if (problem.type.empty())
    problem.why += fmt::format("; it is safe {} from here", directions(inspection, past));
  else
    problem.type.front().remark = directions(inspection, past);
  return problem;
}

std::optional<Problem> near_the_knife(const Inspection &inspection, int page, const Item &item,
                                      const LiveArea &live, const Extent &extent) {
  const Size &size = inspection.imposition.page_size;
  const Box margins = ground_of(inspection.edition, inspection.imposition, page).margins;
  const Past outside = past(extent, margins);
  for (std::size_t edge = 0; edge < 4; ++edge) {
    const EdgeAsk &ask = live.edges[edge];
    if (ask.trim == Length{} || outside[edge] == Length{})
      continue;
    Edges cut{};
    std::array<Length *, 4> sides{&cut.left, &cut.top, &cut.right, &cut.bottom};
    *sides[edge] = ask.trim;
    const Box kept = inside(size, cut);
    const std::array<double, 4> room{
        extent.left - kept.x.in_points(), extent.top - kept.y.in_points(),
        kept.right().in_points() - extent.right, kept.foot().in_points() - extent.foot};
    const Length left = Length::nearest_points(room[edge]);
    if (left >= reading_room)
      continue;
    Problem problem;
    problem.kind = Kind::warning;
    problem.check = "near-the-knife";
    problem.range = place_range(inspection, item);
    problem.message = fmt::format(
        "the {} on page {} {} {} from the cut {} edge, outside the margins",
        name_of(inspection, item), page, name_of(inspection, item) == "words" ? "end" : "ends",
        length(inspection, left), edge_names[edge]);
    problem.why = fmt::format("the knife takes {} off there; a knife set by hand wanders by {}",
                              length(inspection, ask.trim), length(inspection, knife_wanders));
    Past by{};
    by[edge] = reading_room - left;
    problem.type = ways_inside(inspection, item, by);
    return problem;
  }
  return std::nullopt;
}

Problem cannot_fill_page(const Inspection &inspection, int page, const Item &item,
                         const LiveArea &live) {
  std::size_t edge = 0;
  for (std::size_t i = 0; i < 4; ++i)
    if (live.edges[i].trim < live.edges[i].bare)
      edge = i;
  Problem problem;
  problem.check = "unsafe-art";
  problem.range = place_range(inspection, item);
  problem.message = fmt::format("this {} fills page {} to its {} edge, which will not print",
                                name_of(inspection, item), page, edge_names[edge]);
  problem.why = fmt::format(
      "{}; only an edge that is cut off by {} or more can be printed to the end",
      why_edge(inspection, page, live, edge), length(inspection, live.edges[edge].bare));
  problem.type = {{"fills    live", {}}};
  return problem;
}

} // namespace bodkin
