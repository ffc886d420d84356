// All that papers about an edition are written from: its model, its sheets, its money.
#pragma once

#include "edition/piece.hpp"
#include "money/charged.hpp"
#include "money/estimate.hpp"
#include "problems/sources.hpp"
#include "sheet/parts.hpp"
#include "sheet/passes.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace bodkin::paperwork {

// Where work by hand, or something glued on an original, stands on a page.
struct HandPlace {
  ElementId element = ElementId::none;
  int page = 0; // numbered on through all parts
  Box box;      // before it is turned about its middle
  Angle turn;
};

struct Making {
  const Edition &edition;
  const std::vector<CopyPart> &parts;
  const Imposition &imposition; // of all parts, as joined()
  const std::vector<SheetModes> &modes;
  const std::vector<Pass> &passes;
  const ChargedSides &sides;
  const Estimate &estimate;
  std::vector<HandPlace> hands; // in order of pages

  std::int64_t printed() const { return edition.run->copies + edition.run->spare; }
};

// The sheets of one number, all copies and spares of them.
struct Pile {
  int sheet = 0; // index into Imposition::sheets
  std::int64_t sheets = 0;
  std::int64_t spare = 0; // of these
};
std::vector<Pile> piles(const Making &making);
// Sheets of one pass are of one piece, and all as many.
std::int64_t sheets_of(const std::vector<Pile> &all, const Pass &pass);
// Printed before the others, for one whole copy of each kind that has the sheet: a back that is
// upside down is then seen on one sheet and not on all.
std::int64_t first_ones(const Making &making, const Pass &pass);
// "1 + 52", such first ones and the others. A file that has a page for each sheet is printed once.
std::string times_words(const Making &making, const Pass &pass);
// What a run's copies have in place of that sheet of the book.
int sheet_in_run(const Making &making, int sheet, std::uint32_t run);
int page_in_run(const Making &making, int page, std::uint32_t run); // likewise
// What is wrapped round the book; else its own outermost sheet.
int outer_sheet(const Making &making);

// "White card", as the stock is called; "paper" where there is none.
std::string paper_words(const Edition &edition, StockId stock);
// "The copier in the library", else its name; "the machine" where there is none.
std::string machine_words(const Edition &edition, MachineId machine);
std::string machine_in_text(const Edition &edition, MachineId machine); // "the copier in the …"
std::string pages_on(const Sheet &sheet, int side);     // "24 and 1", "blank", "2, 4 times"
std::string pages_of_one(const Sheet &sheet, int side); // of what is laid several up
std::string page_words(const Making &making, int page); // "page 3", "page 1 of the street"
// "all 50 copies", or "the 10 copies de-luxe" where some runs alone are spoken of.
std::string copies_words(const Edition &edition, const RunSet &only);
// "40 copies plain and 10 copies de-luxe", or "50 copies".
std::string runs_words(const Edition &edition, const RunSet &runs = {});
// "plain have the numbers 1 to 40, de-luxe 41 to 50"
std::string runs_of_numbers(const Edition &edition);
// What is printed once, all its pages in order: how many sheets, and which numbers they have.
// The pages of first copies come first.
std::string numbered_words(const Making &making, const Pass &pass);
std::string counted(std::int64_t number, std::string_view one, std::string_view more);

// As a ruler shows it: to the nearest 1/32in or half millimetre.
std::string ruled(Length length, Ruler ruler);
// As written where a fine ruler shows it (1/64in, half a millimetre); else as ruled.
std::string measured(Length length, Ruler ruler);

} // namespace bodkin::paperwork
