#include "type/set.hpp"
#include "type/shop.hpp"

#include <doctest/doctest.h>

namespace bodkin {
namespace {

Length pt(std::int64_t n) { return Length::points(n); }

std::string sums(const GlyphRun &run) {
  std::int32_t bytes = 0, glyphs = 0;
  for (const Cluster &cluster : run.clusters) {
    bytes += cluster.bytes;
    glyphs += cluster.glyphs;
  }
  return std::to_string(bytes) + " " + std::to_string(glyphs);
}

} // namespace

TEST_CASE("clusters tell which bytes stand for which glyphs") {
  Shop shop;
  shop.edition.faces[0] =
      catalogued("book", "DejaVu Sans", "fonts-dejavu-core", {{"DejaVuSans.ttf", Cut::regular}});
  const Line line = shop.compositor().line("affix é", shop.body, {});
  REQUIRE(line.runs.size() == 1);
  const GlyphRun &run = line.runs[0];
  REQUIRE(run.clusters.size() == 5); // a, ffi, x, space, é
  CHECK(run.clusters[1].bytes == 3);
  CHECK(run.clusters[1].glyphs == 1);
  CHECK(run.clusters[4].bytes == 2);
  CHECK(sums(run) == std::to_string(run.text.size()) + " " + std::to_string(run.glyphs.size()));
}

TEST_CASE("clusters of a run to the left stand as read while its glyphs stand as seen") {
  Shop shop;
  shop.edition.faces[0] =
      catalogued("book", "DejaVu Sans", "fonts-dejavu-core", {{"DejaVuSans.ttf", Cut::regular}});
  const Line line = shop.compositor().line("\u0644\u0627 \u05D0", shop.body, {});
  for (const GlyphRun &run : line.runs) {
    CHECK(run.backward);
    CHECK(sums(run) == std::to_string(run.text.size()) + " " + std::to_string(run.glyphs.size()));
  }
  const std::vector<WordBox> words = words_of(line);
  REQUIRE(words.size() == 2);
  CHECK(words[0].text == "\u05D0");
  CHECK(words[1].text == "\u0644\u0627"); // lam and alef, one ligature
  CHECK(words[0].right < words[1].left);
}

TEST_CASE("words are found with their places, across a change of cut too") {
  Shop shop;
  Block mixed = paragraph("im");
  Span port = mixed.spans[0];
  port.text = "port";
  port.emphasis = true;
  Span ant = mixed.spans[0];
  ant.text = "ant bus";
  mixed.spans = {mixed.spans[0], port, ant};
  const Column column = shop.fill(prose({mixed}), shop.body, {pt(200), pt(13)});
  REQUIRE(column.lines[0].runs.size() == 3);
  const std::vector<WordBox> words = words_of(column.lines[0]);
  REQUIRE(words.size() == 2);
  CHECK(words[0].text == "important");
  CHECK(words[0].left == 0);
  CHECK(words[1].text == "bus");
  CHECK(words[1].right == doctest::Approx(column.lines[0].right.in_points()));
  CHECK(words[0].top == doctest::Approx(1.5)); // 8.6 - 7.1
  CHECK(words[0].foot == doctest::Approx(11.5));
}

TEST_CASE("ink is bounded by the outline, and outlines stay within the bounds") {
  Shop shop;
  const Line line = shop.compositor().line("Hog.", shop.body, {});
  const InkBox box = ink_of(line);
  CHECK(box.left > 0);
  CHECK(box.right < line.right.in_points());
  CHECK(box.top > 8.6 - 7.1);
  CHECK(box.foot > 8.6);
  CHECK(box.foot <= 11.5 + 1e-9);
  InkBox drawn;
  for (const GlyphRun &run : line.runs)
    for (const InkPoint &point : outline_of(run))
      drawn.add({point.x - 1e-9, point.y - 1e-9, point.x + 1e-9, point.y + 1e-9});
  CHECK(drawn.left == doctest::Approx(box.left).epsilon(1e-3));
  CHECK(drawn.top == doctest::Approx(box.top).epsilon(1e-3));
  CHECK(drawn.right == doctest::Approx(box.right).epsilon(1e-3));
  CHECK(drawn.foot == doctest::Approx(box.foot).epsilon(1e-3));
  CHECK(drawn.foot <= box.foot + 1e-6);
}

TEST_CASE("spaces leave no ink") {
  Shop shop;
  CHECK(ink_of(shop.compositor().line(" ", shop.body, {})).empty());
}

} // namespace bodkin
