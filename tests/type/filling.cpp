#include "type/shop.hpp"

#include <doctest/doctest.h>

namespace bodkin {
namespace {

Length pt(std::int64_t n) { return Length::points(n); }

constexpr const char *long_words =
    "The last bus leaves the harbour at ten past two and nobody has ever seen who drives it home.";

std::string many_words(int times) {
  std::string text;
  for (int i = 0; i < times; ++i)
    text += std::string(i == 0 ? "" : " ") + long_words;
  return text;
}

} // namespace

TEST_CASE("lines stand a leading apart from the top, each no wider than its box") {
  Shop shop;
  const Column column = shop.fill(one(long_words), shop.body, {pt(95), pt(200)});
  REQUIRE(column.lines.size() == 4);
  for (std::size_t i = 0; i < column.lines.size(); ++i) {
    const Line &line = column.lines[i];
    const auto n = static_cast<std::int64_t>(i);
    CHECK(line.top == pt(13) * n);
    CHECK(line.foot == pt(13) * (n + 1));
    CHECK(line.baseline == doctest::Approx(8.6 + 13.0 * static_cast<double>(n)).epsilon(1e-12));
    CHECK(line.left == Length{});
    CHECK(line.right <= pt(95));
    CHECK_FALSE(line.too_wide);
  }
  std::string all;
  for (const std::string &text : texts_of(column.lines))
    all += (all.empty() ? "" : " ") + text;
  CHECK(all == long_words);
}

TEST_CASE("a box holds the lines whose leadings fit whole") {
  Shop shop;
  Flow flow = shop.compositor().flow(one(long_words), shop.body);
  CHECK(shop.compositor().fill(flow, Mark{}, {pt(95), pt(26)}).lines.size() == 2);
  CHECK(shop.compositor().fill(flow, Mark{}, {pt(95), pt(26) - Length::units(1)}).lines.size() ==
        1);
  const Column none = shop.compositor().fill(flow, Mark{}, {pt(95), pt(12)});
  CHECK(none.lines.empty());
  CHECK(none.next == Mark{});
}

TEST_CASE("words run on through boxes of different widths, none lost and none twice") {
  Shop shop;
  Flow flow = shop.compositor().flow(prose({paragraph(many_words(3)), paragraph(many_words(2))}),
                                     shop.body);
  std::string all;
  Mark mark;
  const std::vector<int> widths = {120, 60, 200, 90, 300, 75};
  for (std::size_t i = 0; i < 40 && !flow.ends_at(mark); ++i) {
    const Length width = pt(widths[i % widths.size()]);
    const Column column = shop.compositor().fill(flow, mark, {width, pt(13 * 3)});
    for (const Line &line : column.lines) {
      CHECK(line.right <= width);
      all += (all.empty() ? "" : " ") + text_of(line);
    }
    mark = column.next;
  }
  CHECK(flow.ends_at(mark));
  CHECK(all == many_words(5));
}

TEST_CASE("a text may change its style between boxes") {
  Shop shop;
  const Prose words = one(many_words(2));
  Flow large = shop.compositor().flow(words, shop.body);
  Flow small = shop.compositor().flow(words, shop.label);
  const Column first = shop.compositor().fill(large, Mark{}, {pt(95), pt(39)});
  const Column rest = shop.compositor().fill(small, first.next, {pt(95), pt(500)});
  CHECK(small.ends_at(rest.next));
  std::string all;
  for (const Column *column : {&first, &rest})
    for (const Line &line : column->lines)
      all += (all.empty() ? "" : " ") + text_of(line);
  CHECK(all == many_words(2));
}

TEST_CASE("justified lines end at the measure, but the last and those before a hard break") {
  Shop shop;
  shop.style(shop.body).lines = {Lines::justified, {}};
  Block block = paragraph(long_words);
  Span ends;
  ends.hard_break = true;
  block.spans.push_back(ends);
  block.spans.push_back(paragraph(long_words).spans[0]);
  const Column column = shop.fill(prose({block}), shop.body, {pt(95), pt(300)});
  REQUIRE(column.lines.size() == 8);
  for (const std::size_t i : {0u, 1u, 2u, 4u, 5u, 6u}) {
    CHECK(column.lines[i].right == pt(95));
    CHECK(column.lines[i].runs.back().right == doctest::Approx(95).epsilon(1e-9));
  }
  for (const std::size_t i : {3u, 7u})
    CHECK(column.lines[i].right < pt(90));
}

TEST_CASE("lines range right and stand centred") {
  Shop shop;
  shop.style(shop.body).lines = {Lines::right, {}};
  for (const Line &line : shop.fill(one(long_words), shop.body, {pt(95), pt(300)}).lines)
    CHECK(line.right == pt(95));
  Shop other;
  other.style(other.body).lines = {Lines::centred, {}};
  for (const Line &line : other.fill(one(long_words), other.body, {pt(95), pt(300)}).lines) {
    const Length slack = line.left - (pt(95) - line.right);
    CHECK(std::abs(slack.units()) <= 1);
  }
}

TEST_CASE("room above a paragraph is dropped at a box's top and kept below one") {
  Shop shop;
  shop.style(shop.body).space_before = {pt(4), {}};
  shop.style(shop.body).space_after = {pt(3), {}};
  Flow flow =
      shop.compositor().flow(prose({paragraph("a"), paragraph("b"), paragraph("c")}), shop.body);
  const Column first = shop.compositor().fill(flow, Mark{}, {pt(100), pt(13 + 7 + 13 + 19)});
  REQUIRE(first.lines.size() == 2);
  CHECK(first.lines[0].top == Length{});
  CHECK(first.lines[1].top == pt(20));
  const Column second = shop.compositor().fill(flow, first.next, {pt(100), pt(13)});
  REQUIRE(second.lines.size() == 1);
  CHECK(second.lines[0].top == Length{});
  CHECK(text_of(second.lines[0]) == "c");
}

TEST_CASE("a sign hangs before its item, and a wide one pushes the first line on") {
  Shop shop;
  Block item = block(BlockKind::list_item, long_words);
  item.list_depth = 1;
  item.sign = "•";
  Block wide = item;
  wide.sign = "1000.";
  const Column column = shop.fill(prose({item, wide}), shop.body, {pt(95), pt(300)});
  REQUIRE(column.lines.size() == 10);
  CHECK(column.lines[0].left == Length{});
  REQUIRE(column.lines[0].runs.size() == 2);
  CHECK(column.lines[0].runs[0].text == "•");
  CHECK(column.lines[0].runs[0].glyphs[0].x == 0);
  CHECK(column.lines[0].runs[1].left == doctest::Approx(15));
  CHECK(column.lines[1].left == pt(15));
  CHECK(column.lines[5].runs[0].text == "1000.");
  CHECK(column.lines[5].runs[1].left ==
        doctest::Approx(column.lines[5].runs[0].right + 2.5).epsilon(1e-6));
  CHECK(column.lines[5].runs[0].glyphs[0].y == column.lines[5].runs[1].glyphs[0].y);
}

TEST_CASE("a word wider than its box is broken between letters and says so") {
  Shop shop;
  const Column column =
      shop.fill(one("on Pneumonoultramicroscopic day"), shop.body, {pt(50), pt(300)});
  std::string all;
  std::size_t broken = 0;
  for (const Line &line : column.lines) {
    CHECK(line.right <= pt(50));
    all += text_of(line);
    broken += line.broken_word ? 1 : 0;
  }
  CHECK(all == "onPneumonoultramicroscopic day");
  CHECK(text_of(column.lines[0]) == "on");
  CHECK(broken == 2);
}

TEST_CASE("a letter wider than its box stands alone, too wide, and the filling ends") {
  Shop shop;
  const Column column = shop.fill(one("WAM"), shop.sign, {pt(1), pt(300)});
  CHECK(texts_of(column.lines) == std::vector<std::string>{"W", "A", "M"});
  for (const Line &line : column.lines)
    CHECK(line.too_wide);
  CHECK(shop.fill(one("WAM"), shop.sign, {pt(-10), pt(60)}).lines.size() == 3);
}

TEST_CASE("what is left over is counted in lines and words, with the last words set") {
  Shop shop;
  Flow flow =
      shop.compositor().flow(prose({paragraph(long_words), paragraph(long_words)}), shop.body);
  CHECK(flow.words() == 38);
  const Column column = shop.compositor().fill(flow, Mark{}, {pt(95), pt(13 * 4)});
  const LeftOver left = shop.compositor().left_over(flow, column.next, pt(95));
  CHECK(left.lines == 4);
  CHECK(left.words == 19);
  CHECK(left.words_set == 19);
  CHECK(left.last_words == "…seen who drives it home.");
  const LeftOver none = shop.compositor().left_over(flow, flow.end(), pt(95));
  CHECK(none.lines == 0);
  CHECK(none.words == 0);
  CHECK(shop.compositor().left_over(flow, Mark{}, pt(95)).last_words.empty());
}

TEST_CASE("a paragraph longer than is shaped at once runs on with nothing to show where") {
  Shop shop;
  const std::string text = many_words(12'000); // 1.1 MB
  Flow flow = shop.compositor().flow(one(text), shop.body);
  std::size_t bytes = 0, lines = 0;
  Mark mark;
  while (!flow.ends_at(mark)) {
    const Column column = shop.compositor().fill(flow, mark, {pt(300), pt(650)});
    REQUIRE(mark < column.next);
    for (const Line &line : column.lines)
      bytes += text_of(line).size() + 1; // the space that hangs
    lines += column.lines.size();
    mark = column.next;
  }
  CHECK(bytes == text.size() + 1);
  CHECK(lines > 10'000);
  CHECK(flow.words() == 12'000 * 19);
}

TEST_CASE("a word of a megabyte and more is broken like any other") {
  Shop shop;
  const std::string text(1'100'000, 'x');
  Flow flow = shop.compositor().flow(one(text), shop.body);
  CHECK(flow.end() == Mark{2, 0});
  const Column column = shop.compositor().fill(flow, Mark{}, {pt(300), pt(26)});
  REQUIRE(column.lines.size() == 2);
  CHECK(column.lines[1].broken_word);
  CHECK(column.next.byte == text_of(column.lines[0]).size() + text_of(column.lines[1]).size());
}

TEST_CASE("empty prose fills nothing and is at its end") {
  Shop shop;
  Flow flow = shop.compositor().flow(Prose{}, shop.body);
  CHECK(flow.ends_at(Mark{}));
  CHECK(shop.compositor().fill(flow, Mark{}, {pt(100), pt(100)}).lines.empty());
  Flow nowhere = shop.compositor().flow(one("a"), StyleId::none);
  CHECK(nowhere.ends_at(Mark{}));
}

TEST_CASE("a line of its own is never broken") {
  Shop shop;
  const Line line = shop.compositor().line("12 of 24", shop.label, {});
  CHECK(text_of(line) == "12 of 24");
  // Courier Prime: every character is 1228 of 2048 wide.
  CHECK(line.right == pt(8) * 8 * 1228 / 2048);
  CHECK(line.foot == pt(11));
}

TEST_CASE("a Hebrew paragraph ranges right and its runs stand from right to left") {
  Shop shop;
  shop.edition.faces[0] =
      catalogued("book", "DejaVu Sans", "fonts-dejavu-core", {{"DejaVuSans.ttf", Cut::regular}});
  const Column column = shop.fill(one("\u05D0\u05D1 12 \u05D2"), shop.body, {pt(100), pt(13)});
  REQUIRE(column.lines.size() == 1);
  const Line &line = column.lines[0];
  CHECK(line.right == pt(100));
  REQUIRE(line.runs.size() == 3);
  CHECK(line.runs[0].text == " \u05D2");
  CHECK(line.runs[0].backward);
  CHECK(line.runs[1].text == "12");
  CHECK_FALSE(line.runs[1].backward);
  CHECK(line.runs[2].text == "\u05D0\u05D1 ");
  CHECK(line.runs[2].backward);
}

} // namespace bodkin
