// Several machines in one edition: the sheets of each stock go where the run costs least.
#include "money/manuscript.hpp"
#include "money/shop.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>
#include <random>

namespace bodkin::tests {
namespace {

constexpr std::string_view pages = "page 1 in colour\n  words \"Rain\" in label\n"
                                   "page 2-8\n  words \"Rain\" in label\n";

std::string with_library(std::string_view facts, std::string_view of_pages = pages,
                         std::string_view machines = "copier or library") {
  std::string text = small_zine("",
                                fmt::format("machine library\n"
                                            "  prints     colour at $0.80 a side\n"
                                            "  prints     black at $0.04 a side\n"
                                            "{}",
                                            facts),
                                of_pages);
  const std::string_view black = "  prints     black at $0.10 a side\n";
  text.insert(text.find(black), "  prints     colour at $0.50 a side\n");
  text.replace(text.find("machine    copier"), 17, fmt::format("machine    {}", machines));
  return text;
}

} // namespace

TEST_CASE("each pass goes to the machine where it is cheapest") {
  CHECK(lines(priced(with_library("")).estimate) ==
        "50 × 0.50 = 25.00 colour sides at copier (printing)\n"
        "50 × 0.10 = 5.00 black sides at copier (printing)\n"
        "100 × 0.04 = 4.00 black sides at library (printing)\n");
}

TEST_CASE("of machines named without another nothing is sent elsewhere") {
  CHECK(lines(priced(with_library("", pages, "copier")).estimate) ==
        "50 × 0.50 = 25.00 colour sides at copier (printing)\n"
        "150 × 0.10 = 15.00 black sides at copier (printing)\n");
}

TEST_CASE("a machine that cannot feed the paper, take the sheet or print the mode gets none") {
  for (const std::string_view cannot : {"  feeds      65 lb cover to 110 lb index\n",
                                        "  sizes      legal\n", "  duplex     none\n"}) {
    CAPTURE(cannot);
    CHECK(lines(priced(with_library(cannot)).estimate) ==
          "50 × 0.50 = 25.00 colour sides at copier (printing)\n"
          "150 × 0.10 = 15.00 black sides at copier (printing)\n");
  }
}

TEST_CASE("pages that ask for a machine keep it for their sheet") {
  CHECK(lines(priced(with_library("", "page 1 in colour\n  words \"Rain\" in label\n"
                                      "page 2\n  words \"Rain\" in label\n"
                                      "page 3 by copier\n  words \"Rain\" in label\n"
                                      "page 4-8\n  words \"Rain\" in label\n"))
                  .estimate) == "50 × 0.50 = 25.00 colour sides at copier (printing)\n"
                                "150 × 0.10 = 15.00 black sides at copier (printing)\n");
}

TEST_CASE("a setup that eats what is saved keeps all with one machine") {
  CHECK(lines(priced(with_library("  setup $7 a pass\n")).estimate) ==
        "50 × 0.50 = 25.00 colour sides at copier (printing)\n"
        "150 × 0.10 = 15.00 black sides at copier (printing)\n");
}

TEST_CASE("the sending chosen costs no more than any other, price steps, least and setup counted") {
  std::mt19937 random(7);
  const auto cents = [&](int least, int most) {
    return least + static_cast<int>(random() % static_cast<unsigned>(most - least + 1));
  };
  for (int round = 0; round < 40; ++round) {
    CAPTURE(round);
    std::string library = fmt::format("machine library\n"
                                      "  prints     colour at $0.{:02} a side\n"
                                      "  prints     black at $0.{:02} a side\n"
                                      "  prints     black at $0.{:02} a side, from {} sides\n"
                                      "  least      $0.{:02} a run\n"
                                      "  setup      $0.{:02} a pass\n",
                                      cents(20, 90), cents(3, 20), cents(1, 9), cents(20, 300),
                                      cents(0, 99), cents(0, 99));
    constexpr std::string_view three_loads = "page 1 in colour\n  words \"Rain\" in label\n"
                                             "page 2{2}\n  words \"Rain\" in label\n"
                                             "page 3-4 on rose{0}\n  words \"Rain\" in label\n"
                                             "page 5-6{1}\n  words \"Rain\" in label\n"
                                             "page 7-12\n  words \"Rain\" in label\n";
    const auto cost = [&](std::string_view machines, std::string_view rose, std::string_view black,
                          std::string_view cover) {
      std::string text = small_zine("", library, fmt::format(three_loads, rose, black, cover));
      const std::string_view shop = "  prints     black at $0.10 a side\n";
      text.insert(text.find(shop), "  prints     colour at $0.50 a side\n");
      text.replace(text.find("machine    copier"), 17, fmt::format("machine    {}", machines));
      text.replace(text.find("page 1 in colour"), 16, fmt::format("page 1 in colour{}", cover));
      return priced(text).estimate.run_total;
    };
    const Exact chosen = cost("copier or library", "", "", "");
    std::optional<Exact> least;
    for (int way = 0; way < 8; ++way) {
      const auto to = [&](int bit) { return (way >> bit) & 1 ? " by library" : " by copier"; };
      const Exact asked = cost("copier", to(0), to(1), to(2));
      if (!least || asked < *least)
        least = asked;
    }
    CHECK(chosen == *least);
  }
}

} // namespace bodkin::tests
