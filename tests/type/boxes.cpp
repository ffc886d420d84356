// Words measured where they stand in a PDF drawn from the runs, by a program nobody here wrote.
#include "type/shop.hpp"

#include <doctest/doctest.h>

#include <cairo-ft.h>
#include <cairo-pdf.h>

#include <cstdio>

namespace bodkin {
namespace {

Length pt(std::int64_t n) { return Length::points(n); }

void draw(cairo_t *page, const GlyphRun &run) {
  cairo_font_face_t *face = cairo_ft_font_face_create_for_ft_face(run.cut->freetype(), 0);
  cairo_set_font_face(page, face);
  cairo_set_font_size(page, run.size.in_points());
  std::vector<cairo_glyph_t> glyphs;
  for (const Glyph &glyph : run.glyphs)
    glyphs.push_back({glyph.id, glyph.x, glyph.y});
  std::vector<cairo_text_cluster_t> clusters;
  for (const Cluster &cluster : run.clusters)
    clusters.push_back({cluster.bytes, cluster.glyphs});
  cairo_show_text_glyphs(
      page, run.text.data(), static_cast<int>(run.text.size()), glyphs.data(),
      static_cast<int>(glyphs.size()), clusters.data(), static_cast<int>(clusters.size()),
      run.backward ? CAIRO_TEXT_CLUSTER_FLAG_BACKWARD : static_cast<cairo_text_cluster_flags_t>(0));
  CHECK(cairo_status(page) == CAIRO_STATUS_SUCCESS);
  cairo_font_face_destroy(face);
}

struct Found {
  double left = 0, right = 0;
  std::string text;
};

std::vector<Found> words_in_pdf(const std::string &path) {
  std::vector<Found> words;
  const std::string page = printed("pdftotext -bbox " + path + " -");
  for (std::size_t at = page.find("<word"); at != std::string::npos;
       at = page.find("<word", at + 1)) {
    Found word;
    const auto number = [&](const char *name) {
      return std::stod(page.substr(page.find(name, at) + std::string(name).size() + 2));
    };
    word.left = number("xMin");
    word.right = number("xMax");
    const std::size_t begin = page.find('>', at) + 1;
    word.text = page.substr(begin, page.find('<', begin) - begin);
    words.push_back(word);
  }
  return words;
}

} // namespace

// Reference program: pdftotext of Debian's poppler-utils, drawing by Cairo.
TEST_CASE("pdftotext finds every word where the line has it") {
  Shop shop;
  shop.style(shop.body).lines = {Lines::justified, {}};
  const Column column = shop.fill(
      one("The office waffles: an official affair of five fjords, naïve façades and AVATARS. "
          "Nobody who waits for the last bus ever asks where it goes."),
      shop.body, {pt(150), pt(200)});
  const std::string path = "/tmp/bodkin-type-boxes.pdf";
  cairo_surface_t *file = cairo_pdf_surface_create(path.c_str(), 150, 200);
  cairo_t *page = cairo_create(file);
  std::vector<WordBox> words;
  for (const Line &line : column.lines) {
    for (const GlyphRun &run : line.runs)
      draw(page, run);
    for (const WordBox &word : words_of(line))
      words.push_back(word);
  }
  cairo_destroy(page);
  cairo_surface_finish(file);
  cairo_surface_destroy(file);
  const std::vector<Found> found = words_in_pdf(path);
  std::remove(path.c_str());
  REQUIRE(found.size() == words.size());
  for (std::size_t i = 0; i < words.size(); ++i) {
    CHECK(found[i].text == words[i].text);
    CHECK(std::abs(found[i].left - words[i].left) < 0.02);
    CHECK(std::abs(found[i].right - words[i].right) < 0.02);
  }
}

} // namespace bodkin
