#include "type/face_problems.hpp"
#include "type/shop.hpp"

#include <doctest/doctest.h>

namespace bodkin {
namespace {

// A problem's words, one part a line.
std::string said(const Problem &problem) {
  const char *kinds[] = {"error", "warning", "note"};
  std::string out = std::string(kinds[static_cast<int>(problem.kind)]) + ": " + problem.message +
                    " [" + problem.check + "]\nwhy " + problem.why;
  for (const WayOut &way : problem.type)
    out += "\ntype " + way.line + (way.remark.empty() ? "" : " ") + way.remark;
  return out;
}

const Face odd = catalogued("book", "Odd", "", {});
const Face packed = catalogued("book", "Odd", "fonts-odd", {{"Odd.otf", Cut::regular}});

} // namespace

TEST_CASE("a missing family names the package, near families or the file to put in") {
  CHECK(said(missing_face(packed, {})) ==
        "error: the family Odd is not on this machine; the Debian package fonts-odd brings it "
        "[missing-face]\n"
        "why another face is never put in its place: every line would end elsewhere, and on the "
        "next machine elsewhere again\n"
        "type apt-get install fonts-odd as root, in a terminal; then compile again");
  CHECK(said(missing_face(odd, {"Oddly", "Odd Sans"})) ==
        "error: the family Odd is not on this machine; did you mean Oddly or Odd Sans? "
        "[missing-face]\n"
        "why another face is never put in its place: every line would end elsewhere, and on the "
        "next machine elsewhere again\n"
        "type face book from \"Oddly\"\n"
        "type face book from \"Odd Sans\"");
  CHECK(said(missing_face(odd, {})) ==
        "error: the family Odd is not on this machine [missing-face]\n"
        "why another face is never put in its place: every line would end elsewhere, and on the "
        "next machine elsewhere again\n"
        "type face book from \"faces/book.otf\" once that file is in the edition's folder; `bodkin "
        "explain faces` names the families that need none");
}

TEST_CASE("a face's file that is not there, or outside, gives the line to type") {
  Face face = catalogued("book", "", "", {{"faces/od.otf", Cut::italic}});
  face.files[0].range = {FileId{0}, Offset{3}, Offset{9}};
  CHECK(said(missing_face_file(face, face.files[0], {Trouble::absent, "", "faces/odd.otf"})) ==
        "error: faces/od.otf is not there; faces/odd.otf is [missing-file]\n"
        "why the words in book stay off the pages until it is\n"
        "type file       \"faces/odd.otf\", cut italic");
  CHECK(said(missing_face_file(face, face.files[0], {Trouble::outside, "", ""})) ==
        "error: this face lives outside the edition's folder [outside-the-folder]\n"
        "why a manuscript may read its own folder only, so that it still works on another desk "
        "and a stranger's cannot read yours\n"
        "type file       \"faces/od.otf\", cut italic after copying it in, if its licence allows "
        "that");
}

TEST_CASE("a face that cannot be read says why") {
  CHECK(said(unreadable_face(packed, {}, "/usr/share/fonts/Odd.otf",
                             "its tables are damaged or cut short")) ==
        "error: Odd.otf cannot be set from: its tables are damaged or cut short "
        "[unreadable-face]\n"
        "why the words in book stay off the pages until it can\n"
        "type apt-get install --reinstall fonts-odd as root, in a terminal; then compile again");
}

TEST_CASE("a face of the machine is noted with the file to copy") {
  CHECK(said(system_face(odd, "/usr/share/fonts/Odd.otf")) ==
        "note: Odd is taken from this machine [system-face]\n"
        "why another machine may have it in another version with other line ends, or not at all; a "
        "file in the edition's folder keeps the edition whole\n"
        "type face book from \"faces/Odd.otf\" after copying in /usr/share/fonts/Odd.otf, if its "
        "licence allows it");
}

TEST_CASE("a missing cut says what is set instead") {
  CHECK(said(missing_cut(odd, Cut::bold_italic, Cut::bold, {})) ==
        "note: Odd has no bold italic; these words are set in its bold [missing-cut]\n"
        "why a letter slanted or smeared by machine looks poor on paper and is never made");
}

TEST_CASE("a missing glyph shows the character, its number and its words") {
  CHECK(said(missing_glyph(odd, Cut::regular, "→", {{}, "here → there", 3}, "Even")) ==
        "error: Odd has no → (U+2192), wanted in “here → there” and 2 more times "
        "[missing-glyph]\n"
        "why it would print as an empty box; Even, also in this edition, has it\n"
        "type  set these words in a style of Even");
  CHECK(said(missing_glyph(odd, Cut::bold, "\x07", {{}, "be\x07ll", 1}, "")) ==
        "error: Odd, bold, has no U+0007, wanted in “be\x07ll” [missing-glyph]\n"
        "why it would print as an empty box\n"
        "type  write it otherwise, or set these words in a face that has it");
}

TEST_CASE("a script that a face does not draw is told in twelve characters and a count") {
  Shop shop;
  std::string text;
  for (char last = '\x80'; last < '\x94'; ++last)
    text += std::string("\xE4\xB8") + last; // U+4E00 to U+4E13
  shop.fill(one(text), shop.body, {Length::points(400), Length::points(200)});
  const Problems problems = shop.compositor().problems();
  REQUIRE(problems.size() == 13);
  CHECK(said(problems.back()) ==
        "error: EB Garamond lacks 8 more characters of this edition's words [missing-glyph]\n"
        "why so many are a script that this family does not draw; its words want a face that does");
}

TEST_CASE("code without a style offers one in a typewriter's face") {
  Style style;
  style.name = "body";
  CHECK(said(code_unstyled(style, {}, "label")) ==
        "note: words between backticks look like the rest: body has no style for code "
        "[code-unstyled]\n"
        "why backticks ask for words as a typewriter sets them\n"
        "type code       in label under style body");
}

TEST_CASE("what an edition's words meet is told once, however often it is met") {
  Shop shop;
  Block block = paragraph("a → b → `x`");
  block.spans[0].strong = true;
  block.spans.push_back(paragraph("x").spans[0]);
  block.spans[1].code = true;
  for (int i = 0; i < 3; ++i)
    shop.fill(prose({block}), shop.sign, {Length::points(100), Length::points(200)});
  std::vector<std::string> messages;
  for (const Problem &problem : shop.compositor().problems())
    messages.push_back(problem.message);
  CHECK(messages == std::vector<std::string>{
                        "Bebas Neue, bold, has no → (U+2192), wanted in “a → b” and 5 more times",
                        "Bebas Neue has no bold; these words are set in its regular",
                        "words between backticks look like the rest: sign has no style for code"});
}

TEST_CASE("what is met is underlined where it stands, if it is written there as it is set") {
  Shop shop;
  Sources sources;
  const std::string_view text = "Up &rarr; on → and ``x`` down";
  const Range all{sources.add("words.md", std::string(text)), Offset{}, Offset{31}};
  Block block = paragraph("Up ↗ on → and ");
  block.spans.push_back(paragraph("x").spans[0]);
  block.spans[1].code = true;
  for (Span &span : block.spans)
    span.from = all;
  shop.fill(prose({block}), shop.sign, {Length::points(300), Length::points(200)});
  std::vector<std::string> underlined;
  for (const Problem &problem : shop.compositor().problems(&sources))
    underlined.emplace_back(sources.text(problem.range));
  CHECK(underlined == std::vector<std::string>{"→", std::string(text), "``x``"});
}

} // namespace bodkin
