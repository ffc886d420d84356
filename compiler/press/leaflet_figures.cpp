#include "press/leaflet_figures.hpp"

#include "press/ink.hpp"
#include "press/leaflet_pen.hpp"
#include "sheet/figure.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace bodkin::press {
namespace {

using namespace paperwork;

constexpr double beside_room = 20;                  // for a line with its measure
constexpr double badge_off = 9, badge_row = 16;     // of a badge beside its line's end
constexpr double letter = 5;                        // about as wide as a letter of a measure
constexpr double layer_step = 2.2, most_layers = 6; // of a stage's edges

double points(Length length) { return length.in_points(); }

class MeasuredDrawer {
public:
  MeasuredDrawer(LeafletPen pen, const PlacedPicture &picture, const Measured &measured)
      : pen_(pen), picture_(picture), measured_(measured) {}

  void draw() {
    for (const Stroke &stroke : measured_.strokes)
      draw(stroke);
    for (const Lettering &lettering : measured_.letterings)
      pen_.lettering(at(lettering.at), lettering.says, lettering.turn);
    for (const Dimension &dimension : measured_.dimensions)
      draw(dimension);
    for (const Badge &badge : measured_.badges)
      draw(badge);
  }

private:
  Point at(Spot spot) const {
    return {picture_.x + points(spot.x) * picture_.scale,
            picture_.y + points(spot.y) * picture_.scale};
  }

  void draw(const Stroke &stroke) {
    const Point a = at(stroke.start), b = at(stroke.end);
    switch (stroke.kind) {
    case StrokeKind::outline:
      return pen_.box(a, b, 0.7);
    case StrokeKind::place:
      return pen_.turned_box(a, b, stroke.turn);
    case StrokeKind::faint:
      return pen_.line(a, b, 0.4);
    case StrokeKind::fold:
      return pen_.dashed(a, b, 0.9, 5, 3);
    case StrokeKind::crease:
      return pen_.dashed(a, b, 1.6, 1.6, 1.6);
    case StrokeKind::cut:
      return pen_.cut(a, b);
    case StrokeKind::staple:
      return pen_.staple(a, b);
    case StrokeKind::hole:
      return pen_.dot(a, 2.4);
    }
  }

  void draw(const Dimension &dimension) {
    Point a = at(dimension.start), b = at(dimension.end);
    const double off = 9;
    const double right = picture_.x + points(measured_.size.width) * picture_.scale;
    const double foot = picture_.y + points(measured_.size.height) * picture_.scale;
    const Point from = a, to = b;
    switch (dimension.beside) {
    case Beside::nothing:
      return pen_.measure(a, b, dimension.says);
    case Beside::above:
      a.y = b.y = picture_.y - off;
      break;
    case Beside::below:
      a.y = b.y = foot + off;
      break;
    case Beside::left:
      a.x = b.x = picture_.x - off;
      break;
    case Beside::right:
      a.x = b.x = right + off;
      break;
    }
    pen_.thread(from, a);
    pen_.thread(to, b);
    pen_.measure_beside(a, b, dimension.says, dimension.beside);
  }

  void draw(const Badge &badge) {
    Point middle = at(badge.at);
    const double off = badge_off + (badge.further ? badge_row : 0);
    middle.x += badge.beside == Beside::right ? off : badge.beside == Beside::left ? -off : 0;
    middle.y += badge.beside == Beside::below ? off : badge.beside == Beside::above ? -off : 0;
    pen_.badge(middle, badge.says);
  }

  LeafletPen pen_;
  const PlacedPicture &picture_;
  const Measured &measured_;
};

// Paper as it lies after some steps: what is on top at each place, edges of the layers below it.
class StageDrawer {
public:
  StageDrawer(LeafletPen pen, const PlacedPicture &picture, const FoldStage &stage)
      : pen_(pen), picture_(picture), stage_(stage) {}

  void draw() {
    for (const DrawnPanel &panel : stage_.drawn.panels)
      draw(panel);
    for (const DrawnLine &line : stage_.drawn.lines)
      draw(line);
    if (stage_.moving)
      arrow(*stage_.moving);
  }

private:
  Point at(double column, double row) const {
    return {picture_.x + column * points(stage_.cell.width) * picture_.scale,
            picture_.y + row * points(stage_.cell.height) * picture_.scale};
  }

  void draw(const DrawnPanel &panel) {
    const Point a = at(panel.left, panel.top);
    const Point b = at(panel.left + panel.width, panel.top + panel.height);
    for (int layer = std::min(panel.layers, static_cast<int>(most_layers)) - 1; layer >= 0;
         --layer) {
      const double off = layer * layer_step;
      pen_.sheet({a.x + off, a.y + off}, {b.x + off, b.y + off}, !panel.front);
    }
    pen_.page_number({(a.x + b.x) / 2, (a.y + b.y) / 2}, panel.label, panel.turn,
                     needs_foot(panel.label));
    // Where there is room; else the edges below it tell.
    if (const std::string layers = std::to_string(panel.layers) + " layers";
        panel.layers > 1 && letter * static_cast<double>(layers.size()) + 6 < b.x - a.x &&
        b.y - a.y > 40)
      pen_.note({a.x + 5, b.y - 13}, layers);
  }

  void draw(const DrawnLine &line) {
    const Point a = at(line.x1, line.y1), b = at(line.x2, line.y2);
    if (line.kind == DrawnLine::Kind::slit)
      pen_.line(a, b, 2);
    else
      pen_.dashed(a, b, 0.9, 5, line.kind == DrawnLine::Kind::valley ? 3 : 1.5);
  }

  // From the middle of what moves over the line that it moves about.
  void arrow(Part moving) {
    const double w = stage_.drawn.width, h = stage_.drawn.height;
    const double near = 0.16, far = 0.84;
    switch (moving) {
    case Part::left:
      return pen_.arrow(at(near * w, 0.3 * h), at(far * w, 0.3 * h));
    case Part::right:
      return pen_.arrow(at(far * w, 0.3 * h), at(near * w, 0.3 * h));
    case Part::top:
      return pen_.arrow(at(0.3 * w, near * h), at(0.3 * w, far * h));
    case Part::bottom:
      return pen_.arrow(at(0.3 * w, far * h), at(0.3 * w, near * h));
    }
  }

  LeafletPen pen_;
  const PlacedPicture &picture_;
  const FoldStage &stage_;
};

// So much of each sheet of a heap is seen beyond the one on it.
double heap_step(const Heap &heap) {
  constexpr double for_a_name = 13, narrow = 5;
  constexpr std::size_t most_names = 9;
  return heap.names.size() > most_names ? narrow : for_a_name;
}

void draw_heap(const LeafletPen &pen, const PlacedPicture &picture, const Heap &heap) {
  const double wide = points(heap.sheet.width) * picture.scale;
  const double high = points(heap.sheet.height) * picture.scale;
  const double step = heap_step(heap);
  for (std::size_t i = 0; i < heap.names.size(); ++i) {
    const double off = step * static_cast<double>(i);
    const Point corner{picture.x + off, picture.y + off};
    pen.sheet(corner, {corner.x + wide, corner.y + high}, false);
    if (step > 6 || i == 0 || i + 1 == heap.names.size())
      pen.note({corner.x + 4, corner.y + 0.5}, heap.names[i]);
  }
}

// A short upright line has its measure beside it, not along it.
double room_beside(const Dimension &dimension, double scale) {
  const double along = letter * static_cast<double>(dimension.says.size());
  const bool upright = dimension.beside == Beside::left || dimension.beside == Beside::right;
  const double length = std::abs(points(dimension.end.y - dimension.start.y)) * scale;
  return upright && length < along ? along + beside_room : beside_room;
}

// A level line too short for its measure has it past its end.
double past_the_end(const Measured &measured, const Dimension &dimension, double scale) {
  const bool level = dimension.beside == Beside::above || dimension.beside == Beside::below;
  const double along = letter * static_cast<double>(dimension.says.size());
  const double length = std::abs(points(dimension.end.x - dimension.start.x)) * scale;
  if (!level || length >= along)
    return 0;
  const Length end = std::max(dimension.start.x, dimension.end.x);
  return points(end - measured.size.width) * scale + along + 6;
}

double *side_of(PictureRoom &room, Beside beside) {
  return beside == Beside::above   ? &room.above
         : beside == Beside::below ? &room.below
         : beside == Beside::left  ? &room.left
         : beside == Beside::right ? &room.right
                                   : nullptr;
}

PictureRoom room_of(const Measured &measured, double scale) {
  PictureRoom room{points(measured.size.width) * scale, points(measured.size.height) * scale};
  for (const Badge &badge : measured.badges)
    if (double *side = side_of(room, badge.beside))
      *side = std::max(*side, 2 * badge_off + (badge.further ? badge_row : 0));
  for (const Dimension &dimension : measured.dimensions) {
    room.right = std::max(room.right, past_the_end(measured, dimension, scale));
    if (double *side = side_of(room, dimension.beside))
      *side = std::max(*side, room_beside(dimension, scale));
  }
  return room;
}

PictureRoom room_of(const FoldStage &stage, double scale) {
  const double edges = layer_step * most_layers;
  PictureRoom room{points(stage.cell.width) * scale * stage.drawn.width,
                   points(stage.cell.height) * scale * stage.drawn.height};
  room.right = room.below = edges;
  return room;
}

PictureRoom room_of(const Heap &heap, double scale) {
  const double steps =
      heap_step(heap) * (heap.names.empty() ? 0 : static_cast<double>(heap.names.size() - 1));
  PictureRoom room{points(heap.sheet.width) * scale, points(heap.sheet.height) * scale};
  room.right = room.below = steps;
  return room;
}

} // namespace

PictureRoom room_of(const Shown &shown, double scale) {
  return std::visit([&](const auto &what) { return room_of(what, scale); }, shown.what);
}

void draw_picture(cairo_t *cairo, const PlacedPicture &picture, LeafletType &type, Fonts &fonts) {
  const LeafletPen pen(cairo, type, fonts);
  if (const auto *measured = std::get_if<Measured>(&picture.shown->what))
    MeasuredDrawer(pen, picture, *measured).draw();
  else if (const auto *heap = std::get_if<Heap>(&picture.shown->what))
    draw_heap(pen, picture, *heap);
  else
    StageDrawer(pen, picture, std::get<FoldStage>(picture.shown->what)).draw();
}

} // namespace bodkin::press
