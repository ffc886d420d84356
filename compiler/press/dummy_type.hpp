// Words on a dummy, in a face of the edition's: the smallest type that prints, and the page that
// says how to read it all.
#pragma once

#include "page/drawing.hpp"
#include "type/compositor.hpp"

#include <memory>
#include <optional>

namespace bodkin::press {

class DummyType {
public:
  // Where no style of the edition has a face that can be set, nothing is ever set.
  DummyType(const Edition &edition, const OpenFaces &faces);

  bool usable() const { return reading_ != StyleId::none; }
  // One line of each size that is tried, the smallest first, from a top left of 0 on.
  std::vector<Item> smallest() const;
  // The prose in two columns of as many pages as it takes; each page's lines from its top left.
  std::vector<std::vector<Item>> pages(const Prose &prose, const Size &page) const;

private:
  Length height_in(Flow &flow, Length measure, int columns) const;
  std::unique_ptr<Edition> edition_; // with styles of the dummy's own
  mutable std::optional<Compositor> compositor_;
  StyleId reading_ = StyleId::none;
  std::vector<StyleId> tried_;
};

} // namespace bodkin::press
