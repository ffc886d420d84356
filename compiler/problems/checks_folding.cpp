#include "problems/families.hpp"

namespace bodkin {
namespace {

constexpr Check table[] = {
    {"cheaper-up", Kind::note, "Another number on one sheet costs less",
     "A book or a piece laid several up shares the sheets and the printed sides that it is cut "
     "from. The compiler lays each number that the paper has room for, upright and across, and on "
     "every sheet that the same paper comes in here under another name; it prices the whole run "
     "for each, and says the cheapest where it is not the one written. Sheets that the machine "
     "does not take, or has no price for, are left out.",
     "Type the number, or \"up most\", and look at the proof: the outer ones lie nearer to the "
     "sheet's edge, where a machine leaves paper bare. Cutting more apart is more work for you.",
     "insert slip\n"
     "  size       4.25in x 5.5in\n"
     "  up         1\n"},
    {"up-chosen", Kind::note, "How many are laid on one sheet",
     "\"up most\" leaves the number to the compiler, which lays each that the paper has room for, "
     "upright and across, and takes the one that makes the run cheapest. It says the number, since "
     "so many are cut apart.",
     "Nothing, or type the number to keep it.",
     "insert slip\n"
     "  size       4.25in x 5.5in\n"
     "  up         most\n"},
    {"does-not-go-up", Kind::error, "So many do not go on one sheet",
     "A piece laid several up is printed that many times on each sheet and cut apart afterwards, "
     "in even columns and rows so that a guillotine goes straight through. The compiler tries "
     "every "
     "number of columns, with the paper upright and lying across.",
     "Lay fewer of them on a sheet, make the piece smaller, or choose a paper with larger sheets.",
     "insert slip\n"
     "  size       4.25in x 5.5in\n"
     "  up         4\n"},
    {"panel-buckles", Kind::warning, "A panel folded in has no room",
     "A flap that is folded in ends inside a later fold: in a letter fold the first flap lies "
     "within the crease of the second. A crease goes round whatever paper lies in it, so that the "
     "flap must be narrower than the panel that it lies on, by the thickness of the paper at the "
     "least and a hair more for hands that fold. As wide as the others it is pushed from the "
     "crease and stands in a bow, or the crease cracks. The compiler folds the sheet as wide as "
     "its panels are and looks at every end that lies within a fold made after it.",
     "Make the panel narrower; the others share what it gives up, and its pages are as narrow as "
     "it is.",
     "folding letter \"Folded twice like a letter\"\n"
     "  panels     3 by 1\n"
     "  narrow     column 3 by 1/16in\n"
     "  fold       right over left, 1 panel\n"
     "  fold       left over right, 1 panel\n"},
    {"flaps-meet", Kind::note, "Two flaps push each other up",
     "Flaps that are folded in from either side meet like a gate. Cut to meet exactly, one of them "
     "is always folded a hair too far, and the two ends push each other up.",
     "Make both a little narrower.",
     "folding gate \"A flap folded in from either side\"\n"
     "  panels     3 by 1\n"
     "  widths     1, 2, 1\n"
     "  narrow     column 1 by 1/32in\n"
     "  narrow     column 3 by 1/32in\n"
     "  fold       left over right, 1 panel\n"
     "  fold       right over left, 1 panel\n"},
    {"leaf-not-held", Kind::error, "A leaf would fall out of the book",
     "Leaves that turn about a spine must hang in it: at the crease of the last fold, or at the "
     "edge that \"spine\" names when they are stapled, sewn or glued there. The compiler folds the "
     "sheet, cuts open the folds that a knife opens, and looks whether each leaf still hangs. A "
     "flap that only hangs on another flap would fall out.",
     "If a reader unfolds the sheet instead of turning leaves, say so. Else let the last fold be "
     "the one that all leaves share, or say at which edge they are bound.",
     "folding gate \"One sheet, two flaps\"\n"
     "  panels     4 by 1\n"
     "  fold       left over right, 1 panel\n"
     "  fold       right over left, 1 panel\n"
     "  fold       left over right\n"
     "  opens      fold by fold\n"},
    {"no-reverse", Kind::error, "There is no reverse to print on",
     "Foldings such as the mini from one sheet put all pages on one side; unfolded, the other side "
     "is one large page, and \"reverse\" says what stands on it. A folding that prints both sides "
     "has no such side left, and one that is laid several up no whole sheet.",
     "Choose a folding that prints one side, one on a sheet, or make the poster an insert.",
     "insert poster\n"
     "  size       letter\n"
     "  goes       loose\n"},
    {"page-claimed-twice", Kind::error, "Two panels cannot hold one page",
     "Where folding alone cannot say how the pages of a sheet are numbered, \"front\" and \"back\" "
     "tell them, row by row as you see each side. Every panel then holds one page and every page "
     "one panel: a number told twice would lie in two places, and another would have none.",
     "Fold a sheet, number its panels in pencil in the order in which you want them read, unfold "
     "it and copy the numbers, the back as you see it when the sheet is turned like a leaf.",
     "folding letter \"A letter, numbered my own way\"\n"
     "  sheets     1\n"
     "  panels     3 by 1\n"
     "  fold       right over left, 1 panel\n"
     "  fold       left over right, 1 panel\n"
     "  front      2, 6, 1\n"
     "  back       3, 4, 5\n"},
    {"page-out-of-sight", Kind::error, "A page no reader would see",
     "A folding that prints one side hides the other: every fold that stays shut must have the "
     "blank side inside, and every opening must show the printed one. The compiler opens the "
     "folded sheet as a reader would and finds a page that stays inside a shut fold, or a blank "
     "side where a page should be.",
     "Fold the other way (over for under), or let pages stand on both sides; folds at head and "
     "fore-edge are then cut open. Two loose ends of a strip that lie back to back are pasted.",
     "folding french \"One sheet, printed on one side, folded twice\"\n"
     "  sides      1\n"
     "  panels     2 by 2\n"
     "  fold       top under bottom\n"
     "  fold       left under right\n"},
    {"panel-falls-off", Kind::error, "The slits cut a piece loose",
     "A slit parts two neighbouring panels and leaves them hanging on others. Slits that together "
     "run all round a panel, or from edge to edge, cut the sheet into pieces, and a piece cannot "
     "be folded with the rest.",
     "Let each slit end one panel before the edge, or before the next slit.",
     "folding meander \"A winding strip\"\n"
     "  panels     4 by 2\n"
     "  cut        between rows 1 and 2, columns 1 to 3\n"
     "  fold       back and forth\n"},
    {"paper-through-paper", Kind::error, "Paper would have to pass through paper",
     "The compiler keeps the order of all layers while it folds. Two folds in one line lie beside "
     "each other or one in the other, paper that goes on past a line does not come out through a "
     "fold there, and what hangs together is not torn apart. A step that breaks one of these can "
     "be written but not done.",
     "Fold a sheet along with the lines until the step that does not go, and mend that step or "
     "the slits before it. The command \"bodkin sheets --svg\" draws the stages.",
     "folding mini \"Eight pages from one sheet\"\n"
     "  sides      1\n"
     "  panels     4 by 2\n"
     "  cut        between rows 1 and 2, columns 2 to 3\n"
     "  fold       top under bottom\n"
     "  push       ends together\n"},
    {"piece-too-large", Kind::error, "A piece stands out of the copy",
     "What is laid loose into a copy, gathered into it or tipped in after the knife has to be no "
     "larger than the trimmed page, or it is bent in the first bag. What goes at the centre, or "
     "round the book, is bound in before the knife comes and cut with it.",
     "Make the piece smaller, fold it once more, or let it go at the centre.",
     "insert map\n"
     "  size       half-letter\n"
     "  goes       loose\n"},
    {"sheet-too-small", Kind::error, "The sheet is too small for its panels",
     "A tab takes its width off each sheet before the panels are parted, and a narrower column or "
     "row gives up its width to the others. On this sheet nothing is left for a panel.",
     "Make the tab or the difference smaller, or buy a larger sheet.",
     "folding strip \"A strip of glued sheets\"\n"
     "  panels     4 by 1\n"
     "  tab        1/2in at right\n"
     "  fold       back and forth\n"},
    {"slit-across-fold", Kind::error, "A slit across a fold",
     "Slits are told on the flat sheet, by its rows and columns. Once paper lies folded, a knife "
     "goes through every layer below it and cuts across the folds that join them, which is another "
     "sheet than the one meant.",
     "Put the cut on a line before the first fold.",
     "folding mini \"Eight pages from one sheet\"\n"
     "  sides      1\n"
     "  panels     4 by 2\n"
     "  cut        between rows 1 and 2, columns 2 to 3\n"
     "  fold       top under bottom\n"
     "  push       ends together\n"},
    {"too-thick", Kind::error, "Too thick to be folded",
     "Paper folds up to about the thickness of a postcard. Board a centimetre thick bends and "
     "breaks, and sheets so thick push each other out of the fold until the inner pages are half "
     "their width past the outer ones. Most often the unit of a caliper is wrong: thousandths of "
     "an inch typed as inches.",
     "Look at the caliper of the stock; ordinary office paper is about 0.004in, card 0.01in.",
     "stock board\n"
     "  weight     65 lb cover\n"
     "  caliper    0.0095in\n"},
    {"wrap-too-narrow", Kind::error, "The wrap does not reach round the book",
     "A book that is gathered leaf by leaf or section by section has a back as thick as all its "
     "leaves. A wrap needs that much paper between its two covers, and a fold on either side.",
     "Wrap it in a paper with larger sheets, or make the pages of the book narrower.",
     "wrap on board\n"
     "  page front-cover\n"
     "    blank\n"},
};

} // namespace

std::span<const Check> checks_of_folding() { return table; }

} // namespace bodkin
