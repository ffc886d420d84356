// Laying elements on a page, one after another.
#pragma once

#include "page/compose.hpp"
#include "page/placement.hpp"
#include "page/text_run.hpp"

#include <span>

namespace bodkin {

// Where the things of one element list go, and what they have in common.
struct Laying {
  Ground ground;
  Transform to_page{}; // of laid standing matter: moved and turned
  ElementId laid_by = ElementId::none;
  bool running = false;
  int page = 0;          // for folios and problems; a spread's left page
  bool boxes_run = true; // words of texts take their turn as boxes
};

// Items in order of laying, words of running texts still empty.
struct LaidItems {
  std::vector<Item> items;
  std::vector<std::pair<std::size_t, TextBox>> boxes; // item index, its box
};

void lay_elements(std::span<const ElementId> elements, const Laying &laying,
                  const Workshop &workshop, LaidItems &laid, Problems &problems);

} // namespace bodkin
