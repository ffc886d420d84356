#include "type/family.hpp"

#include <doctest/doctest.h>

namespace bodkin {
namespace {

SystemFace face(std::string path, std::vector<std::string> families, int weight = 400,
                bool slanted = false, bool normal_width = true) {
  SystemFace face;
  face.path = std::move(path);
  face.families = std::move(families);
  face.weight = weight;
  face.slanted = slanted;
  face.normal_width = normal_width;
  return face;
}

std::vector<std::string> paths(const std::array<const SystemFace *, 4> &cuts) {
  std::vector<std::string> all;
  for (const SystemFace *cut : cuts)
    all.push_back(cut == nullptr ? "" : cut->path);
  return all;
}

} // namespace

TEST_CASE("cuts are chosen by weight, slant and width") {
  const std::vector<SystemFace> faces = {face("black", {"Odd"}, 900),
                                         face("bold", {"Odd"}, 700),
                                         face("bold-narrow", {"Odd"}, 700, false, false),
                                         face("italic", {"Odd"}, 400, true),
                                         face("light", {"Odd"}, 300),
                                         face("other", {"Even"}),
                                         face("regular", {"Odd", "Odd Book"}, 400)};
  CHECK(paths(cuts_of_family(faces, "Odd")) ==
        std::vector<std::string>{"regular", "italic", "bold", ""});
}

TEST_CASE("a family goes by its exact name alone") {
  const std::vector<SystemFace> faces = {face("a", {"Odd Sans"})};
  for (const char *name : {"Odd", "odd sans", "Odd Sans ", ""})
    CHECK(paths(cuts_of_family(faces, name)) == std::vector<std::string>{"", "", "", ""});
}

TEST_CASE("a family of one weight gives it as its regular") {
  const std::vector<SystemFace> faces = {face("heavy", {"Block"}, 900)};
  CHECK(paths(cuts_of_family(faces, "Block"))[0] == "heavy");
}

TEST_CASE("near families are few letters apart or hold the name that was typed") {
  const std::vector<SystemFace> faces = {face("1", {"Bebas Neue"}),
                                         face("2", {"EB Garamond", "EB Garamond 12"}),
                                         face("3", {"Liberation Sans"})};
  CHECK(near_families(faces, "Bebas Nue") == std::vector<std::string>{"Bebas Neue"});
  CHECK(near_families(faces, "garamond") ==
        std::vector<std::string>{"EB Garamond", "EB Garamond 12"});
  CHECK(near_families(faces, "Futile Old").empty());
}

} // namespace bodkin
