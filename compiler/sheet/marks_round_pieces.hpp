// Marks where pieces laid several up on a sheet are cut apart: beside them, on the paper that is
// left over.
#pragma once

#include "sheet/marks.hpp"
#include "sheet/strips.hpp"

#include <vector>

namespace bodkin {

// The margins round all pieces that the machine prints, no nearer to them than `clearance`; none
// where nothing is laid several up.
std::vector<Strip> left_over(const Sheet &sheet, const Side &side, const Box &printed,
                             Length clearance);

// At the ends of each cut, where a margin is wide enough.
void mark_piece_cuts(Marks &marks, const Sheet &sheet, SideName side,
                     const std::vector<Strip> &margins);

} // namespace bodkin
