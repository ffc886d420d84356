#include "preflight/families.hpp"

#include <array>
#include <fmt/format.h>

namespace bodkin {
namespace {

struct Order {
  StepKind later, earlier; // `later` comes after `earlier`
  std::string_view why;
};
constexpr std::array rules{
    Order{StepKind::fold, StepKind::crease, "a crease is pressed into a flat sheet"},
    Order{StepKind::staple, StepKind::crease, "a crease is pressed into a flat sheet"},
    Order{StepKind::trim, StepKind::crease, "a crease is pressed into a flat sheet"},
    Order{StepKind::trim, StepKind::fold,
          "the knife cuts the fore-edges of the folded copy; cut flat, the inner sheets would push "
          "out past the outer ones"},
    Order{StepKind::trim, StepKind::staple, "the staples hold the copy together under the knife"},
    Order{StepKind::fold, StepKind::collate, "sheets are gathered flat, then folded together"},
    Order{StepKind::staple, StepKind::collate, "what is stapled can no longer be gathered"},
    Order{StepKind::trim, StepKind::collate, "what is cut must lie together first"},
};

Problem order_of_finish(const FinishStep &late, const FinishStep &early, const Order &rule,
                        const Sources &sources) {
  Problem problem;
  problem.check = "order-of-finish";
  problem.range = early.range;
  problem.message = fmt::format("{} comes after {} (line {})", name_of(early.kind),
                                name_of(late.kind), sources.line_number(late.range));
  problem.why = std::string(rule.why);
  problem.type = {{std::string(sources.text(early.range)),
                   fmt::format("on a line before `{}`", name_of(late.kind))}};
  problem.related = {{late.range, fmt::format("{} stands here", name_of(late.kind))}};
  return problem;
}

} // namespace

void check_order(const Inspection &inspection, Problems &problems) {
  const auto &steps = inspection.edition.finish;
  for (std::size_t i = 0; i < steps.size(); ++i)
    for (const Order &rule : rules) {
      if (steps[i].kind != rule.earlier)
        continue;
      std::size_t before = 0;
      while (before < i && steps[before].kind != rule.later)
        ++before;
      if (before < i) {
        problems.push_back(order_of_finish(steps[before], steps[i], rule, inspection.sources));
        break;
      }
    }
}

} // namespace bodkin
