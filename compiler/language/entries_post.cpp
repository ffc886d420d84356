#include "language/vocabulary_table.hpp"

#include <array>

namespace bodkin::language {
namespace {

constexpr std::array entries{
    Entry{.word = "mail",
          .under = "file",
          .phrase = "name:name [title:text] [like like:name]",
          .meaning =
              "A class of mail: how large, thick and heavy a piece may be, and what it costs "
              "by its mass.",
          .example = "mail letter \"Letter\"",
          .many = true},
    Entry{.word = "largest",
          .under = "mail",
          .phrase = "size:size [, thick:length thick]",
          .meaning = "The largest piece that the class takes, and how thick it may be.",
          .example = "largest 11 1/2in x 6 1/8in, 1/4in thick"},
    Entry{.word = "smallest",
          .under = "mail",
          .phrase = "size:size",
          .meaning = "The smallest piece that the class takes.",
          .example = "smallest 5in x 3 1/2in"},
    Entry{.word = "heaviest",
          .under = "mail",
          .phrase = "mass:mass",
          .fallback = "that of its last step",
          .meaning = "The heaviest piece that the class takes.",
          .example = "heaviest 3.5 oz"},
    Entry{.word = "step",
          .under = "mail",
          .phrase = "to:mass at price:rate",
          .meaning = "What a piece up to this mass costs.",
          .example = "step 1 oz at $0.80 each",
          .many = true},
    Entry{.word = "envelope",
          .under = "file",
          .phrase = "name:name [title:text] [like like:name]",
          .meaning = "What copies are sent in: it has a mass, a size and a price of its own.",
          .example = "envelope kraft \"Brown envelope\"",
          .many = true},
    Entry{.word = "size",
          .under = "envelope",
          .phrase = "size:size",
          .meaning = "Its size from outside, closed.",
          .example = "size 9in x 6in"},
    Entry{.word = "mass",
          .under = "envelope",
          .phrase = "mass:mass",
          .fallback = "0 g",
          .meaning = "What it weighs, empty.",
          .example = "mass 11 g"},
    Entry{.word = "thick",
          .under = "envelope",
          .phrase = "thick:length",
          .fallback = "0",
          .meaning = "How thick it is, empty and closed.",
          .example = "thick 1/32in"},
    Entry{.word = "costs",
          .under = "envelope",
          .phrase = "costs:rate",
          .meaning = "What one costs.",
          .example = "costs $0.12 each"},
    Entry{.word = "posts",
          .under = "edition",
          .phrase = "copies:count copy:copies|copy [, together:count together] [in envelope:name] "
                    "[by mail:name]",
          .meaning = "Copies that are sent by post, perhaps several together: `post.txt` tells "
                     "which class takes them and what it costs.",
          .example = "posts 30 copies, 10 together in kraft by letter",
          .many = true},
};

} // namespace

std::span<const Entry> post_entries() { return entries; }

} // namespace bodkin::language
