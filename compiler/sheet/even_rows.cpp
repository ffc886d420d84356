#include "sheet/even_rows.hpp"

#include "measure/limits.hpp"

#include <algorithm>

namespace bodkin {
namespace {

// How many stand beside each other along an edge, as far as anybody cuts them apart.
std::int64_t most_along(Length sheet, Length cell) {
  return std::min(cell > Length{} ? sheet.units() / cell.units() : 0, limits::cut_out);
}

std::optional<EvenRows> cells_of(const Size &sheet, const Size &cell, std::int64_t count) {
  std::optional<EvenRows> best;
  const std::int64_t widest = most_along(sheet.width, cell.width);
  const std::int64_t highest = most_along(sheet.height, cell.height);
  for (std::int64_t columns = 1; columns <= widest; ++columns) {
    const std::int64_t rows = count / columns;
    if (count % columns != 0 || rows > highest)
      continue;
    // Margins alike on all sides leave the machine its bare edge.
    const auto least = [](const EvenRows &cells) { return std::min(cells.left, cells.top); };
    const EvenRows cells{sheet, static_cast<int>(columns), static_cast<int>(rows),
                         (sheet.width - cell.width * columns) / 2,
                         (sheet.height - cell.height * rows) / 2};
    if (!best || least(cells) > least(*best))
      best = cells;
  }
  return best;
}

} // namespace

std::optional<EvenRows> best_cells(const Size &paper, const Size &cell, std::int64_t count) {
  if (count > limits::cut_out)
    return std::nullopt;
  const auto as_is = cells_of(paper, cell, count), turned = cells_of(paper.turned(), cell, count);
  if (!as_is || !turned)
    return as_is ? as_is : turned;
  const auto least = [](const EvenRows &cells) { return std::min(cells.left, cells.top); };
  return least(*turned) > least(*as_is) ? turned : as_is;
}

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

bool more_than_anybody_cuts(const Size &paper, const Size &cell) {
  const auto along = [](Length sheet, Length one) {
    return std::min<std::int64_t>(sheet.units() / one.units(), limits::cut_out * 10);
  };
  return along(paper.width, cell.width) * along(paper.height, cell.height) > limits::cut_out;
}

} // namespace bodkin
