#include "edition/reading.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

using namespace bodkin;
using namespace bodkin::tests;

TEST_CASE("every file of the shelf can be borrowed, together, without a problem") {
  std::string borrows;
  MemoryFiles shelf = read("").files;
  for (const char *folder :
       {"stocks", "machines", "styles", "foldings", "laws", "licences", "mail"})
    for (const std::string &name : shelf.shelf_names(folder))
      borrows += fmt::format("borrow \"{}/{}\"\n", folder, name);
  const Read r = read(borrows + small_edition("", "page 1\n"));
  CHECK(r.found().empty());
}

TEST_CASE("no price stands on the shelf") {
  const Read r =
      read("borrow \"stocks/us\"\nborrow \"stocks/metric\"\nborrow \"machines/copy-shop\"\n"
           "borrow \"machines/home-laser\"\n" +
           small_edition("", "page 1\n"));
  for (const Stock &stock : r.edition().stocks)
    if (stock.name != "plain")
      CHECK_FALSE(stock.costs);
  for (const Machine &machine : r.edition().machines)
    if (machine.name != "copier")
      CHECK(machine.prints.empty());
}

TEST_CASE("a borrowed machine takes the prices of one's own shop") {
  const Read r =
      read("borrow \"machines/copy-shop\"\n" + small_edition("", "machine mine like shop-copier\n"
                                                                 "  prints black at $0.12 a side\n"
                                                                 "page 1 by mine\n"));
  CHECK(r.found().empty());
  const Machine &mine = r.edition()[*r.edition().pages[1].machine];
  CHECK(mine.name == "mine");
  CHECK(*mine.bare == Length::inches(1, 4));
  CHECK(origin_words(mine.bare.from, *r.sources) == "stdlib/machines/copy-shop.bodkin:13");
  REQUIRE(mine.prints.size() == 1);
  CHECK(written(mine.prints[0].rate) == "$0.12 a side");
}
