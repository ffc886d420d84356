// Lists of pages as written, turned into page numbers.
#pragma once

#include "edition/reader.hpp"

#include <vector>

namespace bodkin {

// What a list is read against. `count` is 0 while the number of pages is not known yet.
struct PageScope {
  int count = 0;
  int next = 1;               // what `next` stands for; 0: nothing
  bool count_written = false; // `left`, `all` and the like may be asked for
};

struct PageList {
  std::vector<int> pages{}; // rising, each once
  int first = 0;            // the first as written that was not taken away
  bool sound = true;        // false: some of it could not be read, and that was reported
};

// Words, names and numbers; numbers above `count` are left out and reported where count > 0.
PageList pages_of(Reader &reader, FactLine line, std::string_view part, const PageScope &scope);
// Before names and count are known: the highest page that the numbers, `next` and known words of a
// list name. Reports nothing.
PageList pages_foreseen(Reader &reader, FactLine line, std::string_view part,
                        const PageScope &scope);
// A part that names one page; none with the problem reported.
std::optional<Known<int>> page_in(Reader &reader, FactLine line, std::string_view part);
// The page that a name given by `called`, or a word for one page, stands for; 0 for none.
int page_named(const Reader &reader, std::string_view name);

} // namespace bodkin
