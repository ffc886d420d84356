#include "press/figures.hpp"

#include "press/letters.hpp"
#include "press/writing.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::press {
namespace {

constexpr double apart = 30, edge = 36;
constexpr double small_letters = 4.6, title_letters = 7, number_letters = 8;
constexpr Colour text_grey{0x55, 0x55, 0x55};

Transform moved(double x, double y) {
  return {.xx = 1, .yx = 0, .xy = 0, .yy = 1, .x0 = x, .y0 = y};
}

void ink(Strokes &drawn, Colour colour) {
  drawn.colour(colour.red / 255.0, colour.green / 255.0, colour.blue / 255.0);
}

struct Pen {
  Colour line;
  double width;
};
Pen pen_of(BoxLook look) {
  switch (look) {
  case BoxLook::page:
    return {{0xbb, 0xbb, 0xbb}, 0.5};
  case BoxLook::tab:
    return {{0x99, 0x99, 0x99}, 0.5};
  case BoxLook::fault:
    return {{0xb3, 0x26, 0x1e}, 1.2};
  default:
    return {text_grey, 0.8};
  }
}
Colour paper_of(BoxLook look) {
  switch (look) {
  case BoxLook::back:
    return {0xee, 0xee, 0xee};
  case BoxLook::tab:
    return {0xdd, 0xdd, 0xdd};
  case BoxLook::fault:
    return {0xfb, 0xdc, 0xd6};
  default:
    return {0xff, 0xff, 0xff};
  }
}

void draw(Strokes &drawn, const FigureBox &box) {
  const Pen pen = pen_of(box.look);
  ink(drawn, pen.line);
  drawn.line_width(pen.width);
  drawn.fill_colour(paper_of(box.look));
  drawn.rectangle(box.x, box.y, box.width, box.height);
  if (box.look == BoxLook::page)
    drawn.stroke();
  else
    drawn.fill_and_stroke();
}

void draw(Strokes &drawn, const FigureLine &line) {
  constexpr Colour fold{0x26, 0x55, 0x8b}, knife{0xb3, 0x26, 0x1e};
  const bool folded = line.look == LineLook::valley || line.look == LineLook::mountain;
  ink(drawn, folded ? fold : knife);
  drawn.line_width(line.look == LineLook::slit ? 1.6 : line.look == LineLook::cut ? 0.8 : 1);
  if (line.look == LineLook::valley)
    drawn.dashes({5, 3});
  if (line.look == LineLook::mountain)
    drawn.dashes({6, 2, 1, 2});
  drawn.move_to(line.x1, line.y1);
  drawn.line_to(line.x2, line.y2);
  drawn.stroke();
  drawn.solid();
}

void draw(Strokes &drawn, const FigureNumber &number) {
  const double wide = letters_width(number.text, number_letters);
  drawn.save();
  drawn.grey(0.1);
  drawn.map(Transform::turned(Angle{number.turn * 1000}, {number.x, number.y}));
  drawn.letters(number.text, number.x - wide / 2, number.y + number_letters / 2, number_letters);
  if (needs_foot(number.text)) {
    const double foot = number.y + number_letters / 2 + 2.5;
    drawn.move_to(number.x - wide / 2, foot);
    drawn.line_to(number.x + wide / 2, foot);
    drawn.stroke();
  }
  drawn.restore();
}

void draw(Strokes &drawn, const FigureWords &words) {
  const double room = figure_width - figure_margin - words.x;
  const bool small = words.look == WordLook::small || words.look == WordLook::over_lines;
  const double high = small ? small_letters : title_letters;
  const double wide = letters_width(words.text, high);
  drawn.save();
  if (words.look == WordLook::over_lines) {
    constexpr double rim = 2;
    drawn.fill_colour({0xff, 0xff, 0xff});
    drawn.rectangle(words.x - rim, words.y - high - rim, wide + 2 * rim, high + 2 * rim);
    drawn.fill();
  }
  ink(drawn, words.look == WordLook::trouble ? Colour{0xb3, 0x26, 0x1e} : Colour{0x22, 0x22, 0x22});
  drawn.letters(words.text, words.x, words.y, wide > room ? high * room / wide : high);
  drawn.restore();
}

void set_dashes(Strokes &drawn, CurveLook look) {
  if (look == CurveLook::dashed)
    drawn.dashes({7, 3});
  if (look == CurveLook::dotted)
    drawn.dashes({1.5, 2.5});
  if (look == CurveLook::dash_dotted)
    drawn.dashes({9, 3, 1.5, 3});
}

void draw(Strokes &drawn, const FigureCurve &curve) {
  if (curve.points.empty())
    return;
  drawn.grey(0);
  drawn.line_width(curve.look == CurveLook::hair ? 0.5 : 1.4);
  set_dashes(drawn, curve.look);
  drawn.move_to(curve.points.front().x, curve.points.front().y);
  for (const FigurePoint &point : curve.points)
    drawn.line_to(point.x, point.y);
  drawn.stroke();
  drawn.solid();
}

void draw(Strokes &drawn, const Figure &figure) {
  for (const FigureItem &item : figure.items)
    std::visit([&](const auto &thing) { draw(drawn, thing); }, item);
}

class FigurePages {
public:
  FigurePages(const Size &paper, const Imprint &imprint)
      : width_(paper.width.in_points()), height_(paper.height.in_points()), imprint_(imprint),
        drawn_(height_) {
    pdf_.emptyPDF();
  }

  void add(const Figure &figure) {
    const double fits = std::min((width_ - 2 * edge) / (figure_width - 2 * figure_margin),
                                 (height_ - 3 * edge) / figure.height);
    const double high = figure.height * fits;
    if (y_ > edge && y_ + high > height_ - 2 * edge)
      end_page();
    drawn_.save();
    drawn_.map(moved(edge - figure_margin * fits, y_) *
               Transform{.xx = fits, .yx = 0, .xy = 0, .yy = fits, .x0 = 0, .y0 = 0});
    draw(drawn_, figure);
    drawn_.restore();
    y_ += high + apart;
  }

  void write(const Sink &sink) {
    if (y_ > edge || pages_.empty())
      end_page();
    write_pdf(pdf_, pages_, imprint_, "figures", sink);
  }

private:
  void end_page() {
    drawn_.grey(0.3);
    const std::string number = fmt::format("{}", pages_.size() + 1);
    drawn_.letters(number, width_ - edge - letters_width(number, small_letters), height_ - edge,
                   small_letters);
    Contents contents;
    contents.draw(drawn_);
    pages_.push_back(contents.page(
        pdf_, QPDFObjectHandle::newArray(QPDFObjectHandle::Rectangle(0, 0, width_, height_))));
    drawn_ = Strokes(height_);
    y_ = edge;
  }

  double width_, height_;
  const Imprint &imprint_;
  QPDF pdf_;
  std::vector<QPDFObjectHandle> pages_;
  Strokes drawn_;
  double y_ = edge; // where the next figure begins
};

} // namespace

void write_figures(std::span<const Figure> figures, const Size &paper, const Imprint &imprint,
                   const Sink &sink) {
  FigurePages pages(paper, imprint);
  for (const Figure &figure : figures)
    pages.add(figure);
  pages.write(sink);
}

} // namespace bodkin::press
