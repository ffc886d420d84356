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
                     "inside-front, inside-back and back-cover, that the page count leaves out; a "
                     "second wrap goes round the first.",
          .example = "wrap on board in colour",
          .many = true},
    Entry{.word = "boards",
          .under = "file",
          .phrase = "on stock:name",
          .meaning = "Two boards, glued to the front and the back of the copy after the knife, as "
                     "large as it is.",
          .example = "boards on board"},
    Entry{.word = "squares",
          .under = "boards",
          .phrase = "squares:length",
          .fallback = "0",
          .meaning = "How far the boards stand out past the leaves at head, foot and fore-edge.",
          .example = "squares 1/8in"},
    Entry{.word = "reverse",
          .under = "file",
          .phrase = "[in mode:mode]",
          .meaning = "The unfolded back of a sheet whose folding prints one side, as one page as "
                     "large as the sheet: a poster behind the booklet.",
          .example = "reverse in black"},
    Entry{.word = "goes",
          .under = "insert",
          .phrase = "( where:loose|centre|round / after after:page / on on:page / in in:name )",
          .fallback = "loose",
          .meaning =
              "Where it goes in the copy: lying loose in it, stapled in at the centre, round "
              "the whole copy as a band, gathered in after a page, glued on a page, or in a "
              "pocket.",
          .example = "goes centre"},
    Entry{.word = "height",
          .under = "insert",
          .phrase = "height:length",
          .meaning = "How high a band is; its length is worked out from the trimmed copy.",
          .example = "height 2in"},
    Entry{.word = "overlap",
          .under = "insert",
          .phrase = "overlap:length",
          .fallback = "3/4in",
          .meaning = "How much of a band is glued under its other end, at the back.",
          .example = "overlap 3/4in"},
    Entry{.word = "at",
          .under = "insert",
          .phrase = "across:across [,] down:down",
          .fallback = "0in from inner, centred; of a pocket, centred both ways",
          .meaning =
              "Where on its page a piece that is glued there lies: across and down, from two "
              "edges of the page before the knife.",
          .example = "at 1/2in from outer, 1in from foot"},
    Entry{.word = "glued",
          .under = "insert",
          .phrase = "edge:inner|outer|head|foot [, width:length wide]",
          .fallback = "inner, 1/4in wide",
          .meaning = "The edge that a leaf tipped in on a page is glued by, and how wide the strip "
                     "of glue is.",
          .example = "glued inner, 1/4in wide"},
    Entry{.word = "flaps",
          .under = "insert",
          .phrase = "width:length [, open open:head|foot|inner|outer]",
          .fallback = "open head",
          .meaning = "Makes a pocket of a piece that goes on a page: three of its edges have flaps "
                     "of that width that are folded under and glued, one is open.",
          .example = "flaps 1/2in, open head"},
    Entry{.word = "up",
          .under = "insert boards",
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
