#include "problems/wrap.hpp"

#include <doctest/doctest.h>

using namespace bodkin;

TEST_CASE("a line is filled to its last column and no further") {
  CHECK(wrapped("one two six", 7, 0) == "one two\nsix");
  CHECK(wrapped("one two six", 6, 0) == "one\ntwo\nsix");
}

TEST_CASE("later lines hang under the first") {
  CHECK(wrapped("one two six", 10, 3) == "one two\n   six");
}

TEST_CASE("a word longer than the column stands alone and whole") {
  CHECK(wrapped("a incomprehensible b", 6, 0) == "a\nincomprehensible\nb");
}

TEST_CASE("wide characters fill two columns each") {
  CHECK(wrapped("夜 の バ ス", 5, 0) == "夜 の\nバ ス");
}

TEST_CASE("a line end in the text stays one") {
  CHECK(wrapped("one\ntwo six", 10, 2) == "one\n  two six");
}

TEST_CASE("several spaces set as one") { CHECK(wrapped("one  two ", 20, 0) == "one two"); }

TEST_CASE("no words are no lines") { CHECK(wrapped("", 20, 8) == ""); }
