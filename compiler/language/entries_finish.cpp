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
};

} // namespace

std::span<const Entry> finish_entries() { return entries; }

} // namespace bodkin::language
