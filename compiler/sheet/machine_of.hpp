// The machine of a side; where the edition names none, one that leaves nothing bare and turns
// sheets by itself.
#pragma once

#include "edition/edition.hpp"

namespace bodkin {

inline const Machine &machine_of(const Edition &edition, MachineId id) {
  static const Machine plain;
  return id == MachineId::none ? plain : edition[id];
}

} // namespace bodkin
