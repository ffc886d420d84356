// Words on their way into boxes: their paragraphs, and the one last reached as it was shaped.
#pragma once

#include "type/findings.hpp"
#include "type/paragraphs.hpp"
#include "type/shape.hpp"
#include "type/shaped.hpp"

#include <cstddef>
#include <limits>
#include <vector>

namespace bodkin {

struct FlowParts {
  std::vector<Paragraph> paragraphs;

  // Paragraph `index`, shaped, with points enough for lines of this measure.
  const Shaped &shaped(std::size_t index, Length measure, Shaper &shaper, Findings &findings);
  // The point that a line at this byte begins with. A byte within a word, where a box of another
  // style broke it, gets a point of its own.
  std::size_t point_at(std::uint32_t byte, Shaper &shaper);

private:
  std::size_t index_ = std::numeric_limits<std::size_t>::max();
  Shaped shaped_;
  Length widest_; // of the words that have no points between their letters
};

} // namespace bodkin
