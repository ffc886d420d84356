#include "edition/reading.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

using namespace bodkin;
using namespace bodkin::tests;

namespace {

Read read_picture(std::string_view every, std::string_view facts, std::string_view borrowed = "") {
  return read("borrow \"house.bodkin\"\n" +
                  small_edition("", fmt::format("{}page 1\n  picture \"a.png\"\n{}", every, facts)),
              {{"a.png", "x"}, {"house.bodkin", borrowed}});
}

const Element &picture(const Read &r) { return r.edition()[r.edition().pages[1].elements[0]]; }

bool is_at(const Read &r, std::int64_t inches) {
  const At *at = std::get_if<At>(&picture(r).placement.where);
  return at && at->across.offset == Length::inches(inches);
}

} // namespace

TEST_CASE("every gives a fact to each element that does not say otherwise") {
  const Read r = read_picture("every picture\n  tone grey\n", "");
  CHECK(r.found().empty());
  CHECK(std::get<Picture>(picture(r).what).tone->kind == ToneKind::grey);
  CHECK(origin_words(std::get<Picture>(picture(r).what).tone.from, *r.sources) ==
        "almanac.bodkin:20");
}

TEST_CASE(
    "an element's own fact comes before the edition's every, and that before a borrowed one") {
  const std::string_view borrowed = "every picture\n  tone line at 40%\n  turn 1deg\n";
  const Read own = read_picture("every picture\n  tone grey\n", "    tone as-is\n", borrowed);
  CHECK(std::get<Picture>(picture(own).what).tone->kind == ToneKind::as_is);
  const Read edition = read_picture("every picture\n  tone grey\n", "", borrowed);
  CHECK(std::get<Picture>(picture(edition).what).tone->kind == ToneKind::grey);
  CHECK(picture(edition).turn->thousandths == 1000);
  const Read house = read_picture("", "", borrowed);
  CHECK(std::get<Picture>(picture(house).what).tone->kind == ToneKind::line);
  CHECK(std::get<Picture>(picture(house).what).tone->threshold.millionths == 400'000);
}

TEST_CASE("every speaks for standing and running matter, wherever it stands") {
  const Read r = read(small_edition("", "standing s\n  patch\n    at 0in 0in, 1in x 1in\n"
                                        "running u\n  patch\n    at 0in 0in, 1in x 1in\n"
                                        "page 1\n  lay s at 1in 1in\nevery patch\n  fill black\n"));
  CHECK(r.found().empty());
  CHECK(r.edition()[r.edition().standings[0].elements[0]].fill);
  CHECK(r.edition()[r.edition().runnings[0].elements[0]].fill);
}

TEST_CASE("one every fact in two places is an error with both lines") {
  const Read r =
      read(small_edition("", "every patch\n  fill black\nevery patch\n  fill white\npage 1\n"));
  CHECK(r.found() == "error almanac.bodkin:21:3 same-fact-twice\n");
  CHECK(r.problems[0].message == "every patch has its fill from line 19 already");
}

TEST_CASE("a picture's own place displaces what every says that it fills") {
  const Read r = read_picture("every picture\n  fills live\n", "    at 1in 1in, 2in x 2in\n");
  CHECK(is_at(r, 1));
  CHECK(*picture(r).placement.area == Area::place);
  CHECK_FALSE(picture(r).placement.fills);
}

TEST_CASE("what a picture fills displaces the place that every gives") {
  const Read r = read_picture("every picture\n  at 1in 1in, 2in x 2in\n", "    fills live\n");
  CHECK_FALSE(picture(r).placement.written());
  CHECK(*picture(r).placement.area == Area::live);
  CHECK(picture(r).placement.fills);
}

TEST_CASE("fills place goes with a place of another level") {
  const Read above = read_picture("every picture\n  fills place\n", "    at 1in 1in, 2in x 2in\n");
  CHECK(is_at(above, 1));
  CHECK(picture(above).placement.fills);
  const Read below = read_picture("every picture\n  at 3in 1in, 2in x 2in\n", "    fills place\n");
  CHECK(is_at(below, 3));
  CHECK(picture(below).placement.fills);
}

TEST_CASE("an own place keeps nothing of what stands behind the every that it displaces") {
  const Read r = read_picture("every picture\n  fits margins\n", "    at 1in 1in, 2in x 2in\n",
                              "every picture\n  fills place\n");
  CHECK(is_at(r, 1));
  CHECK_FALSE(picture(r).placement.fills);
}
