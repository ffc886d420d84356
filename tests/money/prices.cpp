#include "money/budget.hpp"
#include "money/manuscript.hpp"
#include "money/shop.hpp"
#include "problems/render.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

namespace bodkin::tests {
namespace {

std::string two_pages(std::string_view facts, std::string_view more) {
  return small_edition(facts, fmt::format("{}\nface typed from \"Courier Prime\"\n\nstyle label\n"
                                          "  face typed 9/11\n\npage 1\n  words \"x\" in label\n"
                                          "page 8\n",
                                          more));
}

} // namespace

TEST_CASE("a paper of one's own without a price is a warning with the line to write") {
  CHECK(
      priced(two_pages("cover on card", "stock card\n  weight 20 lb bond\n  sheet letter\n"))
          .price_problems_text() ==
      R"(almanac.bodkin:19:1: warning: card has no price, and this run uses 10 sheets of it [no-price]
  stock card
  ~~~~~~~~~~
  why   until one is written the estimate leaves this paper out and is too low
  type  costs      $… per 500 sheets
        (or `costs included` where the price of a side holds the paper)
)");
}

TEST_CASE("a paper of the shelf without a price is a warning where the edition asks for it") {
  Shop shop(1, 10, "paper cream-28\n");
  Stock &cream = shop.paper();
  const FileId shelf = shop.sources.add("stdlib/stocks/us.bodkin", "stock cream-28\n");
  cream.name = "cream-28";
  cream.range = {shelf, Offset{0}, Offset{14}};
  cream.included = false;
  shop.edition.paper = {StockId{0}, shop.words("cream-28")};
  CHECK(
      as_text(
          price_problems(shop.edition, shop.imposition, shop.sides, shop.priced(), shop.sources),
          shop.sources, false) ==
      R"(almanac.bodkin:1:7: warning: cream-28 has no price, and this run uses 10 sheets of it [no-price]
  paper cream-28
        ~~~~~~~~
  why   the shelf holds no prices, since every shop has its own; until one is written the estimate
        leaves this paper out and is too low
  type  stock own-cream-28 like cream-28
          costs      $… per 500 sheets
        (and ask for own-cream-28; or `costs included` where the price of a side holds the paper)
)");
}

TEST_CASE("an ink that a machine has no price for is a warning") {
  CHECK(priced("machine bare-copier\n  prints colour at $1 a side\n  duplex by machine\n" +
               two_pages("",
                         "page 2 by bare-copier\n  words \"x\" in label\npage 3\n  words \"x\" in "
                         "label\n"))
            .price_problems_text() ==
        R"(almanac.bodkin:1:1: warning: bare-copier has no price for black sides [no-price]
  machine bare-copier
  ~~~~~~~~~~~~~~~~~~~
  why   this run prints 10 of them, and the estimate leaves them out until a price is written: it is
        too low
  type  prints     black at $… a side
)");
}

TEST_CASE("a price in another currency is an error that names what the edition counts in") {
  CHECK(
      priced(two_pages("budget $5 a copy\ncover on card",
                       "stock card\n  weight 20 lb bond\n  sheet letter\n"
                       "  costs £5 a sheet\n"))
          .price_problems_text() ==
      R"(almanac.bodkin:23:9: error: this edition counts in $ (budget, line 6) and this is in £ [two-currencies]
  costs £5 a sheet
        ~~~~~~~~~~
  why   no rate of exchange is ever assumed
  type  costs $5 a sheet      (where only the sign is wrong; else what it comes to in $)
        exchange   £1 is $…      (or this under edition, with the rate that you would pay)
almanac.bodkin:6:10: note: counts in $
)");
}

TEST_CASE("the first price alone in another currency is the odd one, told once") {
  std::string edition = two_pages("budget 5 a copy\nprice $3 a copy", "");
  for (std::size_t at = edition.find('$'); at != std::string::npos; at = edition.find('$'))
    edition.replace(at, 1, "£");
  edition.replace(edition.find("budget 5"), 8, "budget $5");
  CHECK(
      priced(edition).price_problems_text() ==
      R"(almanac.bodkin:6:10: error: this is in $, and the 4 other prices are in £ [two-currencies]
  budget $5 a copy
         ~~~~~~~~~
  why   no rate of exchange is ever assumed
  type  budget £5 a copy      (where only the sign is wrong; else what it comes to in £)
almanac.bodkin:7:9: note: counts in £
)");
}

TEST_CASE("a few more copies that cost no more are a note") {
  CHECK(priced(two_pages("", "bid printer\n  prints black\n  copies 1 at $1.20 a copy\n"
                             "  copies 12 at $1 a copy\n"))
            .price_problems_text() ==
        R"(almanac.bodkin:3:3: note: 12 copies from printer cost $12.00, the same as 10 [cheap-run]
  run 10 copies
  ~~~~~~~~~~~~~
  why   a lower price begins at 12 copies and holds for every one of them
  type  run 12 copies      (if you order there)
)");
}

} // namespace bodkin::tests
