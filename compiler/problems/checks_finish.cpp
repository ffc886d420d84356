#include "problems/families.hpp"

namespace bodkin {
namespace {

constexpr Check table[] = {
    {"long-staple", Kind::note, "The staple is too long for the pile",
     "The legs of a staple meet in the middle when they bend over. Legs that are much longer "
     "than the pile is thick cross each other, stand up from the centre pages and scratch the "
     "reader's fingers.",
     "Take staples with shorter legs.",
     "finish\n"
     "  staple     2, leg 1/4in, 2 1/8in from head and foot\n"},
    {"order-of-finish", Kind::error, "This work cannot follow that work",
     "The lines under finish are done from the top down, on each copy. Some orders cannot be: "
     "a crease pressed after the fold is too late, what is stapled can no longer be gathered, "
     "and what is cut before it is stapled will not be flush afterwards.",
     "Put the lines in the order in which hands do them: collate, crease, fold, staple, trim.",
     "finish\n"
     "  collate\n"
     "  crease     cover\n"
     "  fold       all\n"
     "  staple     2, leg 1/4in, 2 1/8in from head and foot\n"
     "  trim       fore-edge 1/8in\n"},
    {"weak-staple", Kind::error, "The staple is too short for the pile",
     "A staple's legs go through all the sheets at the fold, and then bend over on the inside. "
     "What bends needs length: with less than a sixteenth of an inch left the staple holds "
     "nothing, and with less than an eighth it holds badly. The pile at the fold is the sum of "
     "the sheets' thicknesses, the card cover among them.",
     "Take staples with longer legs, or fewer or thinner sheets. A quarter inch leg is good "
     "for about an eighth of an inch of paper.",
     "finish\n"
     "  staple     2, leg 3/8in, 2 1/8in from head and foot\n"},
};

} // namespace

std::span<const Check> checks_of_finish() { return table; }

} // namespace bodkin
