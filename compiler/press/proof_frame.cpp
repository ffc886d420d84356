#include "press/proof_frame.hpp"

#include "edition/copy_numbers.hpp"
#include "press/letters.hpp"
#include "sheet/live.hpp"

#include <algorithm>
#include <array>

namespace bodkin::press {
namespace {

constexpr double around = 20, under = 22, label_height = 5;

void edge_pen(Strokes &drawn) {
  drawn.colour(0.55, 0.55, 0.55);
  drawn.line_width(0.4);
}

void draw_paper(Strokes &drawn, const PrintJob &job, int page, double x, double y) {
  const Size size = job.size_of(page);
  const StockId stock = job.imposition.sheet_of(page).stock;
  const Colour tint = stock == StockId::none ? Colour{255, 255, 255} : *job.edition[stock].tint;
  edge_pen(drawn);
  drawn.fill_colour(tint);
  drawn.rectangle(x, y, size.width.in_points(), size.height.in_points());
  drawn.fill_and_stroke();
}

// Where the knife will go, as ticks outside the page: the page itself stays as it will look.
void draw_cut_ticks(Strokes &drawn, const PrintJob &job, int page, bool left, double x, double y) {
  const Trims trims = trims_of(*job.part_of(page).edition);
  const Size size = job.size_of(page);
  const double w = size.width.in_points(), h = size.height.in_points(), tick = 7, off = 2;
  const double fore = trims.fore_edge.in_points();
  const double outer = left ? x + fore : x + w - fore, edge = left ? x : x + w;
  const double away = left ? -1 : 1;
  drawn.colour(0, 0, 0);
  drawn.line_width(0.4);
  if (fore > 0) {
    drawn.move_to(outer, y - off);
    drawn.line_to(outer, y - off - tick);
    drawn.move_to(outer, y + h + off);
    drawn.line_to(outer, y + h + off + tick);
  }
  for (const double cut : {trims.head > Length{} ? y + trims.head.in_points() : -1.0,
                           trims.foot > Length{} ? y + h - trims.foot.in_points() : -1.0})
    if (cut >= 0) {
      drawn.move_to(edge + away * off, cut);
      drawn.line_to(edge + away * (off + tick), cut);
    }
  drawn.stroke();
}

void draw_label(Strokes &drawn, const PrintJob &job, int page, bool left, double x, double y) {
  const Size size = job.size_of(page);
  const StockId stock = job.imposition.sheet_of(page).stock;
  const CopyPart &part = job.part_of(page);
  const bool piece = part.piece && !part.is_other_book();
  std::string text = piece ? part.piece->name + " " : "page ";
  text += std::to_string(page - part.pages_before);
  if (const RunSet &only = job.imposition.sheet_of(page).only; only && !piece)
    text += ", " + names_of(job.edition, only);
  if (stock != StockId::none)
    text += "  " + job.edition[stock].name;
  const bool colour = job.mode_of(page) == Mode::colour;
  text += colour ? "  colour" : "  black";
  const double at = left ? x : x + size.width.in_points() - letters_width(text, label_height);
  drawn.colour(0.35, 0.35, 0.35);
  drawn.letters(text, at, y + size.height.in_points() + under - label_height, label_height);
}

// A band lies flat: its folds, and over each panel what it will be round the copy.
void draw_panels(Strokes &drawn, const CopyPart &part, double x, double y) {
  for (const BandPart &panel : part.imposition.panels) {
    const double left = x + panel.box.x.in_points(), foot = y + panel.box.height.in_points();
    drawn.colour(0.55, 0.55, 0.55);
    drawn.line_width(0.4);
    if (panel.box.x > Length{}) {
      drawn.dashes({3, 2});
      drawn.move_to(left, y);
      drawn.line_to(left, foot);
      drawn.stroke();
      drawn.solid();
    }
    const std::string_view name = name_of(panel.panel);
    const double width = letters_width(name, label_height);
    if (width < panel.box.width.in_points())
      drawn.letters(name, left + (panel.box.width.in_points() - width) / 2, y - label_height,
                    label_height);
  }
}

void draw_page(Strokes &drawn, const PrintJob &job, int page, bool left, double x, double y) {
  if (page == 0)
    return;
  draw_paper(drawn, job, page, x, y);
  if (const CopyPart &part = job.part_of(page); page == part.pages_before + 1)
    draw_panels(drawn, part, x, y);
  draw_cut_ticks(drawn, job, page, left, x, y);
  draw_label(drawn, job, page, left, x, y);
}

// Of another run's book those that show a sheet of its own.
void add_spread(std::vector<ProofSpread> &spreads, const PrintJob &job, const ProofSpread &spread) {
  const auto printed = [&](int page) { return page == 0 ? 0 : job.printed(page); };
  const ProofSpread shown{printed(spread.left), printed(spread.right)};
  if ((spread.left > 0 && shown.left == spread.left) ||
      (spread.right > 0 && shown.right == spread.right) || spread.left + spread.right == 0)
    spreads.push_back(shown);
}

} // namespace

std::vector<ProofSpread> proof_spreads(const PrintJob &job) {
  std::vector<ProofSpread> spreads;
  for (const CopyPart &part : job.parts) {
    const int before = part.pages_before, pages = part.imposition.page_count;
    add_spread(spreads, job, {0, pages > 0 ? before + 1 : 0});
    for (int left = 2; left <= pages; left += 2)
      add_spread(spreads, job, {before + left, left + 1 <= pages ? before + left + 1 : 0});
  }
  return spreads;
}

ProofLayout proof_layout(const PrintJob &job, const ProofSpread &spread) {
  const auto size = [&](int page) { return page > 0 ? job.size_of(page) : Size{}; };
  const Size left = size(spread.left), right = size(spread.right);
  const double l = (spread.left > 0 ? left : right).width.in_points();
  const double r = (spread.right > 0 ? right : left).width.in_points();
  const double h = std::max(left.height, right.height).in_points();
  return {l + r + 2 * around, h + around + under + 6, around, around + l, around};
}

Strokes paper_edge(const Size &size) {
  Strokes drawn(size.height.in_points());
  edge_pen(drawn);
  drawn.rectangle(0, 0, size.width.in_points(), size.height.in_points());
  drawn.stroke();
  return drawn;
}

Strokes draw_frame(const PrintJob &job, const ProofSpread &spread) {
  const ProofLayout layout = proof_layout(job, spread);
  Strokes drawn(layout.height);
  drawn.colour(1, 1, 1);
  drawn.rectangle(0, 0, layout.width, layout.height);
  drawn.fill();
  draw_page(drawn, job, spread.left, true, layout.left_x, layout.y);
  draw_page(drawn, job, spread.right, false, layout.right_x, layout.y);
  return drawn;
}

} // namespace bodkin::press
