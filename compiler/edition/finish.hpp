// Work on each copy after printing, in the order of its lines.
#pragma once

#include "edition/element.hpp"

#include <optional>
#include <vector>

namespace bodkin {

enum class StepKind { collate, crease, fold, staple, trim };

struct FinishStep {
  StepKind kind = StepKind::fold;
  Range range, keyword;
  bool all = true; // `crease cover` speaks of the outermost sheet alone
  int staples = 0; // of `staple`
  Length leg;      // its legs
  Range leg_range;
  Length from_head_and_foot;
  Length fore_edge, head, foot; // of `trim`; 0: not cut
  Work work;
};

std::string_view name_of(StepKind kind);

} // namespace bodkin
