// What is glued on a page hides what stands there.
#include "preflight/inspecting.hpp"

#include <doctest/doctest.h>

using namespace bodkin;
using namespace bodkin::tests;

namespace {

constexpr std::string_view pocket = "insert sleeve\n  size 4in x 3in\n  flaps 1/2in, open head\n"
                                    "  goes on 8\n  at 3/4in 4in\n  page 1\n    blank\n";

std::string on_page_8(const std::string &matter, std::string_view piece = pocket) {
  return booklet("pages 8", "page 1-7\n  blank\npage 8\n" + matter + std::string(piece));
}

} // namespace

// The pocket covers 3/4in to 4 3/4in across, 4in to 7in down; the picture 1in to 3in, 2in to 5in.
TEST_CASE("a picture under a pocket is hidden by so much, and goes where the page is free") {
  const Inspected it = copy_inspected(
      on_page_8("  picture \"red.png\"\n    at 1in 2in, 2in x 3in\n    fills place\n"),
      {{"red.png", red_picture(600, 900)}});
  CHECK(
      it.told("hidden-art") ==
      R"(almanac.bodkin:30:5: error: 2in x 1in of the picture on page 8 lies under the pocket sleeve [hidden-art]
  at 1in 2in, 2in x 3in
  ~~~~~~~~~~~~~~~~~~~~~
  why   it is glued over 4in x 3in of page 8, 3/4in from its left and 4in from its head
  type  at       1/4in 1/4in, 2in x 3in
        (where the page is free, or move the piece by its own `at`)
almanac.bodkin:32:1: note: it is made here
)");
}

TEST_CASE("what only touches a pocket, and plain grounds under it, are no matter") {
  CHECK(
      copy_inspected(on_page_8("  picture \"red.png\"\n    at 1in 2in, 2in x 2in\n    fills place\n"
                               "  patch\n    at 1in 1in, 3in x 5in\n    fill #cccccc\n"
                               "  rule 1pt black, 1in 5in to 3in 5in\n"
                               "  hand stamp \"moon\"\n    at 1in 5in, 1in x 1in\n"),
                     {{"red.png", red_picture(600, 600)}})
          .found() == "");
}

TEST_CASE("a leaf that lifts hides only what lies under its glue") {
  const std::string_view leaf = "insert leaf\n  size 3in x 3in\n  up 6\n  goes on 8\n"
                                "  at 1in 3in\n  glued head, 1/2in wide\n  page 1\n    blank\n";
  const auto found = [&](const std::string &at) {
    return copy_inspected(on_page_8("  qr \"a code\"\n    at " + at + ", 1in x 1in\n", leaf))
        .found();
  };
  CHECK(found("2in 3.6in") == "");
  CHECK(found("2in 3.2in") == "hidden-art 30");
  CHECK(found("2in 1.9in") == ""); // the code's own quiet zone is no ink
}

TEST_CASE("a board hides the whole of the page it is glued to") {
  const std::string boards = "stock grey\n  weight 1200 gsm\n  caliper 0.08in\n"
                             "  sheet 20in x 30in\n  costs included\nboards on grey\n  up 4\n";
  const Inspected it = copy_inspected(
      booklet("pages 8", "page 1\n  words \"TITLE\" in sign\n    at 1in 1in, 3in x 1in\n"
                         "page 2-8\n  blank\n" +
                             boards));
  REQUIRE(it.problems.size() == 1);
  CHECK(it.problems.front().message.ends_with("of the words on page 1 lies under the board glued "
                                              "there"));
}

TEST_CASE("words on a translucent wrap are told where they lie over dark art beneath") {
  const auto wraps = [](const std::string &opacity) {
    return copy_inspected(booklet("pages 8", "page 1-8\n  blank\nstock vellum\n  weight 90 gsm\n"
                                             "  sheet letter\n  costs included\n" +
                                                 opacity +
                                                 "wrap on plain\n  page front-cover\n    patch\n"
                                                 "      at 1in 1in, 3in x 3in\n      fill black\n"
                                                 "wrap on vellum\n  page front-cover\n"
                                                 "    words \"TITLE\" in sign\n"
                                                 "      at 1in 1in, 3in x 1in\n"))
        .found();
  };
  CHECK(wraps("  opacity 40%\n") == "show-through 40");
  CHECK(wraps("  opacity 95%\n") == "");
  CHECK(wraps("") == "");
}
