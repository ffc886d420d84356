#include "money/absurd_prices.hpp"

#include "money/charge.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <set>

namespace bodkin {
namespace {

// A sheet that costs as much as so many of the sides printed on it is a pack; a side that costs as
// much as so many sheets has lost its point. Common practice, no source.
constexpr std::int64_t sides_for_a_sheet = 50;
constexpr std::int64_t sheets_for_a_side = 2000;

// What is paid for one, in the edition's money.
struct One {
  Exact price;
  Range from;
  std::string_view name;
};

struct Used {
  std::vector<One> sheets, sides;
};

void use_machine(const Edition &edition, MachineId id, Used &used) {
  for (const SidePrice &price : edition[id].prints)
    if (counts(edition, price.rate.price.currency))
      used.sides.push_back({price_of_one(edition, price.rate), price.range, edition[id].name});
}

void use_stock(const Edition &edition, StockId id, Used &used) {
  const Stock &stock = edition[id];
  if (!stock.included && stock.costs && counts(edition, (*stock.costs)->price.currency))
    used.sheets.push_back({price_of_one(edition, **stock.costs), stock.costs->from, stock.name});
}

Used used_in(const Edition &edition, const Imposition &imposition, const ChargedSides &sides) {
  Used used;
  std::set<StockId> stocks;
  for (const Sheet &sheet : imposition.sheets)
    if (sheet.stock != StockId::none && stocks.insert(sheet.stock).second)
      use_stock(edition, sheet.stock, used);
  std::set<MachineId> machines;
  for (const ChargedSide &side : sides)
    if (side.machine != MachineId::none && machines.insert(side.machine).second)
      use_machine(edition, side.machine, used);
  return used;
}

Problem absurd(Range range, std::string message, std::string why) {
  Problem problem;
  problem.kind = Kind::warning;
  problem.check = "absurd-price";
  problem.range = range;
  problem.message = std::move(message);
  problem.why = std::move(why);
  problem.type = {{{}, "look at the price list again"}};
  return problem;
}

// Free ones say nothing of what the others should cost.
const One *cheapest(const std::vector<One> &ones) {
  const One *least = nullptr;
  for (const One &one : ones)
    if (!one.price.is_zero() && (least == nullptr || one.price < least->price))
      least = &one;
  return least;
}

Problem sheet_like_a_pack(const Edition &edition, const One &sheet, const One &side) {
  const Currency currency = *edition.currency;
  Problem problem = absurd(
      sheet.from,
      fmt::format("a sheet of {} costs {}, as much as {} sides printed at {}", sheet.name,
                  shown(sheet.price, currency, 4), (sheet.price / side.price).floor(), side.name),
      "that is what a pack costs; a sheet of office paper is cheaper than a side");
  problem.type = {{fmt::format("costs      {} per 500 sheets", shown(sheet.price, currency, 4)),
                   "where it is a pack's, with the sheets that are in it"}};
  return problem;
}

Problem side_like_a_ream(const Edition &edition, const One &side, const One &sheet) {
  return absurd(side.from,
                fmt::format("a side at {} costs {}, as much as {} sheets of {}", side.name,
                            shown(side.price, *edition.currency, 4),
                            (side.price / sheet.price).floor(), sheet.name),
                "a point may be missing in it, or the price of the whole job stands here");
}

Problem colour_below_black(const Edition &edition, const Machine &machine, const SidePrice &colour,
                           const SidePrice &black) {
  const auto words = [&](const SidePrice &price) {
    return shown(price_of_one(edition, price.rate), *edition.currency, 4);
  };
  Problem problem = absurd(colour.range,
                           fmt::format("{} prints colour at {} a side, for less than black at {}",
                                       machine.name, words(colour), words(black)),
                           "so every page would be cheaper in colour; two lines may have been "
                           "changed about, or a point left out");
  problem.related = {{black.range, "the price of black"}};
  return problem;
}

void judge_colour(const Edition &edition, const Machine &machine, Problems &problems) {
  for (const SidePrice &colour : machine.prints)
    for (const SidePrice &black : machine.prints)
      if (colour.mode == Mode::colour && black.mode == Mode::black && colour.size == black.size &&
          colour.from_sides == black.from_sides && counts(edition, colour.rate.price.currency) &&
          counts(edition, black.rate.price.currency) &&
          price_of_one(edition, colour.rate) < price_of_one(edition, black.rate))
        problems.push_back(colour_below_black(edition, machine, colour, black));
}

} // namespace

void judge_prices(const Edition &edition, const Imposition &imposition, const ChargedSides &sides,
                  Problems &problems) {
  const Used used = used_in(edition, imposition, sides);
  const One *side = cheapest(used.sides);
  const One *sheet = cheapest(used.sheets);
  for (const One &one : used.sheets)
    if (side != nullptr && one.price > side->price * Exact(sides_for_a_sheet))
      problems.push_back(sheet_like_a_pack(edition, one, *side));
  for (const One &one : used.sides)
    if (sheet != nullptr && one.price > sheet->price * Exact(sheets_for_a_side))
      problems.push_back(side_like_a_ream(edition, one, *sheet));
  for (const Machine &machine : edition.machines)
    judge_colour(edition, machine, problems);
}

} // namespace bodkin
