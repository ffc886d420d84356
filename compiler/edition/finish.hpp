// Work on each copy after printing, in the order of its lines.
#pragma once

#include "edition/element.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace bodkin {

enum class StepKind {
  collate,
  crease,
  fold,
  staple,
  trim,
  sew,
  punch,
  cut,
  glue,
  round,
  tie,
  dry,
  press,
  add,
  pack
};

// What a `cut` or `glue` is laid on.
enum class StepOn { unsaid, sheets, slit, folds, window, spine, cover, tabs, other };

struct FinishStep {
  StepKind kind = StepKind::fold;
  Range range, keyword;
  bool all = true; // `crease cover` speaks of the outermost sheet alone
  int staples = 0; // of `staple`
  Length leg;      // its legs
  Range leg_range;
  Length from_head_and_foot; // of the outer staples or holes, on the copy as it is then
  bool place_written = false;
  Length fore_edge, head, foot; // of `trim`; 0: not cut
  StepOn on = StepOn::unsaid;   // of `cut` and `glue`
  int holes = 0;                // of `sew` and `punch`; 0: those of the folding
  Length from_spine;            // of `punch`
  int corners = 0;              // of `round`
  Length radius;                // likewise
  Duration waits;               // of `dry` and `press`: hands are free meanwhile
  std::string text;             // what is added, cut, glued or tied with, in the maker's words
  Work work;
};

std::string_view name_of(StepKind kind);
std::string_view name_of(StepOn on); // empty for what is unsaid
// "glue spine", "trim"
std::string name_of(const FinishStep &step);

// The flat sheets: apart, or down to size.
inline bool cuts_sheets(const FinishStep &step) {
  return step.kind == StepKind::cut && step.on == StepOn::sheets;
}

// What a printer's offer holds (29): the rest stays the maker's.
bool comes_with_a_bid(StepKind kind);
// The usual care with blades, needles and glue, as a whole sentence; empty where a step has none of
// them.
std::string_view usual_caution(StepKind kind);

// How high a copy is when a step of its finish is done: the page less what was trimmed before.
Length height_at(const std::vector<FinishStep> &finish, std::size_t step, Length page_height);
// Where staples or holes stand on a copy of that height, down from its head.
std::vector<Length> places_down(const FinishStep &step, int count, Length height);

} // namespace bodkin
