// Operators after ISO 32000-1, tables 51 and 74; greys after ITU-R BT.709 in the sRGB curve.
#include "press/grey_content.hpp"

#include <doctest/doctest.h>

using namespace bodkin::press;

namespace {

std::string all(std::string_view content) {
  return grey_content(content, Greying::all).value_or("refused");
}
std::string equal(std::string_view content) {
  return grey_content(content, Greying::equal_only).value_or("refused");
}

} // namespace

TEST_CASE("every colour operator becomes a grey one") {
  CHECK(all("0 0 0 rg") == "0 g");
  CHECK(all("1 1 1 RG") == "1 G");
  CHECK(all("0.5 0.5 0.5 rg 1 0 0 1 0 0 cm") == "0.5 g 1 0 0 1 0 0 cm");
  CHECK(all("0 0 0 1 k") == "0 g");
  CHECK(all("0 0 0 0 K") == "1 G");
  CHECK(all("/DeviceRGB cs 0 0 0 sc f") == "0 g 0 g f");
  CHECK(all("/DeviceCMYK CS 0 0 0 1 SCN S") == "0 G 0 G S");
  CHECK(all("/DeviceGray cs 0.25 sc f") == "/DeviceGray cs 0.25 sc f");
  CHECK(all("/Pattern cs /P1 scn f") == "/Pattern cs /P1 scn f");
  // 0.2126 of the light of full red is 0.4984 in the curve.
  CHECK(grey_of_rgb(1, 0, 0) == doctest::Approx(127.0 / 255).epsilon(0.005));
  CHECK(grey_of_cmyk(0, 0, 0, 0.5) == doctest::Approx(128.0 / 255).epsilon(0.005));
}

TEST_CASE("on a page in colour only equal channels become one ink") {
  CHECK(equal("0 0 0 rg 1 0 0 rg 0.2 0.2 0.2 RG") == "0 g 1 0 0 rg 0.2 G");
  CHECK(equal("0 0 0 1 k") == "0 0 0 1 k");
}

TEST_CASE("texts, names, remarks and the data of inline images are not content") {
  CHECK(all("(1 0 0 rg \\) 0 0 0 k) Tj") == "(1 0 0 rg \\) 0 0 0 k) Tj");
  CHECK(all("% 1 0 0 rg\n/rg gs <31> Tj") == "% 1 0 0 rg\n/rg gs <31> Tj");
  CHECK(all("BI /W 1 /H 1 /CS /G /BPC 8 ID 1 0 0 rg EI Q") ==
        "BI /W 1 /H 1 /CS /G /BPC 8 ID 1 0 0 rg EI Q");
  CHECK(all("BI /W 8 /H 1 /IM true ID x EI") == "BI /W 8 /H 1 /IM true ID x EI");
}

TEST_CASE("what cannot be made grey by its operators is refused") {
  CHECK(all("/Cs1 cs 0.5 sc f") == "refused");
  for (const char *space : {"/RGB", "/CMYK", "/I", "/DeviceRGB", "/Cs1", "[/Indexed /RGB 1 <00>]"})
    CHECK(all("BI /W 1 /H 1 /CS " + std::string(space) + " /BPC 8 ID xxx EI") == "refused");
  CHECK(all("BI /W 1 /H 1 /BPC 8 ID x EI") == "refused");
}

TEST_CASE("a space chosen within q and Q holds no longer than they do") {
  CHECK(all("/DeviceCMYK cs q /DeviceRGB cs 1 1 1 sc Q 0 0 0 1 sc") == "0 g q 0 g 1 g Q 0 g");
}
