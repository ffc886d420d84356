#include "language/vocabulary_table.hpp"

#include <array>

namespace bodkin::language {
namespace {

constexpr std::array entries{
    Entry{.word = "borrow",
          .under = "file",
          .phrase = "file:text",
          .meaning =
              "Takes in another manuscript's stocks, machines, faces, styles and standing matter; "
              "without an ending it is a shelf, with one a file of the edition's folder.",
          .example = "borrow \"stocks/us\"",
          .many = true},
    Entry{.word = "edition",
          .under = "file",
          .phrase = "title:text",
          .meaning = "The edition and its title, once in a manuscript.",
          .example = "edition \"Night Bus Almanac\""},
    Entry{.word = "stock",
          .under = "file",
          .phrase = "name:name [title:text] [like like:name]",
          .meaning = "A paper: its weight, sheet, colour and price; `like` copies another's facts, "
                     "and the lines below replace them.",
          .example = "stock rose like cream",
          .many = true},
    Entry{.word = "machine",
          .under = "file",
          .phrase = "name:name [title:text] [like like:name]",
          .meaning = "A printing machine: what it charges for a side, which sheets it takes, and "
                     "the edge that it leaves bare.",
          .example = "machine corner-copier \"Copier at the corner shop\"",
          .many = true},
    Entry{.word = "bid",
          .under = "file",
          .phrase = "name:name [title:text] [like like:name]",
          .meaning =
              "Another printer's offer for the whole run, held against what your own way costs.",
          .example = "bid mail-order \"Mail-order booklet printer\"",
          .many = true},
    Entry{.word = "face",
          .under = "file",
          .phrase = "name:name from family:text",
          .meaning =
              "A family of type under a short name of your own: of the catalogue or the system "
              "by its exact name, or a file of the edition's folder.",
          .example = "face book from \"EB Garamond\"",
          .many = true},
    Entry{.word = "style",
          .under = "file",
          .phrase = "name:name [title:text] [like like:name]",
          .meaning = "How words are set: face, size, leading, and how lines and paragraphs stand.",
          .example = "style body",
          .many = true},
    Entry{.word = "source",
          .under = "file",
          .phrase = "name:name [title:text] [like like:name]",
          .meaning = "Where a picture or a text comes from, and by what right you use it.",
          .example = "source harbour-card",
          .many = true},
    Entry{.word = "every",
          .under = "file",
          .phrase = "kind:picture|words|patch|qr|hand|folio",
          .meaning = "Facts of each such element of the edition, unless it says otherwise.",
          .example = "every picture",
          .many = true},
    Entry{.word = "text",
          .under = "file",
          .phrase = "name:name [from file:text]",
          .meaning = "A text that runs through the boxes that ask for it, in page order: from the "
                     "book into pieces between its pages, then into those that are loose.",
          .example = "text timetable from \"words/timetable.md\"",
          .many = true,
          .prose = true},
    Entry{.word = "standing",
          .under = "file",
          .phrase = "name:name",
          .meaning = "Matter kept standing, to be laid again wherever it is wanted.",
          .example = "standing imprint",
          .many = true},
    Entry{.word = "running",
          .under = "file",
          .phrase = "name:name",
          .meaning = "What stands on many pages, under everything else, mirrored left and right "
                     "where its places say `outer` or `inner`.",
          .example = "running folios",
          .many = true},
    Entry{.word = "page",
          .under = "file insert wrap",
          .phrase =
              "pages:pages [called called:name] [in mode:mode] [on stock:name] [by machine:name]",
          .meaning =
              "A page, or the same things on each of a list of pages; `page next` is the one "
              "after the page above.",
          .example = "page 4 on rose",
          .many = true},
    Entry{
        .word = "spread",
        .under = "file insert wrap",
        .phrase =
            "pages:pages [called called:name] [in mode:mode] [on stock:name] [by machine:name]",
        .meaning =
            "Two facing pages as one area across the fold; places are counted from its left page.",
        .example = "spread 4-5 in colour",
        .many = true},
    Entry{.word = "folding",
          .under = "file",
          .phrase = "name:name [title:text]",
          .meaning = "How a sheet is folded into leaves: its panels and folds in order.",
          .example = "folding saddle-stitch",
          .many = true},
    Entry{.word = "finish",
          .under = "file insert",
          .phrase = "",
          .meaning =
              "Work on each copy after printing, in the order of its lines; under an insert, "
              "work on it alone.",
          .example = "finish"},
    Entry{.word = "says",
          .under = "text words",
          .phrase = "[text:text]",
          .meaning = "The words themselves: one line in quotes, or everything indented deeper, as "
                     "CommonMark.",
          .example = "says",
          .prose = true},
    Entry{.word = "pages",
          .under = "running",
          .phrase = "pages:pages",
          .fallback = "all but cover",
          .meaning = "The pages that running matter stands on.",
          .example = "pages all but cover"},
    Entry{.word = "blank",
          .under = "page spread",
          .phrase = "",
          .meaning = "The page stays empty and that is meant; running matter is left off it.",
          .example = "blank"},
    Entry{.word = "stays",
          .under = "page spread",
          .phrase = "[with with:pages]",
          .fallback = "`bodkin arrange` may move it, but for the cover",
          .meaning = "`bodkin arrange` leaves the page where it is; with other pages named, they "
                     "move together only, in the order that they stand in.",
          .example = "stays with 6-7"},
};

} // namespace

std::span<const Entry> file_entries() { return entries; }

} // namespace bodkin::language
