#include "type/shape.hpp"
#include "type/shop.hpp"

#include <doctest/doctest.h>

#include <clocale>
#include <sstream>

namespace bodkin {
namespace {

constexpr const char *garamond = "/usr/share/fonts/opentype/ebgaramond/EBGaramond12-Regular.otf";
constexpr const char *sans = "/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf";

std::unique_ptr<FaceCut> opened(const FaceLibrary &library, const std::string &path) {
  auto cut = FaceCut::open(library, machine_faces()->read(path, 1u << 30), path, true, 0);
  REQUIRE(std::holds_alternative<std::unique_ptr<FaceCut>>(cut));
  return std::move(std::get<std::unique_ptr<FaceCut>>(cut));
}

Paragraph in_face(const FaceCut &cut, const std::string &text) {
  Paragraph paragraph;
  paragraph.text = text;
  paragraph.typed.cut = &cut;
  paragraph.typed.size = Length::points(10);
  paragraph.typed.face = FaceId{0};
  paragraph.typed.end = static_cast<std::uint32_t>(text.size());
  paragraph.spans = {paragraph.typed};
  return paragraph;
}

std::string listed(const Shaped &shaped) {
  std::ostringstream out;
  for (const ShapedGlyph &glyph : shaped.glyphs)
    out << glyph.id << '=' << glyph.cluster << '@' << glyph.dx << ',' << glyph.dy << '+'
        << glyph.advance << ' ';
  return out.str();
}

std::string between(const std::string &text, const std::string &name, std::size_t from) {
  const std::size_t begin = text.find("\"" + name + "\":", from) + name.size() + 3;
  return text.substr(begin, text.find_first_of(",}", begin) - begin);
}

// The same list from the program of the shaper's own makers.
std::string by_hb_shape(const std::string &file, const std::string &text, const std::string &how) {
  const std::string json =
      printed("hb-shape --font-file='" + file + "' " + how +
              " --font-funcs=ot --utf8-clusters --no-glyph-names --output-format=json --text='" +
              text + "'");
  std::ostringstream out;
  for (std::size_t at = json.find('{'); at != std::string::npos; at = json.find('{', at + 1))
    out << between(json, "g", at) << '=' << between(json, "cl", at) << '@'
        << between(json, "dx", at) << ',' << between(json, "dy", at) << '+'
        << between(json, "ax", at) << ' ';
  return out.str();
}

} // namespace

// Reference program: hb-shape of Debian's libharfbuzz-bin.
TEST_CASE("glyphs, clusters and advances are those of hb-shape") {
  const FaceLibrary library;
  const auto book = opened(library, garamond);
  Findings findings;
  Shaper shaper("en-GB");
  for (const char *text : {"Waffle officials fly AVATAR kites, 1907", "naïve façade Å e\u0301",
                           "office\u00A0— fjord “To.” T.V."})
    CHECK(listed(shaper.shape(in_face(*book, text), findings)) ==
          by_hb_shape(garamond, text, "--language=en-gb --script=latn --direction=ltr"));
  CHECK(findings.glyphs.empty());
}

// "lnum" and "onum" of the OpenType registry of feature tags.
TEST_CASE("lining figures are those that hb-shape gives for lnum") {
  const FaceLibrary library;
  const auto book = opened(library, garamond);
  Findings findings;
  Paragraph paragraph = in_face(*book, "11 3/8in");
  const std::string plain = listed(Shaper("en").shape(paragraph, findings));
  paragraph.spans[0].figures = Figures::lining;
  const std::string lining = listed(Shaper("en").shape(paragraph, findings));
  CHECK(lining != plain);
  CHECK(lining == by_hb_shape(garamond, "11 3/8in",
                              "--features=lnum --language=en --script=latn --direction=ltr"));
}

TEST_CASE("Arabic is shaped leftwards and joined, as by hb-shape") {
  const FaceLibrary library;
  const auto face = opened(library, sans);
  Findings findings;
  const std::string text = "\u0633\u0644\u0627\u0645";
  const Shaped shaped = Shaper("ar").shape(in_face(*face, text), findings);
  CHECK(shaped.base_level == 1);
  CHECK(listed(shaped) == by_hb_shape(sans, text, "--language=ar --script=arab --direction=rtl"));
}

TEST_CASE("runs part where the script changes, signs staying with the letters before them") {
  const FaceLibrary library;
  const auto face = opened(library, sans);
  Findings findings;
  const Shaped shaped = Shaper("en").shape(in_face(*face, "Bus (\u0430\u0431) 3"), findings);
  REQUIRE(shaped.runs.size() == 2);
  CHECK(shaped.runs[0].text.end == 5);
  CHECK(shaped.runs[1].text.begin == 5);
  CHECK(shaped.runs[1].text.end == 12);
}

TEST_CASE("the machine's locale changes no glyph") {
  const FaceLibrary library;
  const auto book = opened(library, garamond);
  Findings findings;
  const Paragraph paragraph = in_face(*book, "fi fini İstanbul ij");
  const std::string plain = listed(Shaper("en").shape(paragraph, findings));
  std::size_t tried = 0;
  for (const char *locale : {"C", "C.UTF-8", "tr_TR.UTF-8", "de_DE.UTF-8"})
    if (std::setlocale(LC_ALL, locale) != nullptr) {
      ++tried;
      CHECK(listed(Shaper("en").shape(paragraph, findings)) == plain);
    }
  std::setlocale(LC_ALL, "C");
  CHECK(tried >= 2);
}

// EB Garamond takes the dot off an i after f, but not where a dotless i is another letter.
TEST_CASE("the edition's language does change glyphs") {
  const FaceLibrary library;
  const auto book = opened(library, garamond);
  Findings findings;
  const Paragraph paragraph = in_face(*book, "fi");
  CHECK(listed(Shaper("tr").shape(paragraph, findings)) !=
        listed(Shaper("en").shape(paragraph, findings)));
  CHECK(listed(Shaper("tr").shape(paragraph, findings)) ==
        by_hb_shape(garamond, "fi", "--language=tr --script=latn --direction=ltr"));
}

TEST_CASE("a character without a glyph is met with its words, once for each place") {
  const FaceLibrary library;
  const auto book = opened(library, garamond);
  Findings findings;
  Shaper("en").shape(in_face(*book, "ring the \u5B57 bell \u5B57"), findings);
  REQUIRE(findings.glyphs.size() == 1);
  const auto &[character, met] = *findings.glyphs.begin();
  CHECK(std::get<std::string>(character) == "\u5B57");
  CHECK(met.words == "the \u5B57 bell");
  CHECK(met.times == 2);
}

TEST_CASE("joiners and direction marks need no glyph") {
  const FaceLibrary library;
  const auto book = opened(library, garamond);
  Findings findings;
  Shaper("en").shape(in_face(*book, "a\u200Cb \u200Ec\u2060d\uFEFF"), findings);
  CHECK(findings.glyphs.empty());
}

TEST_CASE("points tell the widths of words and of what may stretch") {
  const FaceLibrary library;
  const auto book = opened(library, garamond);
  Findings findings;
  const Shaped shaped = Shaper("en").shape(in_face(*book, "aa a\u00A0a  a"), findings);
  REQUIRE(shaped.points.size() == 4);
  const Length a = shaped.points[3].end_x - shaped.points[2].next_x;
  CHECK(shaped.points[1].end_x == a * 2);
  CHECK(shaped.points[1].end == 2);
  CHECK(shaped.points[1].next == 3);
  const Length space = shaped.points[1].next_x - shaped.points[1].end_x;
  CHECK(shaped.points[1].next_spaces == space);
  CHECK(shaped.points[2].end_spaces == space * 2);  // with the space that does not break
  CHECK(shaped.points[2].next_spaces == space * 4); // and the two that hang
  CHECK(shaped.points[3].kind == BreakPoint::Kind::must);
}

TEST_CASE("a word wider than the measure gets points between its letters, never within one") {
  const FaceLibrary library;
  const auto face = opened(library, sans);
  Findings findings;
  Shaper shaper("en");
  const Paragraph paragraph = in_face(*face, "ox e\u0301e\u0301ffie\u0301");
  Shaped shaped = shaper.shape(paragraph, findings);
  shaper.add_letter_points(paragraph, shaped, Length::points(15));
  std::vector<std::uint32_t> inside;
  for (const BreakPoint &point : shaped.points)
    if (point.kind == BreakPoint::Kind::in_a_word)
      inside.push_back(point.next);
  CHECK(inside == std::vector<std::uint32_t>{6, 9, 12}); // ffi is one glyph
}

} // namespace bodkin
