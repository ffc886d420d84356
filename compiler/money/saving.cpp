#include "money/saving.hpp"

#include "edition/piece.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <tuple>

namespace bodkin {
namespace {

// Beyond so many a maker is not choosing any more, and each one costs a new estimate.
constexpr std::size_t most_savings = 40;

// By page: the line that asks for its colour, or none.
std::vector<LineKey> colour_lines(const Edition &edition, const Sources &sources) {
  std::vector<LineKey> lines(edition.pages.size());
  LinesOf line_of_mode(sources);
  for (std::size_t page = 1; page < lines.size(); ++page)
    if (*edition.pages[page].mode == Mode::colour)
      lines[page] = line_of_mode(edition.pages[page].mode.from);
  return lines;
}

std::set<int> pages_of(const std::vector<LineKey> &asking, const std::set<LineKey> &lines,
                       const std::vector<bool> &draws) {
  std::set<int> pages;
  for (std::size_t page = 1; page < asking.size() && page < draws.size(); ++page)
    if (draws[page] && lines.contains(asking[page]))
      pages.insert(static_cast<int>(page));
  return pages;
}

// "page 4", "pages 9-12 and 15".
std::string pages_named(const std::set<int> &pages) {
  std::vector<std::string> runs;
  for (auto page = pages.begin(); page != pages.end();) {
    const int first = *page;
    int last = first;
    while (++page != pages.end() && *page == last + 1)
      ++last;
    runs.push_back(first == last ? std::to_string(first) : fmt::format("{}-{}", first, last));
  }
  std::string text = pages.size() == 1 ? "page " : "pages ";
  for (std::size_t i = 0; i < runs.size(); ++i)
    text += (i == 0 ? "" : i + 1 == runs.size() ? " and " : ", ") + runs[i];
  return text;
}

bool any_cover(const Edition &edition, const std::set<int> &pages) {
  return std::ranges::any_of(pages, [&](int page) { return edition.is_cover(page); });
}

std::string colour_out_named(const Edition &edition, const std::set<LineKey> &lines,
                             const std::set<int> &pages, const Sources &sources) {
  const bool by_cover = edition.cover_mode && lines.size() == 1 &&
                        *lines.begin() == line_of(sources, edition.cover_mode->from);
  return (by_cover ? "the cover" : pages_named(pages)) + " in black";
}

void add_colour(std::vector<Saving> &found, const Edition &edition, const Laid &laid,
                const std::vector<bool> &draws, const Sources &sources) {
  std::set<std::set<LineKey>> seen;
  const std::vector<LineKey> asking = colour_lines(edition, sources);
  for (const ChargedSide &side : laid.sides) {
    if (!side.printed || side.mode != Mode::colour || found.size() == most_savings)
      continue;
    std::set<LineKey> lines;
    const Sheet &sheet = laid.imposition.sheets[static_cast<std::size_t>(side.sheet)];
    for (const Place &place : sheet.sides[static_cast<std::size_t>(side.side)].places) {
      const auto page = static_cast<std::size_t>(place.page);
      if (place.page > 0 && page < asking.size() && page < draws.size() && draws[page])
        lines.insert(asking[page]);
    }
    std::erase_if(lines, [](const LineKey &line) { return line.number == 0; });
    if (lines.empty() || !seen.insert(lines).second)
      continue;
    const std::set<int> pages = pages_of(asking, lines, draws);
    found.push_back({ColourOut{lines}, colour_out_named(edition, lines, pages, sources),
                     any_cover(edition, pages), pages.size()});
  }
}

bool passes_as(const Edition &edition, const Stock &from, const Stock &to) {
  if (!(to.costs || to.included) || !to.weight || !from.weight || !to.sheet || !from.sheet ||
      **to.sheet != **from.sheet)
    return false;
  // A heavier paper may need a crease and a longer staple, and would be no like exchange.
  if ((*to.weight)->grammage > (*from.weight)->grammage)
    return false;
  return std::ranges::all_of(edition.machines, [&](const Machine &machine) {
    return !machine.lightest || (*machine.lightest)->grammage <= (*to.weight)->grammage;
  });
}

void add_papers(std::vector<Saving> &found, const Edition &edition, const Laid &laid) {
  std::map<StockId, std::set<int>> pages;
  for (const Sheet &sheet : laid.imposition.sheets)
    for (const Side &side : sheet.sides)
      for (const Place &place : side.places)
        if (place.page > 0 && sheet.stock != StockId::none)
          pages[sheet.stock].insert(place.page);
  const std::size_t most = found.size() + most_savings;
  for (const auto &[from, on_it] : pages)
    for (std::size_t to = 0; to < edition.stocks.size() && found.size() < most; ++to) {
      const auto other = static_cast<StockId>(to);
      if (other != from && passes_as(edition, edition[from], edition[other]))
        found.push_back({PaperSwap{from, other},
                         fmt::format("{} in place of {}", edition[other].name, edition[from].name),
                         any_cover(edition, on_it), on_it.size()});
    }
}

bool prints(const Machine &machine, Mode mode) {
  return std::ranges::any_of(machine.prints, [&](const SidePrice &p) { return p.mode == mode; });
}

// What passes on one passes on the other: no wider bare edge, no more drift, every paper and ink.
bool prints_as(const Edition &edition, const Laid &laid, const Machine &from, const Machine &to) {
  if (*to.duplex == Duplex::none || *to.bare > *from.bare || *to.drift > *from.drift || to.lead ||
      *to.resolution < *from.resolution)
    return false;
  if (std::ranges::any_of(laid.sides, [&](const ChargedSide &side) {
        return side.printed && edition[side.machine].name == from.name && !prints(to, side.mode);
      }))
    return false;
  return std::ranges::all_of(laid.imposition.sheets, [&](const Sheet &sheet) {
    if (sheet.stock == StockId::none || !edition[sheet.stock].weight)
      return false;
    const Grammage grammage = (*edition[sheet.stock].weight)->grammage;
    const bool feeds = (!to.lightest || (*to.lightest)->grammage <= grammage) &&
                       (!to.heaviest || grammage <= (*to.heaviest)->grammage);
    const Size size = sheet.size.upright();
    return feeds && (to.sizes.empty() || std::ranges::any_of(to.sizes, [&](const auto &takes) {
                       return *takes == size;
                     }));
  });
}

void add_machines(std::vector<Saving> &found, const Edition &edition, const Laid &laid) {
  const MachineId from = *edition.machine;
  if (from == MachineId::none)
    return;
  for (std::size_t to = 0; to < edition.machines.size() && to < most_savings; ++to) {
    const auto other = static_cast<MachineId>(to);
    if (other != from && prints_as(edition, laid, edition[from], edition[other]))
      found.push_back({MachineSwap{from, other}, "printed at " + edition[other].name, false, 0});
  }
}

// Each that costs less than another of the same papers is told by its price, later.
void add_layings(std::vector<Saving> &found, const Edition &edition, const std::vector<bool> &draws,
                 const Sources &sources) {
  const auto add = [&](std::optional<std::size_t> piece) {
    for (const Laying &laying : layings(edition, piece, Other::no_heavier, draws, sources))
      found.push_back({laying, named(edition, laying), false, 0});
  };
  add(std::nullopt);
  for (std::size_t i = 0; i < edition.pieces.size(); ++i)
    if (may_go_up(*edition.pieces[i]))
      add(i);
}

void swap(Known<StockId> &stock, const PaperSwap &swapped) {
  if (*stock == swapped.from)
    stock.value = swapped.to;
}
void swap(std::optional<Known<StockId>> &stock, const PaperSwap &swapped) {
  if (stock)
    swap(*stock, swapped);
}

// A piece is the copy's, not the other book's that stands in the book's place.
bool is_of_a_piece(const Saving &saving) {
  const auto *laying = std::get_if<Laying>(&saving.change);
  return laying != nullptr && laying->piece;
}

struct Making {
  Edition &edition;
  const Sources &sources;

  void operator()(const ColourOut &out) const {
    LinesOf line_of_mode(sources);
    const auto black = [&](Known<Mode> &mode) {
      if (*mode == Mode::colour && out.lines.contains(line_of_mode(mode.from)))
        mode.value = Mode::black;
    };
    black(edition.printing);
    if (edition.cover_mode)
      black(*edition.cover_mode);
    for (Page &page : edition.pages)
      black(page.mode);
  }

  void operator()(const PaperSwap &swapped) const {
    swap(edition.paper, swapped);
    swap(edition.cover_stock, swapped);
    for (Page &page : edition.pages)
      swap(page.asked.stock, swapped);
  }

  void operator()(const MachineSwap &swapped) const {
    edition.machine.value = swapped.to;
    for (Page &page : edition.pages)
      if (!page.asked.machine)
        page.machine.value = swapped.to;
  }

  void operator()(const Laying &laying) const { edition = laid_so(std::move(edition), laying); }
};

// What would fill in for pages whose line no longer says colour.
bool colour_is_default(const Edition &before, const Edition &after, LineKey line,
                       const Sources &sources) {
  const bool of_cover = before.cover_mode && line_of(sources, before.cover_mode->from) == line;
  if (of_cover)
    return *after.printing == Mode::colour;
  const std::vector<LineKey> asking = colour_lines(before, sources);
  for (std::size_t page = 1; page < asking.size(); ++page) {
    if (asking[page] != line)
      continue;
    const bool cover = after.cover_mode && after.is_cover(static_cast<int>(page));
    if ((cover ? **after.cover_mode : *after.printing) == Mode::colour)
      return true;
  }
  return false;
}

struct Writing {
  const Edition &before;
  const Edition &after;
  const Sources &sources;
  ChangedLines &lines;

  void operator()(const ColourOut &out) const {
    for (const LineKey &line : out.lines)
      lines.colour_out(line, colour_is_default(before, after, line, sources));
  }

  void rename(const std::optional<Known<StockId>> &asked, const PaperSwap &swapped) const {
    if (asked && **asked == swapped.from && asked->from.somewhere())
      lines.rename(line_of(sources, asked->from), before[swapped.from].name,
                   before[swapped.to].name);
  }

  // The lines that another run's book has beside the first's.
  void rename_own(const Edition &other, const PaperSwap &swapped, std::set<LineKey> &done) const {
    const auto own = [&](const Range &from) {
      return from.somewhere() && from != before.paper.from &&
             !(before.cover_stock && from == before.cover_stock->from) &&
             done.insert(line_of(sources, from)).second;
    };
    if (own(other.paper.from))
      rename(other.paper, swapped);
    if (other.cover_stock && own(other.cover_stock->from))
      rename(other.cover_stock, swapped);
  }

  void operator()(const PaperSwap &swapped) const {
    rename(before.paper, swapped);
    rename(before.cover_stock, swapped);
    std::set<LineKey> done;
    for (const auto &piece : before.pieces)
      if (piece->is_other_book())
        rename_own(piece->edition, swapped, done);
    for (const Page &page : before.pages)
      if (page.asked.stock && done.insert(line_of(sources, page.asked.stock->from)).second)
        rename(page.asked.stock, swapped);
  }

  void operator()(const MachineSwap &swapped) const {
    lines.rename(line_of(sources, before.machine.from), before[swapped.from].name,
                 before[swapped.to].name);
  }

  void operator()(const Laying &laying) const { type_lines(before, laying, sources, lines); }
};

} // namespace

std::vector<Saving> savings(const Edition &edition, const Laid &laid,
                            const std::vector<bool> &draws, const Sources &sources) {
  std::vector<Saving> found;
  add_colour(found, edition, laid, draws, sources);
  add_papers(found, edition, laid);
  add_machines(found, edition, laid);
  add_layings(found, without_matter(edition), draws, sources);
  std::ranges::stable_sort(
      found, {}, [](const Saving &saving) { return std::tuple(saving.cover, saving.pages); });
  return found;
}

Edition applied(Edition edition, const std::vector<Saving> &made, const Sources &sources) {
  for (const Saving &saving : made)
    std::visit(Making{edition, sources}, saving.change);
  for (std::shared_ptr<const Piece> &piece : edition.pieces) {
    if (!piece->is_other_book())
      continue;
    auto other = std::make_shared<Piece>(*piece);
    for (const Saving &saving : made)
      if (!is_of_a_piece(saving))
        std::visit(Making{other->edition, sources}, saving.change);
    piece = std::move(other);
  }
  return edition;
}

ChangedLines lines_to_type(const Edition &edition, const std::vector<Saving> &made,
                           const Sources &sources) {
  const Edition after = applied(edition, made, sources);
  ChangedLines lines(sources);
  for (const Saving &saving : made)
    std::visit(Writing{edition, after, sources, lines}, saving.change);
  return lines;
}

bool goes_with(const Saving &saving, const std::vector<Saving> &made) {
  // More on a sheet is laid for the papers as they are.
  if (const auto *laying = std::get_if<Laying>(&saving.change))
    return std::ranges::none_of(made, [&](const Saving &other) {
      const auto *earlier = std::get_if<Laying>(&other.change);
      return earlier ? earlier->piece == laying->piece
                     : std::holds_alternative<PaperSwap>(other.change);
    });
  if (std::holds_alternative<MachineSwap>(saving.change))
    return std::ranges::none_of(made, [](const Saving &other) {
      return std::holds_alternative<MachineSwap>(other.change);
    });
  const auto *swap = std::get_if<PaperSwap>(&saving.change);
  return !swap || std::ranges::none_of(made, [&](const Saving &other) {
    if (std::holds_alternative<Laying>(other.change))
      return true;
    const auto *earlier = std::get_if<PaperSwap>(&other.change);
    return earlier &&
           (earlier->from == swap->from || earlier->to == swap->from || earlier->from == swap->to);
  });
}

} // namespace bodkin
