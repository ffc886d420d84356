#include "language/vocabulary_table.hpp"

#include <array>

namespace bodkin::language {
namespace {

constexpr std::array entries{
    Entry{.word = "sheet",
          .under = "folding",
          .phrase = "( any:any / size:size ) [, lies:across|upright]",
          .fallback = "any, across",
          .meaning = "The sheet that is folded and how it lies.",
          .example = "sheet any, across"},
    Entry{.word = "sheets",
          .under = "folding",
          .phrase = "( any:any / count:count )",
          .fallback = "any",
          .meaning = "How many sheets a copy takes.",
          .example = "sheets any"},
    Entry{.word = "panels",
          .under = "folding",
          .phrase = "columns:count by rows:count",
          .meaning = "The panels that folds and cuts part a sheet into, across and down; each is a "
                     "page on one side or on both.",
          .example = "panels 4 by 2"},
    Entry{.word = "widths",
          .under = "folding",
          .phrase = "{ share:count }",
          .fallback = "all alike",
          .meaning = "The shares of the sheet's width that its columns of panels take; folds then "
                     "count in shares.",
          .example = "widths 1, 2, 1"},
    Entry{.word = "heights",
          .under = "folding",
          .phrase = "{ share:count }",
          .fallback = "all alike",
          .meaning = "The shares of the sheet's height that its rows of panels take.",
          .example = "heights 1, 2, 1"},
    Entry{.word = "narrow",
          .under = "folding",
          .phrase = "what:column|row number:count by by:length",
          .meaning = "A column or row that is this much narrower than its share, so that it lies "
                     "inside others without buckling; the others share what it gives up.",
          .example = "narrow column 1 by 1/16in",
          .many = true},
    Entry{.word = "sides",
          .under = "folding",
          .phrase = "count:count",
          .fallback = "2",
          .meaning = "How many sides of the sheet hold pages; with 1 the other side is blank, or "
                     "one area for a poster.",
          .example = "sides 1"},
    Entry{.word = "tab",
          .under = "folding",
          .phrase = "width:length at edge:right|bottom",
          .meaning = "A strip of each sheet that is no page: the next sheet is glued on it, end to "
                     "end, before folding.",
          .example = "tab 1/2in at right"},
    Entry{.word = "cut",
          .under = "folding",
          .phrase = "between what:rows|columns before:count and after:count [, along:columns|rows "
                    "first:count to last:count]",
          .meaning =
              "A slit in the flat sheet, between two rows or columns of panels, all along or "
              "beside some of them.",
          .example = "cut between rows 1 and 2, columns 2 to 3",
          .many = true},
    Entry{.word = "fold",
          .under = "folding",
          .phrase = "( moving:left|right|top|bottom how:over|under onto:left|right|top|bottom "
                    "[, count:count panels:panel|panels] [, depth:count layers:layer|layers] / "
                    "back:back and forth "
                    "[, from panel from:count] )",
          .meaning = "One fold: the part that moves (a half, or so many panels; all its layers, or "
                     "so many from above, `under` from below) and the part that it comes to lie "
                     "on; or the whole strip zigzag, its first panel on top.",
          .example = "fold right over left",
          .many = true},
    Entry{.word = "push",
          .under = "folding",
          .phrase = "ends:ends together",
          .meaning = "Pushes the ends of a folded strip together, so that its slit opens and the "
                     "panels beside it stand out as leaves, and wraps these round into a book.",
          .example = "push ends together",
          .many = true},
    Entry{.word = "paste",
          .under = "folding",
          .phrase = "ends:ends back to back",
          .meaning = "The two ends of a strip, printed on one side, are pasted together, so that "
                     "they are one leaf.",
          .example = "paste ends back to back"},
    Entry{.word = "spine",
          .under = "folding",
          .phrase = "edge:left|right|top|bottom",
          .fallback = "the last fold",
          .meaning = "The edge of the folded sheet where its leaves are stapled, sewn or glued.",
          .example = "spine left"},
    Entry{.word = "holes",
          .under = "folding",
          .phrase = "count:count, inset:length from spine, place:length from head and foot",
          .meaning = "Holes for sewing through the side, in a line beside the spine; paper from "
                     "there to the spine is held shut.",
          .example = "holes 5, 3/8in from spine, 1/2in from head and foot"},
    Entry{.word = "opens",
          .under = "folding",
          .phrase = "( leaf:leaf by leaf / fold:fold by fold )",
          .fallback = "leaf by leaf where all leaves hang in the last fold",
          .meaning = "Whether a reader turns leaves about the spine, or undoes one fold after "
                     "another.",
          .example = "opens fold by fold"},
    Entry{.word = "nest",
          .under = "folding",
          .phrase = "one how:in|after another [, ( each:count a section / back:back to back )] [, "
                    "round:round]",
          .fallback = "one after another",
          .meaning = "Whether folded sheets lie one in another (all, so many in each section, or "
                     "in two books back to back) or one after another; `round` where they bend "
                     "round each other and creep further.",
          .example = "nest one in another"},
    Entry{.word = "front",
          .under = "folding",
          .phrase = "pages:pages",
          .fallback = "as opening shows them",
          .meaning = "The pages of the sheet's front, row by row as seen, where folding alone "
                     "cannot say.",
          .example = "front 3, 6, 1"},
    Entry{.word = "back",
          .under = "folding",
          .phrase = "pages:pages",
          .fallback = "as opening shows them",
          .meaning = "The pages of the sheet's back, row by row as seen when it is turned like a "
                     "leaf.",
          .example = "back 2, 4, 5"},
};

} // namespace

std::span<const Entry> folding_entries() { return entries; }

} // namespace bodkin::language
