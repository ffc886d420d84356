#include "type/faces.hpp"
#include "type/shop.hpp"

#include <doctest/doctest.h>

namespace bodkin {
namespace {

constexpr const char *garamond = "/usr/share/fonts/opentype/ebgaramond/EBGaramond12-Regular.otf";
constexpr const char *italic = "/usr/share/fonts/opentype/ebgaramond/EBGaramond12-Italic.otf";

struct Desk {
  Desk() {
    shop.edition.faces.clear();
    shop.edition.styles.clear();
    shop.edition.elements.clear();
  }
  Face &add(Face face) {
    shop.edition.faces.push_back(std::move(face));
    shop.add_style("s", static_cast<FaceId>(shop.edition.faces.size() - 1), Length::points(10),
                   Length::points(12));
    return shop.edition.faces.back();
  }
  FacesOpened open() { return open_faces(shop.edition, files, shelf); }

  Shop shop;
  MemoryFiles files;
  ShelfOfFaces shelf;
};

std::vector<std::string> checks(const Problems &problems) {
  std::vector<std::string> names;
  for (const Problem &problem : problems)
    names.push_back(problem.check);
  return names;
}

Face family(std::string name) { return catalogued("book", std::move(name), "", {}); }

Face own(std::string path) {
  Face face = catalogued("book", "", "", {{std::move(path), Cut::regular}});
  face.own_files = true;
  return face;
}

} // namespace

TEST_CASE("a catalogued face is opened by the exact names of its files") {
  Desk desk;
  desk.shelf.files.put("/shelf/B-Regular.otf", file_bytes(garamond));
  desk.shelf.files.put("/shelf/B-Italic.otf", file_bytes(italic));
  desk.add(catalogued(
      "book", "B", "fonts-b",
      {{"B-Regular.otf", Cut::regular}, {"B-Italic.otf", Cut::italic}, {"B-Bold.otf", Cut::bold}}));
  const FacesOpened opened = desk.open();
  CHECK(opened.problems.empty());
  const OpenFace &face = opened.faces[FaceId{0}];
  CHECK(face[Cut::regular]->file() == "/shelf/B-Regular.otf");
  CHECK(face[Cut::regular]->system());
  CHECK(face[Cut::italic]->file() == "/shelf/B-Italic.otf");
  CHECK(face[Cut::bold] == nullptr);
  CHECK(face.nearest(Cut::bold) == face[Cut::regular]);
  CHECK(face.nearest(Cut::bold_italic) == face[Cut::italic]);
}

TEST_CASE("a catalogued face whose regular is not there is missing, whatever else is") {
  Desk desk;
  desk.shelf.files.put("/shelf/B-Italic.otf", file_bytes(italic));
  desk.add(catalogued("book", "B", "fonts-b",
                      {{"B-Regular.otf", Cut::regular}, {"B-Italic.otf", Cut::italic}}));
  const FacesOpened opened = desk.open();
  CHECK(checks(opened.problems) == std::vector<std::string>{"missing-face"});
  CHECK_FALSE(opened.faces[FaceId{0}].usable());
}

TEST_CASE("a family of the machine is taken with a note") {
  Desk desk;
  desk.shelf.files.put("/shelf/odd.otf", file_bytes(garamond));
  SystemFace odd;
  odd.path = "/shelf/odd.otf";
  odd.families = {"Odd"};
  desk.shelf.faces = {odd};
  desk.add(family("Odd"));
  const FacesOpened opened = desk.open();
  CHECK(checks(opened.problems) == std::vector<std::string>{"system-face"});
  CHECK(opened.faces[FaceId{0}][Cut::regular]->file() == "/shelf/odd.otf");
}

TEST_CASE("no family stands in for another") {
  Desk desk;
  desk.shelf.files.put("/shelf/odd.otf", file_bytes(garamond));
  SystemFace odd;
  odd.path = "/shelf/odd.otf";
  odd.families = {"Odd Sans"};
  desk.shelf.faces = {odd};
  desk.add(family("Odd"));
  const FacesOpened opened = desk.open();
  CHECK(checks(opened.problems) == std::vector<std::string>{"missing-face"});
  CHECK_FALSE(opened.faces[FaceId{0}].usable());
  CHECK(opened.faces.files().empty());
}

TEST_CASE("a face may be a file of the edition, opened once for all that name it") {
  Desk desk;
  desk.files.put("faces/own.otf", file_bytes(garamond));
  desk.add(own("faces/own.otf"));
  desk.add(own("faces/own.otf"));
  const FacesOpened opened = desk.open();
  CHECK(opened.problems.empty());
  REQUIRE(opened.faces.files().size() == 1);
  CHECK(opened.faces.files()[0]->file() == "faces/own.otf");
  CHECK_FALSE(opened.faces.files()[0]->system());
  CHECK(opened.faces.files()[0]->bytes().size() == file_bytes(garamond).size());
  CHECK(opened.faces[FaceId{0}][Cut::regular] == opened.faces[FaceId{1}][Cut::regular]);
}

TEST_CASE("own files that are not there, lie outside or hold no type are told apart") {
  Desk desk;
  desk.files.put("faces/text.otf", "not a face");
  desk.add(own("faces/gone.otf"));
  desk.add(own("../outside.otf"));
  desk.add(own("faces/text.otf"));
  CHECK(checks(desk.open().problems) ==
        std::vector<std::string>{"missing-file", "outside-the-folder", "unreadable-face"});
}

TEST_CASE("a face that no style of any words asks for stays closed and says nothing") {
  Desk desk;
  desk.add(family("Nowhere"));
  desk.shop.edition.elements.clear();
  CHECK(desk.open().problems.empty());
}

TEST_CASE("faces are reached through styles of headings, quotes, lists and code, and folios") {
  Desk desk;
  for (const char *name : {"a", "b", "c", "d"})
    desk.add(family(name));
  auto &edition = desk.shop.edition;
  edition.elements.clear();
  edition.styles[0].headings[2] = Known<StyleId>{StyleId{1}, {}};
  edition.styles[1].code = Known<StyleId>{StyleId{2}, {}};
  edition.styles[2].list = Known<StyleId>{StyleId{0}, {}};
  Element folio;
  folio.what = Folio{StyleId{0}};
  edition.elements.push_back(folio);
  CHECK(faces_in_use(edition) == std::vector<bool>{true, true, true, false});
}

// Reference program: fc-list of Debian's fontconfig.
TEST_CASE("the machine's list holds the families that fontconfig lists") {
  const std::string listed = printed("fc-list : family file");
  const auto machine = machine_faces();
  REQUIRE(machine->list().size() > 5);
  for (const SystemFace &face : machine->list()) {
    CHECK(listed.find(face.path) != std::string::npos);
    REQUIRE(!face.families.empty());
  }
  const std::string path = machine->path_of("EBGaramond12-Bold.otf");
  CHECK(path == "/usr/share/fonts/opentype/ebgaramond/EBGaramond12-Bold.otf");
  CHECK(machine->path_of("ebgaramond12-bold.otf").empty());
  for (const SystemFace &face : machine->list())
    if (face.path == path) {
      CHECK(face.weight == 700);
      CHECK_FALSE(face.slanted);
    }
  CHECK(machine->read(path, 1000).view.empty());
  CHECK(machine->read("/usr/share/fonts", 1000).view.empty());
}

} // namespace bodkin
