// The catalogue of faces as it ships, against the packages of this machine.
#include "type/shop.hpp"

#include <doctest/doctest.h>

#include <sstream>

namespace bodkin {
namespace {

std::string quoted(const std::string &line) {
  const std::size_t begin = line.find('"') + 1;
  return line.substr(begin, line.find('"', begin) - begin);
}

std::vector<Face> catalogue() {
  std::vector<Face> faces;
  std::istringstream lines(file_bytes(BODKIN_SOURCE_DIR "/fonts/catalogue.bodkin"));
  for (std::string line; std::getline(lines, line);) {
    if (line.starts_with("face ")) {
      faces.emplace_back();
      faces.back().family = quoted(line);
    } else if (line.starts_with("  file ")) {
      faces.back().files.push_back({quoted(line), Cut::regular, {}});
    } else if (line.starts_with("  package ")) {
      faces.back().package = quoted(line);
    } else if (line.starts_with("  licence ")) {
      faces.back().licence = quoted(line);
    }
  }
  return faces;
}

} // namespace

TEST_CASE("every catalogued face has files, a package and a licence") {
  const std::vector<Face> faces = catalogue();
  CHECK(faces.size() >= 50);
  for (const Face &face : faces) {
    CHECK_MESSAGE(!face.files.empty(), face.family);
    CHECK_MESSAGE(face.package.starts_with("fonts-"), face.family);
    CHECK_MESSAGE(!face.licence.empty(), face.family);
  }
}

// Reference program: dpkg-query, for the packages that tests install.
TEST_CASE("catalogued files are those of the packages that are installed here") {
  const auto machine = machine_faces();
  std::size_t seen = 0;
  for (const Face &face : catalogue()) {
    if (face.package != "fonts-ebgaramond" && face.package != "fonts-courier-prime" &&
        face.package != "fonts-bebas-neue")
      continue;
    const std::string listed = printed("dpkg-query -L " + face.package);
    for (const FaceFile &file : face.files) {
      ++seen;
      CHECK_MESSAGE(listed.find("/" + file.path + "\n") != std::string::npos, file.path);
      CHECK_MESSAGE(!machine->path_of(file.path).empty(), file.path);
    }
  }
  CHECK(seen == 13);
}

} // namespace bodkin
