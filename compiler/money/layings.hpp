// Other ways to lay the book or an insert on sheets: more of it, or fewer, on the sheets of its own
// paper, and several up on the larger sheets that another paper of the edition comes in. Each is
// laid in full before it is offered.
#pragma once

#include "money/changed_lines.hpp"
#include "money/charged.hpp"
#include "money/exchanges.hpp"
#include "sheet/ways_up.hpp"

#include <optional>
#include <string>
#include <vector>

namespace bodkin {

struct Laying {
  std::optional<std::size_t> piece; // index into Edition::pieces; none: the book
  std::vector<PaperSwap> papers;    // none: the same paper
  WayUp way;                        // on the first of its sheets
  Size sheet;                       // of that
  // A page would have to keep this far from an edge that asks less of it now; 0: of none.
  Length keeps_off;
  bool turns_grain = false; // folds that run along the grain would cross it
};

// As it is laid now is among them, unless there is no other way at all. Of those that use
// as many sheets for the run only the one with most on a sheet. Papers without a price, sheets that
// a machine of the edition does not take and whatever the sheet room calls an error are left out.
// `draws` is by page, numbered on through book and pieces.
std::vector<Laying> layings(const Edition &edition, std::optional<std::size_t> piece, Other other,
                            const std::vector<bool> &draws, const Sources &sources);

// As it is laid now.
bool is_laid(const Edition &edition, const Laying &laying);
Edition laid_so(Edition edition, const Laying &laying);

// Whether it can be laid and printed as it says: no more errors than before, every sheet taken by
// its machine, nothing without a price that had one.
bool goes_through(const Edition &before, const Edition &after, const std::vector<bool> &draws,
                  const Sources &sources);

// "the book 2 up on tabloid sheets of large"
std::string named(const Edition &edition, const Laying &laying);
// "if nothing on it comes nearer than 1/4in to its edges"; empty where nothing is asked.
std::string on_condition(const Edition &edition, const Laying &laying);

void type_lines(const Edition &before, const Laying &laying, const Sources &sources,
                ChangedLines &lines);

} // namespace bodkin
