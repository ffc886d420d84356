// Reference: ImageMagick's convert decodes the same files; exiftool writes orientations; Little CMS
// converts colours by Ghostscript's profiles.
#include "art/load.hpp"

#include "art/tools.hpp"

#include <cmath>
#include <doctest/doctest.h>
#include <lcms2.h>

using namespace bodkin;
using namespace bodkin::art;
using namespace bodkin::art::testing;

namespace {

const std::string icc = "/usr/share/color/icc/ghostscript/";

// From one ICC file's colours to those of another, by Little CMS at full precision.
std::string by_little_cms(const std::string &raw, const std::string &from, cmsUInt32Number type) {
  cmsHPROFILE in = cmsOpenProfileFromFile(from.c_str(), "r");
  cmsHPROFILE out = cmsOpenProfileFromFile((icc + "srgb.icc").c_str(), "r");
  cmsHTRANSFORM transform =
      cmsCreateTransform(in, type, out, TYPE_RGB_8, INTENT_PERCEPTUAL,
                         cmsFLAGS_BLACKPOINTCOMPENSATION | cmsFLAGS_NOOPTIMIZE);
  REQUIRE(transform != nullptr);
  const std::size_t samples = raw.size() / (type == TYPE_CMYK_8 ? 4 : 3);
  std::string rgb(samples * 3, '\0');
  cmsDoTransform(transform, raw.data(), rgb.data(), static_cast<cmsUInt32Number>(samples));
  cmsDeleteTransform(transform);
  cmsCloseProfile(in);
  cmsCloseProfile(out);
  return rgb;
}

} // namespace

TEST_CASE("every lossless kind gives back the samples that went in") {
  const Folder folder;
  const Pixels in = motley();
  folder.write("in.ppm", ppm(in));
  const char *ways[] = {
      "convert in.ppm png:out",
      "convert in.ppm -interlace PNG png:out",
      "convert in.ppm -compress none tiff:out",
      "convert in.ppm -compress LZW -define tiff:rows-per-strip=5 tiff:out",
      "convert in.ppm -compress Zip -interlace Plane tiff:out",
      "convert in.ppm -depth 16 tiff:out",
      "convert in.ppm -compress none a.tif && tiffcp -t -w 16 -l 16 a.tif out",
      "convert in.ppm a.png && cwebp -quiet -lossless a.png -o out",
  };
  for (const std::string way : ways) {
    CAPTURE(way);
    folder.run(way);
    CHECK(loaded(folder.read("out")) == in);
  }
  folder.run("convert in.ppm png8:out");
  CHECK(samples_of(loaded(folder.read("out"))) == folder.converted("png:out", "", "rgb"));
}

TEST_CASE("sixteen bits are rounded to eight") {
  const Folder folder;
  folder.run("convert -size 3x997 gradient: -colorspace Gray -depth 16 -define png:color-type=0 "
             "-define png:bit-depth=16 g.png && convert g.png -depth 16 g.tif");
  CHECK(facts_of(folder.read("g.png")).bits == 16);
  const std::string wide = folder.run("convert g.png -depth 16 -endian LSB gray:-");
  std::vector<std::uint8_t> right;
  for (std::size_t i = 0; i + 1 < wide.size(); i += 2)
    right.push_back(static_cast<std::uint8_t>(std::lround(
        (static_cast<std::uint8_t>(wide[i]) + 256 * static_cast<std::uint8_t>(wide[i + 1])) /
        257.0)));
  CHECK(loaded(folder.read("g.png")) == Pixels{3, 997, 1, right});
  CHECK(loaded(folder.read("g.tif")) == Pixels{3, 997, 1, right});
}

TEST_CASE("one bit a sample is black and white in both senses of a fax") {
  const Folder folder;
  folder.write("in.ppm", ppm(motley()));
  folder.run("convert in.ppm -colorspace Gray -threshold 50% -type bilevel one.png &&"
             " convert one.png -compress Group4 -define quantum:polarity=min-is-white white.tif &&"
             " convert one.png -compress Zip -define quantum:polarity=min-is-black black.tif");
  const std::string right = folder.converted("one.png", "", "gray");
  for (const char *name : {"one.png", "white.tif", "black.tif"})
    CHECK(samples_of(loaded(folder.read(name))) == right);
}

TEST_CASE("alpha stays apart from colour") {
  const Folder folder;
  folder.write("in.ppm", ppm(motley()));
  folder.run("convert in.ppm \\( -size 23x37 gradient: -rotate 90 \\) -alpha off "
             "-compose CopyOpacity -composite a.png &&"
             " cwebp -quiet -lossless -exact a.png -o a.webp && convert a.png a.tif");
  const std::string right = folder.converted("a.png", "", "rgba");
  CHECK(samples_of(loaded(folder.read("a.png"))) == right);
  CHECK(samples_of(loaded(folder.read("a.webp"))) == right);
  // libtiff multiplies colour by alpha on the way: a coarse alpha coarsens colour. What shows on
  // white is what counts.
  folder.write("t.rgba", samples_of(loaded(folder.read("a.tif"))));
  const std::string flat = "-background white -alpha remove -alpha off";
  CHECK(furthest(folder.converted("-size 37x23 -depth 8 rgba:t.rgba", flat, "rgb"),
                 folder.converted("a.png", flat, "rgb")) <= 1);
}

TEST_CASE("a JPEG is seen as EXIF says it is to be held, all eight ways") {
  const Folder folder;
  folder.write("in.ppm", ppm(motley()));
  for (const char *kind : {"jpg", "tif"})
    for (int way = 1; way <= 8; ++way) {
      CAPTURE(kind);
      CAPTURE(way);
      const std::string name = std::string("o.") + kind;
      folder.run("convert in.ppm -quality 92 " + name +
                 " && exiftool -q -overwrite_original -n "
                 "-Orientation=" +
                 std::to_string(way) + " " + name);
      const std::string file = folder.read(name);
      const Facts facts = facts_of(file);
      CHECK(facts.width == (way >= 5 ? 23 : 37));
      CHECK(facts.height == (way >= 5 ? 37 : 23));
      CHECK(samples_of(loaded(file)) == folder.converted(name, "-auto-orient", "rgb"));
    }
}

TEST_CASE("a phone's HEIC is seen the way up that the phone meant") {
  const Folder folder;
  folder.run("convert -size 64x48 gradient:red-blue a.png && heif-enc -L -o a.heic a.png"
             " >heif.log 2>&1");
  const Pixels seen = loaded(folder.read("a.heic"));
  CHECK(seen.width == 64);
  CHECK(seen.height == 48);
  // Lossless but for the way over YCbCr with a quarter of the colour samples.
  CHECK(furthest(samples_of(seen), folder.converted("a.png", "", "rgb")) <= 6);
}

TEST_CASE("CMYK without a profile is read as ink on paper, whichever way its JPEG stores it") {
  const Folder folder;
  folder.write("in.ppm", ppm(motley()));
  folder.run("convert in.ppm -colorspace CMYK -quality 100 -sampling-factor 4:4:4 a.jpg &&"
             " convert in.ppm -colorspace CMYK -compress Zip a.tif");
  for (const std::string name : {"a.jpg", "a.tif"}) {
    CAPTURE(name);
    CHECK(furthest(samples_of(loaded(folder.read(name))),
                   folder.converted(name, "-colorspace sRGB", "rgb")) <= 1);
  }
}

TEST_CASE("an embedded profile is followed to sRGB") {
  const Folder folder;
  folder.write("in.ppm", ppm(motley()));
  struct Way {
    std::string name, profile, kind;
  };
  for (const Way &way : {Way{"a.png", "a98.icc", "rgb"}, Way{"b.jpg", "a98.icc", "rgb"},
                         Way{"c.tif", "a98.icc", "rgb"}, Way{"d.jpg", "default_cmyk.icc", "cmyk"},
                         Way{"e.tif", "default_cmyk.icc", "cmyk"}}) {
    CAPTURE(way.name);
    folder.run("convert in.ppm -profile " + icc + "srgb.icc -intent perceptual -profile " + icc +
               way.profile + " -quality 100 -compress Zip " + way.name);
    const std::string file = folder.read(way.name);
    CHECK(facts_of(file).profile);
    CHECK(icc_profile(file, facts_of(file)) == folder.run("cat " + icc + way.profile));
    const std::string raw = folder.converted(way.name, "", way.kind);
    CHECK(furthest(samples_of(loaded(file)),
                   by_little_cms(raw, icc + way.profile,
                                 way.kind == "cmyk" ? TYPE_CMYK_8 : TYPE_RGB_8)) <= 2);
  }
}

TEST_CASE("samples named as sRGB by a profile are left as they are") {
  const Folder folder;
  folder.write("in.ppm", ppm(motley()));
  folder.run("convert in.ppm -profile " + icc + "srgb.icc a.png");
  CHECK(facts_of(folder.read("a.png")).profile);
  CHECK(loaded(folder.read("a.png")) == motley());
}

TEST_CASE("a picture asked for small is the mean of its squares, never smaller than asked") {
  const Folder folder;
  folder.run(
      "convert -size 400x300 plasma:red-blue -seed 7 p.png; convert p.png -quality 95 p.jpg");
  const Pixels small = loaded(folder.read("p.png"), 3'000);
  CHECK(small.width == 67);
  CHECK(small.height == 50);
  const Pixels jpeg = loaded(folder.read("p.jpg"), 3'000);
  CHECK(jpeg.width * jpeg.height >= 3'000);
  CHECK(jpeg.width * jpeg.height <= 4 * 3'000);
  const Pixels in{4, 2, 1, {}};
  folder.write("in.pgm", std::string("P5 4 2 255\n\x0a\x14\x00\xff\x1e\x28\x02\xfe", 19));
  folder.run("convert in.pgm g.png");
  CHECK(loaded(folder.read("g.png"), 2).samples == std::vector<std::uint8_t>{25, 128});
}
