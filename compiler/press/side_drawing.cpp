#include "press/side_drawing.hpp"

#include "press/placing.hpp"
#include "press/side_marks.hpp"
#include "sheet/numbered.hpp"

#include <algorithm>

namespace bodkin::press {
namespace {

// The page that faces this one in the open booklet lies at its other side of the fold.
bool one_with_facing(const Side &side, const Place &place) {
  const int facing = place.page % 2 == 0 ? place.page + 1 : place.page - 1;
  return place.turn == 0 &&
         std::any_of(side.places.begin(), side.places.end(), [&](const Place &other) {
           return other.page == facing && other.turn == 0 && other.box.y == place.box.y &&
                  (place.spine == SpineAt::left ? other.box.right() == place.box.x
                                                : place.box.right() == other.box.x);
         });
}

// Where matter of this page may be seen; a spread on one piece of paper is one picture.
Polygon seen(const Side &side, const Place &place, const Size &page, bool of_spread) {
  if (!of_spread || place.spine == SpineAt::none || !one_with_facing(side, place))
    return page_corners(page);
  const Length left = place.spine == SpineAt::left ? -past_fold : Length{};
  return polygon_of({left, {}, page.width + past_fold, page.height}, Transform{});
}

// What lies on a page, in its own frame.
void draw_layer(Contents &contents, const Layer &layer, Length shift_right) {
  contents.save();
  if (layer.shifted && shift_right != Length{})
    contents.matrix(Transform::moved(shift_right, {}));
  if (!layer.clip.empty())
    contents.clip(layer.clip);
  contents.matrix(layer.to_page);
  contents.draw(layer.xobject);
  contents.restore();
}

std::optional<std::int64_t> first_copy(const std::vector<Layer> &layers) {
  const auto found = std::find_if(layers.begin(), layers.end(),
                                  [](const Layer &layer) { return layer.copy.has_value(); });
  return found == layers.end() ? std::nullopt : found->copy;
}

bool is_for(const Layer &layer, std::optional<std::int64_t> copy) {
  return !layer.copy || layer.copy == copy;
}

} // namespace

void draw_layers(Contents &contents, const std::vector<Layer> &layers,
                 std::optional<std::int64_t> copy) {
  const auto shown = copy ? copy : first_copy(layers);
  for (const Layer &layer : layers)
    if (is_for(layer, shown))
      draw_layer(contents, layer, {});
}

void draw_side(Contents &contents, const PrintJob &job, const LayersOf &layers_of, int sheet,
               int side, std::int64_t nth) {
  const Sheet &paper = job.imposition.sheets[static_cast<std::size_t>(sheet)];
  const Side &here = paper.sides[static_cast<std::size_t>(side)];
  const std::vector<std::int64_t> copies =
      here.numbered ? copies_on(job.edition, paper, side, nth) : std::vector<std::int64_t>{};
  for (std::size_t i = 0; i < here.places.size(); ++i) {
    const Place &place = here.places[i];
    if (place.page == 0 || place.page > job.pages() || layers_of(place.page).empty())
      continue;
    contents.save();
    const Size page = job.size_of(place.page);
    contents.matrix(page_to_sheet(place, page, paper.size));
    for (const Layer &layer : layers_of(place.page)) {
      if (!is_for(layer, copies.empty() ? std::nullopt : std::optional(copies[i])))
        continue;
      contents.save();
      contents.clip(seen(here, place, page, !layer.shifted));
      draw_layer(contents, layer, shift_right(place));
      contents.restore();
    }
    contents.restore();
  }
  if (const auto marks = draw_marks(job, sheet, side))
    contents.draw(*marks);
}

} // namespace bodkin::press
