// The kinds of value that a phrase is made of, as written: a small closed set, trivially copied.
#pragma once

#include "measure/box.hpp"
#include "measure/few.hpp"
#include "measure/price.hpp"
#include "measure/weight.hpp"

#include <cstdint>
#include <string_view>
#include <variant>

namespace bodkin::language {

// A word of the vocabulary's choices, or a name that the maker gave. Views of the source text.
struct Word {
  std::string_view text;
};
// Quoted text with its escapes undone; a view of the source, or of Tree::unescaped.
struct Quoted {
  std::string_view text;
};
struct Count {
  std::int64_t value = 0;
};
// `10.5/13` or `10.5`: type size and leading in points; no leading written: 0.
struct TypeSize {
  Decimal size, leading;
};
enum class Anchor { start, end, outer, inner, centred };
struct Along {
  Anchor anchor = Anchor::start;
  Length offset;
};
// `0.5in 1in, 4in x 3in`; one of the parts may be missing, which the model judges.
struct Place {
  Along across, down;
  Size size;
  bool has_spot = false, has_size = false;
};
struct Cells {
  int first_column = 1, last_column = 1, first_row = 1, last_row = 1;
};
enum class TimePer { copy, sheet, once };
struct Time {
  Duration duration;
  TimePer per = TimePer::copy;
  bool per_written = false;
};
// A colour by number, or the name of an ink or stock.
struct ColourName {
  std::string_view name; // empty: `colour` holds it
  Colour colour;
};
// A run of a page list in Tree::page_items: `5, 8-11 but 9`.
struct Pages {
  std::uint32_t first = 0, count = 0;
};

using Value =
    std::variant<Word, Quoted, Count, Decimal, Length, Size, TypeSize, Along, Place, Cells, Spot,
                 Angle, Share, Price, Rate, Weight, Mass, Time, ColourName, Pages, Date>;

// One item of a page list: numbers `first` to `last`, or a word (left, right, all, cover, centre,
// front-cover, inside-front, inside-back, back-cover, next) or a page's name given by `called`.
// Items after `but` are taken away.
struct PageItem {
  std::int64_t first = 0, last = 0;
  std::string_view word{};
  bool but = false;
};

} // namespace bodkin::language
