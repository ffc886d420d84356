#include "problems/families.hpp"

namespace bodkin {
namespace {

constexpr Check table[] = {
    {"band-too-long", Kind::error, "The paper is too short for the band",
     "A belly band goes once round the trimmed copy, over its back, spine, front and fore-edge, "
     "and "
     "a strip of it is glued under its own end. Half-letter pages ask nearly a foot of paper, more "
     "than a letter sheet has.",
     "Print it on a paper with longer sheets, such as legal or tabloid, or make the overlap "
     "smaller.",
     "insert band\n"
     "  goes       round\n"
     "  height     2in\n"
     "  paper      long\n"},
    {"empty-in-a-run", Kind::note, "A page is blank in the copies of one run",
     "All that stands on the page is for another run alone, by `only`. The page is there in every "
     "copy, since all copies have the same pages, and here nothing is printed on it.",
     "Give the page something in these copies too, or leave it: a blank page is a page.",
     "page 11\n"
     "  words \"Signed by the three singers\" in label\n"
     "    only     de-luxe\n"
     "  words \"The end\" in label\n"
     "    only     plain\n"},
    {"hidden-art", Kind::error, "Something is glued over words or a picture",
     "A pocket hides for good what lies under it, a board the whole page that it is glued to, and "
     "a "
     "leaf that is tipped in hides what lies under its strip of glue. Grounds of plain colour and "
     "rules may run under them; what is read or looked at may not.",
     "Move what is hidden to where the page is free, or move the piece by its own `at`.",
     "insert sleeve\n"
     "  size       4in x 3in\n"
     "  flaps      1/2in, open head\n"
     "  goes       on 8\n"
     "  at         centred, 1/2in from foot\n"},
    {"holds-itself", Kind::error, "A piece would lie in itself",
     "A piece that goes in another lies in its pocket. No pocket can lie in what is put into it, "
     "however many lie between.",
     "Let one of them go on a page or lie loose.",
     "insert card\n"
     "  size       3in x 2in\n"
     "  goes       in sleeve\n"},
    {"two-spines", Kind::error, "One wrap does not go round two books",
     "Two books stapled back to back open from opposite sides: where the one has its spine the "
     "other has its fore-edge. A wrap has one fold and goes round one spine, so that it would "
     "hold one of them shut.",
     "Give the outermost sheet of each book the paper of a cover.", "page 1 on board\n"},
    {"knife-through-fold", Kind::error, "The knife would cut a fold-out apart",
     "What goes at the centre lies in the pile when the fore-edge is cut. A fold that reaches past "
     "the cut is cut off, and the panel behind it falls out. The sheets of the book push the "
     "centre "
     "out a little more, by their calipers.",
     "Make the panels that fold in narrower than the trimmed page, or do not trim the fore-edge.",
     "folding fold-out \"A centre fold-out\"\n"
     "  sheet      legal, across\n"
     "  sheets     1\n"
     "  panels     3 by 1\n"
     "  widths     22, 21, 13\n"
     "  fold       right over left, 1 panel\n"
     "  fold       right over left, 1 panel\n"},
    {"not-a-pocket", Kind::error, "Only a pocket holds another piece",
     "A pocket is a piece that goes on a page and has flaps that it is glued by. Other pieces have "
     "no inside to put anything in.",
     "Give the piece flaps and a page to go on, or let the other lie loose.",
     "insert sleeve\n"
     "  size       4in x 3in\n"
     "  flaps      1/2in, open head\n"
     "  goes       on 8\n"},
    {"not-for-this-piece", Kind::error, "A fact that means nothing here",
     "Some facts belong to one sort of piece alone. A band has a height and an overlap and says no "
     "size, and what stands on it may name a panel. Flaps make a pocket, glue holds a leaf that is "
     "tipped in, and only what is glued on a page has a place there.",
     "Take the line out, or say where the piece goes so that it means something.",
     "insert band\n"
     "  goes       round\n"
     "  height     2in\n"},
    {"only-in-a-piece", Kind::error, "A part of a piece is for one run alone",
     "The book is laid for each run where its sheets differ. An insert, a wrap or a reverse is "
     "laid "
     "once, as it is, and goes into all copies or into those of one run.",
     "Make two of the piece, each with `only` below it, and let each hold what its copies have.",
     "insert card \"A card to sow\"\n"
     "  only       de-luxe\n"
     "  size       quarter-letter\n"
     "  page 1\n"
     "    words \"Sow this in May\" in label\n"},
    {"out-of-reach", Kind::error, "No reader gets to where it goes",
     "A reader turns leaves. Between the two sides of one leaf there is no room, the inside of a "
     "double leaf is not met, pages that a fold keeps shut do not come apart unless it is cut, and "
     "behind the last page the copy ends.",
     "Let it go after the left-hand page of two that face each other, or cut the fold that shuts "
     "them.",
     "insert slip\n"
     "  size       quarter-letter\n"
     "  goes       after 4\n"},
    {"sticks-out", Kind::error, "What is glued on a page sticks out of it",
     "A leaf or a pocket is glued on when the copy is trimmed, so it has to lie within the page "
     "that "
     "the knife leaves. Its place is counted on the page before the knife, like all places.",
     "Move it in, or make it smaller.",
     "insert card\n"
     "  size       3in x 4in\n"
     "  goes       on 5\n"
     "  at         1/2in from inner, 1in\n"},
};

} // namespace

std::span<const Check> checks_of_pieces() { return table; }

} // namespace bodkin
