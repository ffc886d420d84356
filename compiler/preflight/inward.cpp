#include "preflight/inward.hpp"

#include "preflight/about.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {
namespace {

// Past the two ends of one direction, as a place counts it: `before` at the end it counts from.
struct Ends {
  Length before, after;
};

Ends ends_of(const Along &along, Length start, Length end) {
  if (along.from == From::end || along.from == From::inner)
    return {end, start};
  return {start, end};
}

Length over(const Inspection &inspection, Length past) {
  return past > Length{} ? ruled(inspection, past) : Length{};
}

// Up and down to a figure of the ruler.
Length at_least(const Inspection &inspection, Length length) {
  return length > Length{} ? ruled(inspection, length) : length;
}
Length at_most(const Inspection &inspection, Length length) {
  const Length up = at_least(inspection, length);
  return up > length ? up - ruled(inspection, Length::units(1)) : up;
}

// Moved away from the end that it passes; shortened by what the other end has no room for.
void settle(const Inspection &inspection, Along &along, Length &extent, const Ends &ends) {
  if (ends.before <= Length{} && ends.after <= Length{})
    return;
  if (along.from == From::centred) {
    extent = at_most(inspection, extent - std::max(ends.before, ends.after) * 2);
    return;
  }
  const Length was = along.offset;
  if (ends.before > Length{}) {
    along.offset = at_least(inspection, was + ends.before);
  } else {
    // No nearer than what is safe at the end that it is counted from.
    const Length nearest = std::min(was, at_least(inspection, was + ends.before));
    along.offset = std::max(at_most(inspection, was - ends.after), nearest);
  }
  if (const Length still = ends.after + (along.offset - was); still > Length{})
    extent = at_most(inspection, extent - still);
}

std::string written(const Inspection &inspection, const Along &along, bool across) {
  std::string offset = written(along.offset, inspection.edition.ruler);
  switch (along.from) {
  case From::start:
    return offset;
  case From::end:
    return fmt::format("{} from {}", offset, across ? "right" : "foot");
  case From::outer:
    return offset + " from outer";
  case From::inner:
    return offset + " from inner";
  case From::centred:
    break;
  }
  return "centred";
}

std::string at_line(const Inspection &inspection, const At &at) {
  const bool plain = at.across.from == From::start && at.down.from == From::start;
  std::string line = fmt::format("at       {}{} {}", written(inspection, at.across, true),
                                 plain ? "" : ",", written(inspection, at.down, false));
  if (at.size)
    line += fmt::format(", {} x {}", written(at.size->width, inspection.edition.ruler),
                        written(at.size->height, inspection.edition.ruler));
  return line;
}

// Of words that run off the page the whole place counts, filled or not.
Past reach_of(const Inspection &inspection, const Matter &matter) {
  const bool off = matter.faults.front().trouble == EdgeTrouble::off_the_page;
  const bool upright = *element_of(inspection, *matter.item).turn == Angle{};
  return off && upright && is_words(*matter.item) ? largest(matter.reach, matter.place_reach)
                                                  : matter.reach;
}

// None where nothing would be left of it.
std::optional<At> brought_in(const Inspection &inspection, const Matter &matter, At at) {
  const Past reach = reach_of(inspection, matter);
  Size size = at.size.value_or(Size{Length::inches(100), Length::inches(100)});
  settle(inspection, at.across, size.width,
         matter.mirrored ? Ends{reach[at.across.from == From::outer ? 0 : 2],
                                reach[at.across.from == From::outer ? 2 : 0]}
                         : ends_of(at.across, reach[0], reach[2]));
  settle(inspection, at.down, size.height, ends_of(at.down, reach[1], reach[3]));
  if (size.width <= Length{} || size.height <= Length{})
    return std::nullopt;
  if (at.size)
    at.size = size;
  return at;
}

// A line that `every` gives, or another thing's, is not changed for one thing's sake.
bool own_line(const Element &element) {
  return element.placement.from.somewhere() && element.placement.from.file == element.range.file &&
         element.placement.from.begin >= element.range.begin;
}

// A rule's ends are clipped; one that runs along an edge is moved.
std::string rule_line(const Inspection &inspection, const Element &element, const Rule &rule,
                      const Past &reach) {
  const auto inward = [&](Length at, Length least, Length most, Length before, Length after) {
    if (at == least && before > Length{})
      at = at_least(inspection, at + before);
    if (at == most && after > Length{})
      at = at_most(inspection, at - after);
    return at;
  };
  const Ruler ruler = inspection.edition.ruler;
  const auto spot = [&](const Spot &s) {
    const auto [left, right] = std::minmax(rule.start.x, rule.end.x);
    const auto [top, foot] = std::minmax(rule.start.y, rule.end.y);
    return fmt::format("{} {}", written(inward(s.x, left, right, reach[0], reach[2]), ruler),
                       written(inward(s.y, top, foot, reach[1], reach[3]), ruler));
  };
  const std::string line(inspection.sources.text(element.range));
  return fmt::format("{}, {} to {}", line.substr(0, line.find(',')), spot(rule.start),
                     spot(rule.end));
}

std::string margins_line(const Margins &m, Ruler ruler) {
  if (m.inner == m.outer && m.head == m.foot && m.inner == m.head)
    return spoken::fact("margins", written(m.inner, ruler));
  return spoken::fact("margins", fmt::format("inner {}, outer {}, head {}, foot {}",
                                             written(m.inner, ruler), written(m.outer, ruler),
                                             written(m.head, ruler), written(m.foot, ruler)));
}

// What fills the margins is brought in by wider margins.
void type_margins(const Inspection &inspection, const Matter &matter, Problem &problem) {
  Margins margins = *inspection.edition.margins;
  const auto widen = [&](Length &margin, std::size_t edge) {
    margin += over(inspection, matter.reach[edge]);
  };
  widen(margins.outer, 0);
  widen(margins.head, 1);
  widen(margins.inner, 2);
  widen(margins.foot, 3);
  const Range from = inspection.edition.margins.from;
  const std::string line = margins_line(margins, inspection.edition.ruler);
  if (from.somewhere())
    retype(inspection, problem, from, line, "under edition");
  else
    problem.type.push_back({line, "under edition"});
}

void type_live(const Inspection &inspection, const Element &element, Problem &problem) {
  const std::string line = element.placement.fills ? "fills    live" : "fits     live";
  if (own_line(element))
    retype(inspection, problem, element.placement.from, line);
  else
    problem.type.push_back({line, "under it"});
}

} // namespace

void type_inward(const Inspection &inspection, const Matter &matter, Problem &problem) {
  const Item &item = *matter.item;
  if (item.running && item.laid_by != ElementId::none)
    return;
  const Element &element = element_of(inspection, item);
  if (std::holds_alternative<Lay>(element.what))
    return;
  if (const auto *rule = std::get_if<Rule>(&element.what)) {
    if (*element.turn == Angle{})
      retype(inspection, problem, element.range,
             rule_line(inspection, element, *rule, matter.reach));
    return;
  }
  if (const auto *at = std::get_if<At>(&element.placement.where)) {
    if (const auto in = brought_in(inspection, matter, *at)) {
      const std::string line = at_line(inspection, *in);
      const bool smaller =
          at->size && (in->size->width < at->size->width || in->size->height < at->size->height);
      const std::string remark = smaller ? "smaller, as there is no room to move it" : "";
      if (own_line(element))
        retype(inspection, problem, element.placement.from, line, remark);
      else
        problem.type.push_back({line, remark});
    }
    return;
  }
  if (std::holds_alternative<Cells>(element.placement.where) || is_words(item))
    type_margins(inspection, matter, problem);
  else if (std::holds_alternative<Picture>(element.what))
    type_live(inspection, element, problem);
}

std::string directions(const Inspection &inspection, const Matter &matter) {
  constexpr std::array<std::string_view, 4> away{"right", "down", "left", "up"};
  constexpr std::array<std::string_view, 4> away_mirrored{"inwards", "down", "outwards", "up"};
  std::string text;
  for (std::size_t i = 0; i < away.size(); ++i)
    if (matter.reach[i] > Length{})
      text += fmt::format("{}{} {}", text.empty() ? "" : " and ",
                          length(inspection, ruled(inspection, matter.reach[i])),
                          (matter.mirrored ? away_mirrored : away)[i]);
  return text;
}

} // namespace bodkin
