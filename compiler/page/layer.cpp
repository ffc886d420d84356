#include "page/layer.hpp"

#include "edition/copy_numbers.hpp"
#include "page/move_line.hpp"
#include "page/picture.hpp"
#include "page/qr.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <optional>

namespace bodkin {
namespace {

struct Bench {
  const Laying &laying;
  const Workshop &workshop;
  LaidItems &laid;
  Problems &problems;

  const Edition &edition() const { return workshop.edition; }
};

Item item_of(const Bench &bench, ElementId id, const Box &place) {
  const Element &element = bench.edition()[id];
  Item item;
  item.element = id;
  item.laid_by = bench.laying.laid_by;
  item.running = bench.laying.running;
  item.place = place;
  item.to_page = bench.laying.to_page * Transform::turned(*element.turn, middle_of(place));
  return item;
}

template <typename What>
void put(const Bench &bench, ElementId id, const Box &place, const Box &shape, What what) {
  Item item = item_of(bench, id, place);
  item.place = shape;
  item.what = std::move(what);
  bench.laid.items.push_back(std::move(item));
}

void put_fill(const Bench &bench, ElementId id, const Box &place, const Box &shape) {
  if (const auto &fill = bench.edition()[id].fill)
    put(bench, id, place, shape, SetFill{(*fill)->paint, (*fill)->share});
}

void put_outline(const Bench &bench, ElementId id, const Box &place, const Box &shape) {
  if (const auto &outline = bench.edition()[id].outline)
    put(bench, id, place, shape, SetOutline{(*outline)->width, (*outline)->paint});
}

// The largest square in the middle of a place.
Box square_in(const Box &place) {
  const Length side = std::min(place.width, place.height);
  return {place.x + (place.width - side) / 2, place.y + (place.height - side) / 2, side, side};
}

void lay(const Picture &picture, const Bench &bench, ElementId id, const Box &place) {
  if (picture.path->empty())
    return put(bench, id, place, place, SetMissing{"its file is not there"});
  const auto &facts = bench.workshop.gallery.facts(picture);
  if (!facts)
    return put(bench, id, place, place, SetMissing{*picture.path + " " + facts.refusal().reason});
  SetPicture set = stand(picture, bench.edition()[id].placement.fills, facts->aspect(), place);
  const auto &coloured = bench.workshop.gallery.coloured(picture);
  set.coloured = coloured && *coloured;
  const Box window = set.window;
  put_fill(bench, id, place, window);
  put(bench, id, place, place, set);
  put_outline(bench, id, place, window);
}

// Anew for each copy, until one has no room.
std::vector<LinesOfCopy> set_for_copies(const WordsPlace &place, const Prose &prose,
                                        const Bench &bench) {
  const Edition &edition = bench.edition();
  // A sheet is printed for all the runs that have it alike.
  const RunSet whose = bench.workshop.imposition.sheet_of(bench.laying.page).only;
  const CopiesCounted copies = copies_of(edition, whose ? whose : RunSet(edition.of_run));
  const std::size_t told = bench.problems.size();
  std::vector<LinesOfCopy> all;
  for (std::int64_t i = 0; i <= copies.good && bench.problems.size() == told; ++i) {
    const std::int64_t copy = copies.place(i);
    all.push_back({copy, set_alone(place, with_number(prose, number_of(edition, copy)),
                                   bench.laying.page, bench.workshop, bench.problems)});
  }
  return all;
}

SetWords set_words(const WordsPlace &place, const Prose &prose, const Bench &bench) {
  if (!bears_number(prose))
    return {set_alone(place, prose, bench.laying.page, bench.workshop, bench.problems)};
  SetWords set;
  set.of_copies = set_for_copies(place, prose, bench);
  set.lines = set.of_copies.front().lines;
  return set;
}

void lay(const Words &words, const Bench &bench, ElementId id, const Box &place) {
  put_fill(bench, id, place, place);
  const WordsPlace words_place{&words, id, place,
                               ranged_by(bench.edition()[id].placement, bench.laying.ground)};
  if (std::holds_alternative<TextId>(words.words)) {
    put(bench, id, place, place, SetWords{});
    if (bench.laying.boxes_run)
      bench.laid.boxes.emplace_back(bench.laid.items.size() - 1,
                                    TextBox{bench.laying.page, words_place, {}});
  } else {
    put(bench, id, place, place, set_words(words_place, std::get<Prose>(words.words), bench));
  }
  put_outline(bench, id, place, place);
}

void lay(const Rule &rule, const Bench &bench, ElementId id, const Box &) {
  const Length x = std::min(rule.start.x, rule.end.x), y = std::min(rule.start.y, rule.end.y);
  const Box extent{x, y, std::max(rule.start.x, rule.end.x) - x,
                   std::max(rule.start.y, rule.end.y) - y};
  put(bench, id, extent, extent, SetRule{rule.width, rule.paint, rule.start, rule.end});
}

void lay(const Patch &, const Bench &bench, ElementId id, const Box &place) {
  put_fill(bench, id, place, place);
  put_outline(bench, id, place, place);
}

Problem no_code(const Qr &qr) {
  const bool none = qr.text->empty();
  return {.kind = Kind::error,
          .check = "too-long-code",
          .range = qr.text.from,
          .message = none ? "a code of no words says nothing to a telephone"
                          : fmt::format("{} bytes are more than a code holds; {} are the most",
                                        qr.text->size(), most_qr_bytes),
          .why = none ? "there is nothing to print"
                      : "each byte is eight squares more, and there is no larger code",
          .type = {{"qr \"https://example.org/night-bus\"", "the address where the rest stands"}},
          .related = {},
          .edits = {}};
}

void lay(const Qr &qr, const Bench &bench, ElementId id, const Box &place) {
  const Box square = square_in(place);
  std::optional<SetQr> set = qr_of(*qr.text, qr.paint);
  if (!set) {
    bench.problems.push_back(no_code(qr));
    return put(bench, id, place, place, SetMissing{"its words are more than a code holds"});
  }
  put_fill(bench, id, place, square);
  put(bench, id, place, square, std::move(*set));
  put_outline(bench, id, place, square);
}

void lay(const Hand &hand, const Bench &bench, ElementId id, const Box &place) {
  put(bench, id, place, place, SetHand{hand.kind, hand.text});
}

void lay(const PasteUp &paste_up, const Bench &bench, ElementId id, const Box &place) {
  put(bench, id, place, place, SetPasteUp{paste_up.text});
}

// The folio's box where only its spot is written, or nothing at all.
Box folio_box(const Bench &bench, const Element &element, Size size) {
  const Ground &ground = bench.laying.ground;
  if (const At *at = std::get_if<At>(&element.placement.where))
    return box_of(*at, at->size.value_or(size), ground);
  const Box &live = ground.live;
  return {live.x + (live.width - size.width) / 2, live.foot() - size.height, size.width,
          size.height};
}

void lay(const Folio &folio, const Bench &bench, ElementId id, const Box &) {
  if (folio.style == StyleId::none)
    return;
  const Element &element = bench.edition()[id];
  Line line = bench.workshop.compositor.line(std::to_string(bench.laying.page), folio.style,
                                             element.keyword);
  const Size size{line.right - line.left, line.foot - line.top};
  const Box place = folio_box(bench, element, size);
  const Length free = place.width - size.width;
  Length dx;
  switch (ranged_by(element.placement, bench.laying.ground)) {
  case RangedTo::right:
    dx = free;
    break;
  case RangedTo::left:
    break;
  case RangedTo::own: {
    const Lines lines = *bench.edition()[folio.style].lines;
    dx = lines == Lines::centred ? free / 2 : lines == Lines::right ? free : Length{};
    break;
  }
  }
  move_line(line, dx, {});
  SetWords words;
  words.lines.push_back(std::move(line));
  put(bench, id, place, place, std::move(words));
}

// The box round all elements of standing matter, in its own frame.
Box box_round(std::span<const Item> items) {
  Polygon corners;
  for (const Item &item : items)
    for (const Point &corner : polygon_of(item.place, item.to_page))
      corners.push_back(corner);
  return bounds_of(corners);
}

void lay(const Lay &lay, const Bench &bench, ElementId id, const Box &) {
  if (lay.standing == StandingId::none)
    return;
  const Element &element = bench.edition()[id];
  const Standing &standing = bench.edition().standings[at(lay.standing)];
  Laying inner = bench.laying;
  inner.laid_by = id;
  inner.to_page = Transform{};
  LaidItems own;
  lay_elements(standing.elements, inner, bench.workshop, own, bench.problems);
  const Box round = box_round(own.items);
  const Box spot = box_of(At{lay.across, lay.down, std::nullopt},
                          {round.x + round.width, round.y + round.height}, bench.laying.ground);
  const Transform placed = bench.laying.to_page * Transform::moved(spot.x, spot.y) *
                           Transform::turned(*element.turn, middle_of(round));
  const std::size_t first = bench.laid.items.size();
  for (Item &item : own.items) {
    item.to_page = placed * item.to_page;
    bench.laid.items.push_back(std::move(item));
  }
  for (auto &[index, box] : own.boxes)
    bench.laid.boxes.emplace_back(first + index, std::move(box));
}

} // namespace

void lay_elements(std::span<const ElementId> elements, const Laying &laying,
                  const Workshop &workshop, LaidItems &laid, Problems &problems) {
  const Bench bench{laying, workshop, laid, problems};
  for (const ElementId id : elements) {
    const Element &element = workshop.edition[id];
    const Box place = place_of(element.placement, workshop.edition, laying.ground);
    std::visit([&](const auto &what) { lay(what, bench, id, place); }, element.what);
  }
}

} // namespace bodkin
