// A manuscript with its pages in another order: every page number in it changed, and nothing else.
#pragma once

#include "edition/read.hpp"
#include "problems/sources.hpp"

#include <string>
#include <vector>

namespace bodkin {

// The edition's own file with page order[p] as written becoming page p (order[0] unused): lines of
// pages and spreads, `continues`, `goes`, `stays with` and the pages of running matter. Lines keep
// their order, comments and blanks. Words for pages (left, cover) and names given by `called` say
// what they said.
std::string renumbered(const Edition &edition, FileId manuscript, const Sources &sources,
                       const std::vector<int> &order);

// Where a file that the edition borrows names pages that get another number: warnings with the line
// as it has to be there, since only the edition's own file is written.
Problems borrowed_numbers(const Edition &edition, const std::vector<FileRead> &files,
                          const Sources &sources, const std::vector<int> &order);

} // namespace bodkin
