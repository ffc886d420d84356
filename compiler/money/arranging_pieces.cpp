#include "money/arranging_pieces.hpp"

#include "money/arranging_prices.hpp"
#include "money/charge.hpp"
#include "sheet/numbered.hpp"

#include <algorithm>

namespace bodkin::arranging {
namespace {

// A sheet of another run's book stands for one of the book's.
bool of_a_book(const Sheet &sheet) { return sheet.piece.empty() || sheet.in_place_of > 0; }

// The back of the book's own sheet may be a piece's.
bool of_a_book(const Sheet &sheet, const ChargedSide &side) {
  return of_a_book(sheet) && (sheet.reverse == 0 || side.side == 0);
}

Exact sheets_of_run(const Edition &edition, const Sheet &sheet) {
  return sheets_needed(edition, sheet).all;
}

std::optional<Size> size_with_a_price(const Edition &edition, const ChargedSide &side,
                                      const Size &sheet) {
  const bool own = std::ranges::any_of(edition[side.machine].prints, [&](const SidePrice &price) {
    return price.mode == side.mode && price.size && price.size->upright() == sheet;
  });
  return own ? std::optional(sheet) : std::nullopt;
}

} // namespace

BesideTheBook::BesideTheBook(const Edition &edition, const Laid &laid)
    : edition_(edition), imposition_(laid.imposition) {
  for (const ChargedSide &side : laid.sides) {
    const Sheet &sheet = imposition_.sheets[static_cast<std::size_t>(side.sheet)];
    if (side.printed && side.machine != MachineId::none && !of_a_book(sheet, side))
      take_sides(side, sheet);
  }
  take_papers();
}

void BesideTheBook::take_sides(const ChargedSide &side, const Sheet &sheet) {
  const Size upright = sheet.size.upright();
  const std::optional<Size> size = size_with_a_price(edition_, side, upright);
  auto line = std::ranges::find_if(printed_, [&](const PrintedPieces &other) {
    return other.machine == side.machine && other.mode == side.mode && other.size == size &&
           other.only == sheet.only;
  });
  if (line == printed_.end())
    line = printed_.insert(line, {side.machine, side.mode, size, sheet.only, upright, {}});
  line->sides += sheets_of_run(edition_, sheet);
}

void BesideTheBook::take_papers() {
  std::map<std::pair<StockId, RunSet>, Exact> papers;
  for (const Sheet &sheet : imposition_.sheets)
    if (!of_a_book(sheet) && sheet.stock != StockId::none)
      papers[{sheet.stock, sheet.only}] += sheets_of_run(edition_, sheet);
  for (const auto &[paper, sheets] : papers)
    papers_ += price_of_sheet(edition_, edition_[paper.first]) * sheets;
}

Exact BesideTheBook::sides(MachineId machine, Mode mode) const {
  Exact sum;
  for (const PrintedPieces &line : printed_)
    if (line.machine == machine && line.mode == mode)
      sum += line.sides;
  return sum;
}

} // namespace bodkin::arranging
