#include "preflight/edge_problems.hpp"

#include "preflight/about.hpp"
#include "preflight/inward.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {
namespace {

constexpr std::array<std::string_view, 4> edge_names{"left", "top", "right", "bottom"};
constexpr std::array<std::string_view, 4> mirrored_names{"outer", "top", "inner", "bottom"};
constexpr Length knife_wanders = Length::inches(1, 16); // set by hand: common practice, no source

std::string machine_name(const Inspection &inspection, int page) {
  const MachineId id = side_of(inspection, page).machine;
  return id == MachineId::none ? "the machine" : inspection.edition[id].name;
}

LiveArea live_of(const Inspection &inspection, int page) {
  return live_area(inspection.edition, inspection.imposition, page);
}

// The one page and edge that a problem is told of, and the pages where that edge is passed too.
struct Told {
  int page = 0;
  std::size_t edge = 0; // in the page's own frame
  std::string_view name;
  Length by;
  std::vector<int> pages;
  bool alike = true; // as far on all of them
};

Past framed(const Inspection &inspection, const Matter &matter, const Fault &fault) {
  return matter.mirrored && !outer_is_left(inspection, fault.page) ? mirrored(fault.past)
                                                                   : fault.past;
}

Told told(const Inspection &inspection, const Matter &matter) {
  const auto far = [](const Fault &fault) { return fault.past[worst(fault.past)]; };
  const Fault &fault =
      *std::max_element(matter.faults.begin(), matter.faults.end(),
                        [&](const Fault &a, const Fault &b) { return far(a) < far(b); });
  const std::size_t edge = worst(framed(inspection, matter, fault));
  Told told{fault.page,
            worst(fault.past),
            (matter.mirrored ? mirrored_names : edge_names)[edge],
            far(fault),
            {}};
  for (const Fault &other : matter.faults)
    if (const Length by = framed(inspection, matter, other)[edge]; by > Length{}) {
      told.pages.push_back(other.page);
      told.alike = told.alike && length(inspection, by) == length(inspection, told.by);
    }
  return told;
}

std::string how_far(const Inspection &inspection, const Told &told) {
  return fmt::format("{}{}", told.alike ? "" : "up to ", length(inspection, told.by));
}

// Why an edge asks for room, in this edition's own numbers.
std::string why_edge(const Inspection &inspection, int page, std::size_t edge) {
  const EdgeAsk ask = live_of(inspection, page).edges[edge];
  std::string why = where_on_sheet(inspection, page);
  if (ask.meets == Meets::sheet_edge)
    why += fmt::format(": its {} edge is the sheet's edge", edge_names[edge]);
  if (ask.bare > Length{})
    why += fmt::format(", where {} leaves {} bare", machine_name(inspection, page),
                       length(inspection, ask.bare));
  if (ask.trim > Length{})
    why += fmt::format("; the knife takes {}", length(inspection, ask.trim));
  if (ask.trim > Length{} && ask.drift > Length{})
    why += fmt::format(", and backs drift by {}", length(inspection, ask.drift));
  if (ask.shift > Length{})
    why += fmt::format("; creep of {} is made up for", length(inspection, ask.shift));
  if (ask.hidden > Length{})
    why += fmt::format("; {} there lie hidden in the binding or under glue",
                       length(inspection, ask.hidden));
  if (ask.creep > Length{})
    why += fmt::format("; creep of {} is not made up for", length(inspection, ask.creep));
  return why;
}

// "; its right edge is the fold, where it may go to the edge"
std::string fold_edge(const Inspection &inspection, int page) {
  const LiveArea live = live_of(inspection, page);
  for (std::size_t i = 0; i < live.edges.size(); ++i)
    if (live.edges[i].meets == Meets::spine)
      return fmt::format("; its {} edge is the fold, where it may go to the edge", edge_names[i]);
  return "";
}

// The other edges that the thing passes, which the message does not name.
std::string other_edges(const Inspection &inspection, const Matter &matter, const Told &told) {
  Past others{};
  for (const Fault &fault : matter.faults)
    others = largest(others, framed(inspection, matter, fault));
  const auto &names = matter.mirrored ? mirrored_names : edge_names;
  std::string text;
  for (std::size_t i = 0; i < others.size(); ++i)
    if (others[i] > Length{} && names[i] != told.name)
      text += fmt::format("{}{} at the {}", text.empty() ? "; it is over as well by " : " and ",
                          length(inspection, others[i]), names[i]);
  return text;
}

void finish(const Inspection &inspection, const Matter &matter, Problem &problem) {
  type_inward(inspection, matter, problem);
  if (problem.type.empty())
    problem.why += fmt::format("; it is safe {} from here", directions(inspection, matter));
}

Problem at_edge(const Inspection &inspection, const Matter &matter, std::string check) {
  Problem problem;
  problem.check = std::move(check);
  problem.range = place_range(inspection, *matter.item);
  return problem;
}

} // namespace

Problem off_the_page(const Inspection &inspection, const Matter &matter) {
  const Told it = told(inspection, matter);
  const std::string name = name_of(inspection, *matter.item);
  const bool many = name == "words";
  Problem problem = at_edge(inspection, matter, "off-the-page");
  problem.message = fmt::format("{} {} {} the {} edge of {} by {}", many ? "these" : "this", name,
                                many ? "pass" : "passes", it.name,
                                pages_in_words(inspection, it.pages), how_far(inspection, it));
  const Meets meets = live_of(inspection, it.page).edges[it.edge].meets;
  problem.why = where_on_sheet(inspection, it.page) +
                (meets == Meets::sheet_edge
                     ? fmt::format(": past its {} edge the paper ends", edge_names[it.edge])
                     : ": past the fold lies another page; only a spread crosses it") +
                other_edges(inspection, matter, it);
  finish(inspection, matter, problem);
  return problem;
}

Problem unsafe_matter(const Inspection &inspection, const Matter &matter) {
  const Told it = told(inspection, matter);
  const EdgeAsk ask = live_of(inspection, it.page).edges[it.edge];
  const std::string name = name_of(inspection, *matter.item);
  Problem problem =
      at_edge(inspection, matter, is_words(*matter.item) ? "unsafe-words" : "unsafe-art");
  problem.message =
      fmt::format("{} of the {} {} side {} on {}", how_far(inspection, it),
                  name == "words" ? "words'" : name + "'s", it.name,
                  ask.for_knife() > ask.for_bare() ? "may be cut off" : "will not print",
                  pages_in_words(inspection, it.pages));
  problem.why = why_edge(inspection, it.page, it.edge) + other_edges(inspection, matter, it);
  if (!is_words(*matter.item))
    problem.why += fold_edge(inspection, it.page);
  finish(inspection, matter, problem);
  return problem;
}

Problem near_the_knife(const Inspection &inspection, const Matter &matter) {
  const Told it = told(inspection, matter);
  const EdgeAsk ask = live_of(inspection, it.page).edges[it.edge];
  const Margins &m = *inspection.edition.margins;
  const Length margin = ask.fore_edge ? m.outer : it.edge == 1 ? m.head : m.foot;
  const Length cut = ask.trim + ask.creep;
  const Length readable = std::min(margin, cut + Length::inches(1, 8));
  const std::string name = name_of(inspection, *matter.item);
  Problem problem = at_edge(inspection, matter, "near-the-knife");
  problem.kind = Kind::warning;
  problem.message =
      fmt::format("the {} on {} {} {} from the cut {}; the margins{} say {}", name,
                  pages_in_words(inspection, it.pages), name == "words" ? "end" : "ends",
                  length(inspection, readable - it.by - cut),
                  ask.fore_edge  ? "fore-edge"
                  : it.edge == 1 ? "head"
                                 : "foot",
                  spoken::on_line(inspection.sources, inspection.edition.margins.from),
                  length(inspection, margin));
  problem.why = fmt::format("the knife takes {} off there", length(inspection, ask.trim));
  if (ask.shift > Length{})
    problem.why +=
        fmt::format("; creep ({} on sheet {}) is made up for", length(inspection, ask.shift),
                    number_of(inspection, inspection.imposition.sheet_of(it.page)));
  if (ask.creep > Length{})
    problem.why += fmt::format("; creep takes {} more on sheet {}, where it is not made up for",
                               length(inspection, ask.creep),
                               number_of(inspection, inspection.imposition.sheet_of(it.page)));
  problem.why +=
      fmt::format("; a knife set by hand wanders by {}", length(inspection, knife_wanders));
  finish(inspection, matter, problem);
  return problem;
}

Problem cannot_fill_page(const Inspection &inspection, const Item &item,
                         const std::vector<int> &pages) {
  const int page = pages.front();
  const LiveArea live = live_of(inspection, page);
  std::size_t edge = 0;
  while (edge < 3 && live.edges[edge].trim >= live.edges[edge].bare)
    ++edge;
  const Element &element = inspection.edition[item.element];
  Problem problem;
  problem.check = "unsafe-art";
  problem.range = element.placement.from.somewhere() ? element.placement.from : element.range;
  problem.message = fmt::format("this {} fills {} to the {} edge, which will not print",
                                name_of(inspection, item), pages_in_words(inspection, pages),
                                pages.size() == 1 ? edge_names[edge] : "sheet's");
  problem.why =
      fmt::format("{}; only an edge that is cut off by {} or more can be printed to the "
                  "end",
                  why_edge(inspection, page, edge), length(inspection, live.edges[edge].bare));
  retype(inspection, problem, problem.range, "fills    live");
  return problem;
}

} // namespace bodkin
