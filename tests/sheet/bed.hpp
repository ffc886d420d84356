// Paper on a table: rectangles with a page on either side, folded as geometry.
#pragma once

#include "edition/folding.hpp"
#include "sheet/imposition.hpp"

#include <cstdint>
#include <string>
#include <vector>

namespace bodkin::test {

struct Arrow {
  std::int64_t x = 0, y = 0;
  bool operator==(const Arrow &) const = default;
};

// Units of length doubled, so that middles are whole.
struct Scrap {
  std::int64_t left = 0, top = 0, right = 0, bottom = 0;
  Arrow head, back_head; // as it lies, of either page: leaves that turn have both alike
  int front = 0, back = 0;
  bool front_up = true;
  std::int64_t height = 0; // in the pile
  int number = 0;          // the same through all folding
  bool over(const Scrap &other) const {
    return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
  }
};

struct Cut { // along a straight line
  std::int64_t left, top, right, bottom;
};

struct Bed {
  std::int64_t left = 0, top = 0, right = 0, bottom = 0;
  std::vector<Scrap> scraps;
  std::vector<Cut> cuts;
};

// The sheets from `first` up to `end` lying in a row, each on the tab of the one before; says what
// is wrong with their two sides, or nothing.
std::string lay(const Imposition &imposition, const Folding &folding, std::size_t first,
                std::size_t end, Bed &bed);
void turn_face_down(Bed &bed);
void turn_half(Bed &bed);

// False where paper would be creased inside a page, or there is nothing to fold.
bool fold_once(Bed &bed, const FoldStep &step);

// The number of the scrap that hangs on this one at its edge towards `way`, or -1.
int neighbour(const Bed &flat, const Scrap &scrap, Arrow way);

} // namespace bodkin::test
