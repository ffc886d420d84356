#include "edition/like.hpp"
#include "edition/problems.hpp"
#include "edition/supplies.hpp"
#include "edition/values.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {
namespace {

constexpr PricedBy by_sheet{{Per::sheet, Per::sheets, Per::each, Per::sheet},
                            "paper is bought by the sheet or by the pack",
                            "a sheet"};

// Its weight unknown, a paper is taken for ordinary office paper wherever thickness matters.
constexpr Length office_caliper = Length::inches(38, 10'000);

void take_weight(Reader &reader, FactLine thing, const Facts &facts, Stock &stock) {
  const FactLine line = facts.find("weight");
  stock.weight = value_in<Weight>(line, "weight");
  if (stock.weight && stock.weight->value.grammage.mg_per_m2 <= 0) {
    reader.report(too_small(stock.weight->from, "paper weighs something",
                            "thickness, feeding and postage all follow from the weight",
                            "weight     20 lb bond"));
    stock.weight.reset();
  }
  if (!line && facts.whole())
    reader.report(missing_fact(
        thing.range("name"), fmt::format("{} does not say its weight", thing.words("name")),
        "what feeds, folds and needs a crease follows from the weight", "weight     20 lb bond"));
}

void take_sheet(Reader &reader, FactLine thing, const Facts &facts, Stock &stock) {
  const FactLine line = facts.find("sheet");
  if (const auto size = value_in<Size>(line, "size"))
    stock.sheet = known(size->value.upright(), size->from);
  if (const auto grain = text_in(line, "grain"))
    stock.grain = known(grain->value == "long" ? Grain::along_long_edge : Grain::along_short_edge,
                        grain->from);
  if (!line && facts.whole())
    reader.report(missing_fact(
        thing.range("name"), fmt::format("{} does not say its sheet", thing.words("name")),
        "pages are folded out of sheets of a size", "sheet      letter, grain long"));
}

void take_caliper(Reader &reader, const Facts &facts, Stock &stock) {
  if (const auto caliper = length_in(reader, facts.find("caliper"), "caliper", false)) {
    stock.caliper = *caliper;
    return;
  }
  stock.caliper_estimated = true;
  stock.caliper = known(stock.weight ? estimated_caliper(stock.weight->value) : office_caliper, {});
}

// More than this many small sheets are confetti.
constexpr std::int64_t most_out = 10'000;

// What is paid once for all is a pack.
constexpr PricedBy a_pack{by_sheet.pers, by_sheet.meaning, "per 500 sheets"};

bool is_for_all(FactLine costs) {
  const auto rate = value_in<Rate>(costs, "costs");
  return rate && (rate->value.per == Per::once || rate->value.per == Per::run);
}

void take_purchase(Reader &reader, const Facts &facts, Stock &stock) {
  const FactLine costs = facts.find("costs");
  stock.included = costs && costs.has("included");
  stock.costs = rate_by(reader, costs, "costs", is_for_all(costs) ? a_pack : by_sheet);
  stock.have =
      count_in(reader, facts.find("have"), "count", 0, "a pile has no less than no sheets");
  const FactLine cut = facts.find("cut-from");
  const auto parent = value_in<Size>(cut, "parent");
  const auto out =
      count_in(reader, cut, "out", 1, "at least one sheet is cut out of each larger one");
  if (parent && out)
    stock.cut_from =
        known(CutFrom{parent->value.upright(), static_cast<int>(std::min(out->value, most_out))},
              cut.range());
}

Problem one_or_two_sides(FactLine line) {
  return {.check = "number-too-big",
          .range = line.range("count"),
          .message = "a sheet has two sides to print on",
          .why = "paper that takes print on one side only, as labels do, says 1",
          .type = {{"sides      1", {}}}};
}

void take_sides(Reader &reader, const Facts &facts, Stock &stock) {
  const FactLine opacity = facts.find("opacity");
  stock.opacity = value_in<Share>(opacity, "opacity");
  const FactLine sides = facts.find("sides");
  const auto count = count_in(reader, sides, "count", 1, "paper with no side takes no print");
  if (count && count->value > 2)
    reader.report(one_or_two_sides(sides));
  if (count && count->value == 1)
    stock.one_side = known(true, sides.range());
}

Stock stock_of(Reader &reader, const Named &named, const Facts &facts) {
  Stock stock;
  stock.name = named.name;
  stock.title = named.line.words("title");
  stock.range = named.line.range();
  take_weight(reader, named.line, facts, stock);
  take_sheet(reader, named.line, facts, stock);
  if (const auto tint = value_in<language::ColourName>(facts.find("tint"), "tint");
      tint && tint->value.name.empty())
    stock.tint = known(tint->value.colour, tint->from);
  take_caliper(reader, facts, stock);
  take_purchase(reader, facts, stock);
  take_sides(reader, facts, stock);
  return stock;
}

} // namespace

void take_stocks(Reader &reader) {
  const std::vector<Facts> facts = facts_of_all(reader, Family::stock);
  const Things &things = reader.things(Family::stock);
  for (std::size_t i = 0; i < things.all.size(); ++i)
    reader.edition.stocks.push_back(stock_of(reader, things.all[i], facts[i]));
  // A tint may be given by another paper's name, so these come when all papers are there.
  for (std::size_t i = 0; i < things.all.size(); ++i) {
    const FactLine line = facts[i].find("tint");
    const auto *tint = line ? line.get<language::ColourName>("tint") : nullptr;
    if (!tint || tint->name.empty())
      continue;
    if (const auto paint = paint_in(reader, line, "tint"))
      reader.edition.stocks[i].tint = known(paint->value.colour, paint->from);
  }
}

} // namespace bodkin
