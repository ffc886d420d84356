#include "money/exact.hpp"
#include "preflight/about.hpp"
#include "preflight/families.hpp"
#include "preflight/side_prices.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <set>

namespace bodkin {
namespace {

bool something_crosses(const Inspection &inspection, const Spread &spread) {
  const auto &items = inspection.drawings[spread.left].items;
  return std::any_of(items.begin(), items.end(),
                     [&](const Item &item) { return item.crosses_fold && !item.running; });
}

std::string paper_of(const Inspection &inspection, int page) {
  const Sheet &sheet = inspection.imposition.sheet_of(page);
  return sheet.stock == StockId::none ? std::string("paper") : inspection.edition[sheet.stock].name;
}

// Of a back against its front; what a front is off shows nowhere.
Length drift_of(const Inspection &inspection, int page) {
  const Spotted &spot = inspection.imposition.where[static_cast<std::size_t>(page)];
  if (spot.side == 0)
    return {};
  const MachineId id = inspection.imposition.sheets[static_cast<std::size_t>(spot.sheet)]
                           .sides[static_cast<std::size_t>(spot.side)]
                           .machine;
  return id == MachineId::none ? Length{} : *inspection.edition[id].drift;
}

// "the halves may miss each other by 0.066in (1/16in of drift, 0.004in of creep)". What crosses the
// fold is moved on neither page, so of two sheets nested in each other the inner one carries its
// half further out.
std::string how_they_miss(const Inspection &inspection, int left, int right) {
  const Length drift = drift_of(inspection, left) + drift_of(inspection, right);
  const Length one = inspection.imposition.place_of(left).creep;
  const Length other = inspection.imposition.place_of(right).creep;
  const Length creep = std::max(one, other) - std::min(one, other);
  const std::string by = length(inspection, drift + creep);
  if (drift + creep == Length{})
    return "the halves meet as well as the sheets are folded";
  if (creep == Length{})
    return fmt::format("the halves may miss each other by {} (drift)", by);
  if (drift == Length{})
    return fmt::format("the halves will miss each other by {} (creep)", by);
  return fmt::format("the halves may miss each other by {} ({} of drift, {} of creep)", by,
                     length(inspection, drift), length(inspection, creep));
}

// Facing pages that are one piece of paper on one side.
std::vector<int> whole_spreads(const Inspection &inspection) {
  std::vector<int> lefts;
  for (int left = 2; left + 1 <= inspection.imposition.page_count; left += 2) {
    const Spotted &a = inspection.imposition.where[static_cast<std::size_t>(left)];
    const Spotted &b = inspection.imposition.where[static_cast<std::size_t>(left) + 1];
    if (a.sheet == b.sheet && a.side == b.side)
      lefts.push_back(left);
  }
  return lefts;
}

// The spread's line with other pages.
std::string moved_to(const Inspection &inspection, const Spread &spread, int left) {
  const std::string_view line = inspection.sources.text(spread.opened);
  std::size_t end = line.size();
  for (const std::string_view word : {" called ", " in ", " on ", " by "})
    end = std::min(end, line.find(word));
  return fmt::format("spread {}-{}{}", left, left + 1, line.substr(end));
}

bool is_free(const Inspection &inspection, int left) {
  const auto &pages = inspection.edition.pages;
  return !pages[static_cast<std::size_t>(left)].opened.somewhere() &&
         !pages[static_cast<std::size_t>(left) + 1].opened.somewhere();
}

// The pages of a page's side, itself among them.
std::vector<int> side_pages(const Inspection &inspection, int page) {
  std::vector<int> pages;
  for (const Place &place : side_of(inspection, page).places)
    if (place.page > 0 && place.page <= inspection.imposition.page_count)
      pages.push_back(place.page);
  std::sort(pages.begin(), pages.end());
  return pages;
}

bool colour_by_itself(const Inspection &inspection, const Spread &spread, int page) {
  const std::vector<int> pages = side_pages(inspection, page);
  return is_colour(inspection, side_key(inspection, page)) &&
         std::none_of(pages.begin(), pages.end(), [&](int other) {
           return other != spread.left && other != spread.right &&
                  inspection.drawings[other].draws &&
                  *inspection.edition.pages[static_cast<std::size_t>(other)].mode == Mode::colour;
         });
}

// "; sheet 4, back (8 and 13) becomes a colour side, $0.47 a copy more"
std::string colour_for_its_sake(const Inspection &inspection, const Spread &spread) {
  std::string text;
  for (const int page : {spread.left, spread.right}) {
    const auto prices = prices_of(inspection, page);
    if (!prices || !colour_by_itself(inspection, spread, page))
      continue;
    const Exact more = Exact(prices->colour.amount) - Exact(prices->black.amount);
    text += fmt::format("; sheet {}, {} ({}) becomes a colour side, {} a copy more",
                        number_of(inspection, inspection.imposition.sheet_of(page)),
                        side_of(inspection, page).name == SideName::front ? "front" : "back",
                        spoken::listed(side_pages(inspection, page)),
                        shown(more, prices->colour.currency));
  }
  return text;
}

Problem split_spread(const Inspection &inspection, const Spread &spread) {
  const int l = spread.left, r = spread.right;
  const std::string left = paper_of(inspection, l), right = paper_of(inspection, r);
  Problem problem;
  problem.kind = Kind::warning;
  problem.check = "split-spread";
  problem.range = spread.opened;
  problem.message =
      fmt::format("pages {} and {} face each other but are two pieces of paper: {} "
                  "is {}, sheet {}; {} is {}, sheet {}",
                  l, r, l, left, number_of(inspection, inspection.imposition.sheet_of(l)), r, right,
                  number_of(inspection, inspection.imposition.sheet_of(r)));
  problem.why =
      how_they_miss(inspection, l, r) + (left == right ? "" : ", and change colour at the fold");
  problem.why += colour_for_its_sake(inspection, spread);
  const std::vector<int> whole = whole_spreads(inspection);
  if (!whole.empty()) {
    const int left_page = whole.front();
    problem.why += fmt::format("; only {}-{} is one piece", left_page, left_page + 1);
    const std::string line = moved_to(inspection, spread, left_page);
    if (is_free(inspection, left_page))
      retype(inspection, problem, spread.opened, line);
    else
      problem.type.push_back(
          {line, fmt::format("and give pages {} and {} to what stands there now", l, r)});
  }
  return problem;
}

} // namespace

void check_spreads(const Inspection &inspection, Problems &problems) {
  for (const Spread &spread : inspection.edition.spreads) {
    const Spotted &a = inspection.imposition.where[static_cast<std::size_t>(spread.left)];
    const Spotted &b = inspection.imposition.where[static_cast<std::size_t>(spread.right)];
    const bool one_piece = a.sheet == b.sheet && a.side == b.side;
    if (!one_piece && something_crosses(inspection, spread))
      problems.push_back(split_spread(inspection, spread));
  }
}

} // namespace bodkin
