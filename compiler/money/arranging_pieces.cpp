#include "money/arranging_pieces.hpp"

#include "money/arranging_prices.hpp"
#include "money/charge.hpp"

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
  return for_run(edition, sheet.only, {Exact::ratio(sheet.in_a_copy, sheet.up), 0, 0})
      .of(edition.run->copies, edition.run->spare);
}

std::optional<Size> size_with_a_price(const Edition &edition, const ChargedSide &side,
                                      const Size &sheet) {
  const bool own = std::ranges::any_of(edition[side.machine].prints, [&](const SidePrice &price) {
    return price.mode == side.mode && price.size && price.size->upright() == sheet;
  });
  return own ? std::optional(sheet) : std::nullopt;
}

Exact rounded_up(const Exact &number, bool whole) {
  return whole ? Exact(number.ceiling()) : number;
}

} // namespace

BesideTheBook::BesideTheBook(const Edition &edition, const Laid &laid, bool book_on_whole_sheets)
    : edition_(edition), imposition_(laid.imposition) {
  for (const ChargedSide &side : laid.sides) {
    const Sheet &sheet = imposition_.sheets[static_cast<std::size_t>(side.sheet)];
    if (side.printed && side.machine != MachineId::none && !of_a_book(sheet, side))
      take_sides(side, sheet);
  }
  for (PrintedPieces &line : printed_)
    line.charged = rounded_up(line.sides, book_on_whole_sheets);
  take_papers(book_on_whole_sheets);
}

void BesideTheBook::take_sides(const ChargedSide &side, const Sheet &sheet) {
  const Size upright = sheet.size.upright();
  const std::optional<Size> size = size_with_a_price(edition_, side, upright);
  auto line = std::ranges::find_if(printed_, [&](const PrintedPieces &other) {
    return other.machine == side.machine && other.mode == side.mode && other.size == size &&
           other.only == sheet.only;
  });
  if (line == printed_.end())
    line = printed_.insert(line, {side.machine, side.mode, size, sheet.only, upright, {}, {}});
  line->sides += sheets_of_run(edition_, sheet);
}

void BesideTheBook::take_papers(bool whole_sheets) {
  std::map<std::pair<StockId, std::optional<std::uint32_t>>, Exact> papers;
  for (const Sheet &sheet : imposition_.sheets)
    if (!of_a_book(sheet) && sheet.stock != StockId::none)
      papers[{sheet.stock, sheet.only}] += sheets_of_run(edition_, sheet);
  for (const auto &[paper, sheets] : papers)
    papers_ += price_of_sheet(edition_, edition_[paper.first]) * rounded_up(sheets, whole_sheets);
}

Exact BesideTheBook::sides(MachineId machine, Mode mode) const {
  Exact sum;
  for (const PrintedPieces &line : printed_)
    if (line.machine == machine && line.mode == mode)
      sum += line.sides;
  return sum;
}

Exact BesideTheBook::charged_sides(MachineId machine, Mode mode) const {
  Exact sum;
  for (const PrintedPieces &line : printed_)
    if (line.machine == machine && line.mode == mode)
      sum += line.charged;
  return sum;
}

} // namespace bodkin::arranging
