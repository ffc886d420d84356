// Copies as they are counted, and the numbers that they bear: the good ones, through the runs in
// the order of their lines. Spares have none; what is to bear one has a line to write it on, so
// that a spare can stand in for a spoilt copy.
#pragma once

#include "edition/edition.hpp"
#include "edition/run_set.hpp"

#include <string>
#include <vector>

namespace bodkin {

// In place of the place in the count, of a copy that has none.
inline constexpr std::int64_t spare_copy = -1;

// Copies of some runs, or of all. Those of runs that are not neighbours are several stretches of
// the count.
struct CopiesCounted {
  struct Stretch {
    std::int64_t before = 0, good = 0; // good copies counted before its own
  };
  std::int64_t good = 0, spare = 0;
  std::vector<Stretch> stretches{};
  std::int64_t all() const { return good + spare; }
  // Of the copies and spares, from 0: its place in the count of all.
  std::int64_t place(std::int64_t copy) const;
};
CopiesCounted copies_of(const Edition &edition, const RunSet &runs);

// "plain and gift"
std::string names_of(const Edition &edition, const RunSet &runs);

// "7"; low lines for a spare. `copy` is its place in the count of all, from 0.
std::string number_of(const Edition &edition, std::int64_t copy);

// "1 to 40 and 46 to 50", of good copies.
std::string numbers_of(const Edition &edition, const CopiesCounted &copies);

// Words that print the number of the copy that they stand in.
bool bears_number(const Prose &prose);
bool bears_number(const Element &element);
Prose with_number(Prose prose, const std::string &number);

} // namespace bodkin
