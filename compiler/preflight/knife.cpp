// What the knife leaves of a page.
#include "preflight/about.hpp"
#include "preflight/families.hpp"
#include "sheet/live.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {
namespace {

Problem trimmed_away(const Inspection &inspection, const FinishStep &step, Length taken,
                     Length whole, std::string_view way) {
  Problem problem;
  problem.kind = taken < whole ? Kind::warning : Kind::error;
  problem.check = "trimmed-away";
  problem.range = step.range;
  problem.message = fmt::format("the knife takes {} off pages that are {} {}",
                                length(inspection, taken), length(inspection, whole), way);
  problem.why = taken < whole ? fmt::format("{} of them is left, less than half",
                                            length(inspection, whole - taken))
                              : "nothing of them would be left";
  problem.type = {
      {way == "wide" ? "trim       fore-edge 1/8in" : "trim       head 1/8in, foot 1/8in",
       "with what is really to be cut off"}};
  return problem;
}

const FinishStep *first_that(const std::vector<FinishStep> &finish,
                             bool (*cuts)(const FinishStep &)) {
  const auto found = std::find_if(finish.begin(), finish.end(), [&](const FinishStep &step) {
    return step.kind == StepKind::trim && cuts(step);
  });
  return found == finish.end() ? nullptr : &*found;
}

} // namespace

void check_knife(const Inspection &inspection, Problems &problems) {
  const Edition &edition = inspection.edition;
  const Trims trims = trims_written(edition);
  const Length across = trims.fore_edge, down = trims.head + trims.foot;
  if (const FinishStep *step =
          first_that(edition.finish, [](const FinishStep &of) { return of.fore_edge > Length{}; });
      step != nullptr && across * 2 > edition.size->width)
    problems.push_back(trimmed_away(inspection, *step, across, edition.size->width, "wide"));
  if (const FinishStep *step =
          first_that(edition.finish,
                     [](const FinishStep &of) { return of.head > Length{} || of.foot > Length{}; });
      step != nullptr && down * 2 > edition.size->height)
    problems.push_back(trimmed_away(inspection, *step, down, edition.size->height, "high"));
}

} // namespace bodkin
