#include "measure/paper.hpp"

#include "asked.hpp"

#include <doctest/doctest.h>
#include <sstream>
#include <string>

using namespace bodkin;

namespace {

Length mm(std::int64_t n) { return Length::mm(n); }

void same_as_paperconf(const std::string &name) {
  CAPTURE(name);
  std::istringstream out(asked("paperconf -s -m -p " + name));
  double width = 0, height = 0;
  std::string unit;
  out >> width >> unit >> height;
  REQUIRE(unit == "mm");
  const auto size = paper_named(name);
  REQUIRE(size.has_value());
  CHECK(size->width.in_mm() == doctest::Approx(width).epsilon(1e-6));
  CHECK(size->height.in_mm() == doctest::Approx(height).epsilon(1e-6));
}

} // namespace

// Debian's paperconf (libpaper-utils).
TEST_CASE("papers have the sizes that paperconf says") {
  for (const char *name : {"letter", "legal", "tabloid", "a3", "a4", "a5", "a6", "a7", "a8"})
    same_as_paperconf(name);
}

// ISO 216: A0 is 841 x 1189 mm; each next one is half of it, rounded down to a millimetre.
TEST_CASE("A sizes are halved and rounded down") {
  std::int64_t width = 841, height = 1189;
  for (int n = 1; n <= 8; ++n) {
    const std::int64_t half = height / 2;
    height = width;
    width = half;
    if (const auto size = paper_named("a" + std::to_string(n)); n >= 3)
      CHECK(size == Size{mm(width), mm(height)});
  }
}

TEST_CASE("American papers are halves and quarters of each other") {
  const Size letter = *paper_named("letter");
  CHECK(paper_named("half-letter") == Size{letter.height / 2, letter.width});
  CHECK(paper_named("quarter-letter") == Size{letter.width / 2, letter.height / 2});
  const Size legal = *paper_named("legal");
  CHECK(paper_named("half-legal") == Size{legal.height / 2, legal.width});
  CHECK(paper_named("tabloid") == Size{letter.height, letter.width * 2});
}

// ISO 217, from memory.
TEST_CASE("sra3 is 320 by 450 mm") { CHECK(paper_named("sra3") == Size{mm(320), mm(450)}); }

TEST_CASE("every named paper stands upright") {
  for (const NamedPaper &paper : named_papers()) {
    CAPTURE(paper.name);
    CHECK(paper.size.width < paper.size.height);
    CHECK(paper_named(paper.name) == paper.size);
  }
}

TEST_CASE("no paper has an unknown name") {
  CHECK_FALSE(paper_named("foolscap").has_value());
  CHECK_FALSE(paper_named("").has_value());
}

TEST_CASE("a size is written by its paper's name, lying or standing") {
  const Size letter = *paper_named("letter");
  CHECK(written(letter, Ruler::inches) == "letter");
  CHECK(written(letter.turned(), Ruler::inches) == "letter");
  CHECK(written(Size{Length::inches(11, 2), Length::inches(17, 2)}, Ruler::inches) ==
        "half-letter");
  CHECK(written(Size{Length::inches(5), Length::inches(17, 2)}, Ruler::inches) == "5in x 8 1/2in");
  CHECK(written(Size{mm(140), mm(210)}, Ruler::millimetres) == "140mm x 210mm");
}

TEST_CASE("papers in whole millimetres are measured with a metric ruler") {
  CHECK(ruler_of(*paper_named("a5")) == Ruler::millimetres);
  CHECK(ruler_of(*paper_named("half-letter")) == Ruler::inches);
}
