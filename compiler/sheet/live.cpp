#include "sheet/live.hpp"

#include "sheet/bare.hpp"
#include "sheet/machine_of.hpp"

#include <algorithm>

namespace bodkin {
namespace {

// Edges clockwise from the left: those of the page are those of the sheet when it stands upright.
Length along(const Edges &edges, std::size_t edge) {
  switch (edge % 4) {
  case 0:
    return edges.left;
  case 1:
    return edges.top;
  case 2:
    return edges.right;
  default:
    return edges.bottom;
  }
}

Meets met_at(const Place &place, PageEdge edge) {
  switch (edge) {
  case PageEdge::left:
    return place.left;
  case PageEdge::top:
    return place.top;
  case PageEdge::right:
    return place.right;
  case PageEdge::bottom:
    return place.bottom;
  }
  return Meets::sheet_edge;
}

Length trim_at(const Trims &trims, PageEdge edge, bool fore_edge) {
  if (edge == PageEdge::top)
    return trims.head;
  if (edge == PageEdge::bottom)
    return trims.foot;
  return fore_edge ? trims.fore_edge : Length();
}

} // namespace

Trims trims_written(const Edition &edition) {
  Trims trims;
  for (const FinishStep &step : edition.finish)
    if (step.kind == StepKind::trim) {
      trims.fore_edge += step.fore_edge;
      trims.head += step.head;
      trims.foot += step.foot;
    }
  return trims;
}

Trims trims_of(const Edition &edition) {
  Trims trims = trims_written(edition);
  if (trims.fore_edge >= edition.size->width)
    trims.fore_edge = {};
  if (trims.head + trims.foot >= edition.size->height)
    trims.head = trims.foot = {};
  return trims;
}

Length EdgeAsk::for_bare() const { return std::max(Length(), bare - slack - shift); }

Length EdgeAsk::for_knife() const { return trim > Length() ? trim + creep + drift : Length(); }

Length EdgeAsk::asks() const { return std::max({for_bare(), for_knife(), hidden}); }

Edges LiveArea::asks() const {
  return {edges[0].asks(), edges[1].asks(), edges[2].asks(), edges[3].asks()};
}

bool LiveArea::may_fill_page() const {
  return std::all_of(edges.begin(), edges.end(), [](const EdgeAsk &edge) {
    return edge.meets != Meets::sheet_edge || edge.trim >= edge.bare;
  });
}

LiveArea live_area(const Imposition &imposition, int page, const Machine &machine,
                   const Trims &trims) {
  const Spotted &spot = imposition.where[static_cast<std::size_t>(page)];
  const Place &place = imposition.place_of(page);
  const Edges bare = bare_edges(machine, imposition.sheet_of(page).size);
  LiveArea area;
  for (const PageEdge edge : {PageEdge::left, PageEdge::top, PageEdge::right, PageEdge::bottom}) {
    EdgeAsk &ask = area.edges[static_cast<std::size_t>(edge)];
    ask.meets = met_at(place, edge);
    ask.back = spot.side == 1;
    ask.fore_edge = (edge == PageEdge::left && place.spine == SpineAt::right) ||
                    (edge == PageEdge::right && place.spine == SpineAt::left);
    ask.slack = along(place.slack, static_cast<std::size_t>(edge));
    ask.hidden = along(place.hidden, static_cast<std::size_t>(edge));
    if (ask.fore_edge) {
      ask.shift = place.shift;
      ask.creep = place.creep - place.shift;
    }
    if (ask.meets == Meets::sheet_edge)
      ask.bare =
          along(bare, static_cast<std::size_t>(edge) + static_cast<std::size_t>(place.turn / 90));
    ask.trim = trim_at(trims, edge, ask.fore_edge);
    if (ask.back && ask.trim > Length())
      ask.drift = *machine.drift;
  }
  return area;
}

LiveArea live_area(const Edition &edition, const Imposition &imposition, int page) {
  const Spotted &spot = imposition.where[static_cast<std::size_t>(page)];
  const MachineId id = imposition.sheet_of(page).sides[static_cast<std::size_t>(spot.side)].machine;
  return live_area(imposition, page, machine_of(edition, id), trims_of(edition));
}

} // namespace bodkin
