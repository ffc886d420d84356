#include "press/dummy.hpp"

#include "press/contents.hpp"
#include "press/dummy_reading.hpp"
#include "press/dummy_scales.hpp"
#include "press/dummy_steps.hpp"
#include "press/dummy_type.hpp"
#include "press/grey_form.hpp"
#include "press/ink.hpp"
#include "press/letters.hpp"
#include "press/placing.hpp"
#include "press/vectors.hpp"
#include "press/writing.hpp"
#include "sheet/figure.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::press {
namespace {

constexpr Transform upright{};

const Sheet &sheet_of(const DummyJob &job, const PassPage &page) {
  return job.imposition.sheets[static_cast<std::size_t>(page.sheet)];
}
const Side &side_of(const DummyJob &job, const PassPage &page) {
  return sheet_of(job, page).sides[page.side == SideName::front ? 0 : 1];
}

Size page_size(const Place &place) {
  return place.turn % 180 == 0 ? place.box.size() : place.box.size().turned();
}

// A page's frame on the side as seen, y down in both.
Transform to_side(const Place &place, const Size &sheet) {
  const Transform down{
      .xx = 1, .yx = 0, .xy = 0, .yy = -1, .x0 = 0, .y0 = sheet.height.in_points()};
  return down * page_to_sheet(place, page_size(place), sheet);
}

// Room for steps under the number, clear of the rulers and of the scales in the sheet's middle.
struct Room {
  double x = 0, y = 0, width = 0, height = 0;
};
Room room_on(const Place &place, const Size &sheet) {
  constexpr double rulers = 54, scales = 60;
  const Size page = page_size(place);
  const double w = page.width.in_points(), h = page.height.in_points();
  const Length x = sheet.width / 2, y = sheet.height / 2;
  const bool in_the_middle =
      place.box.x < x && x < place.box.right() && place.box.y < y && y < place.box.foot();
  const double top = in_the_middle ? h / 2 + scales : 0.48 * h;
  return {rulers, top, w - 2 * rulers, h - top - rulers};
}

void draw_number(Strokes &drawn, const Sheet &sheet, SideName side, const Place &place) {
  const Size size = page_size(place);
  const double w = size.width.in_points(), h = size.height.in_points();
  const std::string number = std::to_string(place.page - sheet.pages_before);
  double high = 0.14 * h;
  if (const double wide = letters_width(number, high); wide > 0.5 * w)
    high *= 0.5 * w / wide;
  drawn.grey(0);
  const double wide = letters_width(number, high), foot = 0.28 * h + high / 2;
  drawn.letters(number, (w - wide) / 2, foot, high);
  if (needs_foot(number)) {
    drawn.move_to((w - wide) / 2, foot + high / 6);
    drawn.line_to((w + wide) / 2, foot + high / 6);
    drawn.stroke();
  }
  constexpr double small = 5;
  const std::string name =
      fmt::format("sheet {} {}{}", sheet.number, side == SideName::front ? "front" : "back",
                  sheet.piece.empty() ? "" : " of " + sheet.piece);
  const double fits = std::min(small, small * 0.8 * w / letters_width(name, small));
  drawn.letters(name, (w - letters_width(name, fits)) / 2, foot + high / 6 + 3 * fits, fits);
}

void draw_page_edge(Strokes &drawn, const Size &page) {
  drawn.grey(0.6);
  drawn.line_width(0.3);
  drawn.dashes({3, 3});
  drawn.rectangle(0, 0, page.width.in_points(), page.height.in_points());
  drawn.stroke();
  drawn.solid();
}

// Draws words by Cairo ahead of everything, since its PDF is what the dummy grows out of.
class DummyMaker {
public:
  DummyMaker(const DummyJob &job, const Imprint &imprint)
      : job_(job), imprint_(imprint), type_(job.edition, job.faces) {}

  void write(const Sink &sink) {
    set_words();
    std::vector<QPDFObjectHandle> pages;
    for (const PassPage &side : job_.sides)
      pages.push_back(side_page(side));
    while (next_step_ < steps() && !job_.sides.empty())
      pages.push_back(page_of_steps());
    for (std::size_t i = 0; i < reading_forms_; ++i)
      pages.push_back(reading_page(i));
    write_pdf(pdf_, pages, imprint_, "dummy", sink);
  }

private:
  // The steps drawn by strokes, then the words of type.
  std::size_t steps() const { return step_blocks().size() + (type_.usable() ? 1 : 0); }

  Size reading_size() const {
    const Size size = job_.imposition.sheets.front().size;
    return size.width <= size.height ? size : size.turned();
  }

  void draw_words(Vectors &vectors, Fonts &fonts, const std::vector<Item> &items, Size size) {
    cairo_t *cairo = vectors.begin(size.width.in_points(), size.height.in_points());
    for (const Item &item : items)
      draw(cairo, item, fonts);
    vectors.end();
  }

  void set_words() {
    if (!type_.usable()) {
      pdf_.emptyPDF();
      return;
    }
    Vectors vectors;
    Fonts fonts;
    smallest_ = type_.smallest();
    draw_words(vectors, fonts, smallest_, type_room());
    const auto reading = type_.pages(dummy_reading(job_.edition, job_.imposition), reading_size());
    for (const std::vector<Item> &page : reading)
      draw_words(vectors, fonts, page, reading_size());
    reading_forms_ = reading.size();
    words_ = vectors.finish();
    pdf_.setSuppressWarnings(true);
    pdf_.processMemoryFile("words", words_.data(), words_.size());
    for (const QPDFObjectHandle &page :
         pdf_.getRoot().getKey("/Pages").getKey("/Kids").getArrayAsVector())
      forms_.push_back(black_form(page));
  }

  Size type_room() const {
    Size size;
    for (const Item &item : smallest_)
      for (const Line &line : std::get<SetWords>(item.what).lines) {
        size.width = std::max(size.width, line.right);
        size.height = std::max(size.height, item.place.y + line.foot);
      }
    return size;
  }

  QPDFObjectHandle box(const Size &size) {
    return QPDFObjectHandle::newArray(
        QPDFObjectHandle::Rectangle(0, 0, size.width.in_points(), size.height.in_points()));
  }

  // As many of the steps that are left as a room holds. `paper`: the room's frame in the side's PDF
  // space; words are placed by it, all else is drawn on `drawn` in the frame `on_drawing`.
  void lay_steps(Contents &contents, Strokes &drawn, const Room &room, const Transform &on_drawing,
                 const Transform &paper) {
    constexpr double apart = 11, narrowest = 96, widest = 260;
    if (room.width < narrowest)
      return;
    const double width = std::min(room.width, widest);
    const double x = room.x + (room.width - width) / 2;
    double y = room.y;
    for (; next_step_ < steps(); ++next_step_) {
      const bool words = next_step_ == step_blocks().size();
      const double scale = words ? std::min(1.0, width / type_room().width.in_points()) : 1;
      // Type is shown at its size or not at all.
      const double height =
          words ? type_room().height.in_points() : step_blocks()[next_step_].height;
      if (y + height > room.y + room.height || scale < 1)
        return;
      const Transform here{.xx = 1, .yx = 0, .xy = 0, .yy = 1, .x0 = x, .y0 = y};
      if (words) {
        contents.save();
        contents.matrix(paper * here *
                        Transform{.xx = 1, .yx = 0, .xy = 0, .yy = -1, .x0 = 0, .y0 = height});
        contents.draw(forms_.front());
        contents.restore();
      } else {
        drawn.save();
        drawn.map(on_drawing * here);
        step_blocks()[next_step_].draw(drawn, width);
        drawn.restore();
      }
      y += height + apart;
    }
  }

  QPDFObjectHandle side_page(const PassPage &page) {
    const Sheet &sheet = sheet_of(job_, page);
    const double w = sheet.size.width.in_points(), h = sheet.size.height.in_points();
    const Graduation lines = graduation(job_.edition.ruler);
    Contents contents;
    contents.save();
    if (page.turned)
      contents.matrix({.xx = -1, .yx = 0, .xy = 0, .yy = -1, .x0 = w, .y0 = h});
    Strokes drawn(h);
    for (const Place &place : side_of(job_, page).places) {
      const Size size = page_size(place);
      drawn.save();
      drawn.map(to_side(place, sheet.size));
      draw_page_edge(drawn, size);
      if (place.page > 0)
        draw_number(drawn, sheet, page.side, place);
      drawn.restore();
      if (page.sheet == 0)
        lay_steps(contents, drawn, room_on(place, sheet.size), to_side(place, sheet.size),
                  page_to_sheet(place, size, sheet.size));
    }
    draw_rulers(drawn, sheet.size, lines);
    draw_crossed_scales(drawn, sheet, page.side, lines);
    contents.draw(drawn);
    contents.restore();
    return contents.page(pdf_, box(sheet.size));
  }

  // Pages too small for the steps leave them to a page of their own.
  QPDFObjectHandle page_of_steps() {
    const Size size = reading_size();
    const double w = size.width.in_points(), h = size.height.in_points();
    const Transform down{.xx = 1, .yx = 0, .xy = 0, .yy = -1, .x0 = 0, .y0 = h};
    Contents contents;
    Strokes drawn(h);
    const std::size_t before = next_step_;
    lay_steps(contents, drawn, {36, 36, w - 72, h - 72}, upright, down);
    if (next_step_ == before)
      next_step_ = steps(); // not even a whole page has room
    contents.draw(drawn);
    return contents.page(pdf_, box(size));
  }

  QPDFObjectHandle reading_page(std::size_t i) {
    Contents contents;
    contents.save();
    contents.draw(forms_[i + 1]);
    contents.restore();
    return contents.page(pdf_, box(reading_size()));
  }

  const DummyJob &job_;
  const Imprint &imprint_;
  DummyType type_;
  std::vector<Item> smallest_;
  std::string words_; // the PDF that the forms are taken from: read until the last write
  QPDF pdf_;
  std::vector<QPDFObjectHandle> forms_; // the smallest type, then the pages of reading
  std::size_t reading_forms_ = 0, next_step_ = 0;
};

} // namespace

std::vector<PassPage> dummy_sides(const Edition &edition, const Imposition &imposition,
                                  const Sources &sources) {
  const std::vector<SheetModes> modes(imposition.sheets.size(), {Mode::black, Mode::black});
  Problems none; // told where the edition's own pages are laid
  std::vector<PassPage> sides;
  for (std::size_t i = 0; i < imposition.sheets.size(); ++i)
    for (const SideName side : {SideName::front, SideName::back})
      sides.push_back({static_cast<int>(i), side, true, false});
  for (const Pass &pass : passes_of(edition, imposition, modes, sources, none))
    for (const PassPage &page : pass.pages)
      if (page.turned)
        sides[static_cast<std::size_t>(page.sheet) * 2 + (page.side == SideName::front ? 0 : 1)]
            .turned = true;
  return sides;
}

void write_dummy(const DummyJob &job, const Imprint &imprint, const Sink &sink) {
  DummyMaker(job, imprint).write(sink);
}

} // namespace bodkin::press
