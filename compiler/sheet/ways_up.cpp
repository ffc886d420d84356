#include "sheet/ways_up.hpp"

#include "edition/piece.hpp"
#include "measure/limits.hpp"
#include "sheet/even_rows.hpp"
#include "sheet/fold.hpp"
#include "sheet/geometry.hpp"
#include "sheet/layout.hpp"
#include "sheet/parts.hpp"

#include <algorithm>

namespace bodkin {
namespace {

using Piecewise = std::optional<std::size_t>; // index into Edition::pieces; none: the book

// A band and boards are as large as the copy makes them, a pocket as its flaps do: such a piece is
// laid with the whole copy, one on a sheet.
std::optional<Size> cut_by_copy(Edition book, std::size_t index, const Sources &sources) {
  auto alone = std::make_shared<Piece>(*book.pieces[index]);
  alone->up.value = 1;
  const std::string name = alone->name;
  book.pieces[index] = std::move(alone);
  Problems told_where_it_is_laid;
  const std::vector<CopyPart> parts = impose_parts(book, sources, told_where_it_is_laid);
  const Sheet &sheet = part_called(parts, name).imposition.sheets.front();
  return sheet.cell.value_or(sheet.size);
}

// What one takes of a sheet; none where its folding cannot be done.
std::optional<Size> cut_out_of_sheet(const Edition &book, Piecewise index, const Sources &sources) {
  const Piece *piece = index ? book.pieces[*index].get() : nullptr;
  if (piece && (piece->is_band() || piece->is_boards() || piece->is_pocket()))
    return cut_by_copy(book, *index, sources);
  const Edition &edition = piece ? piece->edition : book;
  Problems told_where_it_is_laid;
  const int strip = panels_of_strip(*edition.folding, *edition.page_count);
  const auto folded = fold(*edition.folding, told_where_it_is_laid, strip);
  return folded ? std::optional(sheet_size(edition, *folded, StockId::none)) : std::nullopt;
}

// A kind of sheet that is laid: what is cut out, and the paper that it is cut from.
struct CutFromPaper {
  Size cell, paper;
  bool operator==(const CutFromPaper &) const = default;
};

// None where a paper says no sheet, or a sheet is nothing.
std::vector<CutFromPaper> kinds_of(const Edition &edition, const Size &cell) {
  std::vector<CutFromPaper> kinds;
  if (cell.width <= Length{} || cell.height <= Length{})
    return kinds;
  for (const StockId id : papers_asked(edition)) {
    if (id == StockId::none || !edition[id].sheet)
      return {};
    const CutFromPaper kind{cell, **edition[id].sheet};
    if (std::find(kinds.begin(), kinds.end(), kind) == kinds.end())
      kinds.push_back(kind);
  }
  return kinds;
}

// On all kinds of sheet alike; the margin is the least of them.
std::optional<WayUp> way_of(const std::vector<CutFromPaper> &kinds, std::int64_t up) {
  std::optional<WayUp> way;
  for (const CutFromPaper &kind : kinds) {
    const auto cells = best_cells(kind.paper, kind.cell, up);
    if (!cells)
      return std::nullopt;
    const Length margin = std::min(cells->left, cells->top);
    if (!way)
      way = WayUp{static_cast<int>(up), cells->columns, cells->rows, margin};
    way->margin = std::min(way->margin, margin);
  }
  return way;
}

} // namespace

std::vector<StockId> papers_asked(const Edition &edition) {
  std::vector<StockId> papers{*edition.paper};
  const auto add = [&](const std::optional<Known<StockId>> &stock) {
    if (stock && std::find(papers.begin(), papers.end(), **stock) == papers.end())
      papers.push_back(**stock);
  };
  add(edition.cover_stock);
  for (const Page &page : edition.pages)
    add(page.asked.stock);
  return papers;
}

std::vector<WayUp> ways_up(const Edition &book, std::optional<std::size_t> piece,
                           const Sources &sources) {
  const auto cell = cut_out_of_sheet(book, piece, sources);
  const auto kinds = kinds_of(piece ? book.pieces[*piece]->edition : book, cell.value_or(Size{}));
  std::int64_t most = kinds.empty() ? 0 : limits::cut_out;
  for (const CutFromPaper &kind : kinds)
    most = std::min(most, most_on(kind.paper, kind.cell));
  std::vector<WayUp> ways;
  for (std::int64_t up = 1; up <= most; ++up)
    if (const auto way = way_of(kinds, up))
      ways.push_back(*way);
  return ways;
}

} // namespace bodkin
