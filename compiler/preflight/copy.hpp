// The checks that need a whole copy: what one of its parts does to another.
#pragma once

#include "preflight/preflight.hpp"
#include "sheet/parts.hpp"

namespace bodkin {

struct CopyInspection {
  const std::vector<CopyPart> &parts;
  std::span<const Inspection> each; // of the parts, in their order

  const Inspection &of(const CopyPart &part) const {
    return each[static_cast<std::size_t>(&part - parts.data())];
  }
};

void preflight(const CopyInspection &copy, Problems &problems);

void check_hidden(const CopyInspection &copy, Problems &problems);  // hidden-art
void check_numbers(const CopyInspection &copy, Problems &problems); // numbers of the whole
void check_layers(const CopyInspection &copy, Problems &problems);  // show-through of two wraps

} // namespace bodkin
