#include "edition/reading.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

using namespace bodkin;
using namespace bodkin::tests;

namespace {

Read read_style(std::string_view facts) {
  return read(small_edition("", fmt::format("face f from \"EB Garamond\"\nstyle s\n{}"
                                            "page 1\n  words \"x\" in s\n",
                                            facts)));
}

Style style(std::string_view facts) { return read_style(facts).edition().styles.at(0); }

} // namespace

TEST_CASE("a style's defaults are written out") {
  const Style s = style("  face f 10\n");
  CHECK(*s.size == Length::points(10));
  CHECK(*s.leading == Length::points(12));
  CHECK(s.leading.by_default());
  CHECK(*s.lines == Lines::left);
  CHECK(s.ink->is_black());
  CHECK(*s.indent == Length::points(10));
  CHECK(*s.space_before == Length{});
  CHECK_FALSE(s.list);
}

TEST_CASE("paragraphs are parted by an indent or by room, not by both") {
  CHECK(*style("  face f 10\n  space 6pt before\n").indent == Length{});
  CHECK(*style("  face f 10\n  lines centred\n").indent == Length{});
  CHECK(*style("  face f 10\n  lines right\n").indent == Length{});
  CHECK(*style("  face f 10\n  lines justified\n").indent == Length::points(10));
  CHECK(*style("  face f 10\n  space 6pt before\n  indent 8pt\n").indent == Length::points(8));
}

TEST_CASE("figures are those of the face unless a style says which") {
  CHECK(*style("  face f 10\n").figures == Figures::of_face);
  CHECK(*style("  face f 10\n  figures lining\n").figures == Figures::lining);
  CHECK(*style("  face f 10\n  figures old-style\n").figures == Figures::old_style);
}

TEST_CASE("a style may name itself") {
  const Read r = read_style("  face f 10\n  list in s\n");
  CHECK(r.found().empty());
  CHECK(r.edition()[**r.edition().styles[0].list].name == "s");
}

TEST_CASE("a style without a face is told so once") {
  const Read r = read_style("  lines left\n");
  CHECK(r.found() == "error almanac.bodkin:19:7 missing-fact\n"
                     "note almanac.bodkin:18:6 unused-thing\n");
  CHECK(r.problems[0].message == "the style s does not say its face");
  CHECK(r.problems[0].type[0].line == "face       f 10/13");
}

TEST_CASE("a face is the catalogue's by its exact family") {
  const Read r = read_style("  face f 10\n");
  const Face &face = r.edition().faces[0];
  CHECK(face.family == "EB Garamond");
  CHECK_FALSE(face.own_files);
  CHECK(face.package == "fonts-ebgaramond");
  CHECK(face.files.at(0).cut == Cut::regular);
}

TEST_CASE("a family that the catalogue does not hold is left to the system") {
  const Read r = read(small_edition("", "face f from \"Eb Garamond\"\nstyle s\n  face f 10\n"
                                        "page 1\n  words \"x\" in s\n"));
  CHECK(r.found().empty());
  CHECK(r.edition().faces[0].family == "Eb Garamond");
  CHECK(r.edition().faces[0].files.empty());
}

TEST_CASE("a quoted text with a face's ending is a file of the edition") {
  const Read r =
      read("borrow \"house/type.bodkin\"\n" +
               small_edition("", "style s\n  face f 10\npage 1\n  words \"x\" in s\n"),
           {{"house/type.bodkin", "face f from \"Hand.OTF\"\n"}, {"house/Hand.OTF", "x"}});
  CHECK(r.found().empty());
  const Face &face = r.edition().faces[0];
  CHECK(face.own_files);
  CHECK(face.family.empty());
  REQUIRE(face.files.size() == 1);
  CHECK(face.files[0].path == "house/Hand.OTF");
}

TEST_CASE("a face may list its own files by cut") {
  const Read r = read(small_edition("", "face f from \"Hand\"\n  file \"a.otf\"\n"
                                        "  file \"b.otf\", cut bold-italic\n  licence \"OFL 1.1\"\n"
                                        "style s\n  face f 10\npage 1\n  words \"x\" in s\n"),
                      {{"a.otf", "x"}, {"b.otf", "x"}});
  CHECK(r.found().empty());
  const Face &face = r.edition().faces[0];
  REQUIRE(face.files.size() == 2);
  CHECK(face.files[1].cut == Cut::bold_italic);
  CHECK(face.licence == "OFL 1.1");
}
