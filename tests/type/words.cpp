#include "type/words.hpp"

#include <doctest/doctest.h>

namespace bodkin {

TEST_CASE("words are runs between white space that hold a letter or a digit") {
  CHECK(words_in("") == 0);
  CHECK(words_in("One glove, *left* — wool.\nAnd 3 more") == 7);
  CHECK(words_in("well-known \u5B57 … ½") == 3);
}

TEST_CASE("the last words are quoted from a word's start") {
  CHECK(last_words_of("until the tide and the ribs went back ", 5) == "…and the ribs went back");
  CHECK(last_words_of("went\nback", 5) == "…went back");
  CHECK(last_words_of("", 5).empty());
}

TEST_CASE("a character is shown among its neighbours") {
  CHECK(words_around("ring the → bell twice", 9) == "the → bell");
  CHECK(words_around("→", 0) == "→");
  CHECK(words_around(std::string(5000, 'x') + "→", 5000) == "→");
}

TEST_CASE("code points are read from one to four bytes") {
  CHECK(code_point_at("a", 0).value == U'a');
  CHECK(code_point_at("é", 0).value == U'é');
  CHECK(code_point_at("→", 0).value == U'→');
  CHECK(code_point_at("🚌", 0).value == U'🚌');
  CHECK(code_point_at("🚌", 0).bytes == 4);
}

} // namespace bodkin
