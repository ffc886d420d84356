#include "command/help.hpp"

namespace bodkin {
namespace {

constexpr std::string_view overview =
    R"(bodkin makes folded booklets from a plain text file: it checks the edition, prices it,
and lays its pages on sheets that a copy shop can print.

  bodkin start FOLDER       a new edition to write in
  bodkin compile FILE       check the edition, then make its sheets, proof and estimate;
                            nothing over budget passes
  bodkin preflight FILE     the checks alone
  bodkin estimate FILE      what it costs: a copy, the run, and against the bids
  bodkin sheets FILE        where every page lands: sheet, side, place, turn, creep
  bodkin proof FILE         pictures of the pages in reading order
  bodkin dummy FILE         a numbered blank to print and fold, to measure your machine by
  bodkin arrange FILE       the order of pages that costs least, proved
  bodkin explain WORD       a keyword, a shelf file or a problem, with an example

FILE is a manuscript ending in .bodkin. What compile makes of night-bus.bodkin goes into the
folder night-bus/ beside it.

`bodkin compile --help` tells the options of compile, and so for each of them.

When it ends, 0 means that nothing is wrong; 1 that the edition has errors, a budget that is
over among them; 2 that the line you typed was not understood; 3 that a file could not be read
or written.
)";

struct About {
  std::string_view verb, text;
};
constexpr About abouts[] = {
    {"compile", R"(bodkin compile FILE

Checks the edition, then writes sheets.pdf (every sheet, front then back), passes/ (one PDF for
each trip through the machine), proof.pdf, assembly.pdf and ticket.pdf (how to make a copy, and
what to ask at the counter; as assembly.txt and ticket.txt too), estimate.txt, estimate.json,
rights.txt, rights.csv and made-from.json into the folder NAME/ beside NAME.bodkin. Where the
edition has errors only the proof and the estimate are made, and sheets of an earlier compile are
taken away. Where something is glued by hand on a page's original (`paste-up`), originals.pdf is
written as well; with `cards`, prices.pdf; with `posts`, post.txt; with a bid, costs.svg.

  --into FOLDER     write there instead
  --anyway          make the sheets although the edition is over budget
  --strict          let warnings stop the sheets too
  --json            print the problems as JSON
  --sarif           print the problems as SARIF 2.1.0
  --depfile FILE    write what the sheets depend on as a rule for Make or Ninja
)"},
    {"preflight", R"(bodkin preflight FILE

Reads the edition and says everything that is wrong with it; writes nothing.

  --strict          let warnings count as errors
  --anyway          let a budget that is over be a warning
  --json            print the problems as JSON
  --sarif           print the problems as SARIF 2.1.0
)"},
    {"estimate", R"(bodkin estimate FILE

Prints what the edition costs, line by line, so that you can check it with a pencil; what a
copy and the run come to; and the bids beside it. Ends with 1 when it is over budget.

  --json            print it as JSON; `post` in it is what mailing copies costs
  --svg             print a chart: what a copy costs, over how many are made, each way to make it
  --pdf             print the chart as PDF
  --ods             print a spreadsheet in which every total is a formula
)"},
    {"sheets", R"(bodkin sheets FILE

Prints where every page lands, sheet by sheet, with the passes through the machine and how the
paper goes in.

  --json            print it as JSON
  --svg             print a drawing: every sheet, both sides, and how one is folded
  --pdf             print the same drawing as a PDF, for `bodkin sheets --pdf FILE >FILE.pdf`
)"},
    {"proof", R"(bodkin proof FILE

Writes proof.pdf: facing pages as they will be read, on the colours of their papers, hand work
shown.

  --into FOLDER     write there instead of NAME/
  --png DPI         pictures of the proof and of the sheets as well, at so many dots an inch
)"},
    {"dummy", R"(bodkin dummy FILE

Writes dummy.pdf into NAME/: every sheet of the edition with nothing on it but page numbers, to
print and fold on your own machine. Flights of lines at its edges tell how wide an edge the machine
leaves bare, scales on both sides how far backs drift off their fronts, the folded sheets how far
they creep; greys, screens, lines, type and pale blues show what it can print and what it does not
see. The last page says how to read it all and which lines to type.

  --into FOLDER     write there instead of NAME/
)"},
    {"arrange", R"(bodkin arrange FILE

Finds the order of pages that costs least, proved, and with the fewest moves: dear sides and
coloured sheets are shared by the pages that want them. Tells what it saves, which pages get which
number, and which pages could have colour for the least more.

The cover stays. Spreads, and the pages that a text runs through, keep together and in sequence, and
so do those that `stays with` names; a text that leaps over pages keeps them where they are, as
`stays` does, and so does a piece that goes on one. A page may turn from left to right.

Every order is priced as `estimate` prices it, with the steps of the whole run. Where copies of
several runs are printed differently, all have one order, the cheapest for all of them together. In
a book of very many kinds of page, or one whose machine counts blank sides or asks a fee a pass,
the proof may be beyond reach; then it says how much less some order might cost.

It does not look at what pages say or which of them should face each other: `stays` says that. It
moves no page of a wrap or an insert, adds no page, and asks for no other paper or colour.

  --json            print it as JSON
  --write FILE      write the manuscript with the new numbers, beside the old one
)"},
    {"explain", R"(bodkin explain WORD

Explains a keyword of the manuscript (`bodkin explain crease`), a problem by the name in its
brackets (`bodkin explain mixed-stock`), or a shelf file (`bodkin explain stocks/us`).

  --reference       print the whole reference instead
)"},
    {"start", R"(bodkin start FOLDER

Fills a new or empty folder with a small edition: a manuscript named as the folder, words/ and
art/. It compiles as it is; change it line by line into your own.

  --as booklet      eight pages, half a letter sheet each, stapled (what you get unasked)
  --as booklet-a5   the same on a4, in millimetres
  --as mini         eight pages out of one letter sheet, slit and folded
  --as mini-a4      the same out of a4
)"},
};

} // namespace

std::string help() { return std::string(overview); }

std::string help_about(std::string_view verb) {
  for (const About &about : abouts)
    if (about.verb == verb)
      return std::string(about.text);
  return help();
}

std::string version() { return BODKIN_VERSION; }

} // namespace bodkin
