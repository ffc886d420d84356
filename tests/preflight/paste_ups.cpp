#include "preflight/inspecting.hpp"

#include <doctest/doctest.h>

using namespace bodkin;
using namespace bodkin::tests;

namespace {

std::string glued(std::string_view place) {
  return booklet("pages 8", "page 1-4, 6-8\n  words \"so\" in body\n    at 1in 1in, 3in x 1in\n"
                            "page 5\n  paste-up \"ticket stub\"\n    at " +
                                std::string(place) + "\n");
}

} // namespace

TEST_CASE("what is glued on a page says that its side is copied from its original") {
  CHECK(
      inspected(glued("1in 3in, 3.5in x 4in")).told("glued-by-hand") ==
      R"(almanac.bodkin:30:3: note: the original of page 5 is not whole until this is glued on it [glued-by-hand]
  paste-up "ticket stub"
  ~~~~~~~~~~~~~~~~~~~~~~
  why   sheets and passes print the page without it; copy its side from originals.pdf instead,
        printed, glued and dry before it lies on the glass; cut with a sharp blade along a steel
        edge, fingers behind it, and glue in an aired room
)");
}

TEST_CASE("a window stays clear of the bare edge like any art") {
  CHECK(inspected(glued("1.7in 3in, 3.5in x 4in")).found() == "glued-by-hand 30");
  CHECK(inspected(glued("1.8in 3in, 3.5in x 4in")).found() == "glued-by-hand 30, unsafe-art 31");
}

TEST_CASE("a page that carries a paste-up alone is printed, in black") {
  const Inspected it = walked(glued("1in 3in, 3.5in x 4in"));
  const Edition &edition = it.read.edition();
  const Element &element = edition[edition.pages[5].elements.front()];
  CHECK(name_of(element) == "paste-up");
  CHECK(std::get<PasteUp>(element.what).text == "ticket stub");
  CHECK(it.told("colour-unused") == "");
  CHECK(it.told("unnamed-page") == "");
}
