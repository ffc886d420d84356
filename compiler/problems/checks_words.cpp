#include "problems/families.hpp"

namespace bodkin {
namespace {

constexpr Check table[] = {
    {"code-unstyled", Kind::note, "Typed words have no style of their own",
     "Words between backticks are meant to look typed. The style does not say in which style "
     "to set them, so they look like the rest.",
     "Add a line to the style.",
     "style body\n"
     "  code       in typewriter\n"},
    {"empty-words", Kind::error, "A file of words holds none",
     "The file is there and nothing is in it but white space, as after a save that went wrong. "
     "The pages that ask for its words would be printed empty, and paid.",
     "Write the words into it, or say that the page is blank.",
     "page 3\n"
     "  blank\n"},
    {"html-in-prose", Kind::error, "Tags stand inside running text",
     "Tags in angle brackets are for screens. On paper they would be printed as they stand, "
     "which nobody wants, so the compiler asks instead.",
     "Write *emphasis*, **strong** and # headings, or take the tags out. For an angle bracket "
     "that is meant, put a backslash before it.",
     "says\n"
     "  Three *last* umbrellas, 4 \\< 5.\n"},
    {"image-in-prose", Kind::error, "A picture stands inside running text",
     "Running text holds words only. A picture needs a place on the paper, a size and a "
     "description, which prose cannot say.",
     "Take it out of the text and give it a line on the page.",
     "picture \"art/umbrella.png\"\n"
     "  at       1in 5in, 2in x 2in\n"},
    {"left-over-text", Kind::error, "Words have no place left",
     "A text runs through the boxes that ask for it, and this one is longer than they are. "
     "Text is never made smaller and never cut off to fit: you would find out only in the "
     "printed copy. The message says how many lines and words are left, and the last words "
     "that were set.",
     "Give it another box or page, make a box larger, choose a smaller leading, or shorten the "
     "text.",
     "page 19\n"
     "  words of mender in body\n"},
    {"missing-cut", Kind::note, "This typeface has no italic or bold",
     "Emphasis in prose is set in the italic, strong words in the bold cut. This family lacks "
     "one, so its regular cut is used. Slanting or smearing the regular by machine looks poor "
     "in print and is not done.",
     "Leave the emphasis out, use a family that has the cut, or add the cut's file to the "
     "face.",
     "face book \"Book face\"\n"
     "  file       \"faces/Book-Regular.otf\", cut regular\n"
     "  file       \"faces/Book-Italic.otf\", cut italic\n"},
    {"missing-face", Kind::error, "This typeface is not here",
     "A typeface is taken by its exact name only. Another one in its place would change every "
     "line end of the edition, and on another computer it would be yet another; so none is "
     "ever put in silently.",
     "Install it (the message names the package where it is known), use a near one, or put its "
     "file into the edition's folder.",
     "face book from \"EB Garamond\"\n"},
    {"missing-glyph", Kind::error, "This typeface lacks a character",
     "Each typeface draws a certain set of characters. One that it lacks would print as an "
     "empty box. The message shows the character and where it stands.",
     "Use another character, or set those words in a style whose face has it.",
     "words \"Tickets → here\" in label\n"},
    {"no-paper-face", Kind::warning, "There is no face to set the papers of the making in",
     "The assembly guide, the ticket and the cards for the table are set in the faces of "
     "`styles/paperwork`, or in one of the edition's own. None of them is on this machine, so "
     "these PDFs are left out; their words are written as plain text all the same.",
     "Install the package that the message names, or set words of the edition in a face that is "
     "there.",
     "face book from \"EB Garamond\"\n"},
    {"number-in-a-text", Kind::error, "A copy's number stands in a text that runs on",
     "A text runs through its boxes from page to page. With the number of the copy in it, it would "
     "be a little longer in one copy than in another, and words might move from page to page: each "
     "sheet would be another in every copy, and be printed alone.",
     "Give the number words of its own, with a place that has room for the longest of them.",
     "page 8\n"
     "  words in label\n"
     "    at       1/2in 7in, 3in x 1/2in\n"
     "    says \"Copy [1](fact:copy) of [50](fact:copies)\"\n"},
    {"place-never-reached", Kind::error, "A box of this text is never reached",
     "The text jumps over this box, because an earlier one says that it continues on a later "
     "page. The box would stay empty however long the text is.",
     "Take the box out, or let the text continue on its page.",
     "words of mender in body\n"
     "  continues  9\n"},
    {"small-type", Kind::warning, "Type is too small to read",
     "Letters under 5 points are smaller than the small print of a contract. A copier fills in "
     "the loops of a, e and o at that size, and nobody over forty can read them.",
     "Set it in 6 points or more.",
     "style label\n"
     "  face       typed 7/9\n"},
    {"system-face", Kind::note, "This typeface comes from this computer",
     "The face is neither in the catalogue nor in the edition's folder; it happens to be "
     "installed here. On another computer it may be missing or be a different version with "
     "other line ends.",
     "If its licence allows it, copy the file into the folder and name it there.",
     "face odd from \"faces/Odd-Regular.ttf\"\n"},
    {"text-ends-early", Kind::note, "A text ends before its last box",
     "There are more boxes for this text than it fills, so the last ones stay empty. They cost "
     "nothing but white paper, which may be what you want.",
     "Take the empty box away, or write on.",
     "page 7\n"
     "  words of mender in body\n"},
    {"text-loop", Kind::error, "A text continues in a circle",
     "By \"continues\", the text goes on from one page to another, and then back to where it "
     "has been. A reader who follows it never comes to the end, nor does the compiler.",
     "Let the last box simply end.",
     "words of mender in body\n"
     "  continues  17\n"},
    {"unknown-fact", Kind::error, "There is no such fact to fill in",
     "A link to a fact is filled in by the compiler, so that \"40 copies\" in the colophon is "
     "always true. The facts are title, subtitle, number, dated, maker, series, copies, price, "
     "pages and copy, a copy's own number. Only facts that the edition has written down can be "
     "filled in, and only where they are links of running text; bare or in quotes they are printed "
     "as they stand.",
     "Use one of these, or write the fact under edition.",
     "says\n"
     "  [40](fact:copies) copies were made.\n"},
    {"unreadable-face", Kind::error, "A typeface's file cannot be read",
     "The file is there, but it is no typeface, it is damaged, or it is a kind that cannot be "
     "printed large and small alike. Files ending in .otf, .ttf, .otc and .ttc can be read.",
     "Fetch the file again from where it came, or use another.",
     "face book from \"faces/Book-Regular.otf\"\n"},
    {"verse-as-code", Kind::warning, "Verse stands four spaces in",
     "In running text, lines that stand four spaces in are read as a program's text: typed "
     "letters, every space kept. Verse that is pasted in often arrives like that.",
     "Move the lines to the edge of the text and end each with a backslash, so that the line "
     "ends stay.",
     "says\n"
     "  The last bus has its lights on,\\\n"
     "  and nobody inside.\n"},
};

} // namespace

std::span<const Check> checks_of_words() { return table; }

} // namespace bodkin
