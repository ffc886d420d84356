#include "press/leaflet.hpp"

#include "press/black_pages.hpp"
#include "press/contents.hpp"
#include "press/grounds.hpp"
#include "press/ink.hpp"
#include "press/leaflet_figures.hpp"
#include "press/writing.hpp"

namespace bodkin::press {
namespace {

void draw_rules(cairo_t *cairo, const LeafletPage &page) {
  set_paint(cairo, Colour{});
  for (const LeafletRule &rule : page.rules) {
    cairo_set_line_width(cairo, rule.width);
    cairo_move_to(cairo, rule.x1, rule.y1);
    cairo_line_to(cairo, rule.x2, rule.y2);
    cairo_stroke(cairo);
  }
  cairo_set_line_width(cairo, 0.8);
  for (const TickBox &box : page.boxes) {
    cairo_rectangle(cairo, box.x, box.y, box.size, box.size);
    cairo_stroke(cairo);
  }
}

// What can be said to be lacking a glyph, so that other faces are tried.
struct Collecting {
  std::vector<std::string> words{};
  void operator()(const paperwork::Headline &head) {
    words.insert(words.end(), {head.text, head.count});
  }
  void operator()(const paperwork::Passage &passage) {
    words.insert(words.end(), {passage.lead, passage.text});
  }
  void operator()(const paperwork::Care &care) { words.push_back(care.text); }
  void operator()(const paperwork::Table &table) {
    for (const auto &row : table.rows)
      words.insert(words.end(), row.begin(), row.end());
  }
  void operator()(const paperwork::Pictures &pictures) {
    for (const paperwork::Shown &shown : pictures.shown)
      words.push_back(shown.caption);
  }
  void operator()(const paperwork::Ticks &) {}
  void operator()(const paperwork::Checklist &list) {
    words.insert(words.end(), list.items.begin(), list.items.end());
  }
  void operator()(const paperwork::NewPage &) {}
};

class LeafletMaker {
public:
  LeafletMaker(const paperwork::Leaflet &leaflet, LeafletType &type)
      : width_(leaflet.paper.width.in_points()), height_(leaflet.paper.height.in_points()),
        drawn_(width_, height_) {
    type.suit(words_of(leaflet));
    pages_ = lay_out(leaflet, type);
    draw_lines(type);
  }

  void write(QPDF &pdf, Grounds *grounds, const Imprint &imprint, std::string_view kind,
             const Sink &sink) {
    std::vector<QPDFObjectHandle> made;
    QPDFObjectHandle box =
        QPDFObjectHandle::newArray(QPDFObjectHandle::Rectangle(0, 0, width_, height_));
    for (std::size_t i = 0; i < pages_.size(); ++i) {
      Contents contents;
      if (grounds != nullptr)
        for (const PlacedPicture &picture : pages_[i].pictures)
          grounds->draw(contents, picture, height_);
      contents.draw(pdf.copyForeignObject(forms_[i]));
      made.push_back(contents.page(pdf, box));
    }
    write_pdf(pdf, made, imprint, kind, sink);
  }

private:
  void draw_lines(LeafletType &type) {
    Fonts fonts;
    for (const LeafletPage &page : pages_) {
      cairo_t *cairo = drawn_.begin();
      for (const PlacedPicture &picture : page.pictures)
        draw_picture(cairo, picture, type, fonts);
      draw_rules(cairo, page);
      for (const Item &item : page.words)
        press::draw(cairo, item, fonts);
      drawn_.end();
    }
    forms_ = drawn_.finish();
  }

  double width_, height_;
  std::vector<LeafletPage> pages_;
  BlackPages drawn_; // read until the last write
  std::vector<QPDFObjectHandle> forms_;
};

} // namespace

std::vector<std::string> words_of(const paperwork::Leaflet &leaflet) {
  Collecting collecting{{leaflet.title, leaflet.kind, leaflet.aside}};
  for (const paperwork::LeafletBlock &block : leaflet.blocks)
    std::visit(collecting, block);
  return std::move(collecting.words);
}

void write_leaflet(const paperwork::Leaflet &leaflet, LeafletType &type, const Imprint &imprint,
                   std::string_view kind, const Sink &sink) {
  LeafletMaker maker(leaflet, type);
  QPDF pdf;
  pdf.emptyPDF();
  maker.write(pdf, nullptr, imprint, kind, sink);
}

void write_leaflet(const paperwork::Leaflet &leaflet, LeafletType &type, Plates &plates,
                   const Imprint &imprint, std::string_view kind, const Sink &sink) {
  LeafletMaker maker(leaflet, type);
  Grounds grounds(plates);
  maker.write(plates.pdf(), &grounds, imprint, kind, sink);
}

} // namespace bodkin::press
