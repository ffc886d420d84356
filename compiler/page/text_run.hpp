// Texts that run through boxes from page to page: the boxes are gathered while pages are laid, and
// filled when all are known.
#pragma once

#include "page/compose.hpp"
#include "page/placement.hpp"

#include <cstdint>
#include <map>
#include <span>
#include <vector>

namespace bodkin {

// Words of one element in its place: columns, and the edge that lines are ranged to.
struct WordsPlace {
  const Words *words = nullptr;
  ElementId element = ElementId::none;
  Box place;
  RangedTo ranged = RangedTo::own;
};

// Fills the columns of one place from a mark on; returns the mark that is left.
Mark fill_place(const WordsPlace &place, Compositor &compositor, const Style &style, Flow &flow,
                Mark from, std::vector<Line> &lines);
// Words alone in one place; what does not fit is a problem.
std::vector<Line> set_alone(const WordsPlace &place, const Prose &prose, int page,
                            const Workshop &workshop, Problems &problems);

// One box of a running text, and the items (on one page, or on both of a spread) that show it.
struct TextBox {
  int page = 0;
  WordsPlace place;
  struct Shown {
    int page = 0;
    std::size_t item = 0;
  };
  std::vector<Shown> shown;
  std::size_t part = 0; // of the copy: pages are its own
  std::string_view piece{};
};

// By text, boxes in the order in which a reader comes to their pages, and then as written.
using TextBoxes = std::map<TextId, std::vector<TextBox>>;
// One workshop and its drawings for each part of the copy.
void run_texts(const TextBoxes &boxes, std::span<const Workshop> workshops,
               std::vector<Drawings> &drawings, Problems &problems);

} // namespace bodkin
