// Reference: exiftool says what a file tells of its maker; ImageMagick's convert decodes.
#include "art/jpeg.hpp"

#include "art/tools.hpp"

#include <doctest/doctest.h>

using namespace bodkin;
using namespace bodkin::art;
using namespace bodkin::art::testing;

namespace {

std::string joined(const PlacedJpeg &placed) {
  std::string bytes;
  for (const auto piece : placed.pieces)
    bytes += piece;
  return bytes;
}

// A photograph as a phone writes it: place, owner, maker, a comment, a thumbnail, two blocks of
// XMP.
void write_phone_jpeg(const Folder &folder, const std::string &options) {
  folder.write("in.ppm", ppm(motley()));
  folder.run("convert in.ppm -quality 90 " + options +
             " p.jpg && convert in.ppm -resize 8 t.jpg &&"
             " exiftool -q -overwrite_original -GPSLatitude=51.5 -GPSLatitudeRef=N"
             " -GPSLongitude=0.12 -GPSLongitudeRef=W -Make=Shutterwood -Model=Q7 -Artist=Nobody"
             " -SerialNumber=12345 -XMP:Creator=Nobody -IPTC:By-line=Nobody -Comment=hello"
             " '-ThumbnailImage<=t.jpg' p.jpg && printf 'moving picture with a place' >> p.jpg");
}

} // namespace

TEST_CASE("nothing that a camera wrote of itself or its place is placed, and no sample changes") {
  const Folder folder;
  for (const char *options :
       {"", "-colorspace Gray", "-interlace JPEG", "-colorspace CMYK",
        "-profile /usr/share/color/icc/ghostscript/a98.icc", "-define jpeg:restart-interval=2"}) {
    CAPTURE(options);
    write_phone_jpeg(folder, options);
    const std::string file = folder.read("p.jpg");
    REQUIRE(folder.run("exiftool -G -GPSLatitude -Make -Comment -By-line p.jpg").size() > 100);
    const Facts facts = facts_of(file);
    REQUIRE(can_be_placed(facts));
    const PlacedJpeg placed = placed_jpeg(file, facts);
    folder.write("placed.jpg", joined(placed));
    CHECK(placed.bytes == joined(placed).size());
    CHECK(folder.run("exiftool -s -G1 placed.jpg | grep -v -E "
                     "'ExifTool|System|\\[File\\]|JFIF|Composite|ICC|Adobe' || true") == "");
    CHECK(joined(placed).find("Nobody") == std::string::npos);
    CHECK(joined(placed).find("moving") == std::string::npos);
    CHECK(folder.converted("placed.jpg", "", "rgb") == folder.converted("p.jpg", "", "rgb"));
    CHECK(icc_profile(joined(placed), facts_of(joined(placed))) == icc_profile(file, facts));
  }
}

TEST_CASE("the PDF is told how many inks the data have and which way round") {
  const Folder folder;
  write_phone_jpeg(folder, "-colorspace CMYK");
  PlacedJpeg placed = placed_jpeg(folder.read("p.jpg"), facts_of(folder.read("p.jpg")));
  CHECK(placed.components == 4);
  CHECK(placed.inverted);
  write_phone_jpeg(folder, "-colorspace Gray");
  placed = placed_jpeg(folder.read("p.jpg"), facts_of(folder.read("p.jpg")));
  CHECK(placed.components == 1);
  CHECK_FALSE(placed.inverted);
}

TEST_CASE("a turned photograph keeps its data and says its stored size") {
  const Folder folder;
  write_phone_jpeg(folder, "");
  folder.run("exiftool -q -overwrite_original -n -Orientation=6 p.jpg");
  const std::string file = folder.read("p.jpg");
  const Facts facts = facts_of(file);
  CHECK(facts.orientation == Orientation{false, 1});
  CHECK(facts.width == 23);
  const PlacedJpeg placed = placed_jpeg(file, facts);
  CHECK(placed.width == 37);
  CHECK(placed.height == 23);
}

TEST_CASE("a colour photograph becomes grey without decoding, sample for sample its own luma") {
  const Folder folder;
  for (const char *options : {"", "-sampling-factor 4:4:4", "-interlace JPEG"}) {
    CAPTURE(options);
    write_phone_jpeg(folder, options);
    const std::string file = folder.read("p.jpg");
    const auto grey = grey_jpeg(file, facts_of(file));
    REQUIRE(grey);
    folder.write("grey.jpg", *grey);
    CHECK(samples_of(loaded(*grey)) == folder.run("convert grey.jpg -depth 8 gray:-"));
    CHECK(furthest(samples_of(loaded(*grey)),
                   folder.converted("p.jpg", "-grayscale Rec601Luma", "gray")) <= 1);
    CHECK(folder.run("exiftool -GPSLatitude -Make -Comment grey.jpg") == "");
  }
  write_phone_jpeg(folder, "-colorspace CMYK");
  CHECK(grey_jpeg(folder.read("p.jpg"), facts_of(folder.read("p.jpg"))).refusal().reason ==
        "keeps no grey of its own beside its colours");
}

TEST_CASE(
    "RGB data without a marker that says so are decoded, for readers of PDF would guess wrong") {
  const Folder folder;
  folder.write("in.ppm", ppm(motley()));
  folder.run(
      "convert in.ppm -set colorspace sRGB -define jpeg:colorspace=RGB -quality 95 -strip a.jpg");
  std::string file = folder.read("a.jpg");
  CHECK(can_be_placed(facts_of(file)));
  // The three component numbers of the frame, changed to letters, and no JFIF.
  const auto jfif = file.find("\xff\xe0"), frame = file.find("\xff\xc0");
  for (std::size_t i = 0; i < 3; ++i)
    file[frame + 10 + 3 * i] = "RGB"[i];
  const auto scan = file.find("\xff\xda");
  for (std::size_t i = 0; i < 3; ++i)
    file[scan + 5 + 2 * i] = "RGB"[i];
  file.erase(jfif, 18);
  CHECK_FALSE(can_be_placed(facts_of(file)));
}

TEST_CASE("samples written as a JPEG come back nearly the same") {
  CHECK(furthest(samples_of(loaded(to_jpeg(motley(), 100))), samples_of(motley())) <= 12);
}
