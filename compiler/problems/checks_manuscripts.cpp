#include "problems/families.hpp"

namespace bodkin {
namespace {

constexpr Check table[] = {
    {"colon-after-word", Kind::error, "A colon stands after the first word",
     "Other forms write \"size: half-letter\". Here a space is enough, and the colon is in the "
     "way.",
     "Take the colon out.", "size       half-letter\n"},
    {"curly-quotes", Kind::error, "These quotes are curly",
     "A word processor or a telephone bends straight quotes into curly ones. Names of files "
     "and short texts stand in straight quotes. In running text curly quotes are right, and "
     "stay as they are.",
     "Type straight quotes.", "picture \"art/umbrella.png\"\n"},
    {"malformed-bytes", Kind::error, "The file is not plain text",
     "A manuscript is plain text in UTF-8. Here are bytes that mean nothing in it. Usually the "
     "file was saved by a word processor in its own form, or by an old program in another "
     "encoding. The message says at which byte.",
     "Open the file in a text editor and save it as plain text, UTF-8.", "edition \"Bus Notes\"\n"},
    {"missing-edition", Kind::error, "The file holds no edition",
     "A file that is compiled says what edition it is: its title and, below it, size, run, "
     "paper and machine. A file that others borrow from has no edition, and cannot be compiled "
     "by itself.",
     "Compile the file that has the edition, or add one.",
     "edition \"Bus Notes\"\n"
     "  size       half-letter\n"
     "  run        40 copies\n"
     "  paper      white\n"
     "  machine    corner-copier\n"},
    {"missing-fact", Kind::error, "A fact is missing that must be written",
     "Most things have a default, and the reports say which were used. A few have none, "
     "because a guess would be wrong for most people: the size of a page, the number of "
     "copies, the paper, the machine, the face of a style.",
     "Add the line.",
     "edition \"Bus Notes\"\n"
     "  run        40 copies, 2 spare\n"},
    {"missing-part", Kind::error, "Something is missing on this line",
     "The line begins well and then stops, or leaves out a part in the middle: a place without "
     "its size, a price without \"a copy\". The compiler does not guess the rest, since a "
     "guess would be printed.",
     "Add the part; the message shows the whole line.", "at       1in 1in, 2in x 3in\n"},
    {"mixed-indent", Kind::error, "Spaces and tabs are mixed",
     "A tab looks like eight spaces in one program and like two in another, so nobody can say "
     "what a line belongs to when its neighbours begin with spaces. Each block uses one or the "
     "other.",
     "Begin the line with the same spaces or tabs as the one above.",
     "page 1\n"
     "  folio in label\n"},
    {"more-problems", Kind::note, "There are more problems than are shown",
     "One slip is often repeated: a name that is spelt wrong at its one definition is wrong "
     "wherever it stands. After the first thousand problems, the rest is only counted.",
     "Mend the ones at the top and run it again.",
     "stock cream\n"
     "  weight     28 lb bond\n"},
    {"not-here", Kind::error, "This line stands under the wrong thing",
     "How deep a line is indented says what it belongs to. This line belongs to a thing that "
     "is near by, but its indentation puts it under, or beside, something else: two spaces too "
     "few or too many are enough.",
     "Indent it as the message shows.",
     "page 6\n"
     "  qr \"https://example.org/bus\"\n"
     "    at       4in 7in, 1in x 1in\n"},
    {"same-fact-twice", Kind::error, "One fact is stated twice",
     "Each fact is written once, so that there is never a question which line counts. Two "
     "lines that say the same fact are often the trace of two people's changes put together.",
     "Keep the line that is right and take the other out.",
     "edition \"Bus Notes\"\n"
     "  size       half-letter\n"},
    {"too-deep", Kind::error, "Lines are nested too deep",
     "A line under a line under a line is enough for five levels: an edition never needs more. "
     "This goes far beyond, so it is a slip of the space bar, or no manuscript.",
     "Start the line less far to the right.",
     "page 1\n"
     "  picture \"art/moon.png\"\n"
     "    fills    live\n"},
    {"unknown-kind", Kind::error, "What follows the word does not fit it",
     "Each word is followed by things of certain kinds: a length, a name, a text in quotes, a "
     "price. Here another kind stands in that place, a name where a text belongs, for example. "
     "The message says what fits, with a whole line as it could be.",
     "Copy the shape of the example in the message, or ask \"bodkin explain\" with the word.",
     "price      $5 a copy\n"},
    {"unknown-word", Kind::error, "This word is not known here",
     "Every line begins with a word that says what it is about. This one is misspelt, or it "
     "belongs somewhere else: \"staple\", for example, stands under finish and not under page. "
     "The message names the words that fit here, and the nearest one.",
     "Type the word that you meant. \"bodkin explain\" with a word tells where it may stand.",
     "picture \"art/moon.png\"\n"
     "  describe \"The moon over a roof\"\n"},
};

} // namespace

std::span<const Check> checks_of_manuscripts() { return table; }

} // namespace bodkin
