// no-paper-face and missing-glyph of papers: what is told before they are written.
#include "press/papers_told.hpp"

#include "page/composing.hpp"
#include "problems/characters.hpp"

#include <doctest/doctest.h>

using namespace bodkin;
using namespace bodkin::tests;
using paperwork::Leaflet;
using paperwork::Passage;

namespace {

// A machine on which nobody has installed a face.
class NoFaces : public SystemFaces {
public:
  std::string path_of(std::string_view) const override { return {}; }
  const std::vector<SystemFace> &list() const override { return none_; }
  FileBytes read(const std::string &, std::size_t) const override { return {}; }

private:
  std::vector<SystemFace> none_;
};

Leaflet guide_saying(std::string text) {
  Leaflet guide;
  guide.title = "Test";
  guide.add(Passage{{}, std::move(text)});
  return guide;
}

Problems told_of(const Composed &pages, const Leaflet &guide, press::LeafletType &type) {
  return press::paper_problems(
      {pages.edition(), *pages.read.sources, {{"assembly.pdf", &guide}}, nullptr}, type);
}

} // namespace

TEST_CASE("without any face, the papers that are left out are named, and what to install") {
  const Read bare = read(small_edition("", "page 1-4\n"));
  const OpenFaces none;
  press::LeafletType type(bare.files, NoFaces(), bare.edition(), none);
  const Leaflet guide = guide_saying("Fold."), ticket = guide;
  const Problems told = press::paper_problems(
      {bare.edition(), *bare.sources, {{"assembly.pdf", &guide}, {"ticket.pdf", &ticket}}, nullptr},
      type);
  REQUIRE(told.size() == 1);
  CHECK(told[0].check == "no-paper-face");
  CHECK(told[0].kind == Kind::warning);
  CHECK(told[0].message ==
        "assembly.pdf and ticket.pdf are left out: there is no face to set them in");
  CHECK(told[0].type[0].line == "apt install fonts-bebas-neue fonts-ebgaramond");
  CHECK(bare.sources->text(told[0].range) == "\"Test\"");
}

TEST_CASE("a character that no face of the papers has is told where the maker typed it") {
  const auto pages = composed("", "page 1\n  hand stamp \"a moon, \u6708\"\n"
                                  "    at 1in 1in, 1in x 1in\n");
  press::LeafletType type(pages->read.files, *pages->system, pages->edition(), pages->faces->faces);
  const Leaflet guide = guide_saying("Stamp: a moon, \u6708");
  const Problems told = told_of(*pages, guide, type);
  REQUIRE(told.size() == 1);
  CHECK(told[0].check == "missing-glyph");
  CHECK(told[0].kind == Kind::warning);
  CHECK(told[0].message == "no face that assembly.pdf can be set in has “\u6708” (U+6708)");
  CHECK(pages->read.sources->text(told[0].range) == "\u6708");
}

TEST_CASE("of many characters that no face has twelve are told, and how many more there are") {
  const auto pages = composed("", "page 1\n");
  press::LeafletType type(pages->read.files, *pages->system, pages->edition(), pages->faces->faces);
  std::string words;
  for (char32_t code = 0x6708; code < 0x6708 + 15; ++code)
    append_utf8(words, code);
  const Problems told = told_of(*pages, guide_saying(words), type);
  REQUIRE(told.size() == 13);
  CHECK(told.back().message ==
        "3 more characters of assembly.pdf are in no face that these can be set in");
}

TEST_CASE("what one of the faces has is not told") {
  const auto pages = composed("", "page 1\n");
  press::LeafletType type(pages->read.files, *pages->system, pages->edition(), pages->faces->faces);
  CHECK(told_of(*pages, guide_saying("“Ångström” – 5 €"), type).empty());
}
