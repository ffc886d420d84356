// The head of a plain edition for benchmarks: pages of half a letter sheet, folded once.
#pragma once

#include <string>

namespace bodkin::bench {

inline std::string head(int pages, const std::string &printing) {
  return "edition \"Bench\"\n  size half-letter\n  pages " + std::to_string(pages) +
         "\n  run 10 copies\n  paper plain\n  printing " + printing +
         "\n  machine copier\n\n"
         "stock plain\n  weight 20 lb bond\n  sheet letter, grain short\n"
         "  costs $10 per 500 sheets\n\n"
         "machine copier\n  prints black at $0.10 a side\n  prints colour at $0.50 a side\n"
         "  bare 1/4in\n\n"
         "face book from \"EB Garamond\"\n\nstyle body\n  face book 11/14\n  lines justified\n\n";
}

} // namespace bodkin::bench
