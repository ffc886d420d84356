#include "page/outline.hpp"
#include "preflight/about.hpp"
#include "preflight/families.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {
namespace {

std::optional<Price> side_price(const Inspection &inspection, MachineId id, Mode mode) {
  if (id == MachineId::none)
    return std::nullopt;
  std::optional<Price> price;
  for (const SidePrice &line : inspection.edition[id].prints)
    if (line.mode == mode && line.rate.per == Per::side && !price)
      price = line.rate.price;
  return price;
}

MachineId machine_of(const Inspection &inspection, int page) {
  const Spotted &spot = inspection.imposition.where[static_cast<std::size_t>(page)];
  return inspection.imposition.sheets[static_cast<std::size_t>(spot.sheet)]
      .sides[static_cast<std::size_t>(spot.side)]
      .machine;
}

bool side_is_colour(const Inspection &inspection, int page) {
  const Spotted &spot = inspection.imposition.where[static_cast<std::size_t>(page)];
  return inspection
             .modes[static_cast<std::size_t>(spot.sheet)][static_cast<std::size_t>(spot.side)] ==
         Mode::colour;
}

// What a page's side costs as one mode instead of the other.
std::string prices(const Inspection &inspection, int page) {
  const MachineId id = machine_of(inspection, page);
  const auto colour = side_price(inspection, id, Mode::colour);
  const auto black = side_price(inspection, id, Mode::black);
  if (!colour || !black)
    return {};
  return fmt::format("{} instead of {}", written(*colour), written(*black));
}

std::string page_line(const Inspection &inspection, int page, bool colour) {
  std::string line(
      inspection.sources.text(inspection.edition.pages[static_cast<std::size_t>(page)].opened));
  if (colour)
    return fmt::format("page {} in colour", page);
  for (const std::string_view words : {" in colour", " in color"})
    if (const std::size_t at = line.find(words); at != std::string::npos)
      line.erase(at, words.size());
  return line;
}

Problem colour_on_black(const Inspection &inspection, int page, const Item &item) {
  Problem problem;
  problem.kind = Kind::note;
  problem.check = "colour-on-black";
  problem.range = element_of(inspection, item).range;
  problem.message =
      fmt::format("this {} is coloured and page {} is printed in black, so it comes out grey",
                  name_of(inspection, item), page);
  if (side_is_colour(inspection, page)) {
    problem.why = "its side is paid as colour already: in colour it would cost nothing more";
  } else if (const std::string cost = prices(inspection, page); !cost.empty()) {
    const Sheet &sheet = inspection.imposition.sheet_of(page);
    problem.why =
        fmt::format("in colour, its side of sheet {} would cost {} a copy", sheet.number, cost);
  }
  problem.type = {{page_line(inspection, page, true), "or `tone grey`, if grey is meant"}};
  return problem;
}

bool grey_is_meant(const Inspection &inspection, const Item &item) {
  const auto *picture = std::get_if<Picture>(&inspection.edition[item.element].what);
  return picture && picture->tone->kind != ToneKind::as_is;
}

void check_black_page(const Inspection &inspection, int page, Problems &problems) {
  std::vector<ElementId> said;
  for (const Item &item : inspection.drawings[page].items) {
    if (item.running || !leaves_ink(item) || !is_coloured(item) ||
        grey_is_meant(inspection, item) ||
        std::find(said.begin(), said.end(), item.element) != said.end())
      continue;
    said.push_back(item.element);
    problems.push_back(colour_on_black(inspection, page, item));
  }
}

Problem colour_unused(const Inspection &inspection, const Sheet &sheet, std::size_t side,
                      const std::vector<int> &asking) {
  const int page = asking.front();
  std::vector<int> all;
  for (const Place &place : sheet.sides[side].places)
    if (place.page > 0 && place.page != page)
      all.push_back(place.page);
  Problem problem;
  problem.kind = Kind::warning;
  problem.check = "colour-unused";
  const Page &asked = inspection.edition.pages[static_cast<std::size_t>(page)];
  problem.range = asked.mode.from.somewhere() ? asked.mode.from : asked.opened;
  problem.message =
      all.empty()
          ? fmt::format("nothing on page {} is coloured, yet its side is paid as colour", page)
          : fmt::format("nothing on page {} is coloured, nor on page {} beside it, yet their side "
                        "is paid as colour",
                        page, fmt::join(all, ", "));
  if (const std::string cost = prices(inspection, page); !cost.empty()) {
    const Run &run = *inspection.edition.run;
    problem.why = fmt::format("sheet {}, {} costs {} for each of {} copies", sheet.number,
                              side == 0 ? "front" : "back", cost, run.copies + run.spare);
  }
  problem.type = {{page_line(inspection, page, false), {}}};
  return problem;
}

void check_side(const Inspection &inspection, const Sheet &sheet, std::size_t side,
                Problems &problems) {
  std::vector<int> asking;
  for (const Place &place : sheet.sides[side].places) {
    if (place.page == 0 || place.page > inspection.imposition.page_count)
      continue;
    if (inspection.drawings[place.page].coloured &&
        *inspection.edition.pages[static_cast<std::size_t>(place.page)].mode == Mode::colour)
      return;
    if (inspection.drawings[place.page].draws &&
        *inspection.edition.pages[static_cast<std::size_t>(place.page)].mode == Mode::colour)
      asking.push_back(place.page);
  }
  if (!asking.empty())
    problems.push_back(colour_unused(inspection, sheet, side, asking));
}

} // namespace

void check_colour(const Inspection &inspection, Problems &problems) {
  for (int page = 1; page <= inspection.imposition.page_count; ++page)
    if (*inspection.edition.pages[static_cast<std::size_t>(page)].mode == Mode::black)
      check_black_page(inspection, page, problems);
  for (std::size_t i = 0; i < inspection.imposition.sheets.size(); ++i)
    for (std::size_t side = 0; side < 2; ++side)
      if (inspection.modes[i][side] == Mode::colour)
        check_side(inspection, inspection.imposition.sheets[i], side, problems);
}

} // namespace bodkin
