#include "press/ink.hpp"
#include "press/overlay.hpp"
#include "press/placing.hpp"
#include "press/plate_maker.hpp"

namespace bodkin::press {
namespace {

// Masks and filters of drawings become samples, 72 an inch of the surface: eight times larger, they
// print at 576.
constexpr double enlarged = 8;

bool is_picture(const Item &item) { return std::holds_alternative<SetPicture>(item.what); }

void clip_to(cairo_t *cairo, const Polygon &corners) {
  for (const Point &corner : corners)
    cairo_line_to(cairo, corner.x, corner.y);
  cairo_close_path(cairo);
  cairo_clip(cairo);
}

// The unit square of a picture, y down, to its page.
Transform unit_to_page(const Box &whole, const Transform &to_page) {
  return to_page * Transform::moved(whole.x, whole.y) *
         Transform::scaled(whole.width.in_points(), whole.height.in_points());
}

void draw_drawing(cairo_t *cairo, const art::SvgDrawing &svg, const Polygon &clip,
                  const Transform &unit) {
  cairo_save(cairo);
  clip_to(cairo, clip);
  const cairo_matrix_t matrix{unit.xx, unit.yx, unit.xy, unit.yy, unit.x0, unit.y0};
  cairo_transform(cairo, &matrix);
  svg.draw(cairo);
  cairo_restore(cairo);
}

} // namespace

cairo_t *PageParter::open(bool shifted) {
  if (open_.cairo && open_.shifted != shifted)
    close();
  if (!open_.cairo) {
    const Size size = size_;
    const double beside = shifted ? 0 : past_fold.in_points();
    open_ = {vectors_.begin(size.width.in_points() + 2 * beside, size.height.in_points()), shifted};
    cairo_translate(open_.cairo, beside, 0);
  }
  return open_.cairo;
}

void PageParter::close() {
  if (!open_.cairo)
    return;
  const double beside = open_.shifted ? 0 : past_fold.in_points();
  planned_.push_back({DrawnLayer{vectors_.end(), 1, grey_, beside}, open_.shifted});
  open_ = {};
}

const art::SvgDrawing *PageParter::svg(const std::string &path) {
  auto found = svgs_.find(path);
  if (found == svgs_.end()) {
    auto opened = art::open_svg(job_.gallery.bytes(path));
    found = svgs_
                .emplace(path,
                         opened ? std::optional<art::SvgDrawing>(std::move(*opened)) : std::nullopt)
                .first;
  }
  return found->second ? &*found->second : nullptr;
}

void PageParter::vector_item(const Item &item) {
  const auto *words = std::get_if<SetWords>(&item.what);
  if (words && !words->of_copies.empty())
    return words_of_copies(item, words->of_copies);
  draw(open(!item.crosses_fold), item, fonts_);
}

// A layer for each copy; all the rest of the page is the same for all.
void PageParter::words_of_copies(const Item &item, const std::vector<LinesOfCopy> &copies) {
  Item one = item;
  for (const LinesOfCopy &of : copies) {
    close();
    one.what = SetWords{of.lines};
    draw(open(!item.crosses_fold), one, fonts_);
    close();
    planned_.back().copy = of.copy;
  }
}

bool PageParter::draw_inline(const Item &item, const SetPicture &set, const Picture &picture) {
  const bool own_grey = picture.tone->kind == ToneKind::grey && !grey_;
  if (own_grey || picture.tone->kind == ToneKind::line)
    return false;
  const art::SvgDrawing *drawing = svg(*picture.path);
  if (!drawing)
    return true;
  draw_drawing(open(!item.crosses_fold), *drawing, polygon_of(set.window, item.to_page),
               unit_to_page(set.whole, item.to_page));
  return true;
}

void PageParter::drawing_alone(const Item &item, const SetPicture &set, const Picture &picture) {
  const art::SvgDrawing *drawing = svg(*picture.path);
  if (!drawing)
    return;
  close();
  const Size size = size_;
  cairo_t *cairo =
      vectors_.begin(size.width.in_points() * enlarged, size.height.in_points() * enlarged);
  const Transform larger = Transform::scaled(enlarged, enlarged);
  draw_drawing(cairo, *drawing, polygon_of(set.window, larger * item.to_page),
               unit_to_page(set.whole, larger * item.to_page));
  const bool grey = grey_ || picture.tone->kind == ToneKind::grey;
  planned_.push_back({DrawnLayer{vectors_.end(), enlarged, grey}, !item.crosses_fold});
}

void PageParter::picture_item(const Item &item) {
  const auto &set = std::get<SetPicture>(item.what);
  const auto &picture = std::get<Picture>(job_.edition[item.element].what);
  const auto &facts = job_.gallery.facts(picture);
  if (!facts || set.window.width <= Length{} || set.window.height <= Length{})
    return;
  if (facts->format == art::Format::svg && picture.tone->kind != ToneKind::line) {
    if (facts->drawing->rasterised_parts || !draw_inline(item, set, picture))
      drawing_alone(item, set, picture);
    return;
  }
  close();
  const bool foreign = facts->format == art::Format::pdf && picture.tone->kind != ToneKind::line;
  planned_.push_back(
      {PictureLayer{item.element, set.whole, item.to_page, polygon_of(set.window, item.to_page),
                    grey_ || picture.tone->kind == ToneKind::grey, foreign},
       !item.crosses_fold});
}

std::vector<PlannedLayer> PageParter::part(int page) {
  grey_ = job_.mode_of(page) == Mode::black;
  size_ = job_.size_of(page);
  planned_.clear();
  for (const Item &item : job_.drawing(page).items) {
    if (only_on_proofs(item))
      continue;
    if (is_picture(item))
      picture_item(item);
    else
      vector_item(item);
  }
  close();
  return std::move(planned_);
}

} // namespace bodkin::press
