#include "language/vocabulary_table.hpp"

#include <array>

namespace bodkin::language {
namespace {

constexpr std::array entries{
    Entry{.word = "collate",
          .under = "finish",
          .phrase = "",
          .meaning = "Gathers a sheet from each pile into a copy.",
          .example = "collate"},
    Entry{.word = "crease",
          .under = "finish",
          .phrase = "what:cover|all",
          .meaning = "Presses a groove where card will be folded, so that it does not crack.",
          .example = "crease cover",
          .many = true},
    Entry{.word = "fold",
          .under = "finish",
          .phrase = "what:all|cover",
          .meaning = "Folds the sheets.",
          .example = "fold all",
          .many = true},
    Entry{.word = "staple",
          .under = "finish",
          .phrase = "count:count, leg leg:length, place:length from head and foot",
          .meaning = "Staples through the fold: how many, how long their legs, and how far from "
                     "head and foot.",
          .example = "staple 2, leg 1/4in, 2 1/8in from head and foot"},
    Entry{.word = "trim",
          .under = "finish",
          .phrase = "( fore-edge fore-edge:length [, head head:length] [, foot foot:length] "
                    "/ head head:length [, foot foot:length] / foot foot:length )",
          .meaning = "Cuts the folded copy's edges.",
          .example = "trim fore-edge 1/8in"},
    Entry{.word = "sew",
          .under = "finish",
          .phrase = "[count:count holes:hole|holes, place:length from head and foot]",
          .fallback = "the holes of its folding",
          .meaning =
              "Sews through the fold: through how many holes, and how far the outer ones are "
              "from head and foot; a folding that is sewn through its side says its own "
              "holes.",
          .example = "sew 5 holes, 3/4in from head and foot",
          .many = true},
    Entry{.word = "punch",
          .under = "finish",
          .phrase = "count:count holes:hole|holes, inset:length from spine [, place:length from "
                    "head and foot]",
          .fallback = "one hole in the middle, several evenly down the page",
          .meaning =
              "Punches holes through the whole copy: how many, how far their middles are from "
              "the spine, and the outer ones from head and foot.",
          .example = "punch 2 holes, 3/8in from spine, 2 7/8in from head and foot",
          .many = true},
    Entry{.word = "cut",
          .under = "finish",
          .phrase = "what:sheets|slit|folds|window [text:text]",
          .meaning = "Cuts by hand: the flat sheets apart or down to size, the slit that a folding "
                     "asks for, folds open, or a window through pages.",
          .example = "cut window \"the moon in the cover\"",
          .many = true},
    Entry{.word = "glue",
          .under = "finish",
          .phrase = "what:spine|cover|tabs|other [text:text]",
          .meaning = "Glues: leaves at the spine, a cover round them, sheets end to end on their "
                     "tabs, or something else.",
          .example = "glue spine",
          .many = true},
    Entry{.word = "round",
          .under = "finish",
          .phrase = "count:count corners:corner|corners, radius radius:length",
          .meaning = "Cuts the corners of the finished copy round; two are those of the fore-edge.",
          .example = "round 2 corners, radius 1/4in"},
    Entry{.word = "tie",
          .under = "finish",
          .phrase = "[text:text]",
          .meaning = "Ties the finished copy round or through its holes, with what the words say.",
          .example = "tie \"a yard of red thread\"",
          .many = true},
    Entry{.word = "dry",
          .under = "finish",
          .phrase = "time:time",
          .meaning = "What has been done so far dries for that time, hands free meanwhile.",
          .example = "dry 20 min",
          .many = true},
    Entry{.word = "press",
          .under = "finish",
          .phrase = "time:time",
          .meaning = "Copies lie under a weight for that time, hands free meanwhile.",
          .example = "press 2 h",
          .many = true},
    Entry{.word = "add",
          .under = "finish",
          .phrase = "text:text",
          .meaning = "Puts something loose into each copy.",
          .example = "add \"a pressed leaf\"",
          .many = true},
    Entry{.word = "pack",
          .under = "finish",
          .phrase = "[text:text]",
          .meaning = "Packs the finished copies, last of all.",
          .example = "pack \"ten to an envelope\""},
};

} // namespace

std::span<const Entry> finish_entries() { return entries; }

} // namespace bodkin::language
