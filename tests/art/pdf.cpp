// Reference: qpdf encrypts and compresses; poppler's pdftoppm draws. The files are written here by
// the rules of PDF 1.7, 7.5.
#include "art/tools.hpp"

#include <cstdio>
#include <doctest/doctest.h>

using namespace bodkin;
using namespace bodkin::art;
using namespace bodkin::art::testing;

namespace {

// One page for each of `pages`, all with the same content.
std::string pdf(const std::vector<std::string> &pages, const std::string &content) {
  std::vector<std::string> objects{"<< /Type /Catalog /Pages 2 0 R >>"};
  std::string kids;
  for (std::size_t i = 0; i < pages.size(); ++i)
    kids += std::to_string(4 + i) + " 0 R ";
  objects.push_back("<< /Type /Pages /Kids [" + kids + "] /Count " + std::to_string(pages.size()) +
                    " >>");
  objects.push_back("<< /Length " + std::to_string(content.size()) + " >>\nstream\n" + content +
                    "\nendstream");
  for (const std::string &page : pages)
    objects.push_back("<< /Type /Page /Parent 2 0 R /Resources << >> /Contents 3 0 R " + page +
                      " >>");
  std::string file = "%PDF-1.7\n", table;
  for (std::size_t i = 0; i < objects.size(); ++i) {
    char line[21];
    std::snprintf(line, sizeof line, "%010zu 00000 n \n", file.size());
    table += line;
    file += std::to_string(i + 1) + " 0 obj\n" + objects[i] + "\nendobj\n";
  }
  const std::string size = std::to_string(objects.size() + 1);
  return file + "xref\n0 " + size + "\n0000000000 65535 f \n" + table + "trailer\n<< /Size " +
         size + " /Root 1 0 R >>\nstartxref\n" + std::to_string(file.size()) + "\n%%EOF\n";
}

const std::string upright = "/MediaBox [0 0 144 72]";

} // namespace

TEST_CASE("a page's size is its crop box as it is turned") {
  const std::string file =
      pdf({upright, "/MediaBox [0 0 144 72] /Rotate 90",
           "/MediaBox [0 0 200 200] /CropBox [10 20 82 164]", "/MediaBox [0 0 72 36] /UserUnit 2"},
          "0 0 10 10 re f");
  CHECK(facts_of(file).drawing->pages == 4);
  CHECK(facts_of(file).drawing->natural == Size{Length::inches(2), Length::inches(1)});
  CHECK(facts_of(file, 2).drawing->natural == Size{Length::inches(1), Length::inches(2)});
  CHECK(facts_of(file, 2).drawing->rotate == 90);
  CHECK(facts_of(file, 3).drawing->natural == Size{Length::inches(1), Length::inches(2)});
  CHECK(facts_of(file, 3).drawing->page_box.left == 10);
  CHECK(facts_of(file, 3).drawing->page_box.top == 164);
  CHECK(facts_of(file, 4).drawing->natural == Size{Length::inches(2), Length::inches(1)});
  CHECK(facts_of(file, 4).aspect() == 2);
}

TEST_CASE("a page that the PDF has not got is named with those it has") {
  CHECK(reason_of(pdf({upright}, ""), 2) == "has 1 page, so no page 2");
  CHECK(reason_of(pdf({upright, upright, upright}, ""), 5) == "has 3 pages, so no page 5");
}

TEST_CASE("a page is judged for colour and ink by drawing it") {
  CHECK_FALSE(facts_of(pdf({upright}, "0.5 g 0 0 72 72 re f")).drawing->coloured);
  CHECK(facts_of(pdf({upright}, "1 0 0 rg 0 0 72 72 re f")).drawing->coloured);
  const Hull ink = facts_of(pdf({upright}, "36 18 72 36 re f")).drawing->ink;
  REQUIRE(ink.size() == 4);
  for (const ShareSpot &spot : ink) {
    CHECK(std::min(std::abs(spot.x - 0.25), std::abs(spot.x - 0.75)) < 0.002);
    CHECK(std::min(std::abs(spot.y - 0.25), std::abs(spot.y - 0.75)) < 0.003);
  }
  CHECK(facts_of(pdf({upright}, "")).drawing->ink.empty());
}

TEST_CASE("a page is drawn as pdftoppm draws it") {
  const Folder folder;
  const std::string file = pdf({upright}, "1 0 0 rg 30 20 50 30 re f 0 0 1 rg 90 10 20 50 re f");
  folder.write("a.pdf", file);
  folder.run("pdftoppm -png -aa no -singlefile -scale-to-x 144 -scale-to-y 72 a.pdf a");
  folder.write("ours.rgba", samples_of(loaded(file, 144 * 72)));
  CHECK(furthest(folder.converted("-size 144x72 -depth 8 rgba:ours.rgba",
                                  "-background white -alpha remove -alpha off", "rgb"),
                 folder.converted("a.png", "", "rgb")) == 0);
}

TEST_CASE("a PDF that asks for a password is refused, one that only forbids copying is not") {
  const Folder folder;
  folder.write("a.pdf", pdf({upright}, "0 0 10 10 re f"));
  folder.run("qpdf --encrypt secret owner 256 -- a.pdf locked.pdf &&"
             " qpdf --encrypt '' owner 256 --extract=n -- a.pdf forbids.pdf");
  CHECK(reason_of(folder.read("locked.pdf")) == "asks for a password; save a copy without one");
  CHECK(facts_of(folder.read("forbids.pdf")).drawing->pages == 1);
}

TEST_CASE("a page that draws for ever is given up") {
  const Folder folder;
  std::string content = "20 w\n";
  for (int i = 0; i < 200'000; ++i)
    content += "0 0 m 144 72 9 72 144 1 c 7 9 l 3 60 99 2 1 1 c S\n";
  folder.write("a.pdf", pdf({upright}, content));
  folder.run("qpdf --recompress-flate --compression-level=9 a.pdf b.pdf");
  Bounds bounds;
  bounds.drawing_seconds = 1;
  const std::string file = folder.read("b.pdf");
  CHECK(file.size() < 100'000);
  CHECK(reason_of(file, 1, bounds) ==
        "takes more than 1 s to draw; simplify it, or place it as a PNG made by the program that "
        "drew it");
}

TEST_CASE("a PDF that breaks off is refused") {
  const std::string file = pdf({upright, upright}, "0 0 10 10 re f");
  for (const std::size_t bytes : {file.size() / 4, file.size() / 2, file.size() - 30})
    CHECK(reason_of(file.substr(0, bytes)) ==
          "breaks off before the end of its PDF; copy it again whole");
  CHECK(reason_of("%PDF-1.7\nnothing\n%%EOF\n") ==
        "is a damaged PDF that cannot be read; copy it again, or save it anew");
}
