#include "problems/families.hpp"

namespace bodkin {
namespace {

constexpr Check table[] = {
    {"counts-differ", Kind::error, "There are not as many numbers as copies",
     "A numbered edition gives each good copy a number of its own and tells how many there are. "
     "Spares stand in for spoilt sheets and get none. Words that say \"copy 21 of 20\" are warned "
     "of: fact:copies is what this printing makes, and numbers may begin further on.",
     "Let the numbers run over as many as the copies of the run, or leave the line out: they then "
     "go from 1 to the last copy.",
     "edition \"Bus Notes\"\n"
     "  run        50 copies, 3 spare\n"
     "page 8\n"
     "  hand number \"in pencil\"\n"
     "    counts   1-50\n"},
    {"hole-through-words", Kind::warning, "A punched hole goes through words",
     "A punch goes through every leaf at the same distance from the spine. An ordinary office "
     "punch takes a quarter of an inch out, an eighth to each side of the hole's middle, and "
     "whatever was printed there falls into the box.",
     "Give the pages a wider inner margin, move the words, or punch nearer to the spine.",
     "edition \"Bus Notes\"\n"
     "  margins    inner 3/4in, outer 1/2in, head 1/2in, foot 1/2in\n"
     "finish\n"
     "  punch      2 holes, 3/8in from spine, 2 7/8in from head and foot\n"},
    {"long-staple", Kind::note, "The staple is too long for the pile",
     "The legs of a staple meet in the middle when they bend over. Legs that are much longer "
     "than the pile is thick cross each other, stand up from the centre pages and scratch the "
     "reader's fingers.",
     "Take staples with shorter legs.",
     "finish\n"
     "  staple     2, leg 1/4in, 2 1/8in from head and foot\n"},
    {"numbers-nowhere", Kind::note, "Copies are numbered, and no copy shows its number",
     "The line says which numbers the good copies have. They get there printed, where words say "
     "[1](fact:copy), or by hand, where a page says so. Here neither is asked for.",
     "Print the number on a page or on an insert, have it written in, or take the line out.",
     "page 8\n"
     "  words in label\n"
     "    says \"Copy [1](fact:copy) of [50](fact:copies)\"\n"},
    {"off-the-copy", Kind::error, "A staple, hole or corner has no room on the copy",
     "Staples and holes are told by how far the outer ones are from head and foot. On a copy of 8 "
     "1/2 inches, places 5 inches from both would pass each other in the middle. A hole must lie "
     "between spine and fore-edge, and a rounded corner may take half of an edge at the most, "
     "since there is another at its other end. The copy is as high as it is when the line's turn "
     "comes: after the trims that stand above it.",
     "Put them nearer to head and foot, or nearer to the spine; a quarter of the height is usual "
     "for two staples.",
     "finish\n"
     "  staple     2, leg 1/4in, 2 1/8in from head and foot\n"
     "  round      2 corners, radius 1/4in\n"},
    {"order-of-finish", Kind::error, "This work cannot follow that work",
     "The lines under finish are done from the top down, on each copy. Some orders cannot be: "
     "a crease pressed after the fold is too late, what is stapled can no longer be gathered, "
     "and what is cut before it is stapled will not be flush afterwards. Holes are punched through "
     "the folded copy, corners rounded after the knife, and what ties the copy comes last.",
     "Put the lines in the order in which hands do them: collate, crease, fold, punch, staple or "
     "sew or glue, trim, round, tie, add, pack.",
     "finish\n"
     "  collate\n"
     "  crease     cover\n"
     "  fold       all\n"
     "  staple     2, leg 1/4in, 2 1/8in from head and foot\n"
     "  trim       fore-edge 1/8in\n"},
    {"sewing-holes", Kind::error, "It is not clear where the needle goes",
     "Sewing through the fold, a needle goes in at one place of the spine fold and out at another, "
     "and each place is a hole: three or five for a booklet. A copy sewn through its side has its "
     "holes in its folding, because its pages must keep clear of them. And what only folds to and "
     "fro has no fold that leaves hang in, so there is nothing to sew.",
     "Say how many holes and where, or leave it to the folding by writing sew alone.",
     "finish\n"
     "  sew        3 holes, 1in from head and foot\n"},
    {"stage-never-comes", Kind::error, "This work waits for a stage that no copy reaches",
     "Work on a page may wait until the copy is folded, bound or trimmed. An edition whose finish "
     "has no such step would wait for ever, and the plan of the evening would leave it out.",
     "Say another stage, or write the step under finish.",
     "page 1\n"
     "  hand stamp \"moon\"\n"
     "    when     trimmed\n"
     "finish\n"
     "  trim       fore-edge 1/8in\n"},
    {"trimmed-away", Kind::error, "The knife takes more than it leaves",
     "A trim line says how much is cut off at each edge, not how large the page becomes. Where "
     "nothing of the page would be left it is an error; where less than half would be, a "
     "warning.",
     "Write what is cut off: an eighth of an inch is usual after stapling.",
     "finish\n"
     "  trim       fore-edge 1/8in, head 1/8in, foot 1/8in\n"},
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
