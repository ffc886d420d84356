// Reference: ImageMagick's convert, Debian's WebP, HEIF and TIFF tools make the files.
#include "art/inspect.hpp"

#include "art/tools.hpp"

#include <doctest/doctest.h>

using namespace bodkin;
using namespace bodkin::art;
using namespace bodkin::art::testing;
using namespace std::string_view_literals;

TEST_CASE("a picture is known by its content whatever its name ends in") {
  const Folder folder;
  folder.write("in.ppm", ppm(motley()));
  folder.run("convert in.ppm a.png && convert in.ppm a.jpg && convert in.ppm a.tif &&"
             " cwebp -quiet -lossless a.png -o a.webp && convert in.ppm -resize 64x64! b.png &&"
             " heif-enc -o a.heic b.png >heif.log 2>&1");
  CHECK(facts_of(folder.read("a.png")).format == Format::png);
  CHECK(facts_of(folder.read("a.jpg")).format == Format::jpeg);
  CHECK(facts_of(folder.read("a.tif")).format == Format::tiff);
  CHECK(facts_of(folder.read("a.webp")).format == Format::webp);
  CHECK(facts_of(folder.read("a.heic")).format == Format::heic);
  for (const char *name : {"a.png", "a.jpg", "a.tif", "a.webp"}) {
    const Facts facts = facts_of(folder.read(name));
    CHECK(facts.width == 37);
    CHECK(facts.height == 23);
    CHECK(facts.channels == 3);
    CHECK(facts.bits == 8);
    CHECK_FALSE(facts.alpha);
    CHECK_FALSE(facts.cmyk);
  }
  CHECK(facts_of(folder.read("a.heic")).width == 64);
}

TEST_CASE("channels, bits and alpha are told as the file stores them") {
  const Folder folder;
  folder.write("in.ppm", ppm(motley()));
  folder.run("convert in.ppm -colorspace Gray -depth 16 -define png:color-type=0 "
             "-define png:bit-depth=16 grey16.png");
  Facts facts = facts_of(folder.read("grey16.png"));
  CHECK(facts.channels == 1);
  CHECK(facts.bits == 16);
  folder.run("convert in.ppm -alpha set -channel A -evaluate set 50% alpha.png");
  facts = facts_of(folder.read("alpha.png"));
  CHECK(facts.channels == 4);
  CHECK(facts.alpha);
  folder.run("convert in.ppm -threshold 50% -monochrome -compress Group4 fax.tif");
  facts = facts_of(folder.read("fax.tif"));
  CHECK(facts.channels == 1);
  CHECK(facts.bits == 1);
  folder.run("convert in.ppm -colorspace CMYK cmyk.jpg");
  facts = facts_of(folder.read("cmyk.jpg"));
  CHECK(facts.channels == 4);
  CHECK(facts.cmyk);
  CHECK_FALSE(facts.alpha);
}

TEST_CASE("what is not a picture is named, with the way out") {
  CHECK(reason_of("") == "is empty: it holds no bytes at all");
  CHECK(reason_of("GIF89a\1\0\1\0"sv) == "is a GIF; save it as PNG");
  CHECK(reason_of("BM\x46\0\0\0"sv) == "is a BMP; save it as PNG");
  CHECK(reason_of("PK\3\4\x14\0\6\0\x08\0"sv) ==
        "is a word processor's file; save its page as PDF");
  CHECK(reason_of("\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1"sv) ==
        "is a word processor's file; save its page as PDF");
  CHECK(reason_of("\0\0\0\x1c"
                  "ftypavif\0\0\0\0avifmif1miaf"sv) == "is an AVIF; save it as JPEG or PNG");
  CHECK(reason_of("<!DOCTYPE html><html><body>no</body></html>") ==
        "is a web page, not a picture; save the picture itself from it");
  CHECK(reason_of("One glove, left, wool.\n") == "is a text, not a picture");
  CHECK(reason_of("\1\2\3\4\5\6\7") ==
        "is no picture that can be placed: PNG, JPEG, TIFF, WebP, HEIC, SVG and PDF can");
}

TEST_CASE("a picture has one page, and only a PDF has more") {
  const Folder folder;
  folder.write("in.ppm", ppm(motley()));
  folder.run("convert in.ppm a.png");
  CHECK(reason_of(folder.read("a.png"), 2) ==
        "is one picture; only a PDF has pages to choose from");
}

TEST_CASE("a crop leaves its share of the samples, to the nearest, and never none") {
  Facts facts;
  facts.width = 1000;
  facts.height = 601;
  CHECK(samples_after(facts, {}) == SampleCount{1000, 601});
  CHECK(samples_after(facts, Crop{{250'000}, {0}, {500'000}, {500'000}}) == SampleCount{500, 301});
  CHECK(samples_after(facts, Crop{{999'999}, {0}, {1}, {1}}) == SampleCount{1, 1});
}
