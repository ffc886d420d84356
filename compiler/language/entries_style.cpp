#include "language/vocabulary_table.hpp"

#include <array>

namespace bodkin::language {
namespace {

constexpr std::array entries{
    Entry{.word = "face",
          .under = "style",
          .phrase = "face:name size:typesize",
          .fallback = "leading 1.2 times the size",
          .meaning =
              "The face, its size and the leading from line to line, in points; must be written.",
          .example = "face book 10.5/13"},
    Entry{.word = "lines",
          .under = "style",
          .phrase = "lines:left|right|centred|justified",
          .fallback = "left",
          .meaning = "How lines stand: ranged left or right, centred, or justified to both edges.",
          .example = "lines justified"},
    Entry{.word = "ink",
          .under = "style",
          .phrase = "ink:colour",
          .fallback = "black",
          .meaning = "The colour of the words.",
          .example = "ink #c8102e"},
    Entry{.word = "indent",
          .under = "style",
          .phrase = "indent:length",
          .fallback = "1em",
          .meaning =
              "How far a paragraph's first line stands in; not the first paragraph's, nor one "
              "after a heading, list, quote or break.",
          .example = "indent 12pt"},
    Entry{.word = "space",
          .under = "style",
          .phrase = "( before:length before [, after:length after] / after:length after )",
          .fallback = "0",
          .meaning = "Room above and below each paragraph; none at a place's top.",
          .example = "space 6pt before, 0pt after"},
    Entry{.word = "figures",
          .under = "style",
          .phrase = "figures:lining|old-style",
          .fallback = "as the face has them",
          .meaning =
              "Figures as tall as capitals, or with tails like small letters, where the face "
              "has both.",
          .example = "figures lining"},
    Entry{.word = "heading",
          .under = "style",
          .phrase = "level:count in style:name",
          .fallback = "own face in bold, larger",
          .meaning = "The style of headings of a level, 1 to 6.",
          .example = "heading 1 in masthead",
          .many = true},
    Entry{.word = "quote",
          .under = "style",
          .phrase = "in style:name",
          .fallback = "own style",
          .meaning = "The style of quoted paragraphs.",
          .example = "quote in letter"},
    Entry{.word = "list",
          .under = "style",
          .phrase = "in style:name",
          .fallback = "own style",
          .meaning = "The style of lists.",
          .example = "list in body"},
    Entry{.word = "code",
          .under = "style",
          .phrase = "in style:name",
          .fallback = "own style",
          .meaning = "The style of what stands between backticks.",
          .example = "code in label"},
};

} // namespace

std::span<const Entry> style_entries() { return entries; }

} // namespace bodkin::language
