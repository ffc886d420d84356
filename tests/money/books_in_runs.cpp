#include "money/books_in_runs.hpp"

#include <array>
#include <fmt/format.h>
#include <random>

namespace bodkin::tests {
namespace {

struct RunDice {
  std::mt19937 generator;
  int below(int sides) { return static_cast<int>(generator() % static_cast<std::uint32_t>(sides)); }
  bool one_in(int sides) { return below(sides) == 0; }
  std::string cents(int from, int to) {
    return fmt::format("$0.{:02}", from + below(to - from + 1));
  }
};

std::string runs_of(RunDice &dice) {
  const auto run = [&](const char *name) {
    const int spare = dice.below(3);
    return fmt::format("  run {} copies{} called {}\n", 1 + dice.below(24),
                       spare > 0 ? fmt::format(", {} spare", spare) : "", name);
  };
  std::string runs = run("plain") + run("de-luxe");
  if (dice.one_in(4))
    runs += run("proofs");
  return runs;
}

// What is printed otherwise in one run.
std::string own_facts(RunDice &dice) {
  std::string facts = "  paper white\n";
  if (dice.one_in(2))
    facts += "  paper rose\n    only de-luxe\n";
  if (dice.one_in(3))
    facts += "  printing black\n  printing colour\n    only de-luxe\n";
  if (dice.one_in(3))
    facts += "  cover on rose\n  cover on board in colour\n    only de-luxe\n";
  return facts;
}

std::string prints_at(RunDice &dice, const char *ink, int from, int to) {
  std::string lines = fmt::format("  prints {} at {} a side\n", ink, dice.cents(from, to));
  if (dice.one_in(2))
    lines += fmt::format("  prints {} at {} a side, from {} sides\n", ink, dice.cents(1, from),
                         2 + dice.below(200));
  return lines;
}

std::string machine(RunDice &dice) {
  std::string lines = "machine copier\n" + prints_at(dice, "black", 5, 15) +
                      prints_at(dice, "colour", 15, 60) + "  bare 1/4in\n  duplex by machine\n";
  if (dice.one_in(6))
    lines += "  blank charged\n";
  if (dice.one_in(3))
    lines += fmt::format("  setup ${}.{:02} a pass\n", dice.below(4), dice.below(100));
  if (dice.one_in(8))
    lines += fmt::format("  least {} a run\n", "$6");
  return lines;
}

std::string words(RunDice &dice) {
  const std::string only = dice.one_in(3)   ? "    only de-luxe\n"
                           : dice.one_in(6) ? "    only plain\n"
                                            : "";
  const std::string number = dice.one_in(8) ? "Copy [1](fact:copy)" : "x";
  std::string lines =
      fmt::format("  words in label\n    says \"{}\"\n    at 1in 1in, 1in x 1in\n{}", number, only);
  if (dice.one_in(8))
    lines += "    source archive\n";
  if (dice.one_in(8))
    lines += fmt::format("  hand stamp \"moon\"\n    at 3in 3in, 1in x 1in\n    costs {} a {}\n{}",
                         dice.cents(1, 20), dice.one_in(2) ? "sheet" : "side",
                         dice.one_in(2) ? "    only de-luxe\n" : "");
  return lines;
}

void random_page(BookInRuns &book, RunDice &dice, int page) {
  std::string asked = dice.one_in(3) ? " in colour" : "";
  if (dice.one_in(4))
    asked += dice.one_in(3) ? " on white" : " on rose";
  const bool inner = page > 2 && page < book.count - 1;
  std::string below = dice.one_in(5) ? "" : words(dice);
  if (!below.empty() && dice.one_in(4))
    below += fmt::format("  words in label\n    says \"y\"\n    at 2in 3in, 1in x 1in\n"
                         "    only de-luxe\n");
  const bool stays = inner && (dice.one_in(8) || (book.count == 10 && page == 6));
  if (below.empty())
    below = "  blank\n";
  book.asked.push_back(inner ? asked : "");
  book.below.push_back(below + (stays ? "  stays\n" : ""));
  book.stays.push_back(!inner || stays);
}

} // namespace

std::string BookInRuns::manuscript(const std::vector<int> &order) const {
  std::string text = head;
  for (int place = 1; place <= count; ++place) {
    const auto page = static_cast<std::size_t>(order[static_cast<std::size_t>(place)]);
    text += fmt::format("page {}{}\n{}", place, asked[page], below[page]);
  }
  return text + tail;
}

namespace {

std::string second_machine(RunDice &dice) {
  return fmt::format("machine attic\n  prints black at {} a side\n  bare 1/4in\n"
                     "  duplex by machine\n  setup {} a pass\n\n",
                     dice.cents(1, 9), dice.cents(5, 99));
}

std::string card(RunDice &dice) {
  return fmt::format("insert card \"A card\"\n  size quarter-letter\n  folding flat\n  paper {}\n"
                     "  up {}\n{}  page 1\n    words \"z\" in label\n",
                     dice.one_in(2) ? "white" : "rose", 1 + dice.below(4),
                     dice.one_in(2) ? "  only de-luxe\n" : "");
}

} // namespace

BookInRuns book_in_runs(std::uint32_t seed) {
  RunDice dice{std::mt19937(seed)};
  BookInRuns book;
  constexpr std::array<std::pair<const char *, int>, 4> forms{
      {{"saddle-stitch", 8}, {"section-8", 8}, {"side-stapled", 8}, {"side-stapled", 10}}};
  const auto &[folding, count] = forms[static_cast<std::size_t>(dice.below(4))];
  const bool up = std::string_view(folding) != "section-8" && dice.one_in(3);
  book.count = count;
  const std::string attic = dice.one_in(6) ? second_machine(dice) : "";
  book.head = fmt::format(
      "edition \"Test\"\n  size {}\n  pages {}\n  folding {}\n{}{}{}  machine copier{}\n\n"
      "stock white\n  weight 20 lb bond\n  sheet letter, grain short\n  costs {} a sheet\n"
      "stock rose like white\n  costs {} a sheet\nstock board like white\n  costs {} a "
      "sheet\n\n{}\n"
      "source archive\n  costs {} a copy\nface typed from \"Courier Prime\"\nstyle label\n  face "
      "typed 9/11\n\n",
      up ? "quarter-letter" : "half-letter", book.count, folding, up ? "  up 2\n" : "",
      runs_of(dice), own_facts(dice), attic.empty() ? "" : " or attic", dice.cents(1, 6),
      dice.cents(1, 12), dice.cents(1, 12), machine(dice) + attic, dice.cents(1, 9));
  if (dice.one_in(4))
    book.tail = card(dice);
  book.asked.resize(1);
  book.below.resize(1);
  book.stays.resize(1);
  for (int page = 1; page <= book.count; ++page)
    random_page(book, dice, page);
  return book;
}

} // namespace bodkin::tests
