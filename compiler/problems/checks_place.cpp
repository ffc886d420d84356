#include "problems/families.hpp"

namespace bodkin {
namespace {

constexpr Check table[] = {
    {"colour-on-black", Kind::note, "Something coloured stands on a black page",
     "A page that is printed in black shows colours as greys of the same brightness. Red "
     "letters on a yellow ground may both come out as mid-grey. The compiler makes the greys "
     "itself, so that the shop's machine never counts the side as a colour side.",
     "If you want the colour, ask for it; the message says what it costs. If you want the "
     "grey, say so with \"tone grey\".",
     "page 6 in colour\n"},
    {"colour-unused", Kind::warning, "A side is paid as colour and nothing on it is coloured",
     "One page that asks for colour makes its whole side a colour side, which costs several "
     "times as much as a black one. Here neither that page nor its neighbour has anything "
     "coloured on it. The message says what the run pays for nothing.",
     "Take \"in colour\" off the page.", "page 6\n"},
    {"hard-to-read", Kind::warning, "Words are hard to read on what lies under them",
     "Words are read by the difference in brightness between ink and ground. Where that is "
     "less than three to one, as with dark letters over the dark part of a photograph or grey "
     "on rose, many readers give up. The compiler looks at the picture under the words "
     "themselves and says how large a share of them is hard to read.",
     "Move the words to a quiet part of the picture, lay a white patch under them, or print "
     "them in white on a dark ground.",
     "patch\n"
     "  at       0.5in 6in, 4.5in x 1in\n"
     "  fill     white\n"},
    {"margins-meet", Kind::error, "The margins leave no type area",
     "The margins are measured from the four edges of the page, and the words stand between "
     "them. On a page this small these meet or cross, and nothing is left in the middle.",
     "Write smaller margins.",
     "edition \"Bus Notes\"\n"
     "  margins    3/8in\n"},
    {"near-the-knife", Kind::warning, "Words stand close to the cut",
     "A knife set by hand wanders by a sixteenth of an inch from copy to copy. Words, page "
     "numbers and codes less than an eighth of an inch from a cut look cut off in some copies, "
     "even where nothing is lost.",
     "Keep words inside the margins, or cut less off.",
     "running numbers\n"
     "  folio in label\n"
     "    at       1/2in from outer, 1/4in from foot, 1in x 0.2in\n"},
    {"not-a-spread", Kind::error, "These two pages do not face each other",
     "In an open booklet the page at the left of the fold has an even number, and the one at "
     "the right is the next. Pages 5 and 6 are the two faces of one leaf, so nobody ever sees "
     "both at once. On the outside, the back cover lies beside the front.",
     "Take an even page and the one after it.", "spread 10-11\n"},
    {"not-blank", Kind::error, "A page is called blank and is not",
     "The line \"blank\" says that a page carries nothing, so that running matter is left off "
     "it and a blank side is not charged. Here something stands on it all the same.",
     "Take out \"blank\", or what stands on the page.",
     "page 22\n"
     "  blank\n"},
    {"kept-apart", Kind::error, "Pages that are to keep together do not follow each other",
     "`stays with` makes one piece of pages, which `bodkin arrange` moves in the order that they "
     "stand in. Pages with others between them are no one piece.",
     "Name those between as well, or give the pages neighbouring numbers first.",
     "page 4\n"
     "  stays with 5-6\n"},
    {"stays-anyway", Kind::note, "A page of a piece stays in any case",
     "`bodkin arrange` changes the order of the book's pages alone. Those of a wrap or an insert "
     "are never moved, whether they say `stays` or not.",
     "Take the line out.",
     "page 4\n"
     "  stays\n"},
    {"off-the-page", Kind::error, "A thing stands outside its page",
     "Matter ends at the edge of its page. What passes the fold would land on the other page "
     "of the sheet, which is rarely the page that faces it; so only a spread may cross a fold. "
     "What passes the other edges is simply not there.",
     "Bring the place back into the page. For something across two facing pages, open them as "
     "a spread.",
     "spread 10-11\n"
     "  picture \"art/river.png\"\n"
     "    at       1/2in 2in, 10in x 3in\n"},
    {"page-twice", Kind::error, "One page is made in two places",
     "Each page is opened once. When two places in the file open page 13 and both give it "
     "words without a place, the words would print over each other; it also happens when two "
     "people each add a page and their files are put together.",
     "Give one of them another number, or bring the lines together under one.",
     "page 14\n"
     "  words of mender in body\n"},
    {"thin-line", Kind::warning, "A line is too thin to print well",
     "A line under a quarter of a point is about two dots of a copier wide. Toner does not lie "
     "evenly on it: it breaks up, and the copy of a copy loses it. In grey it is made of "
     "separate dots and shows as a row of them.",
     "Draw it at half a point or more.", "rule 1/2pt black, 0.5in 4in to 5in 4in\n"},
    {"too-long-code", Kind::error, "A square code cannot hold these words",
     "The largest square code holds 2,331 bytes at the level of error correction that survives a "
     "copier. One that would hold more does not exist, and long before that its squares are too "
     "small to be read from a copy.",
     "Put the address of a page into the code, and the words on that page.",
     "qr \"https://example.org/night-bus\"\n"
     "  at       28pt 28pt, 88pt x 88pt\n"},
    {"too-many-things", Kind::error, "There are more things than paper can show",
     "A page of ten thousand pictures, or page lists that name more pages than a library "
     "holds, come of a slip or of a program that wrote the manuscript. Laying all of it would "
     "only make you wait, so the compiler stops there and says so.",
     "Draw the many things as one picture, or make several editions of it.",
     "picture \"art/stars.svg\"\n"
     "  fills    live\n"},
    {"two-fill-margins", Kind::error, "Two texts fill the same margins",
     "Words that have no place of their own fill the type area of their page. Two of them on "
     "one page would print over each other.",
     "Give one of them, or both, a place.",
     "words of mender in body\n"
     "  at       1/2in 4in, 4.5in x 4in\n"},
    {"two-places", Kind::error, "One thing is given two places",
     "A place is given by its distances and size, by cells of the grid, or by what it fills: "
     "the page, the live area, the margins. These are different ways to say one thing, so only "
     "one of them may stand.",
     "Keep the line that is right, and take the other out.",
     "picture \"art/moon.png\"\n"
     "  cells    1-4 by 2-6\n"},
    {"unknown-page", Kind::error, "There is no such page",
     "A line points to a page that the edition does not have, or calls it by a name that no "
     "page bears. Pages get names by \"called\", or are one of cover, front-cover, "
     "inside-front, centre, inside-back and back-cover; most of those need the number of pages "
     "written.",
     "Use one of the names or numbers that there are, or open the page.",
     "page 12 called timetable\n"},
    {"unnamed-page", Kind::note, "A page is blank, because nothing names it",
     "The edition has more pages than the lines speak of. Such a page is left blank, with no "
     "running matter on it, and a side with nothing on it is not charged. Blank paper can be "
     "just what a booklet needs; the note is there in case it was forgotten.",
     "Open the page and say that it is blank, and the note goes away; or use it.",
     "page 22\n"
     "  blank\n"},
    {"unsafe-art", Kind::error, "Part of a picture will not print or will be cut off",
     "A machine leaves a bare edge round every sheet, often a quarter inch, and the knife "
     "takes another strip. Which edges of a page are edges of the sheet depends on where the "
     "page lies on it: a left-hand page may lose its left side to the bare edge, and nothing "
     "at its right, where the fold is. Thick booklets push their inner pages out, so that the "
     "knife takes more of them. The message says how much is lost, at which side, and why.",
     "Move or shrink the picture as the message says; or let it fill the live area, which is "
     "what surely prints. Ink to the very edge of a page, a bleed, is had where the knife takes "
     "at least the bare edge off: then `fills page`.",
     "page 4\n"
     "  picture \"art/moon.png\"\n"
     "    fills    live\n"},
    {"unsafe-words", Kind::error, "Words will not print or will be cut off",
     "Words that reach into the sheet's bare edge or under the knife lose letters. The true "
     "outline counts: a line that is turned by a few degrees needs room at its corners, though "
     "its box without the turn would fit.",
     "Move the words inwards by what the message says, or give them the margins as their place "
     "by leaving \"at\" away.",
     "page 3\n"
     "  words \"LAST BUS 1:10\" in poster\n"
     "    at       1/2in 1/2in, 4in x 2in\n"},
    {"words-on-words", Kind::warning, "Words lie on other words",
     "Two boxes of words cover the same piece of paper, and both have lines there. Pictures on "
     "pictures are collage, but words on words are only rarely meant.",
     "Move one of them, or make its place smaller.",
     "words \"NEXT STOP\" in label\n"
     "  at       0.5in 7in, 4in x 0.4in\n"},
};

} // namespace

std::span<const Check> checks_of_place() { return table; }

} // namespace bodkin
