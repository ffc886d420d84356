// Small editions made at random from a seed, with all that a test needs to price an order of their
// pages by itself: by counting sides and sheets with a pencil, not by the code under test.
#pragma once

#include "sheet/imposition.hpp"

#include <cstdint>
#include <string>
#include <vector>

namespace bodkin::tests {

struct RandomPage {
  bool draws = false, colour = false;
  int paper = -1; // asked: 0 plain, 1 rose; -1 none
  bool spread_left = false;
  bool stays = false;
  bool with_next = false; // kept together with the page after it
};

struct RandomBook {
  int count = 8;
  int copies = 10;
  std::string folding;
  std::vector<RandomPage> pages; // index 1..count
  // Cents: of a side (black, colour) below and from the step on, of a sheet of each paper.
  int black = 10, colour = 50, black_after = 10, colour_after = 50, plain = 2, rose = 3;
  int black_step = 0, colour_step = 0; // sides of the run; 0: no step
  bool blank_charged = false;
  int setup = 0, least = 0; // cents a pass, of the run
  std::string manuscript() const;
  bool stays(int page) const;
};

// Sheets and sides of the pages, as the imposition has them.
struct Lying {
  std::vector<int> sheet, side; // by page
  int sheets = 0;
};
Lying lying(const Imposition &imposition);

RandomBook random_book(std::uint32_t seed);
// The same kind of book with so many pages, of which so many may move.
RandomBook random_book(std::uint32_t seed, int count, int movable);

// Cents of the run with page p being order[p] as written; -1 where it cannot be printed or a wish
// is not kept.
std::int64_t cents(const RandomBook &book, const Lying &lying, const std::vector<int> &order);

} // namespace bodkin::tests
