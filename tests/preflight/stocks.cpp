#include "preflight/inspecting.hpp"

#include <doctest/doctest.h>

using namespace bodkin::tests;

namespace {

std::string on_paper(std::string_view facts, std::string_view pages) {
  std::string stock = "stock thin\n  weight 20 lb bond\n";
  return booklet("pages 8\ncover on thin", stock + std::string(facts) + std::string(pages));
}

constexpr std::string_view all_pages =
    "page 1-8\n  words \"so\" in body\n    at 1in 1in, 3in x 1in\n";
constexpr std::string_view fronts =
    "page 1, 3-6, 8\n  words \"so\" in body\n    at 1in 1in, 3in x 1in\n"
    "page 2, 7\n  blank\n";

} // namespace

TEST_CASE("the note of a cut paper says where to cut and which grain to ask for") {
  const Inspected it =
      inspected(on_paper("  sheet letter, grain short\n  cut-from tabloid, 2 out\n", all_pages));
  CHECK(
      it.told("cut-the-sheets") ==
      R"(almanac.bodkin:30:3: note: 2 sheets of tabloid: cut it across at 8 1/2in, its long edge upright [cut-the-sheets]
  cut-from tabloid, 2 out
  ~~~~~~~~~~~~~~~~~~~~~~~
  why   its letter sheets lie with their long edges across on it: for thin grain short, buy tabloid
        grain long
)");
}

// 23 by 35 inches is a usual size of large sheets (common practice, no source); 35 = 3 × 11 + 2 and
// 23 = 2 × 8 1/2 + 6, and the other way 2 × 11 + 1 by 4 × 8 1/2 + 1.
TEST_CASE("of two ways to cut the one that leaves the grain long is taken") {
  const std::string large = "  sheet letter, grain long\n  cut-from 23in x 35in, ";
  CHECK(inspected(on_paper(large + "6 out\n", all_pages))
            .told("cut-the-sheets")
            .find("cut it across at 11in, 22in and 33in; then down at 8 1/2in and 17in") !=
        std::string::npos);
  const std::string eight =
      inspected(on_paper(large + "8 out\n", all_pages)).told("cut-the-sheets");
  CHECK(eight.find("across at 8 1/2in, 17in, 25 1/2in and 34in; then down at 11in and 22in") !=
        std::string::npos);
  CHECK(
      eight.find("its letter sheets lie with their long edges across on it: for thin grain long") !=
      std::string::npos);
}

TEST_CASE("a larger sheet that does not give so many is an error with the number that it gives") {
  const Inspected it =
      inspected(on_paper("  sheet letter, grain short\n  cut-from legal, 2 out\n", all_pages));
  CHECK(it.told("not-out-of-it") ==
        R"(almanac.bodkin:30:3: error: legal does not give 2 sheets of letter [not-out-of-it]
  cut-from legal, 2 out
  ~~~~~~~~~~~~~~~~~~~~~
  why   a legal sheet is 8 1/2in x 14in, letter is 8 1/2in x 11in; laid the better way it gives 1
  type  cut-from   legal, 1 out
)");
  CHECK(it.edited("not-out-of-it").find("  cut-from   legal, 1 out\n") != std::string::npos);
}

TEST_CASE("paper for one side is not printed on both") {
  const std::string facts = "  sheet letter, grain short\n  sides 1\n";
  CHECK(inspected(on_paper(facts, fronts)).found() == "");
  CHECK(
      inspected(on_paper(facts, all_pages)).told("one-sided-paper") ==
      R"(almanac.bodkin:30:3: error: print holds on one side of thin, and sheet 1 is printed on both [one-sided-paper]
  sides 1
  ~~~~~~~
  why   sheet 1 has pages 1 and 8 on its front and pages 2 and 7 on its back; toner does not hold on
        the other side, or that side is glued
  type  sides      2      (if it does take print on both; or keep pages 2 and 7 empty)
)");
}

TEST_CASE("a dark patch behind words is seen through paper of low opacity") {
  const auto pages = [](std::string_view opacity, std::string_view shade) {
    return on_paper("  sheet letter, grain short\n  opacity " + std::string(opacity) + "\n",
                    "page 1\n  patch\n    at 1in 1in, 2in x 2in\n    fill black " +
                        std::string(shade) +
                        "\npage 2\n  words \"the rain\" in body\n    at 3in 1in, 2in x 1in\n"
                        "page 3-8\n  blank\n");
  };
  CHECK(
      inspected(pages("80%", "100%")).told("show-through") ==
      R"(almanac.bodkin:36:3: note: the patch on page 1 will be seen through all of these words on page 2 [show-through]
  words "the rain" in body
  ~~~~~~~~~~~~~~~~~~~~~~~~
  why   pages 1 and 2 are the two sides of one leaf; thin hides 80% of what is behind it, and below
        90% a dark area makes words tired
  type  put words behind its light parts, or take a heavier paper
almanac.bodkin:32:3: note: it stands here
almanac.bodkin:30:11: note: the opacity is said here
)");
  CHECK(inspected(pages("90%", "100%")).found() == "");
  CHECK(inspected(pages("80%", "20%")).found() == "");
}

TEST_CASE("what is behind a spot is found by turning the leaf, not by counting from one edge") {
  // At the left of page 1 lies the fold; behind it is the right of page 2.
  const auto beside = [](std::string_view x) {
    return on_paper("  sheet letter, grain short\n  opacity 80%\n",
                    "page 1\n  patch\n    at 1in 1in, 1in x 2in\n    fill black\n"
                    "page 2\n  words \"rain\" in body\n    at " +
                        std::string(x) + " 1in, 1in x 1in\npage 3-8\n  blank\n");
  };
  CHECK(inspected(beside("3.55in")).found() == "show-through 36");
  CHECK(inspected(beside("1in")).found() == "");
}
