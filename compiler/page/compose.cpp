#include "page/compose.hpp"

#include "page/layer.hpp"
#include "page/outline.hpp"
#include "sheet/told_by_run.hpp"

#include <algorithm>
#include <utility>

namespace bodkin {
namespace {

struct Composing {
  const Workshop &workshop;
  Drawings &drawings;
  TextBoxes &boxes;
  Problems &problems;
  std::size_t part = 0;

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
    box.part = composing.part;
    box.piece = composing.workshop.piece;
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
    box.part = composing.part;
    box.piece = composing.workshop.piece;
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

void lay_pages(const Composing &composing) {
  const Edition &edition = composing.edition();
  const int pages = *edition.page_count;
  composing.drawings.pages.resize(static_cast<std::size_t>(pages) + 1);
  for (int page = 1; page <= pages; ++page) {
    lay_page(composing, page);
    const auto &spread = edition.pages[static_cast<std::size_t>(page)].spread;
    if (spread && edition.spreads[*spread].right == page && page > 1)
      lay_spread(composing, edition.spreads[*spread]);
  }
  // The back cover and the front cover as one: its left page is the last.
  for (const Spread &spread : edition.spreads)
    if (spread.right == 1)
      lay_spread(composing, spread);
}

// Where a reader who leafs through the copy comes to a page of a part: at which page of the book,
// and after how much of what lies there.
using Reading = std::pair<int, int>;

Reading reading_of(const CopyPart &part, int page, int book_pages) {
  if (!part.piece)
    return {page, 0};
  const Piece &piece = *part.piece;
  const int behind = book_pages + 1;
  switch (*piece.goes) {
  case Goes::round_the_book:
    return {page <= 2 ? 0 : behind, page};
  case Goes::centre:
    return {book_pages / 2, page};
  case Goes::after_page:
    return {piece.at_page, page};
  case Goes::on_page:
    if (piece.host.empty())
      return {piece.at_page, page};
    break;
  case Goes::loose:
  case Goes::in_pocket:
  case Goes::round_the_copy:
  case Goes::outside:
  case Goes::behind:
  case Goes::instead:
    break;
  }
  return {behind + 1, 0};
}

// Boxes come part by part: those that a reader comes to at once stay in that order.
void put_in_reading_order(const std::vector<CopyPart> &parts, TextBoxes &boxes) {
  const int pages = *parts.front().edition->page_count;
  const auto reading = [&](const TextBox &box) {
    return reading_of(parts[box.part], box.page, pages);
  };
  for (auto &[text, of_text] : boxes)
    std::ranges::stable_sort(
        of_text, [&](const TextBox &a, const TextBox &b) { return reading(a) < reading(b); });
}

// Without parts the one workshop is all.
std::vector<Drawings> composed(const std::vector<Workshop> &workshops,
                               const std::vector<CopyPart> &parts, Problems &problems) {
  std::vector<Drawings> drawings(workshops.size());
  std::vector<Problems> found(workshops.size());
  TextBoxes boxes;
  for (std::size_t part = 0; part < workshops.size(); ++part) {
    TextBoxes of_another_book;
    const bool other = !parts.empty() && parts[part].is_other_book();
    lay_pages(
        {workshops[part], drawings[part], other ? of_another_book : boxes, found[part], part});
    run_texts(of_another_book, workshops, drawings, found[part]);
  }
  if (!parts.empty())
    put_in_reading_order(parts, boxes);
  run_texts(boxes, workshops, drawings, found.front());
  if (parts.empty())
    problems.insert(problems.end(), found.front().begin(), found.front().end());
  tell_by_run(parts, std::move(found), problems);
  for (Drawings &of_part : drawings)
    for (PageDrawing &page : of_part.pages)
      judge(page);
  return drawings;
}

} // namespace

Drawings compose(const Workshop &workshop, Problems &problems) {
  return std::move(composed({workshop}, {}, problems).front());
}

std::vector<Drawings> compose_copy(const std::vector<CopyPart> &parts, const Sources &sources,
                                   art::Gallery &gallery, Compositor &compositor,
                                   Problems &problems) {
  std::vector<Workshop> workshops;
  workshops.reserve(parts.size());
  for (const CopyPart &part : parts)
    workshops.push_back({*part.edition, part.imposition, sources, gallery, compositor,
                         part.piece && !part.is_other_book() ? std::string_view(part.piece->name)
                                                             : std::string_view{}});
  return composed(workshops, parts, problems);
}

} // namespace bodkin
