#include "sheet/several_up.hpp"

#include "measure/limits.hpp"
#include "measure/paper.hpp"
#include "sheet/even_rows.hpp"
#include "sheet/geometry.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <array>
#include <fmt/format.h>
#include <utility>

namespace bodkin {
namespace {

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

void repeat_places(Side &side, const EvenRows &cells, const Size &cell) {
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
std::vector<Sheet::FoldLine> cuts_of(const EvenRows &cells, const Size &cell) {
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
std::vector<Sheet::FoldLine> repeated(const std::vector<Sheet::FoldLine> &lines,
                                      const EvenRows &cells, const Size &cell, Grain grain) {
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

void repeat(Sheet &sheet, const EvenRows &cells, std::int64_t up, Grain grain) {
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

} // namespace bodkin
