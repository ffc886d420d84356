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

bool any_cover(const Edition &edition, const std::set<int> &pages) {
  return std::ranges::any_of(pages, [&](int page) { return edition.is_cover(page); });
}

void add_colour(std::vector<Saving> &found, const Edition &edition, const Laid &laid,
                const PagesDrawn &drawn, const Sources &sources) {
  for (const ColourSaving &one : colour_savings(edition, laid, drawn, sources, most_savings)) {
    Saving saving;
    std::visit([&](const auto &change) { saving.change = change; }, one.change);
    saving.what = one.what;
    saving.loss = one.lost == 0 ? Loss::nothing : Loss::looks;
    saving.cover = one.cover;
    saving.pages = one.lost;
    found.push_back(std::move(saving));
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

// No paper stands in for a board.
bool makes_boards(const Edition &edition, StockId stock) {
  return std::ranges::any_of(edition.pieces, [&](const auto &piece) {
    return piece->is_boards() && *piece->edition.paper == stock;
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
      if (other != from && !makes_boards(edition, from) &&
          passes_as(edition, edition[from], edition[other]))
        found.push_back({PaperSwap{from, other},
                         fmt::format("{} in place of {}", edition[other].name, edition[from].name),
                         Loss::making, any_cover(edition, on_it), on_it.size()});
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
    const bool may_already = std::ranges::any_of(
        edition.other_machines, [&](const auto &machine) { return *machine == other; });
    if (other != from && !may_already && prints_as(edition, laid, edition[from], edition[other]))
      found.push_back({MachineSwap{from, other}, "printed at " + edition[other].name});
  }
}

// Each that costs less than another of the same papers is told by its price, later.
void add_layings(std::vector<Saving> &found, const Edition &edition, const std::vector<bool> &draws,
                 const Sources &sources) {
  const auto add = [&](std::optional<std::size_t> piece) {
    for (const Laying &laying : layings(edition, piece, Other::no_heavier, draws, sources))
      if (!is_laid(edition, laying))
        found.push_back({laying, named(edition, laying)});
  };
  add(std::nullopt);
  for (std::size_t i = 0; i < edition.pieces.size(); ++i)
    if (may_go_up(*edition.pieces[i]))
      add(i);
}

// A piece is the copy's, not the other book's that stands in the book's place.
bool is_of_a_piece(const Saving &saving) {
  const auto *laying = std::get_if<Laying>(&saving.change);
  return laying != nullptr && laying->piece;
}

void print_at(Edition &part, MachineId machine) {
  part.machine.value = machine;
  for (Page &page : part.pages)
    if (!page.asked.machine)
      page.machine.value = machine;
}

struct Making {
  Edition &edition;
  const Sources &sources;

  void operator()(const ColourOut &out) const { take_out(edition, out, sources); }
  void operator()(const BlackPages &out) const { take_out(edition, out, sources); }

  void operator()(const PaperSwap &swapped) const {
    swap_papers(edition, {swapped});
    swap_papers_of_pieces(edition, {swapped});
  }

  // Pieces that name no machine have the book's.
  void operator()(const MachineSwap &swapped) const {
    print_at(edition, swapped.to);
    for (std::shared_ptr<const Piece> &piece : edition.pieces)
      if (piece->edition.machine.from == edition.machine.from) {
        auto changed = std::make_shared<Piece>(*piece);
        print_at(changed->edition, swapped.to);
        piece = std::move(changed);
      }
  }

  void operator()(const Laying &laying) const { edition = laid_so(std::move(edition), laying); }
};

struct Writing {
  const Edition &before;
  const Edition &after;
  const Sources &sources;
  ChangedLines &lines;

  void operator()(const ColourOut &out) const { type_lines(before, after, out, sources, lines); }
  void operator()(const BlackPages &out) const { type_lines(before, after, out, sources, lines); }

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

std::vector<Saving> savings(const Edition &edition, const Laid &laid, const PagesDrawn &drawn,
                            const Sources &sources) {
  std::vector<Saving> found;
  add_colour(found, edition, laid, drawn, sources);
  add_papers(found, edition, laid);
  add_machines(found, edition, laid);
  add_layings(found, without_matter(edition), drawn.draws, sources);
  std::ranges::stable_sort(found, {}, [](const Saving &saving) {
    return std::tuple(saving.loss, saving.cover, saving.pages);
  });
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
