#include "problems/families.hpp"

namespace bodkin {
namespace {

constexpr Check table[] = {
    {"cross-grain", Kind::note, "The fold runs across the grain",
     "The fibres of paper lie mostly in one direction, the grain. Paper folds cleanly along it "
     "and cracks across it. Letter paper usually has its grain along the 11 inches, so a "
     "letter sheet folded to a booklet is folded across. On thin paper you will hardly see it; "
     "from 120 grams on the spine looks rough and the booklet springs open.",
     "Ask the merchant for the same paper \"grain short\", or crease before folding.",
     "stock cream\n"
     "  sheet      letter, grain short\n"},
    {"cut-the-sheets", Kind::note, "This paper is cut out of larger sheets",
     "Merchants sell many papers in large sheets only. How the small sheets lie on the large one "
     "decides where the guillotine goes, what is left over, and which way the grain runs: a sheet "
     "that lies across the large one has its grain the other way.",
     "Nothing needs mending: the note says where to cut and which grain to ask for.",
     "stock cream\n"
     "  sheet      letter, grain short\n"
     "  cut-from   tabloid, 2 out\n"
     "  costs      $0.19 a sheet\n"},
    {"does-not-fold", Kind::error, "The pages do not fill the folded sheets",
     "A sheet that is folded once carries four pages, two on each side. A booklet of such "
     "sheets therefore has 4, 8, 12, 16 … pages, and never 21: the 21st page would need a "
     "sheet of its own and leave three pages behind it blank. The compiler does not add blank "
     "pages on its own, because each of them costs paper, and because you may know a better "
     "use for them. Other foldings have other numbers: one sheet folded three times makes 8 "
     "leaves, which is 16 pages.",
     "Write how many pages there are under edition, and decide what stands on the new ones; or "
     "take pages out until the number fits.",
     "edition \"Bus Notes\"\n"
     "  pages      24\n"},
    {"folding-cannot-be", Kind::error, "Paper cannot be folded like this",
     "The compiler folds a sheet in its head, step by step, as the folding says. A step can "
     "ask something that paper does not do: fold over a line where no crease can be, fold what "
     "is already a single panel, or push ends together where no slit opens. The message says at "
     "which step the paper stopped and how many panels it had by then.",
     "Fold a real sheet along with the lines, with pages numbered in pencil, until the step "
     "that does not go; then mend that line.",
     "folding two-folds \"Two folds, eight pages\"\n"
     "  panels     2 by 2\n"
     "  fold       bottom under top\n"
     "  fold       left under right\n"},
    {"machine-size", Kind::error, "The machine does not take sheets of this size",
     "The tray of a machine has stops for certain sizes. A tabloid sheet does not go into a "
     "copier for letter and legal, however well it would fold.",
     "Choose a stock in a size that the machine takes, or print this sheet on another machine. "
     "If the machine does take it, add the size to its line.",
     "machine corner-copier \"Copier at the corner shop\"\n"
     "  sizes      letter, legal, tabloid\n"},
    {"mixed-machine", Kind::error, "Two machines asked of one sheet side",
     "Everything on one side of a sheet is printed in one go, so the pages that stand side by "
     "side on it go through the same machine. Page 3 cannot be printed on the copier in the "
     "shop when page 18, the other half of the same side, is printed at home.",
     "Ask the same machine for all pages of the sheet, or leave \"by\" away and let the "
     "edition's machine print it.",
     "page 3 by corner-copier\n"
     "page 18 by corner-copier\n"},
    {"not-out-of-it", Kind::error, "The larger sheet does not give so many",
     "So many sheets are to be cut out of a larger one, but they do not fit on it side by side, "
     "neither upright nor turned. Counting them nevertheless would make the paper too cheap.",
     "Count how often the sheet goes into the larger one, or name the larger sheet that it is cut "
     "from.",
     "stock cream\n"
     "  sheet      letter\n"
     "  cut-from   tabloid, 2 out\n"},
    {"one-sided-paper", Kind::error, "Paper for one side is printed on both",
     "Labels, some coated cards and carbonless sheets take toner on one side only. On the other it "
     "rubs off, or there is glue and a backing sheet that sticks to the machine's drum.",
     "Leave the pages of one side empty, or print the sheet on paper with two sides.",
     "stock labels\n"
     "  weight     100 gsm\n"
     "  sheet      letter\n"
     "  sides      1\n"},
    {"show-through", Kind::note, "A dark area is seen through behind words",
     "Thin paper lets part of the light through, so that a black area on one side makes a grey one "
     "on the other. Behind a picture nobody minds; behind words it tires the eye. Merchants state "
     "a paper's opacity, the share of what is behind it that it hides; under about 90 percent "
     "solid areas are seen.",
     "Put words behind the light parts of the picture, lay a lighter tone, or take a heavier "
     "paper.",
     "stock airmail\n"
     "  weight     60 gsm\n"
     "  sheet      letter\n"
     "  opacity    78%\n"},
    {"mixed-stock", Kind::error, "Two papers asked of one sheet",
     "Pages share sheets. In a stapled booklet of 20 pages, pages 5 and 16 are the two halves "
     "of one side, and pages 6 and 15 are on its back; one piece of paper carries all four. "
     "When page 5 asks for rose paper and page 6 for cream, somebody would have to glue two "
     "papers together. A page that asks for nothing takes the paper of its sheet, so one page "
     "that asks is enough.",
     "Ask the same paper for the pages of a sheet, or move the words to a page whose sheet has "
     "the paper that you want. The command \"bodkin sheets\" shows which pages share one.",
     "page 5 on rose\n"
     "page 6 on rose\n"},
    {"no-cover", Kind::error, "This folding has no cover sheet",
     "The cover is the outermost sheet when it carries exactly four pages: front, inside "
     "front, inside back and back. When a section is folded from one big sheet, the front page "
     "hangs together with eight or sixteen others, and a paper of its own for the cover alone "
     "does not exist.",
     "Leave the line \"cover\" out and give the paper for everything, or choose a folding of "
     "nested sheets.",
     "edition \"Bus Notes\"\n"
     "  folding    saddle-stitch\n"
     "  cover      on board\n"},
    {"one-side-only", Kind::error, "The machine prints one side, and the sheet has two",
     "A booklet's sheet carries pages on its front and on its back. A machine whose line says "
     "\"duplex none\" lets paper through once and never again: its toner would smear, or its "
     "rollers jam on a printed sheet. The backs would stay white, with every second page of the "
     "booklet missing.",
     "If printed sheets may go in again, turned over, say \"duplex by hand\": the fronts and the "
     "backs then come as two files with a feeding order. Else print these pages by another "
     "machine, or leave the backs blank.",
     "machine kitchen-printer\n"
     "  duplex     by hand\n"},
    {"sheets-taken-away", Kind::note, "The sheets of an earlier compile are taken away",
     "The edition compiled once, and its sheets lay in the folder. Now something is wrong with "
     "it, so the old sheets no longer show what the manuscript says. They are taken away, so "
     "that nobody carries them to the shop by mistake. Estimate and proof are written anew.",
     "Mend the errors and compile again; the sheets come back.",
     "finish\n"
     "  staple     2, leg 1/4in, 2 1/8in from head and foot\n"},
    {"split-spread", Kind::warning, "A spread lies on two sheets",
     "Two pages that face each other are one piece of paper only in the middle of a folded "
     "section. Everywhere else the left page is half of one sheet and the right page half of "
     "another. A picture across both is printed in two halves, perhaps on different papers, "
     "and meets again only when the booklet is stapled: often a sixteenth of an inch off.",
     "Move the spread to the centre, let the two pages have pictures of their own, or draw it "
     "so that nothing fine crosses the fold.",
     "spread 10-11 in colour\n"},
    {"too-many-pages", Kind::error, "More pages than a booklet can hold",
     "A page number far beyond the rest is nearly always a slip of the finger: one digit too "
     "many makes 4,000 pages out of 40. The compiler stops at a number that no stapler and no "
     "shelf would take, instead of laying out thousands of blank sheets.",
     "Look at the number on the line, and at any list of pages with a dash in it.", "page 12-16\n"},
    {"uncreased-card", Kind::error, "Heavy paper folded without a crease",
     "Paper above about 150 grams a square metre does not fold, it breaks: the outer fibres "
     "tear, toner flakes off along the spine, and the fold wanders. A crease pressed into the "
     "card first gives it a hinge, and takes half a minute with a bone folder and a ruler.",
     "Put a crease before the fold, for the cover or for those sheets.",
     "finish\n"
     "  crease     cover\n"
     "  fold       all\n"},
    {"will-not-feed", Kind::error, "The machine does not take this paper",
     "Each machine takes papers between a lightest and a heaviest weight. A card that is too "
     "heavy jams in the bend behind the tray; a sheet that is too light wraps itself round a "
     "roller. The weights are compared in grams a square metre, since pounds of cover, text "
     "and bond measure different things: 65 lb cover is far heavier than 65 lb text.",
     "Choose another paper, print that sheet on another machine, or, if you know better, "
     "correct what the machine feeds.",
     "machine corner-copier \"Copier at the corner shop\"\n"
     "  feeds      60 gsm to 200 gsm\n"},
    {"wrong-size", Kind::error, "The folded sheet is not the size of the page",
     "The page that you asked for and the page that comes out of the folding differ: half of a "
     "letter sheet is 5 1/2in by 8 1/2in, half of an a4 sheet is 148mm by 210mm. A page "
     "slightly smaller than its place is fine, since paper sizes are rounded; from one "
     "millimetre on there would be a strip that no page covers, or a page that hangs over the "
     "edge.",
     "Write the size that the paper gives, or buy paper that gives the size.",
     "edition \"Bus Notes\"\n"
     "  size       half-letter\n"},
};

} // namespace

std::span<const Check> checks_of_paper() { return table; }

} // namespace bodkin
