// Sizes, points and upright boxes on a page or a sheet; x runs right and y runs down from the top
// left corner.
#pragma once

#include "measure/length.hpp"

namespace bodkin {

struct Size {
  Length width, height;
  auto operator<=>(const Size &) const = default;
  constexpr Size turned() const { return {height, width}; }
  constexpr Size upright() const { return width > height ? turned() : *this; }
};

struct Spot {
  Length x, y;
  auto operator<=>(const Spot &) const = default;
};

struct Box {
  Length x, y, width, height;
  auto operator<=>(const Box &) const = default;
  constexpr Length right() const { return x + width; }
  constexpr Length foot() const { return y + height; }
  constexpr Size size() const { return {width, height}; }
  constexpr Box moved(Length dx, Length dy) const { return {x + dx, y + dy, width, height}; }
};

// Widths kept free along the four edges of a page: the safe area's frame.
struct Edges {
  Length left, top, right, bottom;
  auto operator<=>(const Edges &) const = default;
};

constexpr Box inside(const Size &size, const Edges &edges) {
  return {edges.left, edges.top, size.width - edges.left - edges.right,
          size.height - edges.top - edges.bottom};
}

} // namespace bodkin
