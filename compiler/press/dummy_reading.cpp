#include "press/dummy_reading.hpp"

#include "sheet/machine_of.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::press {
namespace {

struct Telling {
  Prose prose{};

  void heading(std::string text) { add(BlockKind::heading, {Span{.text = std::move(text)}}, 1); }
  void says(std::string text) { add(BlockKind::paragraph, {Span{.text = std::move(text)}}, 0); }
  // Lines of a manuscript, each by itself.
  void type(const std::vector<std::string> &lines) {
    std::vector<Span> spans;
    for (const std::string &line : lines) {
      if (!spans.empty())
        spans.push_back(Span{.text = {}, .hard_break = true});
      spans.push_back(Span{.text = line, .code = true});
    }
    add(BlockKind::quote, std::move(spans), 0);
    prose.blocks.back().quote_depth = 1;
  }
  void add(BlockKind kind, std::vector<Span> spans, int level) {
    Block block;
    block.kind = kind;
    block.heading_level = level;
    block.spans = std::move(spans);
    prose.blocks.push_back(std::move(block));
  }
};

struct Figures {
  std::string step, unit, bare, lead, drift, creep;
};
// Figures to stand in the lines until the maker's own do.
Figures figures_for(Ruler ruler) {
  if (ruler == Ruler::inches)
    return {
        "a hundredth of an inch", "hundredths of an inch", "0.21in", "0.25in", "0.05in", "0.09in"};
  return {"a quarter of a millimetre", "millimetres", "5.25mm", "6.5mm", "1.25mm", "2.3mm"};
}

void tell_printing(Telling &telling, const Edition &edition, const Machine &machine) {
  telling.heading(fmt::format("How to read the dummy of {}", *edition.title));
  telling.says(fmt::format(
      "Print this file as you will print the edition: at 100 %, never fitted to the page, on both "
      "sides, turned over the {} edge, and if you can on the edition's own papers. Print the first "
      "side in colour, for its blues. Then take the sheets to a good light. The figures below are "
      "examples; type your own.",
      *machine.flip == SheetEdge::long_edge ? "long" : "short"));
}

void tell_bare(Telling &telling, const Figures &figures) {
  telling.heading("The bare edge");
  telling.says(fmt::format("At every edge of every sheet stands a flight of short lines, {} apart. "
                           "The first lies on the "
                           "edge itself; the small figures count {}. The first line that is there, "
                           "whole, tells how wide "
                           "an edge the machine leaves bare. Read all four edges, fronts and "
                           "backs, and type the widest.",
                           figures.step, figures.unit));
  telling.type({fmt::format("bare {}", figures.bare)});
  telling.says("Where one edge alone is much wider, it is the one that goes in first:");
  telling.type({fmt::format("bare {}, lead {}", figures.bare, figures.lead)});
}

void tell_drift(Telling &telling, const Figures &figures) {
  telling.heading("Drift");
  telling.says(fmt::format(
      "Hold a sheet against the light, its front towards you. Near its middle the scales of both "
      "sides meet along one line, one scale across and one down. Where the two noughts do not "
      "meet, "
      "count the steps between them, {} each. Look at several sheets and type the most that you "
      "find.",
      figures.step));
  telling.type({fmt::format("duplex by machine, drift {}", figures.drift)});
}

void tell_creep(Telling &telling, const Edition &edition, const Imposition &imposition,
                const Figures &figures) {
  Length worked_out;
  for (const Sheet &sheet : imposition.sheets)
    if (sheet.piece.empty())
      worked_out = std::max(worked_out, sheet.creep);
  if (worked_out <= Length{})
    return;
  telling.heading("Creep");
  telling.says(fmt::format(
      "Fold the sheets and lay them in each other as the big page numbers say; press the fold as "
      "hard as you will press the copies'. The innermost pages now stand out at the fore-edge. "
      "Measure how far, past the outermost: {} says {}. Type what you measured under edition.",
      edition.creep ? "the edition" : "the papers' thickness", written(worked_out, edition.ruler)));
  telling.type({fmt::format("creep {}", figures.creep)});
}

void tell_steps(Telling &telling, const Machine &machine) {
  telling.heading("Greys, lines and type");
  telling.says(
      "Two neighbouring greys that look alike are one grey to this machine: keep what must "
      "be told apart further apart. A screen whose dots run together is too fine for it. "
      "The thinnest line and the smallest type that come out whole, black on white and "
      "white on black, are the least to ask of it.");
  telling.heading("Blues");
  telling.says(
      "Lay the first side on the glass and copy it as you will copy your originals. Of the "
      "blues that are gone without a trace, the strongest is the one to draw with:");
  telling.type({fmt::format("blue {}", written(*machine.blue))});
}

void tell_machine(Telling &telling, const Machine &machine, const Figures &figures) {
  telling.heading("Where it is written");
  telling.says("Keep what you found in a machine of your own, in the edition's file or in one that "
               "it borrows, and name it under edition:");
  telling.type(
      {fmt::format("machine measured{}", machine.name.empty() ? "" : " like " + machine.name),
       fmt::format("\u00a0\u00a0bare {}", figures.bare),
       fmt::format("\u00a0\u00a0duplex by machine, drift {}", figures.drift),
       fmt::format("\u00a0\u00a0blue {}", written(*machine.blue))});
  telling.says("Measure again when the machine has been serviced, or another paper is in it.");
}

} // namespace

Prose dummy_reading(const Edition &edition, const Imposition &imposition) {
  const Machine &machine = machine_of(edition, *edition.machine);
  const Figures figures = figures_for(edition.ruler);
  Telling telling;
  tell_printing(telling, edition, machine);
  tell_bare(telling, figures);
  tell_drift(telling, figures);
  tell_creep(telling, edition, imposition, figures);
  tell_steps(telling, machine);
  tell_machine(telling, machine, figures);
  return std::move(telling.prose);
}

} // namespace bodkin::press
