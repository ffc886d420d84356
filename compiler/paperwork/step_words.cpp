#include "paperwork/step_words.hpp"

#include "paperwork/tools.hpp"

#include <fmt/format.h>

namespace bodkin::paperwork {
namespace {

// What is glued, and how.
std::string gluing_of(const FinishStep &step) {
  switch (step.on) {
  case StepOn::spine:
    return "Knock the pile square at its spine and hold it between two boards, the spine just "
           "showing. Brush glue along it, thin, and once more when the first coat is dry.";
  case StepOn::cover:
    return "Brush glue on the spine of the book, lay it into the open cover, fold the cover round "
           "it and press it on along the spine.";
  default:
    return "";
  }
}

// Thread that goes through the side of a pile, not through its fold.
constexpr std::string_view sewing_at_side =
    "Clamp the pile square and prick the holes through all of it, from the front. Sew out and in "
    "from hole to hole, round the spine at each, and back again; knot the ends at the back.";

// From hole to hole through the fold, and where the thread then is; the ends meet inside.
std::string stitches(int holes) {
  switch (holes) {
  case 3:
    return "From inside, go out at the middle hole, in at the upper one, then past the middle and "
           "out at the lower one, and in at the middle again.";
  case 5:
    return "From inside, go out at the middle hole, in at the next above, out at the uppermost and "
           "back in at the one below it; past the middle, out at the next below, in at the "
           "lowest, out at the one above it, and in at the middle again.";
  default:
    return "From inside, go out at the hole nearest the middle, in and out from hole to hole to "
           "one end, back to the other end so that the gaps are filled, and in again where you "
           "began.";
  }
}

std::string sewing_at_fold(const Making &making, const FinishStep &step) {
  return fmt::format(
      "Clip the open copy, so that no sheet slips, and prick the holes from inside, straight "
      "through the fold. Thread the needle with {} and make no knot. {} Leave an end hanging "
      "inside as long as a hand. Draw both ends tight along the fold, tie them inside, over the "
      "long stitch where there is one, with two knots, and cut them to a finger's breadth.",
      written(thread_for(making, step), making.edition.ruler), stitches(step.holes));
}

} // namespace

std::string heading_of(const FinishStep &step) {
  switch (step.kind) {
  case StepKind::collate:
    return "Collate";
  case StepKind::crease:
    return step.all ? "Crease" : "Crease the cover";
  case StepKind::fold:
    return "Fold";
  case StepKind::staple:
    return "Staple";
  case StepKind::trim:
    return "Trim";
  case StepKind::sew:
    return "Sew";
  case StepKind::punch:
    return "Punch";
  case StepKind::cut:
    return step.on == StepOn::slit     ? "Cut the slit"
           : step.on == StepOn::folds  ? "Cut the folds open"
           : step.on == StepOn::window ? "Cut a window"
                                       : "Cut the sheets";
  case StepKind::glue:
    return step.on == StepOn::spine   ? "Glue the spine"
           : step.on == StepOn::cover ? "Glue the cover on"
           : step.on == StepOn::tabs  ? "Glue the tabs"
                                      : "Glue";
  case StepKind::round:
    return "Round the corners";
  case StepKind::tie:
    return "Tie";
  case StepKind::dry:
    return "Let dry";
  case StepKind::press:
    return "Press";
  case StepKind::add:
    return "Add";
  case StepKind::pack:
    return "Pack";
  }
  return "";
}

std::string way_of(const Making &making, const FinishStep &step) {
  switch (step.kind) {
  case StepKind::crease:
    return "Lay it on something that gives. Mark the line at both ends, close to the edges, lay "
           "the rule along the "
           "marks, and press a groove with the bone folder, twice, firmly, without cutting. The "
           "groove is on the outside: fold away from it, and the card does not crack. Rub the "
           "marks "
           "out.";
  case StepKind::fold:
    return "Bring the edges together first, hold them, and then press the fold sharp with the bone "
           "folder, from its middle outwards.";
  case StepKind::staple:
    return "Open the copy, knock its sheets square at the head, see that their folds lie in one "
           "another, and clip them. Lay it outside up under the stapler, each staple along the "
           "fold; its legs close inside, in the middle of the copy.";
  case StepKind::trim:
    return "Close the copy and knock it square against the fold. Cut one at a time, all its leaves "
           "together: a pile of copies slips.";
  case StepKind::sew:
    return making.edition.folding->holes ? std::string(sewing_at_side)
                                         : sewing_at_fold(making, step);
  case StepKind::punch:
    return "Mark the middle of each hole on one copy, and keep it as a pattern for the others.";
  case StepKind::dry:
    return "Spread everything out so that nothing touches what is wet, and wait.";
  case StepKind::press:
    return "Lay the copies between clean boards, spines turned this way and that, under a heavy "
           "book or two, and leave them there.";
  case StepKind::add:
    return "Lay it into the middle of each copy, against the fold, where it does not slip out; of "
           "several, the smaller lies in the larger.";
  case StepKind::pack:
    return "Look each good copy over once more.";
  case StepKind::glue:
    return gluing_of(step);
  case StepKind::round:
    return "Hold the closed copy against both walls of the corner cutter.";
  default:
    return "";
  }
}

std::vector<std::string> order_of_sewing(int holes) {
  switch (holes) {
  case 3:
    return {"2", "1, 4", "3"};
  case 5:
    return {"3", "2, 4", "1, 8", "5, 7", "6"};
  default:
    return {};
  }
}

} // namespace bodkin::paperwork
