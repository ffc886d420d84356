#include "preflight/about.hpp"
#include "preflight/families.hpp"

#include <array>
#include <fmt/format.h>

namespace bodkin {
namespace {

// A kind of step, or one laid on a thing of its own.
struct StepMeant {
  StepKind kind;
  StepOn on = StepOn::unsaid; // unsaid: on whatever
  bool met_by(const FinishStep &step) const {
    return step.kind == kind && (on == StepOn::unsaid || step.on == on);
  }
};

struct Order {
  StepMeant later, earlier; // `later` comes after `earlier`
  std::string_view why;
};

constexpr StepMeant collate{StepKind::collate}, crease{StepKind::crease}, fold{StepKind::fold},
    staple{StepKind::staple}, trim{StepKind::trim}, sew{StepKind::sew}, punch{StepKind::punch},
    round_corners{StepKind::round}, tie{StepKind::tie}, cut_sheets{StepKind::cut, StepOn::sheets},
    cut_slit{StepKind::cut, StepOn::slit}, cut_folds{StepKind::cut, StepOn::folds},
    glue_spine{StepKind::glue, StepOn::spine}, glue_cover{StepKind::glue, StepOn::cover},
    glue_tabs{StepKind::glue, StepOn::tabs}, add{StepKind::add}, pack{StepKind::pack};

constexpr std::string_view flat_crease = "a crease is pressed into a flat sheet";
constexpr std::string_view gathered_first = "what is bound can no longer be gathered";
constexpr std::string_view fold_is_bound =
    "the binding goes through the fold, or holds folded leaves: the fold must be there";
constexpr std::string_view held_under_knife = "the binding holds the copy together under the knife";
constexpr std::string_view knife_then_corner =
    "a corner lies where two cuts meet: cut afterwards, nothing of its roundness is left";

constexpr std::string_view goes_in_last =
    "what lies loose in a copy slips, or is folded, stapled or cut with it";
constexpr std::string_view packed_last = "what is packed is finished";

constexpr std::array rules{
    Order{fold, crease, flat_crease},
    Order{staple, crease, flat_crease},
    Order{trim, crease, flat_crease},
    Order{sew, crease, flat_crease},
    Order{punch, crease, flat_crease},
    Order{glue_spine, crease, flat_crease},
    Order{trim, fold,
          "the knife cuts the fore-edges of the folded copy; cut flat, the inner sheets would push "
          "out past the outer ones"},
    Order{trim, staple, "the staples hold the copy together under the knife"},
    Order{fold, collate, "sheets are gathered flat, then folded together"},
    Order{staple, collate, "what is stapled can no longer be gathered"},
    Order{trim, collate, "what is cut must lie together first"},
    Order{sew, collate, gathered_first},
    Order{glue_spine, collate, gathered_first},
    Order{sew, fold, fold_is_bound},
    Order{glue_spine, fold, fold_is_bound},
    Order{trim, sew, held_under_knife},
    Order{trim, glue_spine, held_under_knife},
    Order{sew, punch, "the needle goes through the holes that the punch has made"},
    Order{punch, fold,
          "holes punched through flat sheets come to lie side by side in the folded copy, not on "
          "each other"},
    Order{fold, cut_sheets, "what is cut apart is cut flat, and folded then"},
    Order{fold, cut_slit, "the sheet folds about its slit, so the slit comes first"},
    Order{cut_folds, fold, "there is no fold to cut open before there is a fold"},
    Order{fold, glue_tabs, "sheets are glued end to end into one strip, which is folded then"},
    Order{glue_cover, glue_spine, "the cover is glued to a spine that holds already"},
    Order{round_corners, fold, "the corners of the folded copy are rounded, all leaves at once"},
    Order{round_corners, staple, "loose leaves slip under the corner cutter"},
    Order{round_corners, sew, "loose leaves slip under the corner cutter"},
    Order{round_corners, trim, knife_then_corner},
    Order{tie, fold, "what ties the copy goes round the folded leaves"},
    Order{tie, punch, "what ties the copy goes through its holes"},
    Order{tie, trim, "the knife would cut through what the copy is tied with"},
    Order{tie, round_corners, "a tied copy does not lie flat under the corner cutter"},
    Order{add, fold, goes_in_last},
    Order{add, staple, goes_in_last},
    Order{add, sew, goes_in_last},
    Order{add, glue_spine, goes_in_last},
    Order{add, trim, goes_in_last},
    Order{add, round_corners, goes_in_last},
    Order{pack, fold, packed_last},
    Order{pack, staple, packed_last},
    Order{pack, sew, packed_last},
    Order{pack, glue_spine, packed_last},
    Order{pack, glue_cover, packed_last},
    Order{pack, trim, packed_last},
    Order{pack, round_corners, packed_last},
    Order{pack, punch, packed_last},
    Order{pack, tie, packed_last},
    Order{pack, add, packed_last},
    Order{pack, StepMeant{StepKind::dry}, packed_last},
    Order{pack, StepMeant{StepKind::press}, packed_last},
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
  problem.message = fmt::format("{} comes after {} (line {})", name_of(early), name_of(late),
                                sources.line_number(late.range));
  problem.why = std::string(rule.why);
  type_before(inspection, problem, late.range, std::string(sources.text(early.range)),
              fmt::format("on a line before `{}`", name_of(late)));
  if (stands_alone(early))
    problem.edits.push_back({whole_line(sources, early.range), ""});
  else
    problem.edits.clear();
  problem.related = {{late.range, fmt::format("{} stands here", name_of(late))}};
  return problem;
}

// Sheets folded more than once, or bound one after another, are folded one by one and gathered
// then.
bool folded_together(const Folding &folding) {
  return *folding.gather == Gather::nested && folding.steps.size() == 1;
}

bool holds_for(const Order &rule, const Edition &edition) {
  return rule.later.kind != StepKind::fold || rule.earlier.kind != StepKind::collate ||
         folded_together(*edition.folding);
}

} // namespace

void check_order(const Inspection &inspection, Problems &problems) {
  const auto &steps = inspection.edition.finish;
  for (std::size_t i = 0; i < steps.size(); ++i)
    for (const Order &rule : rules) {
      if (!rule.earlier.met_by(steps[i]) || !holds_for(rule, inspection.edition))
        continue;
      std::size_t before = 0;
      while (before < i && !rule.later.met_by(steps[before]))
        ++before;
      if (before < i) {
        problems.push_back(order_of_finish(inspection, steps[before], steps[i], rule));
        break;
      }
    }
}

} // namespace bodkin
