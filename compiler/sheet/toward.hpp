// Directions on a sheet, and what turning paper over makes of them.
#pragma once

#include "edition/folding.hpp"

namespace bodkin {

enum class Toward { up, right, down, left }; // clockwise

// How far clockwise a page is turned whose head points there.
constexpr int turn_of(Toward head) { return static_cast<int>(head) * 90; }

constexpr bool lies_sideways(Toward way) { return way == Toward::left || way == Toward::right; }
constexpr Toward opposite(Toward way) {
  return static_cast<Toward>((static_cast<int>(way) + 2) % 4);
}
constexpr Toward clockwise(Toward way) {
  return static_cast<Toward>((static_cast<int>(way) + 1) % 4);
}
// Seen from behind, the sheet turned about an upright axis, or about one that lies across.
constexpr Toward mirrored(Toward way, bool upright_axis) {
  return lies_sideways(way) == upright_axis ? opposite(way) : way;
}

constexpr Toward toward(Part part) {
  switch (part) {
  case Part::left:
    return Toward::left;
  case Part::right:
    return Toward::right;
  case Part::top:
    return Toward::up;
  case Part::bottom:
    break;
  }
  return Toward::down;
}

} // namespace bodkin
