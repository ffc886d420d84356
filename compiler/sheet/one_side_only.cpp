#include "sheet/one_side_only.hpp"

#include "sheet/machine_of.hpp"
#include "sheet/paper_problems.hpp"
#include "sheet/speech.hpp"

#include <fmt/format.h>
#include <map>

namespace bodkin {
namespace {

Problem one_side_only(const Edition &edition, const Imposition &imposition, const Sources &sources,
                      MachineId id, const std::vector<int> &sheets) {
  const Machine &machine = machine_of(edition, id);
  Problem problem;
  problem.check = "one-side-only";
  problem.range = machine.duplex.from;
  problem.message = fmt::format("{} prints one side only, and {} printed on both", machine.name,
                                sheets.size() == 1 ? spoken::sheets_listed(sheets) + " is"
                                                   : spoken::sheets_listed(sheets) + " are");
  const Sheet &sheet = imposition.sheets[static_cast<std::size_t>(sheets.front() - 1)];
  problem.why = fmt::format("sheet {} is one piece of paper: {}; with"
                            " `duplex none`{} paper goes through once",
                            sheet.number, sides_in_words(sheet),
                            spoken::on_line(sources, machine.duplex.from));
  problem.type = {{spoken::fact("duplex", "by hand"), "if printed sheets may go in again"}};
  if (machine.duplex.from.somewhere() && !sources.is_shelf(machine.duplex.from.file))
    problem.edits = {{machine.duplex.from, "by hand"}};
  return problem;
}

} // namespace

void check_one_sided(const Edition &edition, const Imposition &imposition,
                     std::span<const SheetModes> modes, const Sources &sources,
                     Problems &problems) {
  std::map<MachineId, std::vector<int>> both;
  for (std::size_t i = 0; i < imposition.sheets.size(); ++i) {
    const Sheet &sheet = imposition.sheets[i];
    const MachineId machine = sheet.sides[0].machine;
    if (modes[i][0] && modes[i][1] && machine == sheet.sides[1].machine &&
        *machine_of(edition, machine).duplex == Duplex::none)
      both[machine].push_back(sheet.number);
  }
  for (const auto &[machine, sheets] : both)
    problems.push_back(one_side_only(edition, imposition, sources, machine, sheets));
}

} // namespace bodkin
