// Small editions of two or three runs that are printed differently, made at random from a seed. The
// manuscript is written anew for each order of the pages, so that the estimate alone says what an
// order costs.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace bodkin::tests {

struct BookInRuns {
  int count = 8;
  std::string head;               // all before the pages
  std::string tail;               // and after them
  std::vector<std::string> asked; // by page as written: after its number on its line
  std::vector<std::string> below; // and the lines under it
  std::vector<bool> stays;
  std::string manuscript(const std::vector<int> &order) const;
};

BookInRuns book_in_runs(std::uint32_t seed);

} // namespace bodkin::tests
