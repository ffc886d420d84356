#include "sheet/folding_drawing.hpp"
#include "sheet/report.hpp"
#include "sheet/svg_page.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {
namespace {

constexpr double margin = 24, drawing_width = 620, side_width = 270, gap = 30;
constexpr double stage_cell = 46, layer_step = 2.2;

std::string_view kind_of(bool valley) { return valley ? "valley" : "mountain"; }

struct Frame {
  double x, y, scale;
  double across(Length length) const { return x + length.in_points() * scale; }
  double down(Length length) const { return y + length.in_points() * scale; }
};

void draw_lines(SvgPage &page, const Frame &frame, const Sheet &sheet, bool front,
                const std::vector<Sheet::FoldLine> &lines, bool slits) {
  for (const Sheet::FoldLine &line : lines) {
    const auto seen = [&](Spot spot) {
      if (!front)
        (sheet.turns_upright ? spot.x : spot.y) =
            sheet.turns_upright ? sheet.size.width - spot.x : sheet.size.height - spot.y;
      return spot;
    };
    const Spot start = seen(line.start), end = seen(line.end);
    page.line(frame.across(start.x), frame.down(start.y), frame.across(end.x), frame.down(end.y),
              slits ? "slit" : kind_of(line.valley == front));
  }
}

void draw_side(SvgPage &page, const Frame &frame, const Sheet &sheet, std::size_t side) {
  page.box(frame.x, frame.y, sheet.size.width.in_points() * frame.scale,
           sheet.size.height.in_points() * frame.scale, "paper");
  if (sheet.tabs.right > Length() && side == 0)
    page.box(frame.across(sheet.size.width - sheet.tabs.right), frame.y,
             sheet.tabs.right.in_points() * frame.scale,
             sheet.size.height.in_points() * frame.scale, "tab");
  if (sheet.tabs.bottom > Length() && side == 0)
    page.box(frame.x, frame.down(sheet.size.height - sheet.tabs.bottom),
             sheet.size.width.in_points() * frame.scale,
             sheet.tabs.bottom.in_points() * frame.scale, "tab");
  for (const Place &place : sheet.sides[side].places) {
    const Box &box = place.box;
    page.box(frame.across(box.x), frame.down(box.y), box.width.in_points() * frame.scale,
             box.height.in_points() * frame.scale, "page");
    if (place.page > 0)
      page.number(frame.across(box.x + box.width / 2), frame.down(box.y + box.height / 2),
                  place.page == sheet.reverse ? "reverse"
                                              : std::to_string(place.page - sheet.pages_before),
                  place.turn);
  }
  draw_lines(page, frame, sheet, side == 0, sheet.folds, false);
  draw_lines(page, frame, sheet, side == 0, sheet.slits, true);
}

// The foot of what it draws.
double draw_sheet(SvgPage &page, const SheetsReport &report, const Sheet &sheet, double y) {
  const double scale =
      side_width / std::max(sheet.size.width.in_points(), sheet.size.height.in_points());
  const std::string stock =
      sheet.stock == StockId::none ? "no stock" : report.edition[sheet.stock].name;
  page.words_from(margin, y + 10,
                  fmt::format("sheet {}, {}{}{}", sheet.number, stock,
                              sheet.piece.empty() ? "" : ", ", sheet.piece),
                  "title");
  for (std::size_t side = 0; side < 2; ++side) {
    const double x = margin + static_cast<double>(side) * (side_width + gap);
    page.words_from(x, y + 24, side == 0 ? "front" : "back, turned like a leaf", "small");
    draw_side(page, {x, y + 30, scale}, sheet, side);
  }
  return y + 30 + sheet.size.height.in_points() * scale + gap;
}

void draw_panel(SvgPage &page, const DrawnPanel &panel, double x, double y, double cell) {
  const double left = x + panel.left * cell, top = y + panel.top * cell;
  const int edges = std::min(panel.layers, 6);
  for (int layer = edges - 1; layer >= 0; --layer) {
    const double off = layer * layer_step;
    page.box(left + off, top + off, panel.width * cell, panel.height * cell,
             panel.at_fault && layer == 0 ? "fault"
             : panel.front                ? "paper"
                                          : "back");
  }
  page.number(left + panel.width * cell / 2, top + panel.height * cell / 2, panel.label,
              panel.turn);
  if (panel.layers > 1)
    page.words_from(left + 2, top + panel.height * cell - 3, fmt::format("{}", panel.layers),
                    "small");
}

double cell_of(const DrawnStage &stage) {
  return std::min(stage_cell, (drawing_width - 2 * margin) / stage.width);
}

void draw_stage(SvgPage &page, const DrawnStage &stage, double x, double y) {
  const double cell = cell_of(stage);
  for (const DrawnPanel &panel : stage.panels)
    draw_panel(page, panel, x, y, cell);
  for (const DrawnLine &line : stage.lines)
    page.line(x + line.x1 * cell, y + line.y1 * cell, x + line.x2 * cell, y + line.y2 * cell,
              line.kind == DrawnLine::Kind::slit ? "slit"
                                                 : kind_of(line.kind == DrawnLine::Kind::valley));
}

// Stage under stage; the small figure in a corner counts layers.
double draw_stages(SvgPage &page, const FoldingDrawing &drawing, const std::string &name,
                   double y) {
  page.words_from(margin, y + 10, name + ", step by step, as the sheet is laid down", "title");
  y += 22;
  for (std::size_t i = 0; i < drawing.stages.size(); ++i) {
    const DrawnStage &stage = drawing.stages[i];
    page.words_from(margin, y + 8, fmt::format("{}. {}", i, stage.caption), "small");
    draw_stage(page, stage, margin, y + 14);
    y += 14 + stage.height * cell_of(stage) + gap;
  }
  if (!drawing.trouble.empty()) {
    page.words_from(margin, y, "Here the paper stops:", "trouble");
    page.words_from(margin, y + 16, drawing.trouble, "trouble");
    y += 16 + gap;
  }
  return y;
}

} // namespace

std::string sheets_as_svg(const SheetsReport &report) {
  SvgPage page;
  double y = margin;
  const FoldingDrawing drawing = draw_folding(*report.edition.folding);
  if (drawing.trouble.empty())
    for (const Sheet &sheet : report.imposition.sheets)
      y = draw_sheet(page, report, sheet, y);
  y = draw_stages(page, drawing, report.edition.folding->name, y);
  for (const Folding &other : report.edition.other_foldings)
    if (const FoldingDrawing wrong = draw_folding(other); !wrong.trouble.empty())
      y = draw_stages(page, wrong, other.name, y);
  return page.finished(drawing_width, y + margin, *report.edition.title);
}

} // namespace bodkin
