#include "press/originals.hpp"

#include "press/box_words.hpp"
#include "press/letters.hpp"
#include "press/placing.hpp"
#include "sheet/bare.hpp"
#include "sheet/machine_of.hpp"
#include "sheet/numbered.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::press {
namespace {

constexpr double line = 0.75, letter_height = 6, tick = 14;

const Machine &machine_of_page(const PrintJob &job, int page) {
  const Spotted &spot = job.imposition.where[static_cast<std::size_t>(page)];
  const Sheet &sheet = job.imposition.sheets[static_cast<std::size_t>(spot.sheet)];
  return machine_of(job.edition, sheet.sides[static_cast<std::size_t>(spot.side)].machine);
}

void take_blue(Strokes &drawn, const Machine &machine) {
  const Colour &blue = *machine.blue;
  drawn.colour(blue.red / 255.0, blue.green / 255.0, blue.blue / 255.0);
  drawn.line_width(line);
}

// "page 4", or "map 2" of a piece called map.
std::string page_name(const PrintJob &job, int page) {
  const CopyPart &part = job.part_of(page);
  return fmt::format("{} {}", part.piece ? part.piece->name : "page", page - part.pages_before);
}

void draw_window(Strokes &drawn, const Item &item, const SetPasteUp &glued) {
  const double width = item.place.width.in_points(), height = item.place.height.in_points();
  drawn.save();
  drawn.map(item.to_page * Transform::moved(item.place.x, item.place.y));
  drawn.line_width(line);
  drawn.rectangle(0, 0, width, height);
  drawn.stroke();
  words_in(drawn, glued.text, width, height);
  drawn.restore();
}

// `to_paper`: the page's frame on the drawing, y down in both.
void draw_windows(Strokes &drawn, const PrintJob &job, int page, const Transform &to_paper,
                  Length shift) {
  const Size size = job.size_of(page);
  drawn.save();
  drawn.map(to_paper);
  drawn.rectangle(0, 0, size.width.in_points(), size.height.in_points());
  drawn.clip();
  for (const Item &item : job.drawing(page).items)
    if (const auto *glued = std::get_if<SetPasteUp>(&item.what)) {
      drawn.save();
      if (!item.crosses_fold)
        drawn.map(Transform::moved(shift, {}));
      draw_window(drawn, item, *glued);
      drawn.restore();
    }
  drawn.restore();
}

// Ticks outside a page's four corners.
void draw_corners(Strokes &drawn, double x, double y, double width, double height) {
  constexpr double off = 4;
  drawn.line_width(line);
  for (const bool right : {false, true})
    for (const bool low : {false, true}) {
      const double corner_x = right ? x + width : x, corner_y = low ? y + height : y;
      const double out_x = right ? 1 : -1, out_y = low ? 1 : -1;
      drawn.move_to(corner_x + out_x * off, corner_y);
      drawn.line_to(corner_x + out_x * (off + tick), corner_y);
      drawn.move_to(corner_x, corner_y + out_y * off);
      drawn.line_to(corner_x, corner_y + out_y * (off + tick));
    }
  drawn.stroke();
}

// In a line no longer than `room`.
void label(Strokes &drawn, std::string_view text, double x, double y, double room) {
  double height = letter_height;
  if (const double width = letters_width(text, height); width > room)
    height *= room / width;
  drawn.letters(text, x, y + height, height);
}

std::string pages_of_side(const PrintJob &job, const Side &side) {
  std::string text;
  std::vector<int> named; // several up, a page stands on the side more than once
  for (const Place &place : side.places) {
    if (place.page == 0 || place.page > job.pages() ||
        std::find(named.begin(), named.end(), place.page) != named.end())
      continue;
    named.push_back(place.page);
    const CopyPart &part = job.part_of(place.page);
    text += text.empty() ? part.piece ? part.piece->name + " " : "pages " : ", ";
    text += std::to_string(place.page - part.pages_before);
  }
  return text;
}

std::string side_name(const PrintJob &job, const PassPage &page, int number, int of) {
  const auto &sheet = job.imposition.sheets[static_cast<std::size_t>(page.sheet)];
  const Side &side = sheet.sides[page.side == SideName::front ? 0 : 1];
  return fmt::format("original {} of {}:  sheet {} {},  {}{}", number, of, sheet.number,
                     page.side == SideName::front ? "front" : "back", pages_of_side(job, side),
                     sheet.stock == StockId::none
                         ? std::string()
                         : fmt::format(",  copied on {}", job.edition[sheet.stock].name));
}

} // namespace

bool has_window(const PrintJob &job, int page) {
  const std::vector<Item> &items = job.drawing(page).items;
  return std::any_of(items.begin(), items.end(), [](const Item &item) {
    return std::holds_alternative<SetPasteUp>(item.what);
  });
}

bool has_originals(const PrintJob &job) {
  for (int page = 1; page <= job.pages(); ++page)
    if (has_window(job, page))
      return true;
  return false;
}

Strokes blue_of_page(const PrintJob &job, int page, int number, int of) {
  const Size size = job.size_of(page);
  const double width = size.width.in_points(), height = size.height.in_points();
  Strokes drawn(height + 2 * original_margin);
  take_blue(drawn, machine_of_page(job, page));
  draw_corners(drawn, original_margin, original_margin, width, height);
  label(drawn,
        fmt::format("original {} of {}:  {}{}", number, of, page_name(job, page),
                    has_window(job, page) ? ",  glue in the windows" : ""),
        original_margin + tick, original_margin - tick - letter_height, width - 2 * tick);
  draw_windows(drawn, job, page,
               {.xx = 1, .yx = 0, .xy = 0, .yy = 1, .x0 = original_margin, .y0 = original_margin},
               {});
  return drawn;
}

Strokes blue_of_side(const PrintJob &job, const PassPage &side, int number, int of) {
  const Sheet &sheet = job.imposition.sheets[static_cast<std::size_t>(side.sheet)];
  const Side &here = sheet.sides[side.side == SideName::front ? 0 : 1];
  const Machine &machine = machine_of(job.edition, here.machine);
  const double width = sheet.size.width.in_points(), height = sheet.size.height.in_points();
  const Transform down{.xx = 1, .yx = 0, .xy = 0, .yy = -1, .x0 = 0, .y0 = height};
  Strokes drawn(height);
  take_blue(drawn, machine);
  drawn.save();
  if (side.turned)
    drawn.map({.xx = -1, .yx = 0, .xy = 0, .yy = -1, .x0 = width, .y0 = height});
  for (const Place &place : here.places)
    if (place.page > 0 && place.page <= job.pages())
      draw_windows(drawn, job, place.page,
                   down * page_to_sheet(place, job.size_of(place.page), sheet.size),
                   shift_right(place));
  drawn.restore();
  constexpr double clear = 4; // of the strip that the machine leaves bare
  const Edges bare = bare_edges(machine, sheet.size);
  const double left = bare.left.in_points() + clear, top = bare.top.in_points() + clear;
  label(drawn, side_name(job, side, number, of), left, top,
        width - left - bare.right.in_points() - clear);
  return drawn;
}

std::vector<PassPage> sides_for_the_glass(const PrintJob &job) {
  std::vector<PassPage> sides;
  for (const Pass &pass : job.passes)
    for (const PassPage &page : pass.pages) {
      const auto same = [&](const PassPage &other) {
        return other.sheet == page.sheet && other.side == page.side;
      };
      // What is copied from the glass is the same for all: a sheet of a spare, without a number.
      if (page.prints && std::none_of(sides.begin(), sides.end(), same))
        sides.push_back({page.sheet, page.side, page.prints, page.turned, without_number});
    }
  return sides;
}

} // namespace bodkin::press
