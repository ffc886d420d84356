#include "type/paragraphs.hpp"
#include "type/shop.hpp"

#include <doctest/doctest.h>

namespace bodkin {
namespace {

struct Made {
  explicit Made(Shop &shop, const Prose &prose, StyleId style) {
    shop.compositor();
    paragraphs = paragraphs_of(prose, style, shop.edition, shop.opened.faces, findings);
  }
  Findings findings;
  std::vector<Paragraph> paragraphs;
};

Length pt(std::int64_t n) { return Length::points(n); }

Block heading(int level, std::string_view text) {
  Block made = block(BlockKind::heading, text);
  made.heading_level = level;
  return made;
}

} // namespace

TEST_CASE("a paragraph goes in only after a paragraph") {
  Shop shop;
  const Made made(shop,
                  prose({paragraph("a"), paragraph("b"), heading(1, "h"), paragraph("c"),
                         block(BlockKind::list_item, "l"), paragraph("d"),
                         block(BlockKind::quote, "q"), block(BlockKind::quote, "r"), paragraph("e"),
                         block(BlockKind::thought_break, ""), paragraph("f"), paragraph("g")}),
                  shop.body);
  std::vector<std::int64_t> indents;
  for (const Paragraph &p : made.paragraphs)
    indents.push_back(p.indent.units() / Length::per_point);
  CHECK(indents == std::vector<std::int64_t>{0, 10, 0, 0, 0, 0, 0, 10, 0, 0, 10});
}

TEST_CASE("headings without a style are the face's bold, grown by level, a line above") {
  Shop shop;
  shop.style(shop.body).lines = {Lines::justified, {}};
  const Made made(shop, prose({heading(1, "a"), heading(2, "b"), heading(3, "c"), heading(4, "d")}),
                  shop.body);
  const std::vector<Length> sizes = {pt(15), pt(125) / 10, pt(11), pt(10)};
  const std::vector<Length> leadings = {pt(195) / 10, pt(1625) / 100, pt(143) / 10, pt(13)};
  REQUIRE(made.paragraphs.size() == 4);
  for (std::size_t i = 0; i < 4; ++i) {
    const Paragraph &p = made.paragraphs[i];
    CHECK(p.typed.size == sizes[i]);
    CHECK(p.leading == leadings[i]);
    CHECK(p.above == pt(13));
    CHECK(p.lines == Lines::left);
    CHECK(p.spans[0].cut == shop.opened.faces[FaceId{0}][Cut::bold]);
  }
}

TEST_CASE("a heading with a style of its own is set in that") {
  Shop shop;
  shop.style(shop.body).headings[0] = Known<StyleId>{shop.sign, {}};
  const Made made(shop, prose({heading(1, "a")}), shop.body);
  CHECK(made.paragraphs[0].typed.size == pt(20));
  CHECK(made.paragraphs[0].above == Length{});
  CHECK(made.paragraphs[0].spans[0].cut == shop.opened.faces[FaceId{1}][Cut::regular]);
}

TEST_CASE("quotes go in by an em at both sides, lists by one and a half, deeper ones deeper") {
  Shop shop;
  Block quote = block(BlockKind::quote, "q");
  quote.quote_depth = 1;
  Block item = block(BlockKind::list_item, "l");
  item.list_depth = 2;
  item.sign = "•";
  const Made made(shop, prose({quote, item}), shop.body);
  CHECK(made.paragraphs[0].inset_left == pt(10));
  CHECK(made.paragraphs[0].inset_right == pt(10));
  CHECK(made.paragraphs[1].inset_left == pt(30));
  CHECK(made.paragraphs[1].inset_right == Length{});
  CHECK(made.paragraphs[1].hang == pt(15));
  CHECK(made.paragraphs[1].sign == "•");
}

TEST_CASE("a break is an empty line") {
  Shop shop;
  const Made made(shop,
                  prose({paragraph("a"), block(BlockKind::thought_break, ""), paragraph("b")}),
                  shop.body);
  REQUIRE(made.paragraphs.size() == 2);
  CHECK(made.paragraphs[1].above == pt(13));
}

TEST_CASE("items of a list written apart stand a line apart") {
  Shop shop;
  Block item = block(BlockKind::list_item, "l");
  item.list_depth = 1;
  item.loose = true;
  const Made made(shop, prose({item, item}), shop.body);
  CHECK(made.paragraphs[0].above == Length{});
  CHECK(made.paragraphs[1].above == pt(13));
}

TEST_CASE("emphasis is the italic, strong the bold, code the style for code") {
  Shop shop;
  shop.style(shop.body).code = Known<StyleId>{shop.label, {}};
  Block mixed = paragraph("a ");
  for (int i = 0; i < 4; ++i) {
    Span span;
    span.text = "b  b";
    span.emphasis = i == 0 || i == 3;
    span.strong = i == 1;
    span.code = i >= 2;
    mixed.spans.push_back(span);
  }
  const Made made(shop, prose({mixed}), shop.body);
  const OpenFace &book = shop.opened.faces[FaceId{0}], &typed = shop.opened.faces[FaceId{2}];
  const Paragraph &p = made.paragraphs[0];
  CHECK(p.text == "a b bb bb  bb  b");
  REQUIRE(p.spans.size() == 5);
  CHECK(p.spans[0].cut == book[Cut::regular]);
  CHECK(p.spans[1].cut == book[Cut::italic]);
  CHECK(p.spans[2].cut == book[Cut::bold]);
  CHECK(p.spans[3].cut == typed[Cut::regular]);
  CHECK(p.spans[3].size == pt(8));
  CHECK(p.spans[4].cut == typed[Cut::italic]);
  CHECK(made.findings.cuts.empty());
  CHECK(made.findings.code.empty());
}

TEST_CASE("code without a style and a cut that is not there are met once each") {
  Shop shop;
  Block code = block(BlockKind::code, "x");
  Block strong = paragraph("y");
  strong.spans[0].strong = true;
  strong.spans[0].emphasis = true;
  const Made made(shop, prose({code, code, strong, strong}), shop.body);
  CHECK(made.findings.code.size() == 1);
  REQUIRE(made.findings.cuts.size() == 1);
  CHECK(made.findings.cuts.begin()->first == std::pair{FaceId{0}, Cut::bold_italic});
  CHECK(made.paragraphs[2].spans[0].cut == shop.opened.faces[FaceId{0}][Cut::bold]);
}

TEST_CASE("a hard break is a line feed, and blocks that say nothing are left out") {
  Shop shop;
  Block verse = paragraph("one ");
  Span ends;
  ends.hard_break = true;
  verse.spans.push_back(ends);
  verse.spans.push_back(paragraph(" two").spans[0]);
  const Made made(shop, prose({paragraph(""), verse, paragraph("  ")}), shop.body);
  REQUIRE(made.paragraphs.size() == 1);
  CHECK(made.paragraphs[0].text == "one \ntwo");
}

// (13 - 7.1 - 2.9) / 2 + 7.1: EB Garamond's own ascender and descender are 710 and 290 of 1000.
TEST_CASE("the baseline leaves equal room above the ascender and below the descender") {
  Shop shop;
  const Made made(shop, one("a"), shop.body);
  CHECK(made.paragraphs[0].baseline() == pt(86) / 10);
}

} // namespace bodkin
