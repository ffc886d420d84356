#include "page/compose.hpp"

#include "page/layer.hpp"
#include "page/outline.hpp"

#include <algorithm>

namespace bodkin {
namespace {

struct Composing {
  const Workshop &workshop;
  Drawings &drawings;
  TextBoxes &boxes;
  Problems &problems;

  const Edition &edition() const { return workshop.edition; }
  std::vector<Item> &items(int page) const {
    return drawings.pages[static_cast<std::size_t>(page)].items;
  }
};

void lay_running(const Composing &composing, int page, const Ground &ground) {
  for (const Running &running : composing.edition().runnings) {
    if (!running.on_page[static_cast<std::size_t>(page)])
      continue;
    LaidItems laid;
    lay_elements(running.elements,
                 {.ground = ground, .running = true, .page = page, .boxes_run = false},
                 composing.workshop, laid, composing.problems);
    for (Item &item : laid.items)
      composing.items(page).push_back(std::move(item));
  }
}

void lay_page(const Composing &composing, int page) {
  const Page &asked = composing.edition().pages[static_cast<std::size_t>(page)];
  if (!asked.opened.somewhere() || asked.blank)
    return;
  const Ground ground = ground_of(composing.edition(), composing.workshop.imposition, page);
  lay_running(composing, page, ground);
  if (asked.spread)
    return;
  LaidItems laid;
  lay_elements(asked.elements, {.ground = ground, .page = page}, composing.workshop, laid,
               composing.problems);
  const std::size_t first = composing.items(page).size();
  for (Item &item : laid.items)
    composing.items(page).push_back(std::move(item));
  for (auto &[index, box] : laid.boxes) {
    box.shown = {{page, first + index}};
    composing.boxes[std::get<TextId>(box.place.words->words)].push_back(std::move(box));
  }
}

// Where an item of a spread is seen: by the corners of its place, since its words may yet come.
struct Reach {
  bool left = false, right = false;
};
Reach reach_of(const Item &item, double fold) {
  Polygon corners = polygon_of(item.place, item.to_page);
  for (const Polygon &polygon : outlines_of(item))
    corners.insert(corners.end(), polygon.begin(), polygon.end());
  Reach reach;
  for (const Point &p : corners) {
    reach.left = reach.left || p.x < fold;
    reach.right = reach.right || p.x > fold;
  }
  return reach;
}

void lay_spread(const Composing &composing, const Spread &spread) {
  const Ground ground = ground_of(composing.edition(), composing.workshop.imposition, spread);
  LaidItems laid;
  lay_elements(spread.elements, {.ground = ground, .page = spread.left}, composing.workshop, laid,
               composing.problems);
  std::vector<std::vector<TextBox::Shown>> shown(laid.items.size());
  const Length width = composing.workshop.imposition.size_of(spread.left).width;
  for (std::size_t i = 0; i < laid.items.size(); ++i) {
    Item &item = laid.items[i];
    const Reach reach = reach_of(item, width.in_points());
    item.crosses_fold = reach.left && reach.right;
    const auto put = [&](int page, const Transform &moved) {
      Item copy = item;
      copy.to_page = moved * item.to_page;
      composing.items(page).push_back(std::move(copy));
      shown[i].push_back({page, composing.items(page).size() - 1});
    };
    if (reach.left || !reach.right)
      put(spread.left, Transform{});
    if (reach.right)
      put(spread.right, Transform::moved(-width, {}));
  }
  for (auto &[index, box] : laid.boxes) {
    box.shown = shown[index];
    composing.boxes[std::get<TextId>(box.place.words->words)].push_back(std::move(box));
  }
}

void judge(PageDrawing &page) {
  page.draws = std::any_of(page.items.begin(), page.items.end(), leaves_ink);
  page.coloured = std::any_of(page.items.begin(), page.items.end(), [](const Item &item) {
    return leaves_ink(item) && is_coloured(item);
  });
}

} // namespace

Drawings compose(const Workshop &workshop, Problems &problems) {
  Drawings drawings;
  const int pages = *workshop.edition.page_count;
  drawings.pages.resize(static_cast<std::size_t>(pages) + 1);
  TextBoxes boxes;
  const Composing composing{workshop, drawings, boxes, problems};
  for (int page = 1; page <= pages; ++page) {
    lay_page(composing, page);
    const auto &spread = workshop.edition.pages[static_cast<std::size_t>(page)].spread;
    if (spread && workshop.edition.spreads[*spread].right == page && page > 1)
      lay_spread(composing, workshop.edition.spreads[*spread]);
  }
  // The back cover and the front cover as one: its left page is the last.
  for (const Spread &spread : workshop.edition.spreads)
    if (spread.right == 1)
      lay_spread(composing, spread);
  run_texts(boxes, workshop, drawings, problems);
  for (PageDrawing &page : drawings.pages)
    judge(page);
  return drawings;
}

} // namespace bodkin
