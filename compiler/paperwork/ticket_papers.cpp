// What paper is taken to a machine, and who brings it.
#include "paperwork/ticket_writer.hpp"

#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::paperwork {
namespace {

// Sheets alike, as they come to a machine: bare, or printed before at another.
struct Heaped {
  StockId stock = StockId::none;
  Size size; // as it lies
  MachineId from = MachineId::none;
  std::string file; // that was printed on them there
  std::int64_t sheets = 0;
  bool is_like(const Heaped &other) const {
    return stock == other.stock && size.upright() == other.size.upright() && file == other.file;
  }
};

void add(std::vector<Heaped> &heaps, const Heaped &more) {
  for (Heaped &heap : heaps)
    if (heap.is_like(more)) {
      heap.sheets += more.sheets;
      return;
    }
  heaps.push_back(more);
}

bool holds(const Pass &pass, int sheet) {
  return std::find(pass.sheets.begin(), pass.sheets.end(), sheet) != pass.sheets.end();
}

// The pass of another machine that a sheet has gone through before this one's first.
const Pass *printed_before(const Making &making, const Counter &counter, int sheet) {
  const Pass *last = nullptr;
  for (const Pass &pass : making.passes) {
    if (!holds(pass, sheet))
      continue;
    if (pass.machine == counter.machine)
      return last;
    last = &pass;
  }
  return last;
}

std::vector<Heaped> heaps_of(const TicketWriter &writer, const Counter &counter) {
  std::vector<Heaped> heaps;
  for (const Pile &pile : writer.all) {
    const bool printed = std::any_of(counter.passes.begin(), counter.passes.end(),
                                     [&](const Pass *pass) { return holds(*pass, pile.sheet); });
    if (!printed)
      continue;
    const Sheet &sheet = writer.sheet(pile.sheet);
    const Pass *before = printed_before(writer.making, counter, pile.sheet);
    add(heaps, {sheet.stock, sheet.size, before == nullptr ? MachineId::none : before->machine,
                before == nullptr ? "" : before->file, pile.sheets});
  }
  return heaps;
}

// With one machine, sheets that nothing is printed on are told too: they lie in the piles.
std::vector<Heaped> all_heaps(const TicketWriter &writer) {
  std::vector<Heaped> heaps;
  for (const Pile &pile : writer.all) {
    const Sheet &sheet = writer.sheet(pile.sheet);
    add(heaps, {sheet.stock, sheet.size, MachineId::none, "", pile.sheets});
  }
  return heaps;
}

std::string brought(const TicketWriter &writer, const Heaped &heap, bool with_purse) {
  if (heap.stock == StockId::none)
    return "";
  const Stock &paper = writer.edition()[heap.stock];
  if (!heap.file.empty())
    return fmt::format("from {}, printed by {}", machine_in_text(writer.edition(), heap.from),
                       heap.file);
  if (paper.included)
    return "the shop's own, in the price of a side";
  if (!paper.have || !with_purse)
    return "brought by the maker";
  return **paper.have >= heap.sheets ? fmt::format("brought by the maker, {} at hand", **paper.have)
                                     : fmt::format("brought by the maker: {} at hand, {} to buy",
                                                   **paper.have, heap.sheets - **paper.have);
}

void tell(TicketWriter &writer, const std::vector<Heaped> &heaps, bool with_purse) {
  Table table{
      {"paper", "weight", "sheet", "sheets", "who brings it"}, {}, {false, false, false, true}};
  for (const Heaped &heap : heaps) {
    const bool weighed =
        heap.stock != StockId::none && writer.edition()[heap.stock].weight.has_value();
    table.rows.push_back({paper_words(writer.edition(), heap.stock),
                          weighed ? written(**writer.edition()[heap.stock].weight) : "",
                          spoken::named_and_measured(heap.size, writer.edition().ruler),
                          std::to_string(heap.sheets), brought(writer, heap, with_purse)});
  }
  writer.leaflet.add(std::move(table));
}

bool maker_brings(const TicketWriter &writer, const Heaped &heap) {
  return heap.file.empty() &&
         (heap.stock == StockId::none || !writer.edition()[heap.stock].included);
}

// At hand is what all machines together have of a paper.
bool in_one_place(const TicketWriter &writer, const Heaped &heap) {
  int places = 0;
  for (const Counter &counter : writer.counters)
    for (const Heaped &other : heaps_of(writer, counter))
      places += other.stock == heap.stock && other.file.empty() ? 1 : 0;
  return places < 2;
}

} // namespace

void tell_papers(TicketWriter &writer, const Counter &counter) {
  const std::vector<Heaped> heaps =
      writer.one_machine() ? all_heaps(writer) : heaps_of(writer, counter);
  const bool with_purse =
      writer.one_machine() || std::all_of(heaps.begin(), heaps.end(), [&](const Heaped &heap) {
        return in_one_place(writer, heap);
      });
  const bool brings = std::any_of(heaps.begin(), heaps.end(),
                                  [&](const Heaped &heap) { return maker_brings(writer, heap); });
  writer.leaflet.add(
      Headline{brings ? "Paper, and a few sheets more of each for what jams" : "Paper", 2, {}});
  tell(writer, heaps, with_purse);
}

void tell_papers_in_all(TicketWriter &writer) {
  const std::vector<Heaped> heaps = all_heaps(writer);
  if (std::all_of(heaps.begin(), heaps.end(),
                  [&](const Heaped &heap) { return in_one_place(writer, heap); }))
    return;
  writer.leaflet.add(Headline{"Paper in all", 2, {}});
  tell(writer, heaps, true);
}

} // namespace bodkin::paperwork
