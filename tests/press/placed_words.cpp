// Words as the model places them against poppler's pdftotext -bbox on the finished sheets.
#include "page/composing.hpp"
#include "press/output.hpp"
#include "press/placing.hpp"

#include <cmath>
#include <cstdlib>
#include <doctest/doctest.h>
#include <filesystem>
#include <fmt/format.h>
#include <fstream>
#include <sstream>

using namespace bodkin;
using namespace bodkin::tests;

namespace {

struct Word {
  std::string text;
  double left = 0, baseline = 0, right = 0;
};
struct Found {
  std::string text;
  double left = 0, top = 0, right = 0, foot = 0;
};

// Words of each side of each sheet, where the model has them.
std::vector<std::vector<Word>> placed(const Composed &pages) {
  std::vector<std::vector<Word>> sides;
  for (const Sheet &sheet : pages.imposition.sheets)
    for (const Side &side : sheet.sides) {
      std::vector<Word> words;
      for (const Place &place : side.places)
        for (const Item &item : pages.drawings[place.page].items)
          if (const auto *set = std::get_if<SetWords>(&item.what))
            for (const Line &line : set->lines)
              for (const WordBox &word : words_of(line)) {
                const double x = place.box.x.in_points() + item.place.x.in_points() +
                                 press::shift_right(place).in_points();
                const double y = place.box.y.in_points() + item.place.y.in_points();
                words.push_back({word.text, word.left + x, line.baseline + y, word.right + x});
              }
      sides.push_back(words);
    }
  return sides;
}

std::vector<std::vector<Found>> found(const std::string &pdf) {
  std::string folder = (std::filesystem::temp_directory_path() / "bodkin-press-XXXXXX").string();
  REQUIRE(mkdtemp(folder.data()) != nullptr);
  std::ofstream(folder + "/a.pdf", std::ios::binary) << pdf;
  const int status = std::system(
      fmt::format("pdftotext -bbox {0}/a.pdf {0}/a.html && qpdf --check {0}/a.pdf >{0}/check",
                  folder)
          .c_str());
  std::ifstream in(folder + "/a.html");
  std::vector<std::vector<Found>> pages;
  for (std::string line; std::getline(in, line);) {
    if (line.find("<page ") != std::string::npos)
      pages.emplace_back();
    Found word;
    char text[200];
    if (std::sscanf(line.c_str(),
                    " <word xMin=\"%lf\" yMin=\"%lf\" xMax=\"%lf\" yMax=\"%lf\">%199[^<]",
                    &word.left, &word.top, &word.right, &word.foot, text) == 5) {
      word.text = text;
      pages.back().push_back(word);
    }
  }
  std::filesystem::remove_all(folder);
  REQUIRE(status == 0);
  return pages;
}

bool same(const Word &asked, const Found &word) {
  return asked.text == word.text && std::abs(asked.left - word.left) < 0.05 &&
         std::abs(asked.right - word.right) < 0.05 && word.top < asked.baseline &&
         asked.baseline < word.foot;
}

std::string sheets_of(const Composed &pages) {
  Problems told;
  const std::vector<CopyPart> parts = impose_parts(pages.edition(), *pages.read.sources, told);
  const std::vector<Drawings> drawings{pages.drawings};
  const press::PrintJob job{pages.edition(), pages.imposition, parts,          drawings,
                            pages.modes,     pages.passes,     *pages.gallery, {}};
  press::Plates plates(job);
  press::Outputs outputs(plates, {"Test", "", {}, "Bodkin", "0"});
  std::string pdf;
  outputs.sheets([&](std::string_view bytes) { pdf.append(bytes); });
  return pdf;
}

} // namespace

TEST_CASE("every word is found on its sheet where the model has placed it") {
  const auto pages = composed("pages 8\nmarks none", R"(style set like body
  lines justified
style end like body
  lines right
text t
  says
    The night bus comes every forty minutes and waits for nobody, and everybody waits for it, on
    the bench under the lamp, with wet umbrellas and warm bread. Who gets on late sits at the back
    and hears how the story ends. *Nobody* has ever told how it began; **somebody** must have been
    awake at the depot.
page 1-3
  words of t in set
    at 40pt 50pt, 120pt x 48pt
page 4-8
  words "Lost: one glove, left." in end
    at 1in from outer, 3in, 3in x 12pt
)");
  const auto asked = placed(*pages);
  const auto words = found(sheets_of(*pages));
  REQUIRE(words.size() == asked.size());
  std::size_t count = 0;
  for (std::size_t side = 0; side < asked.size(); ++side) {
    CHECK(asked[side].size() == words[side].size());
    for (const Word &word : asked[side]) {
      CAPTURE(word.text);
      CAPTURE(word.left);
      bool there = false;
      for (const Found &one : words[side])
        there = there || same(word, one);
      CHECK(there);
      ++count;
    }
  }
  CHECK(count > 60);
}
