#include "edition/piece.hpp"
#include "preflight/about.hpp"
#include "preflight/families.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <optional>

namespace bodkin {
namespace {

// Leg that must be left beyond the paper to bend over: common practice, no source.
constexpr Length no_clinch = Length::inches(1, 16), poor_clinch = Length::inches(1, 8);
constexpr Length too_much = Length::inches(1, 4);

Length bound_in_with(const Edition &book, std::optional<std::uint32_t> run) {
  Length pile;
  for (const auto &piece : book.pieces)
    if ((!run || !piece->only || **piece->only == *run) &&
        (piece->is_wrap() || *piece->goes == Goes::centre) &&
        *piece->edition.paper != StockId::none)
      pile += *book[*piece->edition.paper].caliper * *piece->count;
  return pile;
}

// A wrap, and what goes at the centre, is stapled too: of several runs' copies the thickest.
Length bound_in_with(const Edition &book) {
  if (book.runs.empty())
    return bound_in_with(book, std::nullopt);
  Length thickest;
  for (std::uint32_t run = 0; run < book.runs.size(); ++run)
    thickest = std::max(thickest, bound_in_with(book, run));
  return thickest;
}

Length pile_at_fold(const Inspection &inspection) {
  Length pile;
  for (const Sheet &sheet : inspection.imposition.sheets)
    if (sheet.stock != StockId::none)
      pile += *inspection.edition[sheet.stock].caliper;
  return pile + bound_in_with(inspection.edition);
}

// The shortest leg on sale, in eighths of an inch, that leaves enough to clinch.
Length leg_for(Length pile) {
  const Length step = Length::inches(1, 8);
  Length leg = Length::inches(1, 4);
  while (leg < pile + poor_clinch)
    leg += step;
  return leg;
}

std::string sheets_make(const Inspection &inspection) {
  const std::size_t sheets = inspection.imposition.sheets.size();
  return sheets == 1 ? "1 sheet makes" : fmt::format("{} sheets make", sheets);
}

// The exact figures of a line that is typed.
std::string figure(const Inspection &inspection, Length length) {
  return written(length, inspection.edition.ruler);
}

std::string staple_line(const Inspection &inspection, const FinishStep &step, Length leg) {
  return fmt::format("staple     {}, leg {}, {} from head and foot", step.staples,
                     figure(inspection, leg), figure(inspection, step.from_head_and_foot));
}

Problem staple_problem(const Inspection &inspection, const FinishStep &step, Length pile) {
  const Length left = step.leg - pile;
  Problem problem;
  problem.range = step.leg_range.somewhere() ? step.leg_range : step.range;
  problem.check = "weak-staple";
  if (left < Length{})
    problem.message =
        fmt::format("a leg of {} does not go through the fold", length(inspection, step.leg));
  else
    problem.message = fmt::format("a leg of {} leaves {} to bend over",
                                  length(inspection, step.leg), length(inspection, left));
  problem.kind = left < no_clinch ? Kind::error : Kind::warning;
  problem.why = fmt::format("{} {} at the fold; a staple wants {} beyond the paper to hold, and "
                            "under {} it pulls out",
                            sheets_make(inspection), length(inspection, pile),
                            length(inspection, poor_clinch), length(inspection, no_clinch));
  retype(inspection, problem, step.range, staple_line(inspection, step, leg_for(pile)));
  return problem;
}

Problem long_staple(const Inspection &inspection, const FinishStep &step, Length pile) {
  Problem problem;
  problem.kind = Kind::note;
  problem.check = "long-staple";
  problem.range = step.leg_range.somewhere() ? step.leg_range : step.range;
  problem.message = fmt::format("a leg of {} is long for {} of paper", length(inspection, step.leg),
                                length(inspection, pile));
  problem.why =
      fmt::format("{} {} at the fold, which leaves {} to bend over; over {} the legs cross, "
                  "stand up and scratch",
                  sheets_make(inspection), length(inspection, pile),
                  length(inspection, step.leg - pile), length(inspection, too_much));
  retype(inspection, problem, step.range, staple_line(inspection, step, leg_for(pile)));
  return problem;
}

} // namespace

void check_staples(const Inspection &inspection, Problems &problems) {
  const Length pile = pile_at_fold(inspection);
  for (const FinishStep &step : inspection.edition.finish) {
    if (step.kind != StepKind::staple || step.leg == Length{})
      continue;
    if (step.leg - pile < poor_clinch)
      problems.push_back(staple_problem(inspection, step, pile));
    else if (step.leg - pile > too_much)
      problems.push_back(long_staple(inspection, step, pile));
  }
}

} // namespace bodkin
