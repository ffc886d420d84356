// Colour that could be taken out of an edition: of sides that are paid as colour although nothing
// on them is coloured, which loses nothing, and of all others.
#pragma once

#include "money/changed_lines.hpp"
#include "money/charged.hpp"

#include <cstddef>
#include <set>
#include <string>
#include <variant>
#include <vector>

namespace bodkin {

// Of each page, numbered on through book and pieces from 1. A page that `coloured` does not reach
// is taken for coloured.
struct PagesDrawn {
  std::vector<bool> draws, coloured;
  bool draws_on(std::size_t page) const { return page < draws.size() && draws[page]; }
  bool has_colour(std::size_t page) const {
    return draws_on(page) && (page >= coloured.size() || coloured[page]);
  }
};

// The lines that ask for colour, all of them needed to make a side black.
struct ColourOut {
  std::set<LineKey> lines;
};
// Pages whose own lines say black, where something else gives them colour.
struct BlackPages {
  std::set<LineKey> opened; // the `page` and `spread` lines
};

struct ColourSaving {
  std::variant<ColourOut, BlackPages> change;
  std::string what;     // "pages 9-12 in black"
  std::size_t lost = 0; // pages that lose colour
  bool cover = false;   // one of them is of the cover
};

// At most `most`, of each side once.
std::vector<ColourSaving> colour_savings(const Edition &edition, const Laid &laid,
                                         const PagesDrawn &drawn, const Sources &sources,
                                         std::size_t most);

// The edition, its pieces too, with that colour taken out.
void take_out(Edition &edition, const ColourOut &out, const Sources &sources);
void take_out(Edition &edition, const BlackPages &out, const Sources &sources);

// The lines to type for it; `after` is the edition with all that is changed beside.
void type_lines(const Edition &before, const Edition &after, const ColourOut &out,
                const Sources &sources, ChangedLines &lines);
void type_lines(const Edition &before, const Edition &after, const BlackPages &out,
                const Sources &sources, ChangedLines &lines);

} // namespace bodkin
