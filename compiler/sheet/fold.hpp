// Folding one sheet in simulation: the panels are layers of a stack, each fold turns half of the
// stack over and lays it on (or under) the other half. What comes out says where on the sheet each
// leaf is, which way its head points and which of its edges is the spine. No folding is known by
// name.
//
// The crease of the last fold is the spine: every leaf has an edge in it. The folded sheet is laid
// with the spine at its left; the leaves counted from the top are the leaves of the book.
#pragma once

#include "edition/folding.hpp"
#include "problems/problem.hpp"

#include <optional>
#include <vector>

namespace bodkin {

enum class Toward { up, right, down, left };

// How far clockwise a page is turned whose head points there.
constexpr int turn_of(Toward head) { return static_cast<int>(head) * 90; }

// Positions and directions on the sheet as seen on its front.
struct Leaf {
  int column = 0, row = 0;
  Toward head = Toward::up;
  Toward spine = Toward::left;
  bool recto_on_front = true;
};

struct Crease {
  bool upright =
      true; // runs up and down the sheet, at `at` columns from the left; else at `at` rows
  int at = 0;
  bool spine = false;
};

struct FoldedSheet {
  int columns = 1, rows = 1;
  std::vector<Leaf> leaves;    // in reading order; the first one's recto is on the front, head up
  std::vector<Crease> creases; // in order of folding
  bool spine_upright = true;   // the spine runs up and down the sheet
  bool front_up = true;        // the folding starts with the front facing up
  std::vector<FoldStep> steps; // as the sheet lies when the folding starts
};

// None where the folding cannot be done; problems say why (check `folding-cannot-be`).
std::optional<FoldedSheet> fold(const Folding &folding, Problems &problems);

} // namespace bodkin
