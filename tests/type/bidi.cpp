#include "type/bidi.hpp"
#include "type/shop.hpp"

#include <doctest/doctest.h>

#include <sstream>

namespace bodkin {

// Unicode 15.0, UAX #9: field 3 (levels) and field 4 (order from left to right) of
// BidiCharacterTest.txt, Debian's unicode-data. Levels "x" are of characters that are not shown.
TEST_CASE("pieces stand from left to right in the order of Unicode's own tests") {
  std::istringstream lines(file_bytes("/usr/share/unicode/BidiCharacterTest.txt"));
  std::size_t rows = 0, wrong = 0;
  for (std::string line; std::getline(lines, line);) {
    if (line.empty() || line[0] == '#')
      continue;
    ++rows;
    std::istringstream row(line);
    std::string points, direction, base, levels_field, order_field;
    for (std::string *field : {&points, &direction, &base, &levels_field, &order_field})
      std::getline(row, *field, ';');
    std::vector<std::uint8_t> levels;
    std::vector<std::size_t> shown, wanted;
    std::istringstream words(levels_field), places(order_field);
    std::string word;
    for (std::size_t i = 0; words >> word; ++i)
      if (word != "x") {
        levels.push_back(static_cast<std::uint8_t>(std::stoi(word)));
        shown.push_back(i);
      }
    while (places >> word)
      wanted.push_back(std::stoul(word));
    std::vector<std::size_t> order;
    for (const std::size_t i : visual_order(levels))
      order.push_back(shown[i]);
    wrong += order == wanted ? 0 : 1;
  }
  CHECK(rows == 91707);
  CHECK(wrong == 0);
}

TEST_CASE("Latin words need no levels") {
  const Directions directions = directions_of("Night bus, 3 a.m. — naïve façade");
  CHECK(directions.base == 0);
  CHECK(directions.levels.empty());
}

TEST_CASE("a paragraph runs as its first letter does, numbers in Hebrew to the right") {
  const Directions directions = directions_of("\u05D0 12");
  CHECK(directions.base == 1);
  CHECK(directions.levels == std::vector<std::uint8_t>{1, 1, 1, 2, 2});
}

} // namespace bodkin
