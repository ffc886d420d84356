// Proofs show the edition as it is read: facing pages beside each other on the colours of their
// papers, with the knife's line, and under each page its number, paper and mode.
#pragma once

#include "press/plates.hpp"
#include "press/strokes.hpp"

#include <vector>

namespace bodkin::press {

// 0 where a side of the spread has no page.
struct ProofSpread {
  int left = 0, right = 0;
};
std::vector<ProofSpread> proof_spreads(const PrintJob &job);

// In points: the sheet of the proof and where its two pages stand on it, y down.
struct ProofLayout {
  double width = 0, height = 0;
  double left_x = 0, right_x = 0, y = 0;
};
ProofLayout proof_layout(const PrintJob &job, const ProofSpread &spread);

// The outline of a page's paper, in its own frame.
Strokes paper_edge(const Size &size);
// Papers, edges and words of one spread.
Strokes draw_frame(const PrintJob &job, const ProofSpread &spread);

} // namespace bodkin::press
