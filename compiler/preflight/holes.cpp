// Holes of thread, wire and punch, and rounded corners: whether the copy has room for them.
#include "page/outline.hpp"
#include "preflight/about.hpp"
#include "preflight/families.hpp"
#include "sheet/live.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {
namespace {

// A punch's hole, from its middle to its edge: common practice, no source.
constexpr Length hole_radius = Length::inches(1, 8);

struct Stage {
  const Inspection &inspection;
  const FinishStep &step;
  Length height; // of the copy when the step is done
};

std::string figure(const Inspection &inspection, Length length) {
  return written(length, inspection.edition.ruler);
}

bool hangs_in_folds(const Imposition &imposition) {
  return std::any_of(imposition.sheets.begin(), imposition.sheets.end(), [](const Sheet &sheet) {
    return std::any_of(sheet.folds.begin(), sheet.folds.end(),
                       [](const Sheet::FoldLine &fold) { return fold.spine; });
  });
}

Problem sewing_problem(const FinishStep &step, std::string message, std::string why) {
  Problem problem;
  problem.check = "sewing-holes";
  problem.range = step.range;
  problem.message = std::move(message);
  problem.why = std::move(why);
  return problem;
}

Problem no_holes(const Stage &at) {
  const Length first = ruled(at.inspection, at.height / 8);
  Problem problem = sewing_problem(
      at.step, "nothing says through how many holes this is sewn",
      "the thread goes through the fold at so many places, the outer ones some way from head and "
      "foot, so that they do not tear out; three or five are usual, an odd number brings both ends "
      "to the middle");
  retype(at.inspection, problem, at.step.range,
         fmt::format("sew        3 holes, {} from head and foot", figure(at.inspection, first)));
  return problem;
}

Problem no_fold(const Stage &at) {
  Problem problem = sewing_problem(
      at.step,
      fmt::format("{} has no fold that leaves hang in", at.inspection.edition.folding->name),
      "a needle goes in at the spine fold of a section and out again; here there is none, and the "
      "folding says no holes beside a spine");
  problem.type = {{"folding    stab-sewn", "or another folding whose leaves are bound"}};
  return problem;
}

Problem other_holes(const Stage &at, const Holes &holes) {
  Problem problem = sewing_problem(
      at.step, fmt::format("{} holes here, and the folding has {}", at.step.holes, holes.count),
      fmt::format("{} is sewn through its side, {} from the spine, and keeps matter clear of its "
                  "own {} holes; these would be others",
                  at.inspection.edition.folding->name, figure(at.inspection, holes.from_spine),
                  holes.count));
  retype(at.inspection, problem, at.step.range, "sew");
  if (holes.range.somewhere())
    problem.related = {{holes.range, "its holes are said here"}};
  return problem;
}

void check_sewing(const Stage &at, Problems &problems) {
  const auto &holes = at.inspection.edition.folding->holes;
  const FinishStep &step = at.step;
  if (holes && step.holes > 0 &&
      (step.holes != holes->count || step.from_head_and_foot != holes->from_head_and_foot))
    problems.push_back(other_holes(at, *holes));
  if (holes)
    return;
  if (!hangs_in_folds(at.inspection.imposition))
    problems.push_back(no_fold(at));
  else if (step.holes == 0)
    problems.push_back(no_holes(at));
}

Problem off_the_copy(const Stage &at, std::string message, std::string why, std::string line) {
  Problem problem;
  problem.check = "off-the-copy";
  problem.range = at.step.range;
  problem.message = std::move(message);
  problem.why = std::move(why);
  retype(at.inspection, problem, at.step.range, std::move(line));
  return problem;
}

// The step's own line with its places a quarter of the height from head and foot.
std::string line_with_room(const Stage &at) {
  const Inspection &inspection = at.inspection;
  const std::string place = figure(inspection, ruled(inspection, at.height / 4));
  const FinishStep &step = at.step;
  if (step.kind == StepKind::staple)
    return fmt::format("staple     {}, leg {}, {} from head and foot", step.staples,
                       figure(inspection, step.leg), place);
  if (step.kind == StepKind::sew)
    return fmt::format("sew        {} holes, {} from head and foot", step.holes, place);
  return fmt::format("punch      {} holes, {} from spine, {} from head and foot", step.holes,
                     figure(inspection, step.from_spine), place);
}

void check_places(const Stage &at, int count, Problems &problems) {
  const Length outer = at.step.from_head_and_foot;
  if (count < 2 || outer * 2 < at.height || outer == Length{})
    return;
  problems.push_back(off_the_copy(
      at,
      fmt::format("{0} from the head and {0} from the foot are more than the copy is high",
                  figure(at.inspection, outer)),
      fmt::format("a copy is {} high{}: the outermost two would pass each other in the middle",
                  length(at.inspection, at.height),
                  at.height == at.inspection.edition.size->height ? "" : " once it is trimmed"),
      line_with_room(at)));
}

void check_inset(const Stage &at, Problems &problems) {
  const Inspection &inspection = at.inspection;
  const Length width = inspection.edition.size->width - trims_of(inspection.edition).fore_edge;
  const FinishStep &step = at.step;
  if (step.from_spine + hole_radius <= width)
    return;
  problems.push_back(off_the_copy(
      at,
      fmt::format("{} from the spine is past the fore-edge", figure(inspection, step.from_spine)),
      fmt::format("a copy is {} wide, and a hole takes {} round its middle",
                  length(inspection, width), length(inspection, hole_radius)),
      fmt::format("punch      {} {}, 3/8in from spine", step.holes,
                  step.holes == 1 ? "hole" : "holes")));
}

void check_radius(const Stage &at, Problems &problems) {
  const Length shorter = std::min(at.inspection.edition.size->width, at.height);
  const Length most = shorter / 2;
  if (at.step.radius <= most)
    return;
  problems.push_back(off_the_copy(
      at,
      fmt::format("corners of {} are larger than the copy", figure(at.inspection, at.step.radius)),
      fmt::format("two of them meet on an edge of {}, so {} is the most",
                  length(at.inspection, shorter), length(at.inspection, most)),
      fmt::format("round      {} {}, radius 1/4in", at.step.corners,
                  at.step.corners == 1 ? "corner" : "corners")));
}

// The holes of a step as boxes on a page before the knife; none where no spine is known.
std::vector<Extent> holes_on(const Stage &at, int page) {
  const Inspection &inspection = at.inspection;
  const SpineAt spine = inspection.imposition.place_of(page).spine;
  if (spine == SpineAt::none)
    return {};
  const double radius = hole_radius.in_points(), inset = at.step.from_spine.in_points();
  const double x = spine == SpineAt::left
                       ? inset
                       : inspection.imposition.size_of(page).width.in_points() - inset;
  Length head;
  for (const FinishStep &step : inspection.edition.finish) {
    if (&step == &at.step)
      break;
    head += step.head;
  }
  std::vector<Extent> holes;
  for (const Length down : places_down(at.step, at.step.holes, at.height)) {
    const double y = (head + down).in_points();
    holes.push_back({x - radius, y - radius, x + radius, y + radius});
  }
  return holes;
}

bool meets(const Extent &a, const Extent &b) {
  return a.left < b.right && b.left < a.right && a.top < b.foot && b.top < a.foot;
}

bool goes_through(const std::vector<Extent> &holes, const Item &item) {
  const std::vector<Polygon> outlines = outlines_of(item);
  return std::any_of(outlines.begin(), outlines.end(), [&](const Polygon &polygon) {
    Extent extent{1e9, 1e9, -1e9, -1e9};
    for (const Point &p : polygon)
      extent = {std::min(extent.left, p.x), std::min(extent.top, p.y), std::max(extent.right, p.x),
                std::max(extent.foot, p.y)};
    return std::any_of(holes.begin(), holes.end(),
                       [&](const Extent &hole) { return meets(hole, extent); });
  });
}

Problem hole_through_words(const Stage &at, const std::vector<int> &pages, Range words) {
  const Inspection &inspection = at.inspection;
  Problem problem;
  problem.kind = Kind::warning;
  problem.check = "hole-through-words";
  problem.range = at.step.range;
  problem.message =
      fmt::format("the punch goes through words on {}", pages_in_words(inspection, pages));
  problem.why =
      fmt::format("a hole takes {} round its middle, and its middle is {} from the spine "
                  "on every page",
                  length(inspection, hole_radius), length(inspection, at.step.from_spine));
  problem.type = {{"", "keep words clear of it with a wider inner margin, or punch nearer to the "
                       "spine"}};
  problem.related = {{words, "these words are hit"}};
  return problem;
}

void check_words(const Stage &at, Problems &problems) {
  std::vector<int> pages;
  Range words;
  for (int page = 1; page <= at.inspection.imposition.page_count; ++page) {
    const std::vector<Extent> holes = holes_on(at, page);
    for (const Item &item : at.inspection.drawings[page].items)
      if (is_words(item) && goes_through(holes, item)) {
        if (pages.empty())
          words = element_of(at.inspection, item).range;
        pages.push_back(page);
        break;
      }
  }
  if (!pages.empty())
    problems.push_back(hole_through_words(at, pages, words));
}

} // namespace

void check_holes(const Inspection &inspection, Problems &problems) {
  const Edition &edition = inspection.edition;
  for (std::size_t i = 0; i < edition.finish.size(); ++i) {
    const FinishStep &step = edition.finish[i];
    const Stage at{inspection, step, height_at(edition.finish, i, edition.size->height)};
    if (step.kind == StepKind::sew)
      check_sewing(at, problems);
    if (step.kind == StepKind::round)
      check_radius(at, problems);
    if (step.kind == StepKind::punch && step.holes > 0) {
      check_inset(at, problems);
      check_words(at, problems);
    }
    check_places(at, step.kind == StepKind::staple ? step.staples : step.holes, problems);
  }
}

} // namespace bodkin
