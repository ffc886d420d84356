#include "press/ink.hpp"

#include "page/qr.hpp"

#include <cmath>

namespace bodkin::press {
namespace {

struct Saved {
  explicit Saved(cairo_t *context) : cairo(context) { cairo_save(cairo); }
  ~Saved() { cairo_restore(cairo); }
  Saved(const Saved &) = delete;
  Saved &operator=(const Saved &) = delete;
  cairo_t *cairo;
};

void apply(cairo_t *cairo, const Transform &map) {
  const cairo_matrix_t matrix{map.xx, map.yx, map.xy, map.yy, map.x0, map.y0};
  cairo_transform(cairo, &matrix);
}

void rectangle(cairo_t *cairo, const Box &box, double inset = 0) {
  cairo_rectangle(cairo, box.x.in_points() + inset, box.y.in_points() + inset,
                  box.width.in_points() - 2 * inset, box.height.in_points() - 2 * inset);
}

// Runs of one face, size, paint and direction go to Cairo together, whole columns at a time: what
// it does for each call costs more than a line's glyphs.
class RunDrawer {
public:
  RunDrawer(cairo_t *cairo, Fonts &fonts) : cairo_(cairo), fonts_(fonts), tray_(fonts.tray()) {}

  void take(const GlyphRun &run) {
    if (run.glyphs.empty() || !run.cut)
      return;
    if (first_ && !alike(*first_, run))
      draw();
    if (!first_) {
      first_ = &run;
      tray_.clear();
    }
    tray_.text += run.text;
    for (const Glyph &glyph : run.glyphs)
      tray_.glyphs.push_back({glyph.id, glyph.x, glyph.y});
    for (const Cluster &cluster : run.clusters)
      tray_.clusters.push_back({cluster.bytes, cluster.glyphs});
    if (run.backward) // its clusters run against its glyphs, and the next run's would too
      draw();
  }

  void draw() {
    if (!first_)
      return;
    set_paint(cairo_, first_->paint.colour);
    cairo_set_scaled_font(cairo_, fonts_.at(*first_->cut, first_->size));
    cairo_show_text_glyphs(cairo_, tray_.text.data(), static_cast<int>(tray_.text.size()),
                           tray_.glyphs.data(), static_cast<int>(tray_.glyphs.size()),
                           tray_.clusters.data(), static_cast<int>(tray_.clusters.size()),
                           first_->backward ? CAIRO_TEXT_CLUSTER_FLAG_BACKWARD
                                            : static_cast<cairo_text_cluster_flags_t>(0));
    first_ = nullptr;
  }

private:
  static bool alike(const GlyphRun &a, const GlyphRun &b) {
    return a.cut == b.cut && a.size == b.size && a.paint == b.paint && a.backward == b.backward;
  }

  cairo_t *cairo_;
  Fonts &fonts_;
  Fonts::Tray &tray_;
  const GlyphRun *first_ = nullptr;
};

void draw_what(cairo_t *cairo, const SetWords &words, const Item &item, Fonts &fonts) {
  cairo_translate(cairo, item.place.x.in_points(), item.place.y.in_points());
  RunDrawer drawer(cairo, fonts);
  for (const Line &line : words.lines)
    for (const GlyphRun &run : line.runs)
      drawer.take(run);
  drawer.draw();
}

void draw_what(cairo_t *cairo, const SetFill &fill, const Item &item, Fonts &) {
  set_paint(cairo, tinted(fill.paint, fill.share));
  rectangle(cairo, item.place);
  cairo_fill(cairo);
}

void draw_what(cairo_t *cairo, const SetOutline &outline, const Item &item, Fonts &) {
  set_paint(cairo, outline.paint.colour);
  cairo_set_line_width(cairo, outline.width.in_points());
  rectangle(cairo, item.place, outline.width.in_points() / 2);
  cairo_stroke(cairo);
}

void draw_what(cairo_t *cairo, const SetRule &rule, const Item &, Fonts &) {
  set_paint(cairo, rule.paint.colour);
  cairo_set_line_width(cairo, rule.width.in_points());
  cairo_move_to(cairo, rule.start.x.in_points(), rule.start.y.in_points());
  cairo_line_to(cairo, rule.end.x.in_points(), rule.end.y.in_points());
  cairo_stroke(cairo);
}

// Dark modules of a row that touch are one box, so that no hairline of paper shows between them.
void draw_what(cairo_t *cairo, const SetQr &qr, const Item &item, Fonts &) {
  const int across = qr.modules + 2 * qr_quiet_modules;
  const double module = item.place.width.in_points() / across;
  set_paint(cairo, qr.paint.colour);
  const auto dark = [&](int row, int column) {
    return qr.dark[static_cast<std::size_t>(row) * static_cast<std::size_t>(qr.modules) +
                   static_cast<std::size_t>(column)];
  };
  for (int row = 0; row < qr.modules; ++row)
    for (int column = 0; column < qr.modules; ++column) {
      const int first = column;
      while (column < qr.modules && dark(row, column))
        ++column;
      if (column > first)
        cairo_rectangle(cairo, item.place.x.in_points() + (first + qr_quiet_modules) * module,
                        item.place.y.in_points() + (row + qr_quiet_modules) * module,
                        (column - first) * module, module);
    }
  cairo_fill(cairo);
}

template <typename Elsewhere>
void draw_what(cairo_t *, const Elsewhere &, const Item &, Fonts &) {}

} // namespace

Colour tinted(Paint paint, Share share) {
  const auto mixed = [&](std::uint8_t channel) {
    const double kept = (255 - channel) * share.value();
    return static_cast<std::uint8_t>(std::lround(255 - kept));
  };
  return {mixed(paint.colour.red), mixed(paint.colour.green), mixed(paint.colour.blue)};
}

void set_paint(cairo_t *cairo, Colour colour) {
  cairo_set_source_rgb(cairo, colour.red / 255.0, colour.green / 255.0, colour.blue / 255.0);
}

void draw(cairo_t *cairo, const Item &item, Fonts &fonts) {
  const Saved saved(cairo);
  apply(cairo, item.to_page);
  std::visit([&](const auto &what) { draw_what(cairo, what, item, fonts); }, item.what);
}

} // namespace bodkin::press
