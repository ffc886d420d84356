#include "preflight/inspecting.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

using namespace bodkin::tests;

namespace {

std::string with_card(std::string_view fed, std::string_view weight) {
  return booklet("pages 4\ncover on card", fmt::format(R"(machine small like copier
  feeds {}
stock card
  weight {}
  sheet letter, grain short
page 1, 4 by small
  words "so" in body
page 2-3
  words "so" in body
finish
  crease cover
  fold all
)",
                                                       fed, weight));
}

} // namespace

TEST_CASE("card that the rollers do not take is told in grams") {
  const Inspected it = inspected(with_card("16 lb bond to 28 lb bond", "110 lb index"));
  CHECK(
      it.told("will-not-feed") ==
      R"(almanac.bodkin:30:10: error: 110 lb index is 199 gsm; small takes 60 to 105 gsm [will-not-feed]
  weight 110 lb index
         ~~~~~~~~~~~~
  why   the card would jam in the bend behind the tray
  type  weight     28 lb bond      (105 gsm; or print these pages by another machine)
almanac.bodkin:28:23: note: what the machine takes is said here
)");
  CHECK(it.edited("will-not-feed").find("  weight 28 lb bond\n") != std::string::npos);
}

TEST_CASE("paper too light is told what the rollers would do") {
  const Inspected it = inspected(booklet("pages 4", R"(machine heavy like copier
  feeds 90 gsm to 300 gsm
page 1, 4 by heavy
  words "so" in body
page 2-3
  words "so" in body
)"));
  CHECK(
      it.told("will-not-feed") ==
      R"(almanac.bodkin:9:10: error: 20 lb bond is 75 gsm; heavy takes 90 to 300 gsm [will-not-feed]
  weight 20 lb bond
         ~~~~~~~~~~
  why   the rollers would take several sheets at once, or crease them
  type  weight     24 lb bond      (90 gsm; or print these pages by another machine)
almanac.bodkin:27:19: note: what the machine takes is said here
)");
  CHECK(it.edited("will-not-feed").find("  weight 24 lb bond\n") != std::string::npos);
}

TEST_CASE("card too heavy is answered with the heaviest of its kind that is sold and passes") {
  const Inspected it = inspected(with_card("60 gsm to 199 gsm", "110 lb cover"));
  // 65 lb cover is 175.8 gsm, 80 lb cover 216.3 (derived from the pound and the inch)
  CHECK(it.edited("will-not-feed").find("  weight 65 lb cover\n") != std::string::npos);
}

TEST_CASE("a sheet that no tray holds is told which sizes it does") {
  const Inspected it = inspected(booklet("pages 4", R"(machine small like copier
  sizes legal, tabloid
page 1, 4 by small
  words "so" in body
page 2-3
  words "so" in body
)"));
  CHECK(it.told("machine-size") ==
        R"(almanac.bodkin:10:9: error: small does not take letter sheets [machine-size]
  sheet letter, grain short
        ~~~~~~
  why   its trays hold legal, tabloid
  type  sheet      legal, grain short      (or print these pages by another machine)
almanac.bodkin:27:9: note: its sizes are said here
)");
  CHECK(it.edited("machine-size").find("  sheet legal, grain short\n") != std::string::npos);
}

TEST_CASE("a machine that prints nothing of the edition may take what it likes") {
  const Inspected it = inspected(booklet("pages 4", R"(machine small like copier
  sizes legal, tabloid
  feeds 200 gsm to 300 gsm
page 1, 4 by small
  blank
page 2-3
  words "so" in body
)"));
  CHECK(it.found() == "");
}

TEST_CASE("a sheet lies either way in its tray") {
  const Inspected it = inspected(booklet("pages 4", R"(machine small like copier
  sizes letter
  feeds 60 gsm to 300 gsm
page 1, 4 by small
  words "so" in body
page 2-3
  words "so" in body
)"));
  CHECK(it.found() == "");
}
