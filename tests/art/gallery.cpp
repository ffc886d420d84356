#include "art/gallery.hpp"

#include "art/tools.hpp"

#include <doctest/doctest.h>

using namespace bodkin;
using namespace bodkin::art;
using namespace bodkin::art::testing;

namespace {

// A folder in memory that counts how often it is read.
class Shelf : public Files {
public:
  std::map<std::string, std::string> held;
  mutable int reads = 0;

  Lookup look(std::string_view, std::string_view written, std::size_t) const override {
    return {bodkin::Trouble::none, std::string(written), {}};
  }
  FileBytes read(const std::string &path) const override {
    ++reads;
    const auto found = held.find(path);
    return found == held.end() ? FileBytes{} : FileBytes{nullptr, found->second};
  }
  FileBytes shelf(std::string_view) const override { return {}; }
  std::vector<std::string> shelf_names(std::string_view) const override { return {}; }
};

Picture picture(const std::string &path) {
  Picture made;
  made.path.value = path;
  return made;
}

} // namespace

TEST_CASE("a file that many pages show is read once") {
  const Folder folder;
  folder.write("in.ppm", ppm(motley()));
  folder.run("convert in.ppm a.png");
  Shelf files;
  files.held["a.png"] = folder.read("a.png");
  Gallery gallery(files);
  const Picture shown = picture("a.png");
  Picture grey = shown;
  grey.tone.value.kind = ToneKind::grey;
  CHECK(gallery.facts(shown)->width == 37);
  CHECK(*gallery.coloured(shown));
  CHECK_FALSE(*gallery.coloured(grey));
  CHECK(gallery.ink(shown)->size() >= 4);
  CHECK(gallery.luminance(shown)->columns == 37);
  CHECK(*gallery.pixels(shown) == motley());
  CHECK(&gallery.ink(shown) == &gallery.ink(shown));
  CHECK(written(gallery.digest("a.png")) == folder.run("sha256sum a.png").substr(0, 64));
  CHECK(files.reads == 1);
}

TEST_CASE("line art is judged by its ink after the threshold") {
  const Folder folder;
  folder.write("in.pgm", std::string("P5 4 1 255\n\x80\x10\x80\xff", 15));
  folder.run("convert in.pgm a.png");
  Shelf files;
  files.held["a.png"] = folder.read("a.png");
  Gallery gallery(files);
  Picture line = picture("a.png");
  CHECK(gallery.ink(line)->front() == ShareSpot{0.75, 0});
  line.tone.value = {ToneKind::line, {250'000}};
  CHECK(*gallery.ink(line) == Hull{{0.5, 0}, {0.5, 1}, {0.25, 1}, {0.25, 0}});
  CHECK(mean_luminance(*gallery.luminance(line), {}) == doctest::Approx(0.75));
}

TEST_CASE("a file that is gone is refused everywhere in the same words") {
  const Shelf files;
  Gallery gallery(files);
  const Picture gone = picture("gone.png");
  const std::string reason = "is empty: it holds no bytes at all";
  CHECK(gallery.facts(gone).refusal().reason == reason);
  CHECK(gallery.coloured(gone).refusal().reason == reason);
  CHECK(gallery.ink(gone).refusal().reason == reason);
  CHECK(gallery.luminance(gone).refusal().reason == reason);
  CHECK(gallery.pixels(gone).refusal().reason == reason);
}
