// What an SVG mentions that matters before it is drawn, found by a walk over its tags.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace bodkin::art {

struct SvgMentions {
  std::string outside; // the first reference that leads out of the file; empty where none does
  bool type = false;   // a text element
  std::vector<std::string_view> embedded; // `data:` references as written
};

// Links of an `a` element are fine: nothing is drawn of them. The public name of a document type is
// too: nobody reads it.
SvgMentions svg_mentions(std::string_view svg);

} // namespace bodkin::art
