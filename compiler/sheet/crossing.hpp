// The proof that paper lies flat without passing through itself.
//
// Take any line between two neighbouring places of the folded paper. What is joined across it,
// flat, must lie in the same order on both sides. Of the folds in it on one side, any two lie
// beside each other or one inside the other, never interlocked. And nothing that goes on flat past
// the line may come out from inside a fold. With one order of layers at every place, these
// conditions are enough (they are those of flat folding on a grid of squares).
#pragma once

#include "sheet/folded_paper.hpp"

#include <optional>

namespace bodkin {

struct Clash {
  enum class Kind { torn, interlocked, through_fold, order } kind = Kind::torn;
  // Panels joined at one joint, and at the other that it meets (torn: only the first two).
  int a = 0, b = 0, c = 0, d = 0;
};

std::optional<Clash> paper_through_paper(const FoldedPaper &paper);

} // namespace bodkin
