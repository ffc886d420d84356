#include "problems/families.hpp"

namespace bodkin {
namespace {

constexpr Check table[] = {
    {"borrow-loop", Kind::error, "Files borrow from each other in a circle",
     "One file borrows a second, and the second borrows the first again, so there is no end to "
     "it. The message names every file of the circle.",
     "Put what both need into a third file that borrows neither.",
     "borrow \"our-papers.bodkin\"\n"},
    {"duplicate-name", Kind::error, "Two things bear one name",
     "A name stands for one thing of its kind. With two papers called cream, a page \"on "
     "cream\" could be either.",
     "Give one of them another name, or take it out.",
     "stock cream\n"
     "stock pale-cream\n"},
    {"later-borrow", Kind::note, "Two borrowed files hold the same name",
     "Two files that the edition borrows both hold a thing of this name. The file that is "
     "borrowed later counts, and the other's thing is left out.",
     "Nothing needs doing if that is the one you mean; otherwise change the order of the "
     "borrow lines.",
     "borrow \"stocks/us\"\n"
     "borrow \"our-papers.bodkin\"\n"},
    {"lay-loop", Kind::error, "A kept piece would lay itself",
     "A standing piece may hold other pieces, but not itself, nor one that holds it: there "
     "would be no end to it, like a mirror in a mirror. It would never be drawn.",
     "Take out the line that lays it again.",
     "standing imprint\n"
     "  words \"WET UMBRELLA PRESS\" in label\n"
     "    at       0.1in 0.1in, 1.6in x 0.3in\n"},
    {"like-loop", Kind::error, "Things are like each other in a circle",
     "\"like\" copies the facts of another thing and lets the lines below replace some. Two "
     "things that are each like the other have nothing to copy.",
     "Write one of them out.",
     "style label\n"
     "  face       typed 9/11\n"
     "style small-label like label\n"
     "  face       typed 7/9\n"},
    {"missing-shelf", Kind::error, "There is nothing of this name on the shelf",
     "A borrowed name without an ending means a file of the shelf that comes with the program. "
     "This one is not on it. A file of your own is named with its ending.",
     "Use one of the names in the message, or write the ending.",
     "borrow \"stocks/us\"\n"
     "borrow \"our-papers.bodkin\"\n"},
    {"not-borrowed", Kind::error, "A borrowed file holds something that cannot be borrowed",
     "What others borrow is papers, machines, faces, styles and standing matter. An edition, "
     "its pages and its finish belong to one booklet, and stand in its own file.",
     "Move these lines into the edition's file, or take them out.",
     "stock cream\n"
     "  weight     28 lb bond\n"},
    {"own-beats-shelf", Kind::note, "Your own thing replaces a borrowed one",
     "A borrowed file and the edition both hold something of this name. The edition's own "
     "counts. That is a good way to adapt the shelf; the note is there for when it happened by "
     "chance.",
     "Nothing needs doing if it was meant; otherwise give yours another name.",
     "stock cream\n"
     "  weight     24 lb bond\n"},
    {"unknown-name", Kind::error, "Nothing bears this name",
     "The line asks for a stock, a style, a face or another thing by a name that nothing in "
     "the edition, and nothing that it borrows, bears. The message gives the nearest names, or "
     "the line that would borrow it.",
     "Correct the name, write the thing, or borrow the file that holds it.",
     "borrow \"stocks/us\"\n"},
    {"unused-paper", Kind::note, "No sheet is printed on this paper",
     "The edition has a paper that no sheet asks for, so none needs to be bought. A cover "
     "paper with the line \"cover\" forgotten looks like this.",
     "Ask for it by \"paper\", \"cover\" or \"page … on\", or take it out.", "page 4 on rose\n"},
    {"unused-thing", Kind::note, "Nothing uses this",
     "A style, a face, a text or a kept piece stands in the edition, and no line asks for it. "
     "It does no harm.",
     "Use it or take it out. Look whether it is asked for under another spelling.",
     "words of timetable in body\n"},
};

} // namespace

std::span<const Check> checks_of_names() { return table; }

} // namespace bodkin
