#include "edition/like.hpp"
#include "edition/supplies.hpp"
#include "edition/values.hpp"

#include <fmt/format.h>

namespace bodkin {
namespace {

constexpr PricedBy by_side{
    {Per::side, Per::sides, Per::each, Per::side}, "a machine's price is for a side", "a side"};

Problem priced_twice(Reader &reader, FactLine line, const SidePrice &first) {
  return {
      .check = "same-fact-twice",
      .range = line.range(),
      .message = fmt::format("what such a side costs is written already, on line {}",
                             reader.sources.line_number(first.range)),
      .why = "of two prices for one thing neither can be charged; a lower one that begins later "
             "says from how many sides",
      .type = {line.has("from")
                   ? WayOut{{}, "keep the line that is right and take the other out"}
                   : WayOut{fmt::format("{}, from 100 sides", reader.sources.text(line.range())),
                            "with the number that was meant, or take one of them out"}},
      .related = {{first.range, "the first of them"}}};
}

bool for_the_same(const SidePrice &a, const SidePrice &b) {
  return a.mode == b.mode && a.size == b.size && a.from_sides == b.from_sides;
}

void take_prints(Reader &reader, FactLine line, Machine &machine) {
  const auto mode = mode_in(line, "mode");
  const auto rate = rate_by(reader, line, "rate", by_side);
  if (!mode || !rate)
    return;
  SidePrice price;
  price.mode = mode->value;
  price.rate = rate->value;
  price.range = line.range();
  if (const auto size = value_in<Size>(line, "size"))
    price.size = size->value.upright();
  if (const auto from = count_in(reader, line, "from", 1, "the first side is number 1"))
    price.from_sides = from->value;
  for (const SidePrice &other : machine.prints)
    if (for_the_same(other, price))
      return reader.report(priced_twice(reader, line, other));
  machine.prints.push_back(price);
}

void take_paper_path(Reader &reader, const Facts &facts, Machine &machine) {
  if (const FactLine sizes = facts.find("sizes"))
    for (const language::Capture &part : sizes.in->tree.captured(*sizes.statement))
      if (const Size *size = std::get_if<Size>(&part.value))
        machine.sizes.push_back(known(size->upright(), sizes.in->tree.range(part)));
  const FactLine bare = facts.find("bare");
  if (const auto width = length_in(reader, bare, "bare", true))
    machine.bare = *width;
  machine.lead = length_in(reader, bare, "lead", true);
  const FactLine feeds = facts.find("feeds");
  machine.lightest = value_in<Weight>(feeds, "lightest");
  machine.heaviest = value_in<Weight>(feeds, "heaviest");
}

void take_duplex(Reader &reader, const Facts &facts, Machine &machine) {
  const FactLine duplex = facts.find("duplex");
  if (const auto how = text_in(duplex, "how"))
    machine.duplex = known(how->value == "machine" ? Duplex::by_machine
                           : how->value == "hand"  ? Duplex::by_hand
                                                   : Duplex::none,
                           how->from);
  if (const auto drift = length_in(reader, duplex, "drift", true))
    machine.drift = *drift;
  if (const auto edge = text_in(facts.find("flip"), "edge"))
    machine.flip =
        known(edge->value == "long" ? SheetEdge::long_edge : SheetEdge::short_edge, edge->from);
}

constexpr PricedBy a_run{{Per::run, Per::once, Per::run, Per::once},
                         "the least that a machine is paid is for a run",
                         "a run"};
constexpr PricedBy pass_or_run{
    {Per::pass, Per::run, Per::once, Per::once}, "setup is paid a pass, or once a run", "a pass"};

void take_habits(Reader &reader, const Facts &facts, Machine &machine) {
  if (const auto dpi = count_in(reader, facts.find("resolution"), "dpi", 1,
                                "a machine puts at least one dot on an inch"))
    machine.resolution = *dpi;
  if (const auto modes = text_in(facts.find("modes"), "modes"))
    machine.modes_apart = known(modes->value == "apart", modes->from);
  if (const auto blank = text_in(facts.find("blank"), "blank"))
    machine.blank_charged = known(blank->value == "charged", blank->from);
  if (const auto blue = paint_in(reader, facts.find("blue"), "colour"))
    machine.blue = known(blue->value.colour, blue->from);
  machine.least = rate_by(reader, facts.find("least"), "least", a_run);
  machine.setup = rate_by(reader, facts.find("setup"), "setup", pass_or_run);
  machine.speed = count_in(reader, facts.find("speed"), "sides", 1,
                           "a machine prints a side a minute at the least");
  machine.tax = share_in(reader, facts.find("tax"), "tax", of_tax);
}

Machine machine_of(Reader &reader, const Named &named, const Facts &facts) {
  Machine machine;
  machine.name = named.name;
  machine.title = named.line.words("title");
  machine.range = named.line.range();
  facts.each("prints", [&](FactLine line) { take_prints(reader, line, machine); });
  take_paper_path(reader, facts, machine);
  take_duplex(reader, facts, machine);
  take_habits(reader, facts, machine);
  return machine;
}

} // namespace

void take_machines(Reader &reader) {
  const std::vector<Facts> facts = facts_of_all(reader, Family::machine);
  const Things &things = reader.things(Family::machine);
  for (std::size_t i = 0; i < things.all.size(); ++i)
    reader.edition.machines.push_back(machine_of(reader, things.all[i], facts[i]));
}

} // namespace bodkin
