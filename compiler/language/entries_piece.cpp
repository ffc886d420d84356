#include "language/vocabulary_table.hpp"

#include <array>

namespace bodkin::language {
namespace {

constexpr std::array entries{
    Entry{.word = "insert",
          .under = "file",
          .phrase = "name:name [title:text]",
          .meaning = "A further piece of each copy with its own size, paper and pages: a poster, a "
                     "card, a fold-out, a slip tipped in.",
          .example = "insert map \"The routes, unfolded\"",
          .many = true},
    Entry{.word = "wrap",
          .under = "file",
          .phrase = "on stock:name [in mode:mode]",
          .meaning = "A cover of its own round the book: four more pages, front-cover, "
                     "inside-front, inside-back and back-cover, that the page count leaves out.",
          .example = "wrap on board in colour"},
    Entry{.word = "reverse",
          .under = "file",
          .phrase = "[in mode:mode]",
          .meaning = "The unfolded back of a sheet whose folding prints one side, as one page as "
                     "large as the sheet: a poster behind the booklet.",
          .example = "reverse in black"},
    Entry{.word = "goes",
          .under = "insert",
          .phrase = "( where:loose|centre / after after:page / on on:page )",
          .fallback = "loose",
          .meaning = "Where it goes in the copy: lying loose in it, stapled in at the centre, "
                     "gathered in after a page, or tipped in by its edge on a page.",
          .example = "goes centre"},
    Entry{.word = "up",
          .under = "insert",
          .phrase = "( most:most / copies:count )",
          .fallback = "1",
          .meaning = "How many of it are laid on one sheet, to be cut apart after printing; `most` "
                     "takes the number that costs least.",
          .example = "up 4"},
    Entry{.word = "count",
          .under = "insert",
          .phrase = "count:count",
          .fallback = "1",
          .meaning = "How many of it go into each copy.",
          .example = "count 2"},
};

} // namespace

std::span<const Entry> piece_entries() { return entries; }

} // namespace bodkin::language
