// Work by hand on pages: numbers for as many copies as there are, and a stage that comes.
#include "preflight/about.hpp"
#include "preflight/families.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <set>

namespace bodkin {
namespace {

Problem counts_differ(const Inspection &inspection, const Known<Counts> &counts) {
  const Run &run = *inspection.edition.run;
  const std::int64_t numbers = counts->last - counts->first + 1;
  Problem problem;
  problem.check = "counts-differ";
  problem.range = counts.from;
  problem.message =
      fmt::format("{} {} for a run of {} {}", numbers, numbers == 1 ? "number" : "numbers",
                  run.copies, run.copies == 1 ? "copy" : "copies");
  problem.why = numbers < run.copies
                    ? "every good copy gets a number of its own, and these give out before the "
                      "copies do; spares are not numbered"
                    : "a numbered edition says how many there are: numbers that no copy bears are "
                      "missing copies";
  retype_part(inspection, problem, counts.from,
              fmt::format("{}-{}", counts->first, counts->first + run.copies - 1),
              fmt::format("counts     {}-{}", counts->first, counts->first + run.copies - 1));
  return problem;
}

bool binds(const FinishStep &step) {
  return step.kind == StepKind::staple || step.kind == StepKind::sew ||
         (step.kind == StepKind::glue && (step.on == StepOn::spine || step.on == StepOn::cover));
}

bool comes(const std::vector<FinishStep> &finish, When when) {
  if (finish.empty() || (when != When::bound && when != When::trimmed))
    return true;
  return std::any_of(finish.begin(), finish.end(), [when](const FinishStep &step) {
    return when == When::bound ? binds(step) : step.kind == StepKind::trim;
  });
}

Problem stage_never_comes(const Known<When> &when) {
  const bool bound = *when == When::bound;
  Problem problem;
  problem.check = "stage-never-comes";
  problem.range = when.from;
  problem.message = fmt::format("no copy is ever {} in this edition", bound ? "bound" : "trimmed");
  problem.why = fmt::format("finish has no step that {}, so the work would wait for ever",
                            bound ? "staples, sews or glues it" : "trims it");
  problem.type = {{"when       folded",
                   bound ? "or a staple line under finish" : "or a trim line under finish"}};
  return problem;
}

} // namespace

void check_hands(const Inspection &inspection, Problems &problems) {
  std::set<ElementId> seen;
  for (int page = 1; page <= inspection.imposition.page_count; ++page)
    for (const Item &item : inspection.drawings[page].items) {
      if (!std::holds_alternative<SetHand>(item.what) || !seen.insert(item.element).second)
        continue;
      const Element &element = inspection.edition[item.element];
      const auto &counts = std::get<Hand>(element.what).counts;
      const Run &run = *inspection.edition.run;
      if (counts && (*counts)->last - (*counts)->first + 1 != run.copies)
        problems.push_back(counts_differ(inspection, *counts));
      if (element.work.when && !comes(inspection.edition.finish, **element.work.when))
        problems.push_back(stage_never_comes(*element.work.when));
    }
}

} // namespace bodkin
