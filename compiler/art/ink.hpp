// Where a picture's ink is, and how light it is.
#pragma once

#include "art/outcome.hpp"
#include "art/pixels.hpp"

#include <vector>

namespace bodkin::art {

// Shares of the picture from its top left as it is seen.
struct ShareSpot {
  double x = 0, y = 0;
  bool operator==(const ShareSpot &) const = default;
};
struct ShareBox {
  double left = 0, top = 0, right = 1, bottom = 1;
};

// The convex outline of all ink, clockwise as seen; empty where there is none. Ink is any sample
// neither transparent nor near-white (250 of 255 or more in every channel); the corners of its
// square belong to it.
using Hull = std::vector<ShareSpot>;
// Exact for these samples.
Hull ink_hull(PixelView pixels);
// For samples that stand for finer ones: one sample wider all round.
Hull ink_hull_rounded_out(PixelView pixels);

// A picture cut into a grid of cells, each with its mean luminance and cover.
struct LuminanceGrid {
  int columns = 0, rows = 0;
  // Row by row from the top left. Luminance is relative (0 black, 1 paper white; linear light,
  // BT.709 weights) of what is there, alpha left out; cover is how much of the paper it hides, 0
  // to 1. On a paper of luminance p a cell shows luminance × cover + p × (1 − cover).
  std::vector<float> luminance, cover;
};
// At most 64 by 64 cells, fewer where the picture has fewer samples.
LuminanceGrid luminance_grid(PixelView pixels);

// Of the cells that a box touches, on a paper of the given luminance.
double mean_luminance(const LuminanceGrid &grid, const ShareBox &box, double paper = 1);
// The luminance that `share` (0 to 1) of the touched cells are darker than or as dark as.
double luminance_at(const LuminanceGrid &grid, const ShareBox &box, double share, double paper = 1);

} // namespace bodkin::art
