// Sixty-four pages of text from manuscript to imposed PDF, against HarfBuzz shaping plus Cairo
// drawing of the very same runs on pages of a PDF.
#include "command/printing.hpp"
#include "command/way.hpp"
#include "edition.hpp"
#include "folder.hpp"
#include "press/fonts.hpp"
#include "timing.hpp"

#include <cairo-ft.h>
#include <cairo-pdf.h>
#include <cstdio>
#include <fstream>
#include <hb.h>
#include <malloc.h>
#include <map>
#include <sstream>

using namespace bodkin;

namespace {

constexpr int pages = 64;

std::string read_whole(const std::string &path) {
  std::ifstream file(path);
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

// The almanac's own essay, again and again until 64 pages are full.
std::string long_text() {
  const std::string once =
      read_whole(std::string(BODKIN_SOURCE_DIR) + "/examples/night-bus/words/ten-past-two.md");
  std::string text;
  while (text.size() < 140'000)
    text += once + "\n\n";
  return text;
}

std::string manuscript() {
  std::string text = bench::head(pages, "black");
  text.insert(text.find("machine copier\n\n") + 15, "\n  margins 1/2in");
  text += "text essay from \"essay.md\"\n\npage 1-64\n  words of essay in body\n";
  return text;
}

cairo_status_t count(void *sum, const unsigned char *, unsigned int length) {
  *static_cast<std::size_t *>(sum) += length;
  return CAIRO_STATUS_SUCCESS;
}

void shape(const GlyphRun &run) {
  hb_buffer_t *buffer = hb_buffer_create();
  hb_buffer_add_utf8(buffer, run.text.data(), static_cast<int>(run.text.size()), 0, -1);
  hb_buffer_set_direction(buffer, HB_DIRECTION_LTR);
  hb_buffer_set_script(buffer, HB_SCRIPT_LATIN);
  hb_buffer_set_language(buffer, hb_language_from_string("en", 2));
  hb_shape(run.cut->harfbuzz(), buffer, nullptr, 0);
  hb_buffer_destroy(buffer);
}

void draw(cairo_t *cairo, const GlyphRun &run, press::Fonts &fonts) {
  std::vector<cairo_glyph_t> glyphs;
  for (const Glyph &glyph : run.glyphs)
    glyphs.push_back({glyph.id, glyph.x, glyph.y});
  std::vector<cairo_text_cluster_t> clusters;
  for (const Cluster &cluster : run.clusters)
    clusters.push_back({cluster.bytes, cluster.glyphs});
  cairo_set_scaled_font(cairo, fonts.at(*run.cut, run.size));
  cairo_show_text_glyphs(cairo, run.text.data(), static_cast<int>(run.text.size()), glyphs.data(),
                         static_cast<int>(glyphs.size()), clusters.data(),
                         static_cast<int>(clusters.size()),
                         static_cast<cairo_text_cluster_flags_t>(0));
}

std::size_t floor_of(const Drawings &drawings) {
  std::size_t bytes = 0;
  press::Fonts fonts;
  cairo_surface_t *surface = cairo_pdf_surface_create_for_stream(count, &bytes, 396, 612);
  cairo_t *cairo = cairo_create(surface);
  for (const PageDrawing &page : drawings.pages) {
    for (const Item &item : page.items)
      if (const auto *words = std::get_if<SetWords>(&item.what))
        for (const Line &line : words->lines)
          for (const GlyphRun &run : line.runs) {
            shape(run);
            draw(cairo, run, fonts);
          }
    cairo_show_page(cairo);
  }
  cairo_destroy(cairo);
  cairo_surface_finish(surface);
  cairo_surface_destroy(surface);
  return bytes;
}

} // namespace

int main() {
  mallopt(M_MMAP_THRESHOLD, 1 << 30);
  mallopt(M_TRIM_THRESHOLD, 1 << 30);
  const bench::Folder folder;
  folder.write("book.bodkin", manuscript());
  folder.write("essay.md", long_text());
  Progress progress(false);
  const auto set = walk(folder / "book.bodkin", BODKIN_SOURCE_DIR, true, progress);
  std::size_t full = 0;
  for (const PageDrawing &page : set->drawings.front().pages)
    full += page.draws ? 1 : 0;
  std::printf("%zu pages with words\n", full);
  bench::compare(
      "pages", 7,
      [&] {
        std::filesystem::remove_all(folder / "book");
        const auto way = walk(folder / "book.bodkin", BODKIN_SOURCE_DIR, true, progress);
        Delivery delivery(folder / "book");
        PrintRoom(*way, "bench", progress).sheets(delivery);
        delivery.finish();
      },
      [&] {
        if (floor_of(set->drawings.front()) == 0)
          std::abort();
      });
}
