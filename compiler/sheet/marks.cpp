#include "sheet/marks.hpp"

#include "sheet/bare.hpp"
#include "sheet/live.hpp"
#include "sheet/machine_of.hpp"
#include "sheet/marks_at_spine.hpp"
#include "sheet/marks_round_pieces.hpp"
#include "sheet/strips.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {
namespace {

// No mark is longer than this, and none shorter is worth printing.
constexpr Length longest = Length::inches(1, 8);
constexpr Length shortest = Length::points(2);
// Kept from the knife, and the drift besides on a back.
constexpr Length hair = Length::points(1);
// A line of text of 4 to 6 points, and room for "10000 front" in it.
constexpr Length lowest_text = Length::points(4), highest_text = Length::points(6);
constexpr Length text_room = Length::points(45);

// Neighbouring strips meet at a fold and would both mark it.
void add(std::vector<MarkLine> &lines, const MarkLine &line) {
  if (std::find(lines.begin(), lines.end(), line) == lines.end())
    lines.push_back(line);
}

// An upright line at x is a mark where it crosses a strip that lies across, and the other way
// round.
void cross(std::vector<MarkLine> &lines, MarkLine::Kind kind, const Strip &strip, bool upright,
           Length at) {
  const Box &box = strip.box;
  const Length from = upright ? box.x : box.y, to = upright ? box.right() : box.foot();
  const Length depth = upright ? box.height : box.width;
  if (at < from || at > to || depth < shortest)
    return;
  const Length length = std::min(depth, longest);
  const Length outer = upright ? box.y : box.x;
  const Length start = strip.edge_first ? outer : outer + depth - length;
  if (upright)
    add(lines, {kind, {at, start}, {at, start + length}});
  else
    add(lines, {kind, {start, at}, {start + length, at}});
}

void mark_folds(Marks &marks, const std::vector<Strip> &strips, const Sheet &sheet, SideName side) {
  for (const Sheet::FoldLine &fold : sheet.folds) {
    const bool upright = fold.start.x == fold.end.x;
    Length at = upright ? fold.start.x : fold.start.y;
    if (side == SideName::back && upright == sheet.turns_upright)
      at = (upright ? sheet.size.width : sheet.size.height) - at;
    for (const Strip &strip : strips)
      if (strip.lies_across == upright)
        cross(marks.lines, MarkLine::Kind::fold, strip, upright, at);
  }
}

void mark_cuts(Marks &marks, const std::vector<Strip> &strips) {
  for (const Strip &cut : strips)
    for (const Strip &strip : strips)
      if (cut.place == strip.place && cut.lies_across != strip.lies_across)
        cross(marks.lines, MarkLine::Kind::cut, strip, !cut.lies_across, cut.knife);
}

// Down the page from its head, as on the page before the knife.
std::vector<Length> staples_of(const FinishStep &step, Length height) {
  std::vector<Length> down;
  const Length first = step.from_head_and_foot, run = height - first * 2;
  if (step.staples == 1)
    down.push_back(height / 2);
  for (int i = 0; step.staples > 1 && i < step.staples; ++i)
    down.push_back(first + run * i / (step.staples - 1));
  return down;
}

// Seen from the front of the outermost sheet, where the stapler stands; each staple's height is
// marked in the fore-edge strips.
void mark_staples(Marks &marks, const std::vector<Strip> &strips, const Edition &edition,
                  const Side &side) {
  for (const FinishStep &step : edition.finish) {
    if (step.kind != StepKind::staple || step.staples > 1000)
      continue;
    for (const Strip &strip : strips) {
      const Place &place = side.places[static_cast<std::size_t>(strip.place)];
      if (!strip.fore_edge)
        continue;
      const bool half = place.turn == 180 || place.turn == 90;
      for (const Length down : staples_of(step, edition.size->height)) {
        const Length along = half ? edition.size->height - down : down;
        const bool lies = place.turn % 180 != 0;
        cross(marks.lines, MarkLine::Kind::staple, strip, lies,
              (lies ? place.box.x : place.box.y) + along);
      }
    }
  }
}

bool touches(const Box &box, const MarkLine &line) {
  return line.end.x >= box.x && line.start.x <= box.right() && line.end.y >= box.y &&
         line.start.y <= box.foot();
}

// A box for one line of text, some eighths of the strip from its start.
MarkText text_in(const Strip &strip, int eighths) {
  const Box &box = strip.box;
  const Length wide = strip.lies_across ? box.width : box.height;
  const Length high = strip.lies_across ? box.height : box.width;
  const Length inset = wide * eighths / 8, line = std::min(high, highest_text);
  MarkText text;
  text.turn = strip.lies_across ? 0 : 90;
  text.box = strip.lies_across ? Box{box.x + inset, box.y + (high - line) / 2, text_room, line}
                               : Box{box.x + (high - line) / 2, box.y + inset, line, text_room};
  return text;
}

// In the first strip with room, clear of the other marks.
void number_sheet(Marks &marks, const std::vector<Strip> &strips, int number, SideName side) {
  for (const Strip &strip : strips) {
    const Length wide = strip.lies_across ? strip.box.width : strip.box.height;
    const Length high = strip.lies_across ? strip.box.height : strip.box.width;
    if (high < lowest_text || wide < text_room * 3)
      continue;
    for (const int eighths : {1, 3, 5}) {
      MarkText text = text_in(strip, eighths);
      if (std::any_of(marks.lines.begin(), marks.lines.end(),
                      [&](const MarkLine &line) { return touches(text.box, line); }))
        continue;
      text.text = fmt::format("{} {}", number, side == SideName::front ? "front" : "back");
      marks.texts.push_back(std::move(text));
      return;
    }
  }
}

} // namespace

Marks marks_of(const Edition &edition, const Imposition &imposition, int sheet, SideName side,
               int sheets_before) {
  Marks marks;
  if (!*edition.marks)
    return marks;
  const Sheet &paper = imposition.sheets[static_cast<std::size_t>(sheet)];
  const Side &printed = paper.sides[side == SideName::front ? 0 : 1];
  const Machine &machine = machine_of(edition, printed.machine);
  const Length clearance = hair + (side == SideName::back ? *machine.drift : Length());
  const std::vector<Strip> strips =
      strips_cut_off(paper, printed, trims_of(edition), bare_edges(machine, paper.size), clearance);
  mark_folds(marks, strips, paper, side);
  mark_cuts(marks, strips);
  if (sheet == 0 && side == SideName::front)
    mark_staples(marks, strips, edition, printed);
  const Box within = inside(paper.size, bare_edges(machine, paper.size));
  mark_holes(marks, edition, imposition, sheet, side, within);
  mark_collating(marks, edition, imposition, sheet, side, within);
  std::vector<Strip> margins = left_over(paper, printed, within, clearance);
  mark_piece_cuts(marks, paper, side, margins);
  margins.insert(margins.end(), strips.begin(), strips.end());
  number_sheet(marks, margins, paper.number + sheets_before, side);
  return marks;
}

} // namespace bodkin
