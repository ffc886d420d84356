#include "sheet/passes.hpp"

#include "sheet/feeding.hpp"
#include "sheet/machine_of.hpp"
#include "sheet/numbered.hpp"
#include "sheet/one_side_only.hpp"
#include "sheet/printings.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {
namespace {

// Backs in sheets.pdf are turned about the sheet's own axis; a machine that turns the paper about
// the other one needs them half a turn round.
bool backs_turned(const Sheet &sheet, const Machine &machine) {
  const bool long_edge_upright = sheet.size.height > sheet.size.width;
  const bool turns_about_upright = (*machine.flip == SheetEdge::long_edge) == long_edge_upright;
  return turns_about_upright != sheet.turns_upright;
}

std::vector<PassPage> pdf_pages(const PassPrinting &run, const Edition &edition,
                                const Imposition &imposition) {
  std::vector<PassPage> pages;
  for (std::size_t i = 0; i < run.sheets.size(); ++i) {
    const int index = run.sheets[i];
    const Sheet &sheet = imposition.sheets[static_cast<std::size_t>(index)];
    const bool turned = backs_turned(sheet, machine_of(edition, run.machine));
    const std::int64_t times = run.numbered() ? sheets_needed(edition, sheet).all : 1;
    for (std::int64_t nth = 0; nth < times; ++nth) {
      if (run.sides != PassSides::backs)
        pages.push_back({index, SideName::front, run.prints[i][0], false, nth});
      if (run.sides != PassSides::fronts)
        pages.push_back({index, SideName::back, run.prints[i][1], turned, nth});
    }
  }
  return pages;
}

// "plain-and-gift"
std::string names_in_a_file(const Edition &edition, const RunSet &runs) {
  std::string names;
  for (std::uint32_t run = 0; run < edition.runs.size(); ++run)
    if (runs.holds(run))
      names += (names.empty() ? "" : "-and-") + edition.runs[run].name;
  return names;
}

// Added to the stock's name only where that stock has several passes that differ in it.
std::string suffix(const Edition &edition, const std::vector<PassPrinting> &passes,
                   const PassPrinting &pass) {
  const auto differs = [&](auto same_so_far, auto differ) {
    return std::any_of(passes.begin(), passes.end(), [&](const PassPrinting &other) {
      return other.stock == pass.stock && other.piece == pass.piece && same_so_far(other) &&
             differ(other);
    });
  };
  const auto same_mode = [&](const PassPrinting &other) { return other.mode == pass.mode; };
  const auto same_sides = [&](const PassPrinting &other) {
    return same_mode(other) && other.sides == pass.sides;
  };
  std::string text;
  if (pass.only.several() || (pass.only && pass.piece.empty()))
    text += "-" + names_in_a_file(edition, pass.only);
  else if (!pass.piece.empty())
    text += "-" + pass.piece;
  if (differs([](const PassPrinting &) { return true; },
              [&](const PassPrinting &other) { return !same_mode(other); }))
    text += fmt::format("-{}", spoken::mode_name(pass.mode));
  if (pass.sides != PassSides::both &&
      differs(same_mode, [&](const PassPrinting &other) { return other.sides != pass.sides; }))
    text += pass.sides == PassSides::fronts ? "-fronts" : "-backs";
  if (differs(same_sides, [&](const PassPrinting &other) { return other.machine != pass.machine; }))
    text += "-" + machine_of(edition, pass.machine).name;
  if (pass.numbered())
    text += "-numbered";
  return text;
}

std::string stock_name(const Edition &edition, StockId stock) {
  return stock == StockId::none ? "paper" : edition[stock].name;
}

Mode dearest(const PassPrinting &run, std::span<const SheetModes> modes) {
  Mode mode = Mode::black;
  for (std::size_t i = 0; i < run.sheets.size(); ++i)
    for (std::size_t side = 0; side < 2; ++side) {
      const bool in_pass =
          run.sides == PassSides::both || (side == 0) == (run.sides == PassSides::fronts);
      const SideMode &of_side = modes[static_cast<std::size_t>(run.sheets[i])][side];
      if (in_pass && run.prints[i][side] && of_side)
        mode = std::max(mode, *of_side);
    }
  return mode;
}

} // namespace

std::vector<SheetModes> modes_of(const Imposition &imposition, std::span<const PageInk> pages) {
  std::vector<SheetModes> modes(imposition.sheets.size());
  for (std::size_t i = 0; i < modes.size(); ++i)
    for (std::size_t side = 0; side < 2; ++side)
      for (const Place &place : imposition.sheets[i].sides[side].places) {
        const auto page = static_cast<std::size_t>(place.page);
        if (place.page == 0 || page >= pages.size() || !pages[page].draws)
          continue;
        SideMode &mode = modes[i][side];
        mode = mode ? std::max(*mode, pages[page].mode) : pages[page].mode;
      }
  return modes;
}

std::vector<Pass> passes_of(const Edition &edition, const Imposition &imposition,
                            std::span<const SheetModes> modes, const Sources &sources,
                            Problems &problems) {
  check_one_sided(edition, imposition, modes, sources, problems);
  const std::vector<PassPrinting> runs = printings(edition, imposition, modes);
  std::vector<Pass> passes;
  for (const PassPrinting &run : runs) {
    Pass pass;
    pass.number = static_cast<int>(passes.size()) + 1;
    pass.file = fmt::format("passes/{:02}-{}{}.pdf", pass.number, stock_name(edition, run.stock),
                            suffix(edition, runs, run));
    pass.stock = run.stock;
    pass.machine = run.machine;
    pass.mode = dearest(run, modes);
    pass.sides = run.sides;
    pass.sheets = run.sheets;
    pass.numbered = run.numbered();
    pass.only = run.only;
    pass.pages = pdf_pages(run, edition, imposition);
    pass.feeding = feeding(edition, imposition, passes, pass);
    passes.push_back(std::move(pass));
  }
  return passes;
}

} // namespace bodkin
