#include "sheet/folded_in.hpp"

#include "sheet/geometry.hpp"
#include "sheet/settle.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {
namespace {

constexpr std::size_t index(int i) { return static_cast<std::size_t>(i); }

// The joints of a folded paper by the cell at their left, or above them.
class Hanging {
public:
  explicit Hanging(const FoldedPaper &paper)
      : paper_(paper), beside_(paper.cells.size()), below_(paper.cells.size()) {
    for (const Joint &joint : paper.joints)
      (joint.side_by_side ? beside_ : below_)[index(joint.a)] = &joint;
  }

  // At an edge of a cell, as the flat sheet has it; null: a free edge.
  const Joint *at(int cell, Toward way) const {
    switch (way) {
    case Toward::right:
      return beside_[index(cell)];
    case Toward::down:
      return below_[index(cell)];
    case Toward::left:
      return cell % paper_.columns == 0 ? nullptr : beside_[index(cell - 1)];
    case Toward::up:
      break;
    }
    return cell < paper_.columns ? nullptr : below_[index(cell - paper_.columns)];
  }

  // Of one row (or column) of the sheet, with no slit between them.
  bool together(int one, int other, bool columns) const {
    const int step = columns ? 1 : paper_.columns;
    const bool same_row = columns ? one / paper_.columns == other / paper_.columns
                                  : one % paper_.columns == other % paper_.columns;
    for (int cell = std::min(one, other); same_row && cell < std::max(one, other); cell += step)
      if (at(cell, columns ? Toward::right : Toward::down) == nullptr)
        return false;
    return same_row;
  }

private:
  const FoldedPaper &paper_;
  std::vector<const Joint *> beside_, below_;
};

int number_of(const FoldedPaper &paper, int cell, bool columns) {
  const int panel = paper.panel_of(cell);
  return columns ? panel % paper.panel_columns : panel / paper.panel_columns;
}

int line_at(const FoldedPaper &paper, int cell, Toward way) {
  const bool after = way == Toward::right || way == Toward::down;
  return number_of(paper, cell, lies_sideways(way)) + (after ? 1 : 0);
}

// How the panels of a cell's row lie, from the first to the last.
std::vector<int> ways_of(const FoldedPaper &paper, int cell, bool columns) {
  std::vector<int> ways(index(columns ? paper.panel_columns : paper.panel_rows));
  const int first = columns ? cell / paper.columns * paper.columns : cell % paper.columns;
  const int step = columns ? 1 : paper.columns, count = columns ? paper.columns : paper.rows;
  for (int i = 0; i < count; ++i) {
    const PaperCell &lies = paper.at(first + i * step);
    ways[index(number_of(paper, first + i * step, columns))] =
        (columns ? lies.across : lies.over) ? -1 : 1;
  }
  return ways;
}

void add(std::vector<FoldedIn> &found, FoldedIn one) {
  const auto same = [&](const FoldedIn &other) {
    return other.columns == one.columns && other.end == one.end && other.against == one.against;
  };
  if (std::none_of(found.begin(), found.end(), same))
    found.push_back(std::move(one));
}

void within(const FoldedPaper &paper, const Hanging &hanging, const std::vector<int> &levels,
            const Joint &crease, std::vector<FoldedIn> &found) {
  const bool columns = crease.side_by_side;
  const PaperCell &lies = paper.at(crease.a);
  const Toward side = lies.on_sheet(crease.of_a());
  const int low = std::min(levels[index(crease.a)], levels[index(crease.b)]);
  const int high = std::max(levels[index(crease.a)], levels[index(crease.b)]);
  const CellPile &pile = paper.pile(lies.x, lies.y);
  for (int level = low + 1; level < high; ++level) {
    const int cell = pile[index(level)];
    const Toward way = paper.at(cell).on_sheet(side);
    const Joint *joint = hanging.at(cell, way);
    if ((joint != nullptr && joint->step >= crease.step) ||
        !hanging.together(cell, crease.a, columns))
      continue;
    const bool far = side == Toward::right || side == Toward::down;
    const int end = line_at(paper, cell, way), against = number_of(paper, crease.b, columns);
    // Of the two panels that may share that end the one that hangs nearer to the crease.
    add(found, {columns, end > against ? end - 1 : end, end, against, far ? 1 : -1, high - low - 1,
                false, 0, ways_of(paper, cell, columns)});
  }
}

// Two free ends of one layer, at the two sides of a line of the folded paper.
void meeting(const FoldedPaper &paper, const Hanging &hanging, int one, int other, bool columns,
             std::vector<FoldedIn> &found) {
  const Toward near = columns ? Toward::right : Toward::down;
  const Toward way = paper.at(one).on_sheet(near),
               way_back = paper.at(other).on_sheet(opposite(near));
  if (hanging.at(one, way) != nullptr || hanging.at(other, way_back) != nullptr ||
      line_at(paper, one, way) == line_at(paper, other, way_back) ||
      !hanging.together(one, other, columns))
    return;
  add(found, {columns, number_of(paper, one, columns), line_at(paper, one, way),
              line_at(paper, other, way_back), 1, 0, true, number_of(paper, other, columns),
              ways_of(paper, one, columns)});
}

void meet_beside(const FoldedPaper &paper, const Hanging &hanging, const PaperCell &at, int level,
                 int cell, std::vector<FoldedIn> &found) {
  const auto other = [&](int x, int y) {
    const CellPile &pile = paper.pile(x, y);
    return index(level) < pile.size() ? pile[index(level)] : -1;
  };
  if (at.x + 1 < paper.left + paper.width)
    if (const int beside = other(at.x + 1, at.y); beside >= 0)
      meeting(paper, hanging, cell, beside, true, found);
  if (at.y + 1 < paper.top + paper.height)
    if (const int below = other(at.x, at.y + 1); below >= 0)
      meeting(paper, hanging, cell, below, false, found);
}

} // namespace

std::vector<FoldedIn> folded_in(const FoldedPaper &paper) {
  const Hanging hanging(paper);
  const std::vector<int> levels = paper.levels();
  std::vector<FoldedIn> found;
  for (const Joint &joint : paper.joints)
    if (joint.step >= 0)
      within(paper, hanging, levels, joint, found);
  for (int cell = 0; cell < static_cast<int>(paper.cells.size()); ++cell)
    meet_beside(paper, hanging, paper.at(cell), levels[index(cell)], cell, found);
  return found;
}

namespace {

// The usual room, by common practice, no source: a flap folded in, each of two flaps that meet.
constexpr Length usual_room = Length::inches(1, 16), usual_gap = Length::inches(1, 32);

struct Judged {
  const FoldedIn &panel;
  Length caliper;
  std::vector<Length> lines; // on the flat sheet

  Length position(int line) const {
    Length at;
    for (int i = 0; i < line; ++i)
      at += (lines[index(i) + 1] - lines[index(i)]) * panel.ways[index(i)];
    return at;
  }
  // How far the end lies past what it should stay short of; less than nothing: room.
  Length past() const { return (position(panel.end) - position(panel.against)) * panel.towards; }
  // The crease goes round so much paper.
  Length needs() const { return caliper * panel.layers; }
  Length width() const { return lines[index(panel.number) + 1] - lines[index(panel.number)]; }
  bool buckles() const { return panel.flaps ? past() >= Length{} : past() + needs() > Length{}; }
};

Judged judged(const Edition &edition, const FoldedIn &panel, const Sheet &sheet) {
  const Folding &folding = *edition.folding;
  return {panel, sheet.stock == StockId::none ? Length{} : *edition[sheet.stock].caliper,
          lines_along(panel_shares(folding, panel.columns),
                      panel.columns ? sheet.size.width : sheet.size.height)};
}

Length given_up(const Folding &folding, const FoldedIn &panel, int number) {
  Length sum;
  for (const Narrowed &narrowed : folding.narrowed)
    if (narrowed.column == panel.columns && narrowed.number == number + 1)
      sum += narrowed.by;
  return sum;
}

std::string_view kind_of(const FoldedIn &panel) { return panel.columns ? "column" : "row"; }

std::string narrow_line(const FoldedIn &panel, int number, Length by, Ruler ruler) {
  return spoken::fact("narrow",
                      fmt::format("{} {} by {}", kind_of(panel), number + 1, written(by, ruler)));
}

// Where the folding is the maker's own the line goes there; else into a copy of it.
void say_where(const Edition &edition, const Sources &sources, Problem &problem) {
  const Folding &folding = *edition.folding;
  const bool own = folding.range.somewhere() && !sources.is_shelf(folding.range.file);
  problem.range = own ? (folding.panels_range.somewhere() ? folding.panels_range : folding.range)
                      : edition.folding.from;
  for (WayOut &way : problem.type)
    if (way.remark.empty() && own)
      way.remark = "under `folding " + folding.name + "`";
    else if (way.remark.empty())
      way.remark = fmt::format("in a folding of your own like {}, which `bodkin explain {}` prints",
                               folding.name, folding.name);
}

Problem panel_buckles(const Edition &edition, const Judged &found) {
  const FoldedIn &panel = found.panel;
  const Ruler ruler = edition.ruler;
  const std::string_view kind = kind_of(panel);
  const Length past = found.past(), room = std::max(usual_room, found.needs() + usual_gap);
  const std::string crease =
      fmt::format("the fold between {}s {} and {}", kind, panel.against, panel.against + 1);
  Problem problem;
  problem.kind = Kind::warning;
  problem.check = "panel-buckles";
  problem.message =
      fmt::format("{} {} is folded in and buckles against {}", kind, panel.number + 1, crease);
  const std::string reach =
      past > Length{}   ? fmt::format("reaches {} past it", rounded(past, ruler))
      : past < Length{} ? fmt::format("stays only {} short of it", rounded(-past, ruler))
                        : std::string("reaches right into it");
  problem.why =
      fmt::format("its end lies within that fold and {}; {} of paper of {} {} there, "
                  "and a crease needs as much to go round, so the panel stands in a bow",
                  reach, panel.layers == 1 ? "one layer" : fmt::format("{} layers", panel.layers),
                  rounded(found.caliper, ruler), panel.layers == 1 ? "lies" : "lie");
  problem.type = {
      {narrow_line(panel, panel.number,
                   ruled_up(given_up(*edition.folding, panel, panel.number) + past + room, ruler),
                   ruler),
       {}}};
  return problem;
}

Problem flaps_meet(const Edition &edition, const Judged &found) {
  const FoldedIn &panel = found.panel;
  const Ruler ruler = edition.ruler;
  const std::string_view kind = kind_of(panel);
  const Length past = found.past();
  const int first = std::min(panel.number, panel.other);
  const int second = std::max(panel.number, panel.other);
  Problem problem;
  problem.kind = Kind::note;
  problem.check = "flaps-meet";
  problem.message = fmt::format("the ends of {}s {} and {} {}", kind, first + 1, second + 1,
                                past > Length{} ? fmt::format("overlap by {}", rounded(past, ruler))
                                                : std::string("meet with no gap"));
  problem.why =
      "folded by hand, one of them is always a hair further in, and they push each other up";
  const auto narrower = [&](int number) {
    const Length by = given_up(*edition.folding, panel, number) + past / 2 + usual_gap;
    return narrow_line(panel, number, ruled_up(by, ruler), ruler);
  };
  problem.type = {{narrower(first) + "\n" + narrower(second), {}}};
  return problem;
}

} // namespace

void check_folded_in(const Edition &edition, const std::vector<FoldedIn> &panels,
                     const Imposition &imposition, const Sources &sources, Problems &problems) {
  if (panels.empty() || imposition.sheets.empty())
    return;
  const auto caliper = [&](const Sheet &sheet) {
    return sheet.stock == StockId::none ? Length{} : *edition[sheet.stock].caliper;
  };
  const auto thickest =
      std::max_element(imposition.sheets.begin(), imposition.sheets.end(),
                       [&](const Sheet &a, const Sheet &b) { return caliper(a) < caliper(b); });
  for (const FoldedIn &panel : panels) {
    const Judged found = judged(edition, panel, *thickest);
    if (!found.buckles())
      continue;
    Problem problem = panel.flaps ? flaps_meet(edition, found) : panel_buckles(edition, found);
    say_where(edition, sources, problem);
    problems.push_back(std::move(problem));
  }
}

} // namespace bodkin
