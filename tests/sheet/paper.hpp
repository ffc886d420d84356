// Editions made by hand for the tests of sheets: letter paper, one machine, saddle stitch unless
// told.
#pragma once

#include "edition/edition.hpp"
#include "measure/paper.hpp"
#include "problems/sources.hpp"
#include "sheet/impose.hpp"
#include "sheet/passes.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace bodkin::test {

// A folding of the shelf, or one written out, as the compiler reads them.
Folding shelf_folding(std::string_view name);
Folding written_folding(std::string_view lines);
// The names of all foldings on the shelf.
std::vector<std::string> shelf_foldings();

Stock stock_named(std::string name, Length caliper, Size sheet, Grain grain = Grain::unsaid);
Machine copier(); // bare 1/4in, by machine, flip short

struct Desk {
  Sources sources;
  FileId file = FileId::none;
  Edition edition;
  Problems problems;

  // `pages` blank pages of the size that letter gives, on `cream`, 0.006in; stock 1 is
  // `rose`, 0.004in; stock 2 is `board`, 0.010in. `text` is the manuscript that ranges point into.
  explicit Desk(int pages, std::string_view folding = "saddle-stitch", std::string text = "");

  // Another folding, and pages of the size that letter gives in it.
  void fold_as(const Folding &folding);
  // The words in the manuscript's line that starts so.
  Range words(std::string_view line, std::string_view part) const;
  Range line(std::string_view start) const;
  void on(int page, StockId stock, std::string_view line = "");
  void by(int page, MachineId machine, std::string_view line = "");
  // Imposes; fails the test where the sheets do not fold back into the book.
  Imposition impose();
};

inline constexpr StockId cream{0}, rose{1}, board{2};

// Every page draws in its own mode, but for those listed as blank.
std::vector<PageInk> inks(int pages, std::initializer_list<int> colour = {},
                          std::initializer_list<int> blank = {});

// Row by row: "8 1", "5v 4v / 8 1" (v: head down; < and > turned; - no page).
std::string drawn(const Side &side);
std::string messages(const Problems &problems); // one a line, with its check

} // namespace bodkin::test
