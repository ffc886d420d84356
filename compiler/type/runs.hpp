// A paragraph's text cut into runs that are shaped as one: the same cut, size, colour, script and
// direction. Hard breaks stand in no run.
#pragma once

#include "type/bidi.hpp"
#include "type/paragraphs.hpp"

#include <cstdint>
#include <vector>

namespace bodkin {

struct TextRun {
  std::uint32_t begin = 0, end = 0; // bytes
  std::uint32_t span = 0;           // index into the paragraph's spans
  std::uint32_t script = 0;         // an hb_script_t: an ISO 15924 tag
  std::uint8_t level = 0;
};

std::vector<TextRun> runs_of(const Paragraph &paragraph, const Directions &directions);

} // namespace bodkin
