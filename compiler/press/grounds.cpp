#include "press/grounds.hpp"

#include "press/grey_form.hpp"

namespace bodkin::press {
namespace {

// Of the things at their full size; a picture of a sheet is a third as wide.
constexpr double coarse_dpi = 72;

Size size_of(const PrintJob &job, const paperwork::Measured &measured) {
  if (const auto *side = std::get_if<paperwork::SideGround>(&measured.ground))
    return job.imposition.sheets[static_cast<std::size_t>(side->sheet)].size;
  const auto *page = std::get_if<paperwork::PageGround>(&measured.ground);
  return page != nullptr && !page->seen ? job.size_of(page->page) : measured.size;
}

} // namespace

Grounds::Grounds(Plates &plates)
    : plates_(plates), images_(plates.pdf(), plates.job().gallery, coarse_dpi) {}

std::optional<Layer> Grounds::grey(const Layer &layer, bool coloured) {
  if (layer.picture != ElementId::none) {
    const auto &picture = std::get<Picture>(plates_.job().edition[layer.picture].what);
    const auto image = images_.place(picture, true, layer.seen);
    if (!image)
      return std::nullopt;
    Layer made = layer;
    made.xobject = image->xobject;
    made.to_page = layer.unit * image->to_picture;
    return made;
  }
  if (coloured && !grey_form(layer.xobject, Greying::all))
    return std::nullopt;
  return layer;
}

const std::vector<Layer> &Grounds::layers(int page) {
  const auto found = made_.find(page);
  if (found != made_.end())
    return found->second;
  std::vector<Layer> &made = made_[page];
  const bool coloured = plates_.job().mode_of(page) != Mode::black;
  for (const Layer &layer : plates_.page(page))
    if (auto turned = grey(layer, coloured))
      made.push_back(std::move(*turned));
  return made;
}

void Grounds::paper(Contents &contents, const Sheet &sheet, const Size &size) const {
  const double height = size.height.in_points();
  Strokes drawn(height);
  const Edition &edition = plates_.job().edition;
  drawn.grey(sheet.stock == StockId::none ? 1 : grey_of(*edition[sheet.stock].tint));
  drawn.rectangle(0, 0, size.width.in_points(), height);
  drawn.fill();
  contents.draw(drawn);
}

void Grounds::draw(Contents &contents, const paperwork::SideGround &ground) {
  const PrintJob &job = plates_.job();
  const Sheet &sheet = job.imposition.sheets[static_cast<std::size_t>(ground.sheet)];
  paper(contents, sheet, sheet.size);
  if (job.modes[static_cast<std::size_t>(ground.sheet)][static_cast<std::size_t>(ground.side)])
    draw_side(
        contents, job, [this](int page) -> const std::vector<Layer> & { return layers(page); },
        ground.sheet, ground.side);
}

void Grounds::draw(Contents &contents, const paperwork::PageGround &ground) {
  const PrintJob &job = plates_.job();
  const Size size = job.size_of(ground.page);
  const Box seen = ground.seen.value_or(Box{{}, {}, size.width, size.height});
  paper(contents, job.imposition.sheet_of(ground.page), {seen.width, seen.height});
  contents.save();
  contents.matrix({.xx = 1,
                   .yx = 0,
                   .xy = 0,
                   .yy = -1,
                   .x0 = -seen.x.in_points(),
                   .y0 = seen.foot().in_points()});
  draw_layers(contents, layers(ground.page));
  contents.restore();
}

void Grounds::draw(Contents &contents, const PlacedPicture &picture, double page_height) {
  const auto *measured = std::get_if<paperwork::Measured>(&picture.shown->what);
  if (measured == nullptr || std::holds_alternative<paperwork::EmptyGround>(measured->ground))
    return;
  const Size size = size_of(plates_.job(), *measured);
  const double s = picture.scale;
  contents.save();
  contents.matrix({.xx = s,
                   .yx = 0,
                   .xy = 0,
                   .yy = s,
                   .x0 = picture.x,
                   .y0 = page_height - picture.y - size.height.in_points() * s});
  contents.clip(polygon_of({{}, {}, size.width, size.height}, Transform{}));
  std::visit([&](const auto &ground) { draw(contents, ground); }, measured->ground);
  contents.restore();
}

} // namespace bodkin::press
