#include "type/bidi.hpp"

#include "type/words.hpp"

#include <algorithm>
#include <fribidi.h>
#include <new>
#include <numeric>

namespace bodkin {
namespace {

// Dashes, quotes, bullets and the ellipsis (U+2010 to U+2027): neither letters nor directions.
bool common_sign(std::string_view text, std::size_t at) {
  if (text[at] != '\xe2' || text[at + 1] != '\x80')
    return false;
  const auto last = static_cast<unsigned char>(text[at + 2]);
  return last >= 0x90 && last <= 0xa7;
}

// Nothing before Hebrew (U+0590) runs to the left, and no byte under 0xD6 begins a later letter.
bool all_to_the_right(std::string_view text) {
  for (std::size_t at = 0; at < text.size(); ++at)
    if (static_cast<unsigned char>(text[at]) >= 0xd6) {
      if (!common_sign(text, at))
        return false;
      at += 2;
    }
  return true;
}

std::vector<FriBidiChar> code_points(std::string_view text) {
  constexpr FriBidiChar line_separator = 0x2028; // ends a line, not the paragraph
  std::vector<FriBidiChar> points;
  points.reserve(text.size());
  for (std::size_t at = 0; at < text.size();) {
    const CodePoint c = code_point_at(text, at);
    points.push_back(c.value == '\n' ? line_separator : static_cast<FriBidiChar>(c.value));
    at += c.bytes;
  }
  return points;
}

std::vector<FriBidiLevel> levels_of(const std::vector<FriBidiChar> &points, FriBidiParType &base) {
  const auto count = static_cast<FriBidiStrIndex>(points.size());
  std::vector<FriBidiCharType> types(points.size());
  std::vector<FriBidiBracketType> brackets(points.size());
  std::vector<FriBidiLevel> levels(points.size());
  fribidi_get_bidi_types(points.data(), count, types.data());
  fribidi_get_bracket_types(points.data(), count, types.data(), brackets.data());
  if (fribidi_get_par_embedding_levels_ex(types.data(), brackets.data(), count, &base,
                                          levels.data()) == 0)
    throw std::bad_alloc();
  return levels;
}

} // namespace

Directions directions_of(std::string_view text) {
  Directions directions;
  if (all_to_the_right(text))
    return directions;
  FriBidiParType base = FRIBIDI_PAR_ON;
  const std::vector<FriBidiLevel> levels = levels_of(code_points(text), base);
  directions.base = FRIBIDI_IS_RTL(base) ? 1 : 0;
  if (std::all_of(levels.begin(), levels.end(), [](FriBidiLevel level) { return level == 0; }))
    return directions;
  directions.levels.reserve(text.size());
  std::size_t point = 0;
  for (std::size_t at = 0; at < text.size(); ++point) {
    const std::uint32_t bytes = code_point_at(text, at).bytes;
    directions.levels.insert(directions.levels.end(), bytes,
                             static_cast<std::uint8_t>(levels[point]));
    at += bytes;
  }
  directions.levels.resize(text.size());
  return directions;
}

std::vector<std::size_t> visual_order(const std::vector<std::uint8_t> &levels) {
  std::vector<std::size_t> order(levels.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  const auto highest = std::max_element(levels.begin(), levels.end());
  for (int level = highest == levels.end() ? 0 : *highest; level > 0; --level)
    for (std::size_t begin = 0; begin < order.size();) {
      if (levels[order[begin]] < level) {
        ++begin;
        continue;
      }
      std::size_t end = begin;
      while (end < order.size() && levels[order[end]] >= level)
        ++end;
      std::reverse(order.begin() + static_cast<std::ptrdiff_t>(begin),
                   order.begin() + static_cast<std::ptrdiff_t>(end));
      begin = end;
    }
  return order;
}

} // namespace bodkin
