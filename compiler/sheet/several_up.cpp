#include "sheet/several_up.hpp"

#include "measure/paper.hpp"
#include "sheet/geometry.hpp"
#include "sheet/impose.hpp"
#include "sheet/parts.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <array>
#include <fmt/format.h>
#include <optional>
#include <utility>

namespace bodkin {
namespace {

constexpr int most_up = 100; // smaller than business cards

struct Cells {
  Size sheet;
  int columns = 1, rows = 1;
  Length left, top; // of the first

  Spot origin(int column, int row, const Size &cell) const {
    return {left + cell.width * column, top + cell.height * row};
  }
};

std::optional<Cells> cells_of(const Size &sheet, const Size &cell, int count) {
  std::optional<Cells> best;
  for (int columns = 1; columns <= count; ++columns) {
    if (count % columns != 0)
      continue;
    const int rows = count / columns;
    const Length across = sheet.width - cell.width * columns;
    const Length down = sheet.height - cell.height * rows;
    if (across < Length{} || down < Length{})
      continue;
    // Margins alike on all sides leave the machine its bare edge.
    const auto least = [](const Cells &cells) { return std::min(cells.left, cells.top); };
    const Cells cells{sheet, columns, rows, across / 2, down / 2};
    if (!best || least(cells) > least(*best))
      best = cells;
  }
  return best;
}

std::optional<Cells> best_cells(const Size &paper, const Size &cell, int count) {
  const auto as_is = cells_of(paper, cell, count), turned = cells_of(paper.turned(), cell, count);
  if (!as_is || !turned)
    return as_is ? as_is : turned;
  const auto least = [](const Cells &cells) { return std::min(cells.left, cells.top); };
  return least(*turned) > least(*as_is) ? turned : as_is;
}

int most_on(const Size &paper, const Size &cell) {
  const auto on = [&](const Size &sheet) {
    return static_cast<int>((sheet.width.units() / cell.width.units()) *
                            (sheet.height.units() / cell.height.units()));
  };
  return std::max(on(paper), on(paper.turned()));
}

Problem does_not_go_up(std::string_view name, const Known<int> &up, Ruler ruler, const Size &paper,
                       const Size &cell) {
  const int most = most_on(paper, cell);
  Problem problem;
  problem.check = "does-not-go-up";
  problem.range = up.from;
  const std::string sheet = spoken::named_and_measured(paper, ruler);
  problem.message = *up == 1 ? fmt::format("{} does not go on a sheet of {}", name, sheet)
                             : fmt::format("{} of {} do not go on a sheet of {}", *up, name, sheet);
  problem.why =
      fmt::format("each takes {} of paper before it is folded, so {} {} room in even rows",
                  spoken::measures(cell, ruler), most == 0 ? "none" : std::to_string(most),
                  most == 1 ? "has" : "have");
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

void repeat(Sheet &sheet, const Cells &cells, int up, Grain grain) {
  const Size cell = sheet.size;
  for (Side &side : sheet.sides)
    repeat_places(side, cells, cell);
  sheet.cuts = cuts_of(cells, cell);
  sheet.size = cells.sheet;
  sheet.cell = cell;
  sheet.up = up;
  sheet.folds = repeated(sheet.folds, cells, cell, grain);
  sheet.slits = repeated(sheet.slits, cells, cell, grain);
}

} // namespace

Edition without_sheets(const Edition &edition) {
  Edition cut_out = edition;
  for (Stock &stock : cut_out.stocks)
    stock.sheet.reset();
  return cut_out;
}

void lay_several_up(std::string_view name, const Known<int> &up, const Edition &edition,
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

// A band and boards are as large as the copy makes them, a pocket as its flaps do: such a piece is
// laid with the whole copy, one on a sheet.
Imposition imposed_with_copy(Edition book, std::size_t index, const Sources &sources) {
  auto alone = std::make_shared<Piece>(*book.pieces[index]);
  alone->up.value = 1;
  const std::string name = alone->name;
  book.pieces[index] = std::move(alone);
  Problems told_where_it_is_laid;
  const std::vector<CopyPart> parts = impose_parts(book, sources, told_where_it_is_laid);
  Imposition imposition = part_called(parts, name).imposition;
  for (Sheet &sheet : imposition.sheets)
    sheet.size = sheet.cell.value_or(sheet.size);
  return imposition;
}

Imposition imposed_alone(const Edition &book, std::size_t index, const Sources &sources) {
  const Piece &piece = *book.pieces[index];
  if (piece.is_band() || piece.is_boards() || piece.is_pocket())
    return imposed_with_copy(book, index, sources);
  Problems told_where_it_is_laid;
  return impose(without_sheets(piece.edition), sources, told_where_it_is_laid);
}

} // namespace

std::vector<WayUp> ways_up(const Edition &book, std::size_t index, const Sources &sources) {
  const Piece &piece = *book.pieces[index];
  const Imposition imposition = imposed_alone(book, index, sources);
  const Sheet &cell = imposition.sheets.front();
  const Stock *stock = cell.stock == StockId::none ? nullptr : &piece.edition[cell.stock];
  // Sheets of several papers are laid on several sizes: no one number is theirs.
  const bool one_paper = std::all_of(imposition.sheets.begin(), imposition.sheets.end(),
                                     [&](const Sheet &sheet) { return sheet.stock == cell.stock; });
  if (!stock || !stock->sheet || !one_paper || cell.size.width <= Length{} ||
      cell.size.height <= Length{})
    return {};
  std::vector<WayUp> ways;
  for (int up = 1; up <= std::min(most_up, most_on(**stock->sheet, cell.size)); ++up)
    if (const auto cells = best_cells(**stock->sheet, cell.size, up))
      ways.push_back({up, cells->columns, cells->rows, std::min(cells->left, cells->top)});
  return ways;
}

} // namespace bodkin
