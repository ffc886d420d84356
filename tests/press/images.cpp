// What each kind of raster picture becomes in a PDF. The files are made by ImageMagick.
#include "press/images.hpp"
#include "page/composing.hpp"

#include <doctest/doctest.h>
#include <qpdf/QPDF.hh>

using namespace bodkin;
using namespace bodkin::tests;

namespace {

std::string printed(const std::string &command) {
  FILE *pipe = popen(command.c_str(), "r");
  REQUIRE(pipe != nullptr);
  std::string out;
  char part[4096];
  for (std::size_t n = 0; (n = std::fread(part, 1, sizeof part, pipe)) > 0;)
    out.append(part, n);
  REQUIRE_MESSAGE(pclose(pipe) == 0, command);
  return out;
}

std::string made(const std::string &what) { return printed("convert -size 16x12 " + what); }

// "DeviceRGB 8 DCTDecode", "… alpha" where there is a soft mask, for one tone and one kind of page.
std::string becomes(const std::string &file, const std::string &tone, bool grey) {
  const auto pages = composed("pages 4", "page 1\n  picture \"a.pic\"\n    tone " + tone + "\n",
                              {{"a.pic", file}});
  const auto &picture = std::get<Picture>(pages->edition().elements.front().what);
  QPDF pdf;
  pdf.emptyPDF();
  press::Images images(pdf, *pages->gallery);
  auto placed = images.place(picture, grey, {Length::inches(1), Length::inches(1)});
  REQUIRE(placed);
  QPDFObjectHandle dict = placed->xobject.getDict();
  QPDFObjectHandle space = dict.getKey("/ColorSpace");
  const std::string named = space.isArray() ? space.getArrayItem(0).getName() : space.getName();
  return named.substr(1) + " " + dict.getKey("/BitsPerComponent").unparse() + " " +
         dict.getKey("/Filter").getName().substr(1) + (dict.hasKey("/SMask") ? " alpha" : "");
}

} // namespace

TEST_CASE("a photograph is placed as it is in colour, and in grey on a black page") {
  const std::string colour = made("gradient:red-blue -quality 90 jpg:-");
  CHECK(becomes(colour, "as-is", false) == "DeviceRGB 8 DCTDecode");
  CHECK(becomes(colour, "as-is", true) == "DeviceGray 8 DCTDecode");
  CHECK(becomes(colour, "grey", false) == "DeviceGray 8 DCTDecode");
  CHECK(becomes(colour, "line at 50%", false) == "DeviceGray 1 FlateDecode");
  const std::string grey = made("gradient:white-black -colorspace Gray -quality 90 jpg:-");
  CHECK(becomes(grey, "as-is", false) == "DeviceGray 8 DCTDecode");
  CHECK(becomes(grey, "as-is", true) == "DeviceGray 8 DCTDecode");
  const std::string cmyk = made("gradient:red-blue -colorspace CMYK -quality 90 jpg:-");
  CHECK(becomes(cmyk, "as-is", false) == "DeviceCMYK 8 DCTDecode");
  CHECK(becomes(cmyk, "as-is", true) == "DeviceGray 8 DCTDecode");
}

TEST_CASE("other samples are stored without loss, in as few channels and bits as they have") {
  const std::string colour = made("gradient:red-blue PNG24:-");
  CHECK(becomes(colour, "as-is", false) == "DeviceRGB 8 FlateDecode");
  CHECK(becomes(colour, "as-is", true) == "DeviceGray 8 FlateDecode");
  CHECK(becomes(made("gradient:white-black PNG24:-"), "as-is", false) ==
        "DeviceGray 8 FlateDecode");
  CHECK(becomes(made("xc:white -fill black -draw 'rectangle 2,2 6,6' PNG24:-"), "as-is", false) ==
        "DeviceGray 1 FlateDecode");
  const std::string alpha =
      made("gradient:red-blue -alpha set -channel A -evaluate set 50% PNG32:-");
  CHECK(becomes(alpha, "as-is", false) == "DeviceRGB 8 FlateDecode alpha");
  CHECK(becomes(alpha, "as-is", true) == "DeviceGray 8 FlateDecode alpha");
  CHECK(becomes(alpha, "line at 50%", true) == "DeviceGray 1 FlateDecode");
}
