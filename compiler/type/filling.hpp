// One box being filled: lines stacked from its top until the next has no room.
#pragma once

#include "type/compositor.hpp"
#include "type/flow.hpp"
#include "type/set_line.hpp"

#include <optional>

namespace bodkin {

// What every box is filled with.
struct Case {
  Shaper &shaper;
  LineSetter &setter;
  LineMaker maker;
  Findings &findings;
};

class Filling {
public:
  Filling(const Case &tools, FlowParts &flow, Mark from, Size room)
      : tools_(tools), flow_(flow), room_(room), mark_(from) {}
  Column column();
  // Lines from the mark to the flow's end, of any height: only counted, not set.
  std::int64_t count_lines();

private:
  struct Start; // of the paragraph at the mark
  bool add_paragraph();
  Start start();
  std::optional<Line> sign_of(const Paragraph &paragraph) const;
  std::vector<std::size_t> ends(const Start &start, std::size_t most) const;
  bool add_lines(const Start &start, const std::vector<std::size_t> &ends);
  Line line(const Start &start, std::size_t from, std::size_t to, bool first) const;
  void pass(const Start &start, std::size_t point);
  void pass_paragraph() { mark_ = {mark_.paragraph + 1, 0}; }
  bool at_end() const { return mark_.paragraph >= flow_.paragraphs.size(); }

  const Case &tools_;
  FlowParts &flow_;
  Size room_;
  Mark mark_;
  Length top_;
  Column column_;
};

// The paragraph as one line of its own natural width, from x = 0.
Line whole_line(const Case &tools, const Paragraph &paragraph);

} // namespace bodkin
