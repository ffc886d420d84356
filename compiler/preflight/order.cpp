#include "preflight/about.hpp"
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

// What stands below a step would be left behind by an edit of its line alone.
bool stands_alone(const FinishStep &step) {
  const Work &work = step.work;
  return !work.takes && work.costs.empty() && !work.caution && !work.when && !work.mass;
}

// The whole line, its end with it.
Range whole_line(const Sources &sources, Range range) {
  const std::string_view text = sources.text(range.file);
  const std::size_t before = text.rfind('\n', bytes(range.begin));
  const std::size_t after = text.find('\n', bytes(range.end));
  return {range.file,
          Offset{static_cast<std::uint32_t>(before == std::string_view::npos ? 0 : before + 1)},
          Offset{static_cast<std::uint32_t>(after == std::string_view::npos ? text.size()
                                                                            : after + 1)}};
}

Problem order_of_finish(const Inspection &inspection, const FinishStep &late,
                        const FinishStep &early, const Order &rule) {
  const Sources &sources = inspection.sources;
  Problem problem;
  problem.check = "order-of-finish";
  problem.range = early.range;
  problem.message = fmt::format("{} comes after {} (line {})", name_of(early.kind),
                                name_of(late.kind), sources.line_number(late.range));
  problem.why = std::string(rule.why);
  type_before(inspection, problem, late.range, std::string(sources.text(early.range)),
              fmt::format("on a line before `{}`", name_of(late.kind)));
  if (stands_alone(early))
    problem.edits.push_back({whole_line(sources, early.range), ""});
  else
    problem.edits.clear();
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
        problems.push_back(order_of_finish(inspection, steps[before], steps[i], rule));
        break;
      }
    }
}

} // namespace bodkin
