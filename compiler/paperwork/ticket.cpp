#include "paperwork/ticket.hpp"

#include "paperwork/pass_prices.hpp"
#include "problems/characters.hpp"
#include "sheet/machine_of.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::paperwork {
namespace {

struct TicketWriter {
  const Making &making;
  std::vector<Pile> all;
  Leaflet leaflet{};

  const Edition &edition() const { return making.edition; }
  std::string money(const Exact &amount) const {
    return shown(amount, making.estimate.currency, 4);
  }

  std::int64_t times(const Pass &pass) const {
    return pass.sheets.empty() ? 0 : all[static_cast<std::size_t>(pass.sheets.front())].sheets;
  }

  // A file that has a page for each sheet is printed once.
  std::string times_words(const Pass &pass) const {
    return pass.numbered ? "once" : std::to_string(times(pass));
  }

  static std::string sides(const Pass &pass) {
    return pass.sides == PassSides::both     ? "both"
           : pass.sides == PassSides::fronts ? "fronts only"
                                             : "backs only";
  }
  std::string turned(const Pass &pass) const {
    if (pass.sides != PassSides::both)
      return "";
    return *machine_of(edition(), pass.machine).flip == SheetEdge::long_edge ? "long edge"
                                                                             : "short edge";
  }

  // A row for each ink of a pass; the file and its paper are said on the first.
  void rows_of(const Pass &pass, Table &table) const {
    std::vector<PassPrice> prices = prices_of(making, pass);
    std::stable_sort(
        prices.begin(), prices.end(),
        [](const PassPrice &one, const PassPrice &other) { return one.mode < other.mode; });
    const std::vector<std::string> said{pass.file, times_words(pass),
                                        paper_words(edition(), pass.stock), sides(pass),
                                        turned(pass)};
    if (prices.empty()) {
      table.rows.push_back(said);
      for (const std::string &cell :
           {std::string(spoken::mode_name(pass.mode)), std::string("ask"), std::string("ask")})
        table.rows.back().push_back(cell);
      return;
    }
    for (std::size_t i = 0; i < prices.size(); ++i) {
      std::vector<std::string> row = i == 0 ? said : std::vector<std::string>(said.size());
      row.push_back(fmt::format("{} {}", prices[i].sides, spoken::mode_name(prices[i].mode)));
      row.push_back(money(prices[i].rate));
      row.push_back(money(prices[i].total));
      table.rows.push_back(std::move(row));
    }
  }

  void passes() {
    Table table{{"file", "times", "paper", "sides", "turned over", "sides of the run", "a side",
                 "comes to"},
                {},
                {false, true, false, false, false, false, true, true}};
    for (const Pass &pass : making.passes)
      rows_of(pass, table);
    other_charges(table);
    leaflet.add(std::move(table));
  }

  // Tax and whatever else the shop asks beside its price a side; then all of it.
  void other_charges(Table &table) const {
    Exact total;
    for (const EstimateLine &line : making.estimate.lines) {
      if (line.group != Group::printing && line.group != Group::tax)
        continue;
      total += line.total;
      if (line.group == Group::tax || line.what.find(" sides at ") == std::string::npos)
        table.rows.push_back({harmless(line.what), "", "", "", "", "", "", money(line.total)});
    }
    table.rows.push_back({"expected in all", "", "", "", "", "", "", money(total)});
    table.summed = true;
  }

  std::string brought(const StockId stock, std::int64_t sheets) const {
    if (stock == StockId::none)
      return "";
    const Stock &paper = edition()[stock];
    if (paper.included)
      return "the shop's own, in the price of a side";
    if (paper.have && **paper.have >= sheets)
      return fmt::format("brought by the maker, {} at hand", **paper.have);
    if (paper.have)
      return fmt::format("brought by the maker: {} at hand, {} to buy", **paper.have,
                         sheets - **paper.have);
    return "brought by the maker";
  }

  void papers() {
    Table table{
        {"paper", "weight", "sheet", "sheets", "who brings it"}, {}, {false, false, false, true}};
    std::vector<std::pair<StockId, Size>> seen;
    for (const Pile &pile : all) {
      const Sheet &sheet = making.imposition.sheets[static_cast<std::size_t>(pile.sheet)];
      if (std::find(seen.begin(), seen.end(), std::pair{sheet.stock, sheet.size.upright()}) !=
          seen.end())
        continue;
      seen.emplace_back(sheet.stock, sheet.size.upright());
      std::int64_t sheets = 0;
      for (const Pile &other : all) {
        const Sheet &its = making.imposition.sheets[static_cast<std::size_t>(other.sheet)];
        sheets += its.stock == sheet.stock && its.size.upright() == sheet.size.upright()
                      ? other.sheets
                      : 0;
      }
      const bool weighed = sheet.stock != StockId::none && edition()[sheet.stock].weight;
      table.rows.push_back({paper_words(edition(), sheet.stock),
                            weighed ? written(**edition()[sheet.stock].weight) : "",
                            spoken::named_and_measured(sheet.size, edition().ruler),
                            std::to_string(sheets), brought(sheet.stock, sheets)});
    }
    leaflet.add(std::move(table));
  }

  // The page behind a page, on the same leaf.
  int behind(const Sheet &sheet, const Place &place) const {
    Box box = place.box;
    if (sheet.turns_upright)
      box.x = sheet.size.width - box.right();
    else
      box.y = sheet.size.height - box.foot();
    for (const Place &other : sheet.sides[1].places)
      if (other.box == box)
        return other.page;
    return 0;
  }

  // The row's file says already whose book it is.
  std::string said(const Sheet &sheet, int page) const {
    return sheet.in_place_of > 0 ? fmt::format("page {}", page - sheet.pages_before)
                                 : page_words(making, page);
  }

  // Of a two-sided sheet, which page must stand behind which: the pair that a reader meets first.
  std::string held_to_light(const Sheet &sheet) const {
    int page = 0, other = 0;
    for (const Place &place : sheet.sides[0].places)
      if (const int back = behind(sheet, place);
          place.page > 0 && back > 0 && (page == 0 || place.page < page)) {
        page = place.page;
        other = back;
      }
    return page == 0 ? "both sides as in the file"
                     : fmt::format("{} behind {}, heads the same way", said(sheet, other),
                                   said(sheet, page));
  }

  std::string ink_of(const PassPage &page) const {
    const SideMode mode =
        making.modes[static_cast<std::size_t>(page.sheet)][page.side == SideName::front ? 0U : 1U];
    return page.prints && mode ? std::string(spoken::mode_name(*mode)) : "empty";
  }

  // Of the pages of a file, those from `first` on that are of one sheet.
  std::vector<std::string> check_row(const Pass &pass, std::size_t first, std::size_t end) const {
    const std::size_t sides = pass.sides == PassSides::both ? 2 : 1;
    std::vector<std::string> row{first == 0 ? pass.file : "",
                                 sides > 1 ? fmt::format("{} and {}", first + 1, first + 2)
                                           : std::to_string(first + 1),
                                 "", "", "one side printed by this file, the other not"};
    if (end - first > sides)
      row[1] += fmt::format(", so on to {}", end);
    for (std::size_t i = first; i < first + sides; ++i)
      row[pass.pages[i].side == SideName::front ? 2 : 3] = ink_of(pass.pages[i]);
    if (sides > 1)
      row[4] = held_to_light(
          making.imposition.sheets[static_cast<std::size_t>(pass.pages[first].sheet)]);
    return row;
  }

  // A row for each sheet: one that is right says nothing of the next.
  void check_rows(const Pass &pass, Table &table) const {
    constexpr std::size_t most = 24;
    std::size_t rows = 0;
    for (std::size_t first = 0, end = 0; first < pass.pages.size(); first = end, ++rows) {
      while (end < pass.pages.size() && pass.pages[end].sheet == pass.pages[first].sheet)
        ++end;
      if (rows < most)
        table.rows.push_back(check_row(pass, first, end));
    }
    if (rows > most)
      table.rows.push_back(
          {"", "", "", "",
           fmt::format("{} more likewise",
                       counted(static_cast<std::int64_t>(rows - most), "sheet", "sheets"))});
  }

  void checks() {
    leaflet.add(Headline{"Before the whole run: one of each", 2, {}});
    leaflet.add(
        Passage{"",
                "Print one of each; whoever ordered looks at it, and then the rest are printed. "
                "That one counts among the times above. At 100 %, not fitted or shrunk; "
                "sorting off (uncollated), so that the copies of each sheet come out "
                "together. A side named black is charged as black.",
                false});
    Table table{{"file", "its pages", "front", "back",
                 "right when held to the light, by pages of the copy"},
                {},
                {}};
    for (const Pass &pass : making.passes)
      check_rows(pass, table);
    leaflet.add(std::move(table));
  }

  void numbers() {
    for (const Pass &pass : making.passes)
      if (pass.numbered)
        leaflet.add(Passage{"", numbered_words(making, pass), false});
  }

  void feeding() {
    for (const Pass &pass : making.passes)
      for (const std::string &line : pass.feeding)
        if (line.starts_with("Print all pages"))
          continue; // told above, with its numbers
        else if (pass.sides != PassSides::both || line.starts_with("Put the sheets") ||
                 line.starts_with("Lift") || line.starts_with("Lay in"))
          leaflet.add(Passage{"", fmt::format("{}: {}", pass.file, line), true});
  }
};

std::string machines_words(const Making &making) {
  std::string text;
  std::vector<MachineId> seen;
  for (const Pass &pass : making.passes) {
    if (std::find(seen.begin(), seen.end(), pass.machine) != seen.end())
      continue;
    seen.push_back(pass.machine);
    const Machine &machine = machine_of(making.edition, pass.machine);
    text +=
        (text.empty() ? "" : ", ") + harmless(machine.title.empty() ? machine.name : machine.title);
  }
  return text;
}

std::string aside_of(const Making &making) {
  const Run &run = *making.edition.run;
  std::string text = runs_words(making.edition);
  if (run.spare > 0)
    text += fmt::format("{} {} spare", making.edition.runs.empty() ? " and" : ", with", run.spare);
  if (making.edition.maker)
    text += fmt::format(". For {}", harmless(**making.edition.maker));
  const std::string machines = machines_words(making);
  return text + (machines.empty() ? "" : ". On: " + machines) + ".";
}

} // namespace

Leaflet job_ticket(const Making &making) {
  TicketWriter writer{making, piles(making)};
  writer.leaflet.kind = "Ticket for the counter";
  writer.leaflet.title = harmless(*making.edition.title);
  writer.leaflet.aside = aside_of(making);
  writer.leaflet.paper = home_paper(making.edition.ruler);
  writer.leaflet.ruler = making.edition.ruler;
  writer.leaflet.hanging = false;
  writer.leaflet.add(Headline{"Passes", 2, {}});
  writer.passes();
  writer.numbers();
  writer.feeding();
  writer.leaflet.add(Headline{"Paper", 2, {}});
  writer.papers();
  writer.checks();
  return std::move(writer.leaflet);
}

} // namespace bodkin::paperwork
