#include "press/overlay.hpp"

#include "edition/copy_numbers.hpp"
#include "press/box_words.hpp"
#include "sheet/glued_on.hpp"

#include <algorithm>

namespace bodkin::press {
namespace {

struct Rgb {
  double red, green, blue;
};
// A pencil's red and blue: no ink of an edition's is meant by them.
constexpr Rgb hand_pencil{0.72, 0.22, 0.16};
constexpr Rgb missing_pencil{0.24, 0.36, 0.62};

void pencil(Strokes &drawn, Rgb colour) { drawn.colour(colour.red, colour.green, colour.blue); }

void frame(Strokes &drawn, double width, double height, double dash) {
  drawn.dashes({dash, dash * 0.7});
  drawn.line_width(0.8);
  drawn.rectangle(0, 0, width, height);
  drawn.stroke();
  drawn.solid();
}

void hatch(Strokes &drawn, double width, double height) {
  drawn.save();
  drawn.rectangle(0, 0, width, height);
  drawn.clip();
  drawn.colour(0.82, 0.86, 0.93);
  drawn.line_width(0.5);
  for (double x = -height; x < width; x += 7) {
    drawn.move_to(x, height);
    drawn.line_to(x + height, 0);
  }
  drawn.stroke();
  drawn.restore();
}

void draw_what(Strokes &drawn, const SetHand &hand, double width, double height) {
  pencil(drawn, hand_pencil);
  frame(drawn, width, height, 3);
  const double corner = std::min({width, height, 9.0});
  drawn.move_to(width - corner, 0);
  drawn.line_to(width, corner);
  drawn.stroke();
  const std::string text = hand.text.empty() ? std::string(name_of(hand.kind))
                                             : std::string(name_of(hand.kind)) + ": " + hand.text;
  note(drawn, text, width, height);
}

void draw_what(Strokes &drawn, const SetPasteUp &glued, double width, double height) {
  pencil(drawn, hand_pencil);
  frame(drawn, width, height, 3);
  const double corner = std::min({width, height, 9.0});
  for (const double x : {0.0, width}) {
    drawn.move_to(x, height - corner);
    drawn.line_to(x + (x > 0 ? -corner : corner), height);
  }
  drawn.stroke();
  note(drawn, "paste-up: " + glued.text, width, height);
}

void draw_what(Strokes &drawn, const SetMissing &missing, double width, double height) {
  hatch(drawn, width, height);
  pencil(drawn, missing_pencil);
  frame(drawn, width, height, 5);
  words_in(drawn, missing.reason, width, height);
}

template <typename Printed>
void draw_what(Strokes &, const Printed &, double, double) {}

void draw_on_proof(Strokes &drawn, const Item &item) {
  drawn.save();
  drawn.map(item.to_page * Transform::moved(item.place.x, item.place.y));
  std::visit(
      [&](const auto &what) {
        draw_what(drawn, what, item.place.width.in_points(), item.place.height.in_points());
      },
      item.what);
  drawn.restore();
}

// A leaf tipped in, with its strip of glue, or a pocket, where it will lie. Boards cover all.
void draw_glued(Strokes &drawn, const GluedOn &glued) {
  const Piece &piece = *glued.piece->piece;
  const Box &box = glued.box, &strip = glued.hides;
  drawn.save();
  drawn.map(Transform::moved(box.x, box.y));
  pencil(drawn, hand_pencil);
  frame(drawn, box.width.in_points(), box.height.in_points(), 3);
  if (piece.is_tipped_in()) {
    drawn.rectangle((strip.x - box.x).in_points(), (strip.y - box.y).in_points(),
                    strip.width.in_points(), strip.height.in_points());
    drawn.stroke();
  }
  note(drawn, (piece.is_pocket() ? "pocket: " : "tip-in: ") + piece.name, box.width.in_points(),
       box.height.in_points());
  drawn.restore();
}

std::vector<GluedOn> glued_on_page(const PrintJob &job, int page) {
  std::vector<GluedOn> found;
  for (const GluedOn &glued : glued_on(job.parts))
    if (glued.host->pages_before + glued.page == page && !glued.piece->piece->is_boards())
      found.push_back(glued);
  return found;
}

// What the copies of one run alone have done by hand stands on no sheet of the others; on one that
// they share it says whose it is.
std::optional<Item> as_done_on(const PrintJob &job, int page, Item item) {
  auto *hand = std::get_if<SetHand>(&item.what);
  if (!hand || item.element == ElementId::none)
    return item;
  const auto &only = (*job.part_of(page).edition)[item.element].work.only;
  const RunSet &whose = job.imposition.sheet_of(page).only;
  if (only && !whose.holds(**only))
    return std::nullopt;
  if (only && whose != RunSet(**only))
    hand->text += ", " + names_of(job.edition, **only) + " alone";
  return item;
}

} // namespace

bool only_on_proofs(const Item &item) {
  return std::holds_alternative<SetHand>(item.what) ||
         std::holds_alternative<SetMissing>(item.what) ||
         std::holds_alternative<SetPasteUp>(item.what);
}

std::optional<Strokes> draw_overlay(const PrintJob &job, int page) {
  const std::vector<Item> &items = job.drawing(page).items;
  const std::vector<GluedOn> glued = glued_on_page(job, page);
  if (glued.empty() && std::none_of(items.begin(), items.end(), only_on_proofs))
    return std::nullopt;
  Strokes drawn(job.size_of(page).height.in_points());
  for (const Item &item : items)
    if (const auto shown = as_done_on(job, page, item); shown && only_on_proofs(*shown))
      draw_on_proof(drawn, *shown);
  for (const GluedOn &piece : glued)
    draw_glued(drawn, piece);
  return drawn;
}

} // namespace bodkin::press
