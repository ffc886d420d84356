#include "type/typed_text.hpp"

#include <doctest/doctest.h>

namespace bodkin {
namespace {

std::string typed(std::string_view text, White white) {
  std::string out;
  append_typed(out, text, white);
  return out;
}

} // namespace

TEST_CASE("runs of white space are one space, and a line begins with none") {
  CHECK(typed("  a \t b\n c", White::one_space) == "a b c");
  std::string text = "a ";
  append_typed(text, " b", White::one_space);
  CHECK(text == "a b");
  text = "a\n";
  append_typed(text, " b", White::one_space);
  CHECK(text == "a\nb");
}

TEST_CASE("code keeps its spaces and lines, tabs standing at every fourth column") {
  CHECK(typed("if x:\n\tgo  on", White::kept) == "if x:\n    go  on");
  CHECK(typed("ab\tc", White::kept) == "ab  c");
}

TEST_CASE("soft hyphens and carriage returns are dropped") {
  CHECK(typed("im\u00ADpo\u00ADsition\r", White::one_space) == "imposition");
}

TEST_CASE("a space that does not break is kept") {
  CHECK(typed("10\u00A0\u00A0mm", White::one_space) == "10\u00A0\u00A0mm");
}

} // namespace bodkin
