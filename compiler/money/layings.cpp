#include "money/layings.hpp"

#include "edition/piece.hpp"
#include "money/bill.hpp"
#include "sheet/live.hpp"
#include "sheet/machine_of.hpp"
#include "sheet/parts.hpp"

#include <algorithm>

namespace bodkin {
namespace {

// Each one costs a new estimate.
constexpr std::size_t most_numbers = 40;

using Piecewise = std::optional<std::size_t>;

const Edition &edition_of(const Edition &book, Piecewise piece) {
  return piece ? book.pieces[*piece]->edition : book;
}

const CopyPart &part_of(const std::vector<CopyPart> &parts, const Edition &book, Piecewise piece) {
  return piece ? part_called(parts, book.pieces[*piece]->name) : parts.front();
}

int up_of(const Edition &book, Piecewise piece) {
  return static_cast<int>(piece ? *book.pieces[*piece]->up : *book.up);
}

// So many are cut out in all.
std::int64_t needed(const Edition &book, Piecewise piece) {
  return (book.run->copies + book.run->spare) * (piece ? *book.pieces[*piece]->count : 1);
}

std::vector<WayUp> worth_trying(const std::vector<WayUp> &ways, std::int64_t all, int now) {
  std::vector<WayUp> worth;
  const auto sheets = [&](const WayUp &way) { return (all + way.up - 1) / way.up; };
  for (std::size_t i = 0; i < ways.size(); ++i)
    if (i + 1 == ways.size() || sheets(ways[i]) != sheets(ways[i + 1]) || ways[i].up == now)
      worth.push_back(ways[i]);
  if (worth.size() > most_numbers)
    std::erase_if(worth, [&, last = worth[worth.size() - most_numbers].up](const WayUp &way) {
      return way.up < last && way.up != now;
    });
  return worth;
}

std::size_t errors(const Problems &problems) {
  return static_cast<std::size_t>(std::ranges::count(problems, Kind::error, &Problem::kind));
}

bool takes(const Machine &machine, const Sheet &sheet, const Stock &stock) {
  const Size size = sheet.size.upright();
  if (!machine.sizes.empty() &&
      std::ranges::none_of(machine.sizes, [&](const auto &one) { return *one == size; }))
    return false;
  if (!stock.weight)
    return true;
  const Grammage grammage = (*stock.weight)->grammage;
  return (!machine.lightest || (*machine.lightest)->grammage <= grammage) &&
         (!machine.heaviest || grammage <= (*machine.heaviest)->grammage);
}

bool fed(const Edition &edition, const Laid &laid) {
  return std::ranges::all_of(laid.sides, [&](const ChargedSide &side) {
    const Sheet &sheet = laid.imposition.sheets[static_cast<std::size_t>(side.sheet)];
    return side.machine == MachineId::none || sheet.stock == StockId::none ||
           takes(edition[side.machine], sheet, edition[sheet.stock]);
  });
}

std::size_t unpriced(const Edition &edition, const Laid &laid) {
  const Bill priced_anew = bill(edition, laid.imposition, laid.sides, {});
  const Run &run = *edition.run;
  return priced_anew.unpriced_papers.size() +
         printing(edition, priced_anew.sides, run.copies + run.spare).unpriced.size();
}

Length keeps_off(const CopyPart &before, const CopyPart &after) {
  Length most;
  const int pages = std::min(before.imposition.page_count, after.imposition.page_count);
  for (int page = 1; page <= pages; ++page) {
    const LiveArea then = live_area(*after.edition, after.imposition, page);
    const LiveArea now = live_area(*before.edition, before.imposition, page);
    for (const PageEdge edge : {PageEdge::left, PageEdge::top, PageEdge::right, PageEdge::bottom})
      if (then[edge].asks() > now[edge].asks())
        most = std::max(most, then[edge].asks());
  }
  return most;
}

bool crosses_grain(const CopyPart &part) {
  return std::ranges::any_of(part.imposition.sheets, [](const Sheet &sheet) {
    return std::ranges::any_of(sheet.folds,
                               [](const Sheet::FoldLine &fold) { return !fold.along_grain; });
  });
}

// What stands in the way of printing it.
struct Hindered {
  std::size_t errors = 0, unpriced = 0;
  bool fed = true;
};

Hindered hindered(const Edition &edition, std::size_t errors, const std::vector<bool> &draws,
                  const Sources &sources) {
  const Laid laid = lay(edition, draws, sources);
  return {errors, unpriced(edition, laid), fed(edition, laid)};
}

bool no_worse(const Hindered &then, const Hindered &now) {
  return then.errors <= now.errors && then.unpriced <= now.unpriced && then.fed;
}

struct Finding {
  const Edition &edition;
  Piecewise piece;
  const std::vector<bool> &draws;
  const Sources &sources;
  const std::vector<CopyPart> &parts;
  const Hindered now;
  std::vector<Laying> found;

  void lay_on(std::vector<PaperSwap> papers) {
    Laying laying{piece, std::move(papers), {}, {}, {}, false};
    const Edition swapped = laid_so(edition, laying);
    const std::vector<WayUp> ways = ways_up(swapped, piece, sources);
    for (const WayUp &way : worth_trying(ways, needed(edition, piece), up_of(edition, piece))) {
      laying.way = way;
      add(laying);
    }
  }

  void add(Laying laying) {
    const Edition after = laid_so(edition, laying);
    Problems met;
    const std::vector<CopyPart> laid = impose_parts(after, sources, met);
    if (!is_laid(edition, laying) &&
        (errors(met) > now.errors || !no_worse(hindered(after, errors(met), draws, sources), now)))
      return;
    const CopyPart &before = part_of(parts, edition, piece), &then = part_of(laid, after, piece);
    laying.sheet = then.imposition.sheets.front().size.upright();
    laying.keeps_off = keeps_off(before, then);
    laying.turns_grain = crosses_grain(then) && !crosses_grain(before);
    found.push_back(std::move(laying));
  }
};

bool has_reverse(const Edition &edition) {
  return std::ranges::any_of(edition.pieces, [](const auto &p) { return p->is_reverse(); });
}

} // namespace

bool is_laid(const Edition &edition, const Laying &laying) {
  return laying.papers.empty() && laying.way.up == up_of(edition, laying.piece);
}

Edition laid_so(Edition edition, const Laying &laying) {
  if (!laying.piece) {
    edition.up.value = laying.way.up;
    swap_papers(edition, laying.papers);
    swap_papers_of_pieces(edition, laying.papers);
    return edition;
  }
  auto piece = std::make_shared<Piece>(*edition.pieces[*laying.piece]);
  piece->up.value = laying.way.up;
  swap_papers(piece->edition, laying.papers);
  edition.pieces[*laying.piece] = std::move(piece);
  return edition;
}

bool goes_through(const Edition &before, const Edition &after, const std::vector<bool> &draws,
                  const Sources &sources) {
  Problems now, then;
  impose_parts(before, sources, now);
  impose_parts(after, sources, then);
  return errors(then) <= errors(now) && no_worse(hindered(after, errors(then), draws, sources),
                                                 hindered(before, errors(now), draws, sources));
}

std::vector<Laying> layings(const Edition &edition, std::optional<std::size_t> piece, Other other,
                            const std::vector<bool> &draws, const Sources &sources) {
  // What stands behind the book is the back of one whole sheet.
  if (!piece && has_reverse(edition))
    return {};
  // No paper stands in for a board.
  const bool is_board = piece && edition.pieces[*piece]->is_boards();
  auto all = is_board ? std::vector<std::vector<PaperSwap>>{{}}
                      : exchanges(edition, papers_asked(edition_of(edition, piece)), other);
  if (all.size() == 1 && ways_up(edition, piece, sources).size() < 2)
    return {};
  Problems met;
  const std::vector<CopyPart> parts = impose_parts(edition, sources, met);
  Finding finding{
      edition, piece, draws, sources, parts, hindered(edition, errors(met), draws, sources), {}};
  for (auto &papers : all)
    finding.lay_on(std::move(papers));
  return std::move(finding.found);
}

} // namespace bodkin
