#include "sheet/folding_drawing.hpp"
#include "sheet/report.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <optional>
#include <type_traits>

namespace bodkin {
namespace {

constexpr double side_width = 270, gap = 30;
constexpr double stage_cell = 46, layer_step = 2.2;

LineLook look_of(bool valley) { return valley ? LineLook::valley : LineLook::mountain; }

struct Frame {
  double x, y, scale;
  double across(Length length) const { return x + length.in_points() * scale; }
  double down(Length length) const { return y + length.in_points() * scale; }
  FigureBox box(const Box &box, BoxLook look) const {
    return {across(box.x), down(box.y), box.width.in_points() * scale,
            box.height.in_points() * scale, look};
  }
};

// A spot of the front, as it is seen from the other side.
Spot on_back(const Sheet &sheet, Spot spot) {
  if (sheet.turns_upright)
    return {sheet.size.width - spot.x, spot.y};
  return {spot.x, sheet.size.height - spot.y};
}

void draw_lines(Figure &figure, const Frame &frame, const Sheet &sheet, bool front,
                const std::vector<Sheet::FoldLine> &lines, std::optional<LineLook> look) {
  for (const Sheet::FoldLine &line : lines) {
    const Spot start = front ? line.start : on_back(sheet, line.start);
    const Spot end = front ? line.end : on_back(sheet, line.end);
    figure.items.push_back(FigureLine{frame.across(start.x), frame.down(start.y),
                                      frame.across(end.x), frame.down(end.y),
                                      look ? *look : look_of(line.valley == front)});
  }
}

void draw_tabs(Figure &figure, const Frame &frame, const Sheet &sheet) {
  const Size &size = sheet.size;
  if (sheet.tabs.right > Length())
    figure.items.push_back(frame.box(
        {size.width - sheet.tabs.right, {}, sheet.tabs.right, size.height}, BoxLook::tab));
  if (sheet.tabs.bottom > Length())
    figure.items.push_back(frame.box(
        {{}, size.height - sheet.tabs.bottom, size.width, sheet.tabs.bottom}, BoxLook::tab));
}

void draw_place(Figure &figure, const Frame &frame, const Sheet &sheet, const Place &place) {
  const Box &box = place.box;
  figure.items.push_back(frame.box(box, BoxLook::page));
  if (place.page > 0)
    figure.items.push_back(FigureNumber{
        frame.across(box.x + box.width / 2), frame.down(box.y + box.height / 2),
        place.page == sheet.reverse ? "reverse" : std::to_string(place.page - sheet.pages_before),
        place.turn});
}

void draw_side(Figure &figure, const Frame &frame, const Sheet &sheet, std::size_t side) {
  figure.items.push_back(frame.box({{}, {}, sheet.size.width, sheet.size.height}, BoxLook::paper));
  if (side == 0)
    draw_tabs(figure, frame, sheet);
  for (const Place &place : sheet.sides[side].places)
    draw_place(figure, frame, sheet, place);
  draw_lines(figure, frame, sheet, side == 0, sheet.folds, std::nullopt);
  draw_lines(figure, frame, sheet, side == 0, sheet.slits, LineLook::slit);
  draw_lines(figure, frame, sheet, side == 0, sheet.cuts, LineLook::cut);
}

std::string said_of(const SheetsReport &report, const Sheet &sheet) {
  return fmt::format("sheet {}, {}{}{}{}", sheet.number,
                     sheet.stock == StockId::none ? "no stock" : report.edition[sheet.stock].name,
                     sheet.piece.empty() ? "" : ", ", sheet.piece,
                     sheet.up > 1 ? fmt::format(", {} up", sheet.up) : "");
}

Figure figure_of(const SheetsReport &report, const Sheet &sheet) {
  const double scale =
      side_width / std::max(sheet.size.width.in_points(), sheet.size.height.in_points());
  Figure figure;
  figure.height = 30 + sheet.size.height.in_points() * scale;
  figure.items.push_back(FigureWords{figure_margin, 10, said_of(report, sheet), WordLook::title});
  for (std::size_t side = 0; side < 2; ++side) {
    const double x = figure_margin + static_cast<double>(side) * (side_width + gap);
    figure.items.push_back(
        FigureWords{x, 24, side == 0 ? "front" : "back, turned like a leaf", WordLook::small});
    draw_side(figure, {x, 30, scale}, sheet, side);
  }
  return figure;
}

void draw_panel(Figure &figure, const DrawnPanel &panel, double x, double y, double cell) {
  const double left = x + panel.left * cell, top = y + panel.top * cell;
  for (int layer = std::min(panel.layers, 6) - 1; layer >= 0; --layer) {
    const double off = layer * layer_step;
    figure.items.push_back(FigureBox{left + off, top + off, panel.width * cell, panel.height * cell,
                                     panel.at_fault && layer == 0 ? BoxLook::fault
                                     : panel.front                ? BoxLook::paper
                                                                  : BoxLook::back});
  }
  figure.items.push_back(FigureNumber{left + panel.width * cell / 2, top + panel.height * cell / 2,
                                      panel.label, panel.turn});
  if (panel.layers > 1)
    figure.items.push_back(FigureWords{left + 2, top + panel.height * cell - 3,
                                       std::to_string(panel.layers), WordLook::small});
}

// The small figure in a corner counts layers.
Figure figure_of(const DrawnStage &stage, std::size_t number) {
  const double cell = std::min(stage_cell, (figure_width - 2 * figure_margin) / stage.width);
  Figure figure;
  figure.height = 14 + stage.height * cell;
  figure.items.push_back(
      FigureWords{figure_margin, 8, fmt::format("{}. {}", number, stage.caption), WordLook::small});
  for (const DrawnPanel &panel : stage.panels)
    draw_panel(figure, panel, figure_margin, 14, cell);
  for (const DrawnLine &line : stage.lines)
    figure.items.push_back(FigureLine{figure_margin + line.x1 * cell, 14 + line.y1 * cell,
                                      figure_margin + line.x2 * cell, 14 + line.y2 * cell,
                                      line.kind == DrawnLine::Kind::slit
                                          ? LineLook::slit
                                          : look_of(line.kind == DrawnLine::Kind::valley)});
  return figure;
}

void move_down(Figure &figure, double by) {
  figure.height += by;
  for (FigureItem &item : figure.items)
    std::visit(
        [by](auto &drawn) {
          if constexpr (std::is_same_v<std::decay_t<decltype(drawn)>, FigureLine>) {
            drawn.y1 += by;
            drawn.y2 += by;
          } else if constexpr (std::is_same_v<std::decay_t<decltype(drawn)>, FigureCurve>) {
            for (FigurePoint &point : drawn.points)
              point.y += by;
          } else {
            drawn.y += by;
          }
        },
        item);
}

std::vector<std::string> broken(std::string_view text, std::size_t most) {
  std::vector<std::string> lines;
  while (text.size() > most) {
    const std::size_t blank = text.rfind(' ', most);
    if (blank == std::string_view::npos)
      break;
    lines.emplace_back(text.substr(0, blank));
    text.remove_prefix(blank + 1);
  }
  lines.emplace_back(text);
  return lines;
}

Figure figure_of_trouble(const std::string &trouble) {
  constexpr double leading = 16;
  constexpr std::size_t most_letters = 90;
  Figure figure;
  const auto add = [&](std::string line) {
    figure.items.push_back(
        FigureWords{figure_margin, figure.height + 10, std::move(line), WordLook::trouble});
    figure.height += leading;
  };
  add("Here the paper stops:");
  for (std::string &line : broken(trouble, most_letters))
    add(std::move(line));
  return figure;
}

// The title stands with the first stage, so that no page ends below it.
void add_stages(std::vector<Figure> &figures, const FoldingDrawing &drawing,
                const std::string &name) {
  constexpr double title = 22;
  for (std::size_t i = 0; i < drawing.stages.size(); ++i) {
    Figure figure = figure_of(drawing.stages[i], i);
    if (i == 0) {
      move_down(figure, title);
      figure.items.insert(figure.items.begin(),
                          FigureWords{figure_margin, 10,
                                      name + ", step by step, as the sheet is laid down",
                                      WordLook::title});
    }
    figures.push_back(std::move(figure));
  }
  if (!drawing.trouble.empty())
    figures.push_back(figure_of_trouble(drawing.trouble));
}

} // namespace

std::vector<Figure> draw_sheets(const SheetsReport &report) {
  std::vector<Figure> figures;
  const FoldingDrawing drawing = draw_folding(*report.edition.folding);
  if (drawing.trouble.empty())
    for (const Sheet &sheet : report.imposition.sheets)
      figures.push_back(figure_of(report, sheet));
  add_stages(figures, drawing, report.edition.folding->name);
  for (const Folding &other : report.edition.other_foldings)
    if (const FoldingDrawing wrong = draw_folding(other); !wrong.trouble.empty())
      add_stages(figures, wrong, other.name);
  return figures;
}

} // namespace bodkin
