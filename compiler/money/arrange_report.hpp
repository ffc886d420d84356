// What `bodkin arrange` prints, as text and as JSON with the keys fixed for programs.
#pragma once

#include "money/arrange.hpp"
#include "money/colour_room.hpp"

#include <string>

namespace bodkin {

struct ArrangeReport {
  const Edition &edition;
  const Arrangement &arrangement;
  const Laid &as_written;
  const ColourRoom &room; // in the cheapest order
  const Sources &sources;
  std::string manuscript; // as named on the command line
  std::string written_to; // the edited manuscript, if it was asked for
};

std::string arrangement_as_text(const ArrangeReport &report);
std::string arrangement_as_json(const ArrangeReport &report);

} // namespace bodkin
