#include "edition/placement.hpp"

#include "edition/problems.hpp"
#include "edition/values.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {
namespace {

From from_of(language::Anchor anchor) {
  switch (anchor) {
  case language::Anchor::start:
    return From::start;
  case language::Anchor::end:
    return From::end;
  case language::Anchor::outer:
    return From::outer;
  case language::Anchor::inner:
    return From::inner;
  case language::Anchor::centred:
    break;
  }
  return From::centred;
}

Area area_of(std::string_view word) {
  if (word == "page")
    return Area::page;
  if (word == "live")
    return Area::live;
  return word == "margins" ? Area::margins : Area::place;
}

Problem half_a_place(const Reader &reader, FactLine at, const language::Place &place) {
  const std::string_view written = reader.sources.text(at.range("place"));
  const std::string whole = place.has_spot ? fmt::format("at       {}, 4in x 3in", written)
                                           : fmt::format("at       1/2in 1/2in, {}", written);
  return {.check = "missing-part",
          .range = at.range("place"),
          .message = place.has_spot ? "how large? a place is a point and a size"
                                    : "where? a place is a point and a size",
          .why =
              "across and down from the page's top left come first, then, after a comma, width x "
              "height",
          .type = {{whole, "with the figures of yours"}}};
}

Problem no_room(const Reader &reader, FactLine at) {
  return too_small(at.range("place"), "a place with no width or no height holds nothing",
                   "the size comes after the comma: width x height",
                   typed(reader, at.range(), at.range("place"), "1/2in 1/2in, 4in x 3in"));
}

std::optional<At> at_of(Reader &reader, FactLine line, bool size_needed) {
  const auto *place = line.get<language::Place>("place");
  if (!place)
    return std::nullopt;
  if (!place->has_spot || (size_needed && !place->has_size)) {
    // Where its line has been told of as a whole, the half that was read is no second problem.
    if (!line.statement->broken)
      reader.report(half_a_place(reader, line, *place));
    return std::nullopt;
  }
  At at{along_of(place->across), along_of(place->down), std::nullopt};
  if (place->has_size) {
    if (place->size.width <= Length{} || place->size.height <= Length{}) {
      reader.report(no_room(reader, line));
      return std::nullopt;
    }
    at.size = place->size;
  }
  return at;
}

Problem no_grid(FactLine line) {
  return {.check = "missing-fact",
          .range = line.range(),
          .message = "this edition has no grid to count cells in",
          .why = "cells are the columns and rows that the margins are parted into",
          .type = {{"grid       4 by 6, gap 1/8in", "under edition"},
                   {"at       1/2in 1/2in, 4in x 3in", "or, here, a place in lengths"}}};
}

// The part of the cells that the grid has, or all of it where it has none of them.
std::string cells_within(const language::Cells &cells, const Grid &grid) {
  const auto part = [](int first, int last, int most) {
    const bool some = first <= last && first <= most && last >= 1;
    return fmt::format("{}-{}", some ? std::max(first, 1) : 1, some ? std::min(last, most) : most);
  };
  return fmt::format("{} by {}", part(cells.first_column, cells.last_column, grid.columns),
                     part(cells.first_row, cells.last_row, grid.rows));
}

Problem off_the_grid(const Reader &reader, FactLine line, const language::Cells &cells,
                     const Grid &grid) {
  const std::string within = cells_within(cells, grid);
  return {.check = "off-the-page",
          .range = line.range("cells"),
          .message = fmt::format("the grid ({}) has {} columns and {} rows",
                                 place_words(reader, reader.edition.grid->from, line.range().file),
                                 grid.columns, grid.rows),
          .why = "cells are columns by rows, each from the lower number to the higher",
          .type = {{typed(reader, line.range(), line.range("cells"), within), {}}},
          .edits = {{line.range("cells"), within}}};
}

std::optional<Cells> cells_of(Reader &reader, FactLine line) {
  const auto *cells = line.get<language::Cells>("cells");
  if (!cells)
    return std::nullopt;
  if (!reader.edition.grid) {
    reader.report(no_grid(line));
    return std::nullopt;
  }
  const Grid &grid = reader.edition.grid->value;
  const auto within = [](int first, int last, int most) {
    return first >= 1 && first <= last && last <= most;
  };
  if (!within(cells->first_column, cells->last_column, grid.columns) ||
      !within(cells->first_row, cells->last_row, grid.rows)) {
    reader.report(off_the_grid(reader, line, *cells, grid));
    return std::nullopt;
  }
  return Cells{cells->first_column, cells->last_column, cells->first_row, cells->last_row};
}

Problem two_places(const Reader &reader, FactLine first, FactLine second) {
  return {.check = "two-places",
          .range = second.range(),
          .message = fmt::format("its place is given by {} on {} already", first.word(),
                                 place_words(reader, first.range(), second.range().file)),
          .why = "at, cells, and what fills or fits the page, live or margins are ways to say one "
                 "thing; only `fills place` and `fits place` go with an at or cells",
          .type = {{{}, "keep the line that is right and take the other out"}},
          .related = {{first.range(), "the first of them"}}};
}

// One element says where it stands only once.
void judge_own(Reader &reader, const Facts &own) {
  FactLine spot, area;
  for (const FactLine &line : own.lines()) {
    const std::string_view word = line.word();
    const bool is_spot = word == "at" || word == "cells";
    const bool is_area = word == "fills" || word == "fits";
    FactLine &same = is_spot ? spot : area;
    if (!is_spot && !is_area)
      continue;
    if (same && same.word() != word) {
      reader.report(two_places(reader, same, line));
      return;
    }
    same = line;
  }
  if (spot && area && area.words("area") != "place")
    reader.report(two_places(reader, spot, area));
}

Problem needs_place(FactLine element, Stands stands) {
  const std::string_view word = element.word();
  const std::string_view verb = word == "words" ? "need" : "needs";
  const std::string_view ground = stands == Stands::on_spread     ? "on a spread"
                                  : stands == Stands::in_standing ? "in standing matter"
                                                                  : "here";
  return missing_fact(element.keyword(), fmt::format("{} {} {} a place", word, ground, verb),
                      stands == Stands::on_spread
                          ? "a spread's margins run across the fold, where lines of words break"
                      : stands == Stands::in_standing
                          ? "standing matter is laid on many pages: its parts are placed from the "
                            "point where it is laid"
                          : "nothing else says how large it is",
                      "at       1/2in 1/2in, 2in x 2in");
}

Problem no_panels(FactLine line) {
  return {.check = "not-for-this-piece",
          .range = line.range(),
          .message = "only a band has panels to count a place on",
          .why =
              "front, spine, back, fore-edge and overlap are where a band lies when it goes round "
              "a copy; this is no page of one",
          .type = {{"goes       round", "under an insert, which makes it a band; or take this line "
                                        "out"}}};
}

std::optional<Known<BandPanel>> panel_of(Reader &reader, FactLine line) {
  if (!line)
    return std::nullopt;
  if (!reader.is_band()) {
    reader.report(no_panels(line));
    return std::nullopt;
  }
  for (const BandPanel panel : {BandPanel::back, BandPanel::spine, BandPanel::front,
                                BandPanel::fore_edge, BandPanel::overlap})
    if (line.words("panel") == name_of(panel))
      return known(panel, line.range());
  return std::nullopt;
}

bool place_needed(std::string_view word, Stands stands) {
  if (word == "folio" || word == "hand" || word == "lay" || word == "rule")
    return false;
  if (stands == Stands::in_standing)
    return true;
  return word == "patch" || word == "qr" ||
         ((word == "words" || word == "credits" || word == "colophon") &&
          stands == Stands::on_spread);
}

} // namespace

Along along_of(const language::Along &along) { return {from_of(along.anchor), along.offset}; }

Placement placement_of(Reader &reader, FactLine element, const ElementFacts &facts, Stands stands) {
  judge_own(reader, facts.own());
  const auto [spot, area] = facts.where();
  Placement placement;
  if (area && area.has("area")) {
    placement.area = known(area_of(area.words("area")), area.range("area"));
    placement.fills = area.word() == "fills";
    placement.from = area.range();
  }
  if (spot && spot.word() == "at") {
    if (const auto at = at_of(reader, spot, element.word() != "folio"))
      placement.where = *at;
  } else if (spot) {
    if (const auto cells = cells_of(reader, spot))
      placement.where = *cells;
  }
  if (spot)
    placement.from = spot.range();
  placement.panel = panel_of(reader, facts.find("panel"));
  const bool said = spot || (area && *placement.area != Area::place);
  if (!said && place_needed(element.word(), stands))
    reader.report(needs_place(element, stands));
  return placement;
}

} // namespace bodkin
