// The cheapest order of pages, against one estimate of the same edition: 64 pages of which 20 may
// move, on two papers, blank, black and colour, with price steps; then larger books, whose seconds
// are printed before.
#include "money/arrange.hpp"
#include "edition/memory.hpp"
#include "edition/read.hpp"
#include "timing.hpp"

#include <cstdint>
#include <memory>
#include <string>

using namespace bodkin;

namespace {

// Alike, or with copies de luxe on another paper.
enum class Runs { one, two };

std::string head(int pages, Runs runs) {
  return "edition \"Bench\"\n  size half-letter\n  pages " + std::to_string(pages) +
         (runs == Runs::one ? "\n  run 80 copies, 3 spare\n  paper plain\n"
                            : "\n  run 60 copies, 3 spare called plain\n"
                              "  run 20 copies called de-luxe\n"
                              "  paper plain\n  paper cream\n    only de-luxe\n") +
         "  machine copier\n\n"
         "stock plain\n  weight 20 lb bond\n  sheet letter, grain short\n"
         "  costs $10 per 500 sheets\n\n"
         "stock rose like plain\n  costs $13 per 500 sheets\n\n"
         "stock cream like plain\n  costs $16 per 500 sheets\n\n"
         "machine copier\n  prints black at $0.10 a side\n"
         "  prints black at $0.08 a side, from 3000 sides\n  prints colour at $0.50 a side\n"
         "  prints colour at $0.42 a side, from 900 sides\n  bare 1/4in\n\n";
}

struct Book {
  std::string text;
  std::vector<bool> draws;
};

Book book(int pages, int movable, Runs runs = Runs::one) {
  Book made{head(pages, runs), std::vector<bool>(static_cast<std::size_t>(pages) + 1)};
  std::uint32_t seed = 7;
  const auto below = [&](std::uint32_t sides) {
    seed = seed * 1664525U + 1013904223U;
    return (seed >> 16) % sides;
  };
  const int every = (pages - 4 + movable - 1) / movable;
  for (int page = 1; page <= pages; ++page) {
    const bool cover = page <= 2 || page > pages - 2;
    const bool moves = !cover && (page - 3) % every == 0;
    const bool draws = below(6) != 0, colour = draws && below(3) == 0;
    const bool rose = moves && below(3) == 0;
    made.draws[static_cast<std::size_t>(page)] = draws;
    made.text += "page " + std::to_string(page) + (colour ? " in colour" : "") +
                 (rose ? " on rose" : "") + (moves ? "\n" : "\n  stays\n");
  }
  // The same pages draw in the book of the other run.
  if (runs == Runs::two)
    for (int page = 1; page <= pages; ++page)
      made.draws.push_back(made.draws[static_cast<std::size_t>(page)]);
  return made;
}

struct Ready {
  Sources sources;
  Reading reading;
  std::vector<bool> draws;
  Laid laid;
};

std::unique_ptr<Ready> ready(const Book &of) {
  auto made = std::make_unique<Ready>();
  MemoryFiles files;
  files.put("bench.bodkin", of.text);
  files.put_shelf("foldings/saddle-stitch",
                  "folding saddle-stitch\n  panels 2 by 1\n  fold right over left\n"
                  "  nest one in another\n");
  Problems problems;
  made->reading = read_edition("bench.bodkin", files, made->sources, problems);
  made->draws = of.draws;
  made->laid = lay(made->reading.edition, of.draws, made->sources);
  return made;
}

Arrangement arranged(const Ready &of) {
  return arrange(of.reading.edition, of.laid, of.draws, of.sources);
}

void tell(int pages, int movable, Runs runs = Runs::one) {
  const auto of = ready(book(pages, movable, runs));
  Arrangement made;
  const double seconds = bench::cpu_of([&] { made = arranged(*of); });
  std::printf("  %d pages, %d may move%s: %.2f s, ", pages, static_cast<int>(made.movable.size()),
              runs == Runs::two ? ", two runs" : "", seconds);
  if (!made.cheapest)
    std::printf("no order\n");
  else
    std::printf("saves %s of %s, %d moves, %s (gap %s)\n", made.saved().rounded(2).c_str(),
                made.total_as_written.rounded(2).c_str(), made.cheapest->moves,
                made.cheapest->proved ? "proved" : "not proved", made.gap().rounded(2).c_str());
}

} // namespace

int main() {
  for (const auto &[pages, movable] :
       {std::pair(64, 20), std::pair(64, 60), std::pair(128, 40), std::pair(128, 124)})
    tell(pages, movable);
  tell(64, 20, Runs::two);
  tell(64, 60, Runs::two);
  const auto of = ready(book(64, 20));
  bench::compare(
      "arrange", 7, [&] { arranged(*of); },
      [&] { estimate(of->reading.edition, of->laid.imposition, of->laid.sides); });
}
