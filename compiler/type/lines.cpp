#include "type/lines.hpp"

namespace bodkin {
namespace {

constexpr std::int64_t closes_by = 5; // a fifth

struct Try {
  const LinesAsked &asked;
  Length width;

  bool fits(const BreakPoint &from, const BreakPoint &to) const {
    const Length words = to.end_x - from.next_x;
    if (words <= width)
      return true;
    const bool closes = asked.justified && to.kind == BreakPoint::Kind::may;
    return closes && words - (to.end_spaces - from.next_spaces) / closes_by <= width;
  }

  std::size_t end_from(std::size_t from) const {
    const auto &points = asked.points;
    std::size_t best = 0; // 0 ends no line
    for (std::size_t to = from + 1; to < points.size(); ++to) {
      const BreakPoint::Kind kind = points[to].kind;
      if (!fits(points[from], points[to]))
        break;
      if (kind == BreakPoint::Kind::in_a_word && best != 0 &&
          points[best].kind == BreakPoint::Kind::may)
        continue;
      best = to;
      if (kind == BreakPoint::Kind::must)
        break;
    }
    return best != 0 ? best : from + 1;
  }
};

} // namespace

std::vector<std::size_t> first_fit(const LinesAsked &asked, const LineWidth &width) {
  std::vector<std::size_t> ends;
  std::size_t from = asked.from;
  while (ends.size() < asked.most && from + 1 < asked.points.size()) {
    from = Try{asked, width(ends.size())}.end_from(from);
    ends.push_back(from);
  }
  return ends;
}

} // namespace bodkin
