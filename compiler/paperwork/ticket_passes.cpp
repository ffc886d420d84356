// What a machine is asked to print, and what it is paid for it.
#include "paperwork/ticket_writer.hpp"

#include "paperwork/own_words.hpp"
#include "paperwork/pass_prices.hpp"
#include "problems/characters.hpp"
#include "sheet/machine_of.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::paperwork {
namespace {

constexpr std::string_view to_ask = "ask"; // where a side has no price

std::string sides_of(const Pass &pass) {
  return pass.sides == PassSides::both     ? "both"
         : pass.sides == PassSides::fronts ? "fronts only"
                                           : "backs only";
}

std::string turned(const Edition &edition, const Pass &pass) {
  if (pass.sides != PassSides::both)
    return "";
  return *machine_of(edition, pass.machine).flip == SheetEdge::long_edge ? "long edge"
                                                                         : "short edge";
}

// A row for each ink of a pass; the file and its paper are said on the first.
void rows_of(const TicketWriter &writer, const Pass &pass, Table &table) {
  std::vector<PassPrice> prices = prices_of(writer.making, pass);
  std::stable_sort(prices.begin(), prices.end(), [](const PassPrice &one, const PassPrice &other) {
    return one.mode < other.mode;
  });
  const std::vector<std::string> said{pass.file, times_words(writer.making, pass),
                                      paper_words(writer.edition(), pass.stock), sides_of(pass),
                                      turned(writer.edition(), pass)};
  if (prices.empty()) {
    table.rows.push_back(said);
    for (const std::string_view cell : {spoken::mode_name(pass.mode), to_ask, to_ask})
      table.rows.back().emplace_back(cell);
    return;
  }
  for (std::size_t i = 0; i < prices.size(); ++i) {
    std::vector<std::string> row = i == 0 ? said : std::vector<std::string>(said.size());
    row.push_back(fmt::format("{} {}", prices[i].sides, spoken::mode_name(prices[i].mode)));
    row.push_back(writer.price(prices[i].rate));
    row.push_back(writer.money(prices[i].total));
    table.rows.push_back(std::move(row));
  }
}

// The lines of the estimate that are paid at a counter: printing, what is asked beside, and tax.
std::vector<const EstimateLine *> lines_of(const TicketWriter &writer, const Counter &counter) {
  std::vector<const EstimateLine *> lines;
  for (const EstimateLine &line : writer.making.estimate.lines)
    if ((line.group == Group::printing || line.group == Group::tax) &&
        (writer.one_machine() ||
         is_paid_at(line, machine_of(writer.edition(), counter.machine).name)))
      lines.push_back(&line);
  return lines;
}

Exact expected_at(const TicketWriter &writer, const Counter &counter) {
  Exact total;
  for (const EstimateLine *line : lines_of(writer, counter))
    total += line->total;
  return total;
}

bool has_a_price(const TicketWriter &writer, const Counter &counter) {
  return std::none_of(counter.passes.begin(), counter.passes.end(),
                      [&](const Pass *pass) { return prices_of(writer.making, *pass).empty(); });
}

// Tax and whatever else the shop asks beside its price a side; then all of it.
void other_charges(const TicketWriter &writer, const Counter &counter, Table &table) {
  const auto row = [&](std::string what, const Exact &total) {
    table.rows.push_back({std::move(what), "", "", "", "", "", "", writer.money(total)});
  };
  for (const EstimateLine *line : lines_of(writer, counter))
    if (line->group == Group::tax || line->what.find(" sides at ") == std::string::npos)
      row(harmless(line->what), line->total);
  row(fmt::format("expected {}{}", writer.one_machine() ? "in all" : "there",
                  has_a_price(writer, counter) ? "" : ", without what is to be asked"),
      expected_at(writer, counter));
  table.summed = true;
}

std::string files_of(const Counter &counter) {
  std::string text;
  for (const Pass *pass : counter.passes)
    text += (text.empty() ? "" : ", ") + pass->file;
  return text;
}

// Of sheets that go through two machines: which comes first.
void tell_ways(TicketWriter &writer) {
  for (const Pass &pass : writer.making.passes)
    for (const Pass *later : later_on(writer.making, pass))
      if (later->machine != pass.machine)
        writer.say(fmt::format(
            "{} goes first, to {}; its sheets then go to {}, where {} is printed on {}.", pass.file,
            machine_in_text(writer.edition(), pass.machine),
            machine_in_text(writer.edition(), later->machine), later->file,
            later->sides == PassSides::backs    ? "their backs"
            : later->sides == PassSides::fronts ? "their fronts"
                                                : "them too"));
}

} // namespace

void tell_machines(TicketWriter &writer) {
  writer.leaflet.add(Headline{"What goes where", 2, {}});
  writer.say(fmt::format("{} machines print this edition; each has a leaf of its own below.",
                         writer.counters.size()));
  Table table{{"machine", "files", "expected there"}, {}, {false, false, true}};
  Exact total;
  bool priced = true;
  for (const Counter &counter : writer.counters) {
    const Exact there = expected_at(writer, counter);
    const bool known = has_a_price(writer, counter);
    table.rows.push_back({machine_words(writer.edition(), counter.machine), files_of(counter),
                          known ? writer.money(there) : std::string(to_ask)});
    total += there;
    priced = priced && known;
  }
  table.rows.push_back({priced ? "all together" : "all together, without what is to be asked", "",
                        writer.money(total)});
  table.summed = true;
  writer.leaflet.add(std::move(table));
  tell_ways(writer);
}

void tell_passes(TicketWriter &writer, const Counter &counter) {
  Table table{
      {"file", "times", "paper", "sides", "turned over", "sides of the run", "a side", "comes to"},
      {},
      {false, true, false, false, false, false, true, true}};
  for (const Pass *pass : counter.passes)
    rows_of(writer, *pass, table);
  other_charges(writer, counter, table);
  writer.leaflet.add(without_empty_columns(std::move(table)));
}

void tell_feeding(TicketWriter &writer, const Counter &counter) {
  for (const Pass *pass : counter.passes)
    if (pass->numbered)
      writer.say(numbered_words(writer.making, *pass));
  for (const Pass *pass : counter.passes)
    for (const std::string &line : pass->feeding)
      if (line.starts_with("Print all pages"))
        continue; // told above, with its numbers
      else if (pass->sides != PassSides::both || line.starts_with("Put the sheets") ||
               line.starts_with("Lift") || line.starts_with("Lay in"))
        writer.say(fmt::format("{}: {}", pass->file, line), true);
  for (const Pass *pass : counter.passes)
    for (const Pass *later : later_on(writer.making, *pass))
      if (later->machine != pass->machine)
        writer.say(fmt::format("{}: Its sheets go on to {}, for {}. Keep them flat, in their "
                               "order and all the same way up.",
                               pass->file, machine_in_text(writer.edition(), later->machine),
                               later->file),
                   true);
}

} // namespace bodkin::paperwork
