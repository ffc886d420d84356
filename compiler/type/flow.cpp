#include "type/flow.hpp"

#include "type/compositor.hpp"
#include "type/words.hpp"

#include <algorithm>
#include <string_view>

namespace bodkin {
namespace {

Length widest_word(const Shaped &shaped) {
  Length widest;
  for (std::size_t i = 1; i < shaped.points.size(); ++i)
    widest = std::max(widest, shaped.points[i].end_x - shaped.points[i - 1].next_x);
  return widest;
}

std::size_t last_point_up_to(const Shaped &shaped, std::uint32_t byte) {
  const auto after =
      std::partition_point(shaped.points.begin() + 1, shaped.points.end(),
                           [&](const BreakPoint &point) { return point.next <= byte; });
  return static_cast<std::size_t>(after - shaped.points.begin()) - 1;
}

} // namespace

const Shaped &FlowParts::shaped(std::size_t index, Length measure, Shaper &shaper,
                                Findings &findings) {
  if (index_ != index) {
    shaped_ = shaper.shape(paragraphs[index], findings);
    widest_ = widest_word(shaped_);
    index_ = index;
  }
  if (widest_ > measure) {
    shaper.add_letter_points(paragraphs[index], shaped_, measure);
    widest_ = measure;
  }
  return shaped_;
}

std::size_t FlowParts::point_at(std::uint32_t byte, Shaper &shaper) {
  std::size_t point = last_point_up_to(shaped_, byte);
  if (shaped_.points[point].next == byte)
    return point;
  shaper.add_letter_points(paragraphs[index_], shaped_, Length{});
  widest_ = Length{};
  return last_point_up_to(shaped_, byte);
}

Flow::Flow() : parts_(new FlowParts) {}
Flow::~Flow() = default;
Flow::Flow(Flow &&) noexcept = default;
Flow &Flow::operator=(Flow &&) noexcept = default;

Mark Flow::end() const { return {static_cast<std::uint32_t>(parts_->paragraphs.size()), 0}; }
bool Flow::ends_at(Mark mark) const { return mark >= end(); }
std::int64_t Flow::words() const { return words_before(end()); }

std::int64_t Flow::words_before(Mark mark) const {
  std::int64_t words = 0;
  for (std::size_t i = 0; i < parts_->paragraphs.size() && i <= mark.paragraph; ++i) {
    const std::string_view text = parts_->paragraphs[i].text;
    words += words_in(i < mark.paragraph ? text : text.substr(0, mark.byte));
  }
  return words;
}

} // namespace bodkin
