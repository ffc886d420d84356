// Blocks of a leaflet cut into slices that are never parted: a passage, a row of a table, a row of
// pictures with what is said below them.
#pragma once

#include "press/leaflet_layout.hpp"

#include <functional>
#include <memory>
#include <optional>
#include <span>

namespace bodkin::press {

struct Slice {
  double before = 0; // room above it, except at a page's head
  double height = 0;
  bool keep = false; // stays with the next
  bool new_page = false;
  std::function<void(LeafletPage &, double y)> put;
  // Of a table's row: the heads of its columns, which a page that begins with it repeats.
  std::shared_ptr<const Slice> heads{};
};

// From the left edge of steps' numbers to the right edge of all.
struct Band {
  double left = 0, right = 0;
  double hanging = 40; // where all but steps' numbers begins
};

std::vector<Slice> slices_of(const paperwork::LeafletBlock &block, const Band &band,
                             LeafletType &type);
std::vector<Slice> title_slices(const paperwork::Leaflet &leaflet, const Band &band,
                                LeafletType &type);

// A step, or a part of one, whose pictures stand beside its words, as one slice; nothing where it
// is no such step: one headline, words, and pictures that find room in half of the band. `room`:
// how much of the page is left, for which pictures are made smaller if need be.
std::optional<Slice> step_beside(std::span<const paperwork::LeafletBlock> step, const Band &band,
                                 double room, LeafletType &type);

std::vector<Slice> table_slices(const paperwork::Table &table, double left, double right,
                                LeafletType &type);
// `share`: of the height that they may have.
std::vector<Slice> picture_slices(const paperwork::Pictures &pictures, double left, double right,
                                  LeafletType &type, double share = 1);

} // namespace bodkin::press
