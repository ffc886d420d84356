#include "edition/disk.hpp"
#include "edition/memory.hpp"
#include "edition/reading.hpp"

#include <doctest/doctest.h>
#include <filesystem>
#include <fstream>
#include <unistd.h>

using namespace bodkin;
using namespace bodkin::tests;
namespace fs = std::filesystem;

namespace {

// A folder of its own for a test, taken away at the end.
struct Desk {
  fs::path path = fs::temp_directory_path() / ("bodkin-desk-" + std::to_string(::getpid()));
  Desk() {
    fs::remove_all(path);
    fs::create_directories(path / "zine/art");
    put("zine/almanac.bodkin", "edition \"x\"\n");
    put("zine/art/moon.png", "moon");
    put("secret.png", "secret");
  }
  Desk(const Desk &) = delete;
  Desk &operator=(const Desk &) = delete;
  ~Desk() { fs::remove_all(path); }
  void put(const std::string &name, const std::string &bytes) const {
    std::ofstream(path / name, std::ios::binary) << bytes;
  }
  DiskEdition open() const {
    return open_on_disk((path / "zine/almanac.bodkin").string(), BODKIN_SOURCE_DIR);
  }
};

MemoryFiles in_memory() {
  MemoryFiles files;
  files.put("almanac.bodkin", "edition \"x\"\n");
  files.put("art/moon.png", "moon");
  return files;
}

// What both kinds of folder must answer alike.
void ask(const Files &files) {
  constexpr std::size_t most = 100;
  const Lookup there = files.look("", "art/moon.png", most);
  CHECK(there.trouble == Trouble::none);
  CHECK(there.path == "art/moon.png");
  CHECK(files.read(there.path).view == "moon");
  CHECK(files.look("art", "moon.png", most).path == "art/moon.png");
  CHECK(files.look("art", "../art/./moon.png", most).path == "art/moon.png");
  const Lookup wrong_case = files.look("", "Art/moon.PNG", most);
  CHECK(wrong_case.trouble == Trouble::wrong_case);
  CHECK(wrong_case.near == "art/moon.png");
  const Lookup absent = files.look("", "./art/mon.png", most);
  CHECK(absent.trouble == Trouble::absent);
  CHECK(absent.near == "./art/moon.png");
  const Lookup far = files.look("", "words/timetable.md", most);
  CHECK(far.trouble == Trouble::absent);
  CHECK(far.near.empty());
  CHECK(files.look("", "../secret.png", most).trouble == Trouble::outside);
  CHECK(files.look("art", "../../secret.png", most).trouble == Trouble::outside);
  CHECK(files.look("", "/etc/passwd", most).trouble == Trouble::outside);
  CHECK(files.look("", "art", most).trouble == Trouble::not_a_file);
  CHECK(files.look("", "", most).trouble == Trouble::not_a_file);
  CHECK(files.look("", "art/moon.png", 3).trouble == Trouble::too_big);
  CHECK_FALSE(files.read("art/sun.png").owner);
  CHECK(files.look("", std::string_view("art/moon.png\0x", 14), most).trouble == Trouble::absent);
}

} // namespace

TEST_CASE("a folder in memory answers as one on disk") { ask(in_memory()); }

TEST_CASE("a folder on disk answers for what lies in it and for nothing else") {
  const Desk desk;
  const DiskEdition disk = desk.open();
  REQUIRE(disk.files);
  CHECK(disk.manuscript == "almanac.bodkin");
  ask(*disk.files);
}

TEST_CASE("a link that leads out of the folder is outside it; one that stays is followed") {
  const Desk desk;
  fs::create_symlink("../../secret.png", desk.path / "zine/art/leak.png");
  fs::create_symlink("..", desk.path / "zine/up");
  fs::create_symlink("art/moon.png", desk.path / "zine/moon.png");
  const DiskEdition disk = desk.open();
  CHECK(disk.files->look("", "art/leak.png", 100).trouble == Trouble::outside);
  CHECK(disk.files->look("", "up/secret.png", 100).trouble == Trouble::outside);
  CHECK(disk.files->look("", "up/secrte.png", 100).trouble == Trouble::outside);
  CHECK(disk.files->look("", "moon.png", 100).path == "art/moon.png");
}

TEST_CASE("a series is one folder: its editions may read what lies beside them") {
  const Desk desk;
  desk.put("series.bodkin", "");
  const DiskEdition disk = desk.open();
  CHECK(disk.manuscript == "zine/almanac.bodkin");
  CHECK(disk.files->look("zine", "../secret.png", 100).path == "secret.png");
  CHECK(disk.files->look("zine", "../../secret.png", 100).trouble == Trouble::outside);
}

TEST_CASE("an empty file is read as an empty text") {
  const Desk desk;
  desk.put("zine/empty.md", "");
  const FileBytes bytes = desk.open().files->read("empty.md");
  CHECK(bytes.owner);
  CHECK(bytes.view.empty());
}

TEST_CASE("the shelf gives its files by name, and nothing besides") {
  const Desk desk;
  const DiskEdition disk = desk.open();
  CHECK(disk.files->shelf("foldings/saddle-stitch").view.find("folding saddle-stitch") !=
        std::string_view::npos);
  CHECK(disk.files->shelf("fonts/catalogue").owner);
  CHECK_FALSE(disk.files->shelf("../README").owner);
  CHECK_FALSE(disk.files->shelf("stocks/nothing").owner);
  CHECK(disk.files->shelf_names("machines") == std::vector<std::string>{"copy-shop", "home-laser"});
}

TEST_CASE("a manuscript that cannot be opened says why") {
  const Desk desk;
  CHECK(open_on_disk("no/such.bodkin", "").trouble == "no/such.bodkin is not there");
  const std::string folder = (desk.path / "zine").string();
  CHECK(open_on_disk(folder, "").trouble == folder + " is a folder; name the manuscript in it");
}

TEST_CASE("a missing picture is named with the nearest, and its page keeps its place") {
  const Read r = read(small_edition("", "page 1\n  picture \"art/umbrela.png\"\n    fills live\n"),
                      {{"art/umbrella.png", "x"}});
  CHECK(r.found() == "error almanac.bodkin:19:11 missing-file\n");
  CHECK(r.problems[0].message == "art/umbrela.png is not there; art/umbrella.png is");
  CHECK(r.problems[0].why ==
        "the page is drawn with a dashed keyline so that you can see the rest");
  CHECK(r.problems[0].type[0].line == "picture \"art/umbrella.png\"");
  const Picture &picture = std::get<Picture>(r.edition().elements[0].what);
  CHECK(picture.path->empty());
  CHECK(picture.written == "art/umbrela.png");
  CHECK(*r.edition().elements[0].placement.area == Area::live);
}

TEST_CASE("a picture outside the folder is to be copied in") {
  const Read r = read(small_edition("", "page 1\n  picture \"../art/colander.png\"\n"));
  CHECK(r.found() == "error almanac.bodkin:19:11 outside-the-folder\n");
  CHECK(r.problems[0].message == "this picture lives outside the edition's folder");
  CHECK(r.problems[0].type[0].line == "picture \"colander.png\"");
  CHECK(r.problems[0].type[0].remark == "after copying it in");
}

TEST_CASE("capitals count in a file's name") {
  const Read r = read(small_edition("", "page 1\n  picture \"moon.HEIC\"\n"), {{"moon.heic", "x"}});
  CHECK(r.found() == "error almanac.bodkin:19:11 wrong-case\n");
  CHECK(r.problems[0].message ==
        "moon.heic is there, moon.HEIC is not: capitals count in a file's name");
}

TEST_CASE("a text longer than any booklet is not read") {
  const std::string novel(17u << 20, 'a');
  const Read r = read(small_edition("", "text novel from \"words/novel.md\"\npage 1\n"),
                      {{"words/novel.md", novel}});
  const Problem *problem = r.problem("too-long-file");
  REQUIRE(problem);
  CHECK(problem->message == "words/novel.md is too long a file for a text");
  CHECK(problem->why == "at most 4 MB are read; something else must have got into its place");
  CHECK(problem->type[0].remark == "name the file that was meant");
}

TEST_CASE("a picture that lies in another folder of the edition is named there") {
  struct Row {
    std::string_view written, message, typed;
  };
  for (const Row &row : {
           Row{"bath.jpg", "bath.jpg is not there; art/bath.jpg is", "picture \"art/bath.jpg\""},
           Row{"pictures/bath.jpg", "pictures/bath.jpg is not there; art/bath.jpg is",
               "picture \"art/bath.jpg\""},
           Row{"art\\bath.jpg", "art\\bath.jpg is not there; art/bath.jpg is",
               "picture \"art/bath.jpg\""},
           Row{"art\\bth.jpg", "art\\bth.jpg is not there; art/bath.jpg is",
               "picture \"art/bath.jpg\""},
       }) {
    CAPTURE(row.written);
    const std::string page = "page 1\n  picture \"" + std::string(row.written) + "\"\n";
    const Read r = read(small_edition("", page), {{"art/bath.jpg", "x"}});
    CHECK(r.found() == "error almanac.bodkin:19:11 missing-file\n");
    CHECK(r.problems[0].message == row.message);
    REQUIRE(r.problems[0].type.size() == 1);
    CHECK(r.problems[0].type[0].line == row.typed);
    const std::string mended = "page 1\n  " + r.problems[0].type[0].line + "\n";
    CHECK(read(small_edition("", mended), {{"art/bath.jpg", "x"}}).found() == "");
  }
}

TEST_CASE("a file in another folder is found on disk too, and never outside the edition's") {
  const Desk desk;
  const DiskEdition disk = desk.open();
  CHECK(disk.files->look("", "moon.png", 100).near == "art/moon.png");
  CHECK(disk.files->look("", "art\\moon.png", 100).near == "art/moon.png");
  CHECK(disk.files->look("", "secret.png", 100).near.empty());
  CHECK(disk.files->look("art", "pictures/moon.png", 100).near == "moon.png");
}

TEST_CASE("a file of words that holds none is told") {
  for (const std::string_view nothing : {"", "\n", " \r\n\t\n"}) {
    const Read r = read(small_edition("", "text plot from \"words/plot.md\"\npage 1\n"),
                        {{"words/plot.md", nothing}});
    const Problem *problem = r.problem("empty-words");
    REQUIRE(problem);
    CHECK(problem->kind == Kind::error);
    CHECK(problem->message == "words/plot.md holds no words");
    CHECK(problem->why ==
          "the places that ask for them would come out of the machine empty, and be paid");
    CHECK(problem->type[0].remark == "write the words into it, or take out what asks for them");
  }
  const Read full = read(small_edition("", "text plot from \"words/plot.md\"\npage 1\n"),
                         {{"words/plot.md", "One.\n"}});
  CHECK(full.problem("empty-words") == nullptr);
}

TEST_CASE("a manuscript whose bytes cannot be read is not said to hold no edition as well") {
  const Read r = read(std::string_view("\xFF\xFE"
                                       "e\0d\0i\0t\0i\0o\0n\0",
                                       16));
  CHECK(r.found() == "error almanac.bodkin:1:1 malformed-bytes\n");
}

TEST_CASE("words in a word processor's own form are told once, and none of them is set") {
  const Read r = read(small_edition("", "text plot from \"words/plot.docx\"\npage 1\n"),
                      {{"words/plot.docx", std::string_view("PK\x03\x04\0\0abc\xFF\xFE", 11)}});
  const Problem *problem = r.problem("malformed-bytes");
  REQUIRE(problem);
  CHECK(problem->message == "byte 4 is no text in UTF-8");
  CHECK(r.problem("empty-words") == nullptr);
  CHECK(r.edition().texts.at(0).prose.blocks.empty());
}
