#include "press/proof_frame.hpp"

#include "press/ink.hpp"
#include "press/letters.hpp"
#include "sheet/live.hpp"

#include <array>

namespace bodkin::press {
namespace {

constexpr double around = 20, under = 22, label_height = 5;

void draw_paper(cairo_t *cairo, const PrintJob &job, int page, double x, double y) {
  const Size &size = job.imposition.page_size;
  const StockId stock = job.imposition.sheet_of(page).stock;
  set_paint(cairo, stock == StockId::none ? Colour{255, 255, 255} : *job.edition[stock].tint);
  cairo_rectangle(cairo, x, y, size.width.in_points(), size.height.in_points());
  cairo_fill_preserve(cairo);
  cairo_set_source_rgb(cairo, 0.55, 0.55, 0.55);
  cairo_set_line_width(cairo, 0.4);
  cairo_stroke(cairo);
}

// Where the knife will go, as ticks outside the page: the page itself stays as it will look.
void draw_cut_ticks(cairo_t *cairo, const PrintJob &job, bool left, double x, double y) {
  const Trims trims = trims_of(job.edition);
  const Size &size = job.imposition.page_size;
  const double w = size.width.in_points(), h = size.height.in_points(), tick = 7, off = 2;
  const double fore = trims.fore_edge.in_points();
  const double outer = left ? x + fore : x + w - fore, edge = left ? x : x + w;
  const double away = left ? -1 : 1;
  if (fore > 0) {
    cairo_move_to(cairo, outer, y - off);
    cairo_line_to(cairo, outer, y - off - tick);
    cairo_move_to(cairo, outer, y + h + off);
    cairo_line_to(cairo, outer, y + h + off + tick);
  }
  for (const double cut : {trims.head > Length{} ? y + trims.head.in_points() : -1.0,
                           trims.foot > Length{} ? y + h - trims.foot.in_points() : -1.0})
    if (cut >= 0) {
      cairo_move_to(cairo, edge + away * off, cut);
      cairo_line_to(cairo, edge + away * (off + tick), cut);
    }
  cairo_set_source_rgb(cairo, 0, 0, 0);
  cairo_set_line_width(cairo, 0.4);
  cairo_stroke(cairo);
}

void draw_label(cairo_t *cairo, const PrintJob &job, int page, bool left, double x, double y) {
  const Size &size = job.imposition.page_size;
  const StockId stock = job.imposition.sheet_of(page).stock;
  std::string text = "page " + std::to_string(page);
  if (stock != StockId::none)
    text += "  " + job.edition[stock].name;
  const bool colour = *job.edition.pages[static_cast<std::size_t>(page)].mode == Mode::colour;
  text += colour ? "  colour" : "  black";
  const double at = left ? x : x + size.width.in_points() - letters_width(text, label_height);
  cairo_set_source_rgb(cairo, 0.35, 0.35, 0.35);
  draw_letters(cairo, text, at, y + size.height.in_points() + under - label_height, label_height);
}

void draw_page(cairo_t *cairo, const PrintJob &job, int page, bool left, double x, double y) {
  if (page == 0)
    return;
  draw_paper(cairo, job, page, x, y);
  draw_cut_ticks(cairo, job, left, x, y);
  draw_label(cairo, job, page, left, x, y);
}

} // namespace

std::vector<ProofSpread> proof_spreads(const PrintJob &job) {
  const int pages = *job.edition.page_count;
  std::vector<ProofSpread> spreads{{0, 1}};
  for (int left = 2; left <= pages; left += 2)
    spreads.push_back({left, left + 1 <= pages ? left + 1 : 0});
  return spreads;
}

ProofLayout proof_layout(const PrintJob &job) {
  const double w = job.imposition.page_size.width.in_points();
  const double h = job.imposition.page_size.height.in_points();
  return {2 * w + 2 * around, h + around + under + 6, around, around + w, around};
}

int draw_frame(const PrintJob &job, const ProofSpread &spread, Vectors &vectors) {
  const ProofLayout layout = proof_layout(job);
  cairo_t *cairo = vectors.begin(layout.width, layout.height);
  cairo_set_source_rgb(cairo, 1, 1, 1);
  cairo_paint(cairo);
  draw_page(cairo, job, spread.left, true, layout.left_x, layout.y);
  draw_page(cairo, job, spread.right, false, layout.right_x, layout.y);
  return vectors.end();
}

} // namespace bodkin::press
