#include "sheet/folded_in.hpp"
#include "sheet/geometry.hpp"
#include "sheet/settle.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {
namespace {

constexpr std::size_t index(int i) { return static_cast<std::size_t>(i); }

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
