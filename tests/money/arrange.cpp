#include "money/arrange.hpp"
#include "money/arrange_report.hpp"
#include "money/manuscript.hpp"
#include "problems/render.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

namespace bodkin::tests {
namespace {

// Eight pages on two sheets for ten copies; black costs $0.10 and colour $0.50 a side. Pages 3 and
// 6 lie on one side of the inner sheet, 4 and 5 on the other.
std::string eight(std::string_view pages, std::string_view facts = "pages 8") {
  return small_edition(facts, fmt::format("face typed from \"Courier Prime\"\n\nstyle label\n"
                                          "  face typed 9/11\n\n"
                                          "stock rose like plain\n  costs $20 per 500 sheets\n\n{}",
                                          pages));
}

std::string words(std::string_view line, std::string_view fact = "") {
  return fmt::format("{}\n{}  words \"x\" in label\n", line,
                     fact.empty() ? "" : fmt::format("  {}\n", fact));
}

struct Laying {
  Priced written;
  Arrangement made;
  explicit Laying(const std::string &manuscript)
      : written(priced(manuscript)),
        made(arrange(written.edition(), written.laid, written.draws, written.sources())) {}
  std::vector<int> order() const {
    return {made.cheapest->order.begin() + 1, made.cheapest->order.end()};
  }
  std::string text() const {
    const ColourRoom room =
        colour_room(arranging::in_order(written.edition(), made.cheapest->order),
                    arranging::in_order(written.edition(), written.draws, made.cheapest->order),
                    written.sources());
    return arrangement_as_text(
        {written.edition(), made, written.laid, room, written.sources(), "almanac.bodkin", ""});
  }
  std::string problems() const {
    return as_text(
        arranging_problems(written.edition(), written.laid, written.draws, made, written.sources()),
        written.sources(), false);
  }
};

using Pages = std::vector<int>;

} // namespace

TEST_CASE("colour pages come together on one side") {
  const Laying it(eight(words("page 3 in colour") + words("page 4 in colour") + words("page 5") +
                        words("page 6")));
  CHECK(it.order() == Pages{1, 2, 3, 6, 5, 4, 7, 8});
  CHECK(it.made.cheapest->proved);
  CHECK(it.made.saved() == Exact(4));
  CHECK(it.text() == R"(Test
  pages 3, 4, 5 and 6 may move
  what keeps pages where they are, or together:
    pages 1, 2, 7 and 8: the cover stays

  as they are    $1.04 a copy, $10.40 in all
  laid anew      $0.64 a copy, $6.40 in all; no order costs less: proved
  saves          $0.40 a copy, $4.00 in all

  2 pages get another number, the fewest at that price:
    page 4   becomes page 6
    page 6   becomes page 4

  2 colour pages cost 2 sides; laid so, 1
  by their new numbers:
    the next cheapest colour: pages 4 and 5, one side, for $0.40 a copy more
  to have it so: bodkin arrange almanac.bodkin --write NEW.bodkin
)");
}

TEST_CASE("a page that stays is left where it is") {
  const Laying it(eight(words("page 3 in colour") + words("page 4 in colour", "stays") +
                        words("page 5") + words("page 6")));
  CHECK(it.order() == Pages{1, 2, 5, 4, 3, 6, 7, 8});
}

TEST_CASE("pages kept together move as one, in their order") {
  // The only orders are 3-4 before or after 5-6; neither brings both colours to one side.
  const Laying it(eight(words("page 3 in colour", "stays with 4") + words("page 4 in colour") +
                        words("page 5", "stays with 6") + words("page 6")));
  CHECK(it.order() == Pages{1, 2, 3, 4, 5, 6, 7, 8});
  CHECK(it.made.saves_nothing());
}

TEST_CASE("where every page stays nothing is saved, and it is said so") {
  const Laying it(eight(words("page 3 in colour", "stays") + words("page 4 in colour", "stays") +
                        words("page 5", "stays") + words("page 6", "stays")));
  CHECK(it.made.movable.empty());
  CHECK(it.text() == R"(Test
  no page may move
  what keeps pages where they are, or together:
    pages 1, 2, 7 and 8: the cover stays
    pages 3, 4, 5 and 6: stay (lines 28, 31, 34, 37)

  nothing can be saved; the pages cost $1.04 a copy as they are
  2 colour pages cost 2 sides
  colour for nothing: pages 5 and 6, whose sides are paid as colour
)");
}

TEST_CASE(
    "a text that runs on keeps its pages together; one that leaps keeps them in their places") {
  const auto wishes = [](const std::string &pages) {
    const Laying it(eight("text notes\n  says \"x\"\n\n" + pages));
    std::string said;
    for (const arranging::Wish &wish : it.made.wishes)
      if (wish.why == arranging::Wish::Why::text)
        said += "together";
      else if (wish.why == arranging::Wish::Why::broken_text)
        said += "stay";
    return said;
  };
  CHECK(wishes("page 3-4\n  words of notes in label\n") == "together");
  CHECK(wishes("page 3, 5\n  words of notes in label\n") == "stay");
}

TEST_CASE(
    "papers that cannot lie on one sheet are brought apart, though the written order cannot be "
    "printed") {
  const Laying it(eight(words("page 3 on rose") + words("page 9 on rose") +
                            words("page 4 on plain") + words("page 5") + words("page 10 on plain"),
                        "pages 12"));
  CHECK_FALSE(it.made.printable_as_written);
  REQUIRE(it.made.cheapest);
  CHECK(it.made.cheapest->proved);
}

TEST_CASE("the page that an insert goes on stays") {
  const Laying it(eight("insert slip\n  size quarter-letter\n  goes on 4\n  paper plain\n"
                        "  page 1\n    words \"y\" in label\n\n" +
                        words("page 3 in colour") + words("page 4 in colour") + words("page 5") +
                        words("page 6")));
  CHECK(it.made.movable == Pages{3, 5, 6});
  CHECK(it.text().find("    page 4: a piece goes there (line 29)\n") != std::string::npos);
}

TEST_CASE("lines that leave no order are named, and what to drop") {
  const Laying it(eight(words("page 3 on rose", "stays") + words("page 4 on plain", "stays")));
  REQUIRE_FALSE(it.made.cheapest);
  CHECK(
      it.problems() ==
      R"(almanac.bodkin:27:11: error: no order of the pages gives every line what it asks for [cannot-arrange]
  page 3 on rose
            ~~~~
  why   one sheet is one paper, one side goes through one machine, and a page that stays, or keeps
        to its neighbours, brings what it asks for to where it lies; at odds: page 3 on rose (line
        27); page 4 on plain (line 30); without any one of them there is an order
  type  page 3      (on line 27)
        page 4      (on line 30)
almanac.bodkin:30:11: note: this is at odds with it
)");
}

} // namespace bodkin::tests
