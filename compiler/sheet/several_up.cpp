#include "sheet/several_up.hpp"

#include "measure/limits.hpp"
#include "measure/paper.hpp"
#include "sheet/geometry.hpp"
#include "sheet/layout.hpp"
#include "sheet/parts.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <array>
#include <fmt/format.h>
#include <optional>
#include <set>
#include <utility>

namespace bodkin {
namespace {

struct Cells {
  Size sheet;
  int columns = 1, rows = 1;
  Length left, top; // of the first

  Spot origin(int column, int row, const Size &cell) const {
    return {left + cell.width * column, top + cell.height * row};
  }
};

// How many stand beside each other along an edge, as far as anybody cuts them apart.
std::int64_t most_along(Length sheet, Length cell) {
  return std::min(cell > Length{} ? sheet.units() / cell.units() : 0, limits::cut_out);
}

std::optional<Cells> cells_of(const Size &sheet, const Size &cell, std::int64_t count) {
  std::optional<Cells> best;
  const std::int64_t widest = most_along(sheet.width, cell.width);
  const std::int64_t highest = most_along(sheet.height, cell.height);
  for (std::int64_t columns = 1; columns <= widest; ++columns) {
    const std::int64_t rows = count / columns;
    if (count % columns != 0 || rows > highest)
      continue;
    // Margins alike on all sides leave the machine its bare edge.
    const auto least = [](const Cells &cells) { return std::min(cells.left, cells.top); };
    const Cells cells{sheet, static_cast<int>(columns), static_cast<int>(rows),
                      (sheet.width - cell.width * columns) / 2,
                      (sheet.height - cell.height * rows) / 2};
    if (!best || least(cells) > least(*best))
      best = cells;
  }
  return best;
}

std::optional<Cells> best_cells(const Size &paper, const Size &cell, std::int64_t count) {
  if (count > limits::cut_out)
    return std::nullopt;
  const auto as_is = cells_of(paper, cell, count), turned = cells_of(paper.turned(), cell, count);
  if (!as_is || !turned)
    return as_is ? as_is : turned;
  const auto least = [](const Cells &cells) { return std::min(cells.left, cells.top); };
  return least(*turned) > least(*as_is) ? turned : as_is;
}

bool more_than_anybody_cuts(const Size &paper, const Size &cell) {
  const auto along = [](Length sheet, Length one) {
    return std::min<std::int64_t>(sheet.units() / one.units(), limits::cut_out * 10);
  };
  return along(paper.width, cell.width) * along(paper.height, cell.height) > limits::cut_out;
}

std::string room_in_words(const Size &paper, const Size &cell, std::int64_t most) {
  if (most == 0)
    return "none has room in even rows";
  if (more_than_anybody_cuts(paper, cell))
    return fmt::format("more than {} have room, which nobody cuts apart", limits::cut_out);
  return fmt::format("{} {} room in even rows", most, most == 1 ? "has" : "have");
}

Problem does_not_go_up(std::string_view name, const Known<std::int64_t> &up, Ruler ruler,
                       const Size &paper, const Size &cell) {
  const std::int64_t most = most_on(paper, cell);
  Problem problem;
  problem.check = "does-not-go-up";
  problem.range = up.from;
  const std::string sheet = spoken::named_and_measured(paper, ruler);
  problem.message = *up == 1 ? fmt::format("{} does not go on a sheet of {}", name, sheet)
                             : fmt::format("{} of {} do not go on a sheet of {}", *up, name, sheet);
  problem.why = fmt::format("each takes {} of paper before it is folded, so {}",
                            spoken::measures(cell, ruler), room_in_words(paper, cell, most));
  if (most > 0)
    problem.type = {{fmt::format("up         {}", most), {}}};
  else
    problem.type = {{{}, "make the piece smaller, or choose a paper with larger sheets"}};
  return problem;
}

using Four = std::array<Length Edges::*, 4>;
constexpr Four edges_of{&Edges::left, &Edges::top, &Edges::right, &Edges::bottom};

// From the page's edges, in its upright frame, to those of the large sheet.
Edges slack_on(const Place &place, const Size &sheet) {
  const std::array<Length, 4> on_sheet{place.box.x, place.box.y, sheet.width - place.box.right(),
                                       sheet.height - place.box.foot()};
  const std::array<Meets, 4> meets{place.left, place.top, place.right, place.bottom};
  Edges slack;
  for (std::size_t edge = 0; edge < 4; ++edge)
    if (meets[edge] == Meets::sheet_edge)
      slack.*edges_of[edge] = on_sheet[(edge + static_cast<std::size_t>(place.turn / 90)) % 4];
  return slack;
}

Edges least(const Edges &a, const Edges &b) {
  Edges result;
  for (const auto edge : edges_of)
    result.*edge = std::min(a.*edge, b.*edge);
  return result;
}

void repeat_places(Side &side, const Cells &cells, const Size &cell) {
  const std::vector<Place> once = std::move(side.places);
  side.places.clear();
  std::vector<Edges> narrowest(once.size());
  for (int row = 0; row < cells.rows; ++row)
    for (int column = 0; column < cells.columns; ++column)
      for (std::size_t i = 0; i < once.size(); ++i) {
        Place place = once[i];
        const Spot at = cells.origin(column, row, cell);
        place.box = place.box.moved(at.x, at.y);
        const Edges slack = slack_on(place, cells.sheet);
        narrowest[i] = row == 0 && column == 0 ? slack : least(narrowest[i], slack);
        side.places.push_back(place);
      }
  for (std::size_t i = 0; i < side.places.size(); ++i)
    side.places[i].slack = narrowest[i % once.size()];
}

// First the long way across the sheet, then each strip.
std::vector<Sheet::FoldLine> cuts_of(const Cells &cells, const Size &cell) {
  std::vector<Sheet::FoldLine> cuts;
  const auto add = [&](Spot start, Spot end) {
    Sheet::FoldLine line;
    line.start = start;
    line.end = end;
    cuts.push_back(line);
  };
  const Length foot = cells.top + cell.height * cells.rows;
  const auto inside = [](Length at, Length extent) { return at > Length{} && at < extent; };
  for (int row = 0; row <= cells.rows; ++row)
    if (const Length y = cells.top + cell.height * row; inside(y, cells.sheet.height))
      add({{}, y}, {cells.sheet.width, y});
  for (int column = 0; column <= cells.columns; ++column)
    if (const Length x = cells.left + cell.width * column; inside(x, cells.sheet.width))
      add({x, cells.top}, {x, foot});
  return cuts;
}

// What is cut out is folded by itself, along lines that lie on the whole sheet meanwhile; its
// fibres are the sheet's.
std::vector<Sheet::FoldLine> repeated(const std::vector<Sheet::FoldLine> &lines, const Cells &cells,
                                      const Size &cell, Grain grain) {
  std::vector<Sheet::FoldLine> all;
  for (int row = 0; row < cells.rows; ++row)
    for (int column = 0; column < cells.columns; ++column)
      for (Sheet::FoldLine line : lines) {
        const Spot at = cells.origin(column, row, cell);
        line.start = {line.start.x + at.x, line.start.y + at.y};
        line.end = {line.end.x + at.x, line.end.y + at.y};
        line.along_grain = runs_along(line.start.x == line.end.x, cells.sheet, grain);
        all.push_back(line);
      }
  return all;
}

void repeat(Sheet &sheet, const Cells &cells, std::int64_t up, Grain grain) {
  const Size cell = sheet.size;
  for (Side &side : sheet.sides)
    repeat_places(side, cells, cell);
  sheet.cuts = cuts_of(cells, cell);
  sheet.size = cells.sheet;
  sheet.cell = cell;
  sheet.up = static_cast<int>(up);
  sheet.folds = repeated(sheet.folds, cells, cell, grain);
  sheet.slits = repeated(sheet.slits, cells, cell, grain);
}

} // namespace

std::int64_t most_on(const Size &paper, const Size &cell) {
  std::int64_t most = 0;
  for (const Size &sheet : {paper, paper.turned()}) {
    const std::int64_t widest = most_along(sheet.width, cell.width);
    const std::int64_t highest = most_along(sheet.height, cell.height);
    for (std::int64_t columns = 1; columns <= widest; ++columns)
      most = std::max(most, columns * std::min(highest, limits::cut_out / columns));
  }
  return most;
}

Edition without_sheets(const Edition &edition) {
  Edition cut_out = edition;
  for (Stock &stock : cut_out.stocks)
    stock.sheet.reset();
  return cut_out;
}

void lay_several_up(std::string_view name, const Known<std::int64_t> &up, const Edition &edition,
                    Imposition &imposition, Problems &problems) {
  bool told = false;
  for (Sheet &sheet : imposition.sheets) {
    const Stock *stock = sheet.stock == StockId::none ? nullptr : &edition[sheet.stock];
    if (!stock || !stock->sheet)
      continue;
    if (const auto cells = best_cells(**stock->sheet, sheet.size, *up))
      repeat(sheet, *cells, *up, *stock->grain);
    else if (!std::exchange(told, true))
      problems.push_back(does_not_go_up(name, up, edition.ruler, **stock->sheet, sheet.size));
  }
}

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
  auto operator<=>(const CutFromPaper &) const = default;
};

// None where a paper says no sheet, or a sheet is nothing.
std::set<CutFromPaper> kinds_of(const Edition &edition, const Size &cell) {
  std::set<CutFromPaper> kinds;
  if (cell.width <= Length{} || cell.height <= Length{})
    return kinds;
  for (const StockId id : papers_asked(edition)) {
    if (id == StockId::none || !edition[id].sheet)
      return {};
    kinds.insert({cell, **edition[id].sheet});
  }
  return kinds;
}

// On all kinds of sheet alike; the margin is the least of them.
std::optional<WayUp> way_of(const std::set<CutFromPaper> &kinds, std::int64_t up) {
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
