#include "art/ink.hpp"

#include "measure/few.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace bodkin::art {
namespace {

using Linear = std::array<float, 256>;

// IEC 61966-2-1, by the luminance of greys.
Linear linear_table() {
  Linear table{};
  for (std::size_t v = 0; v < table.size(); ++v) {
    const auto grey = static_cast<std::uint8_t>(v);
    table[v] = static_cast<float>(luminance(Colour{grey, grey, grey}));
  }
  return table;
}

float luminance_of(const std::uint8_t *sample, int channels, const Linear &linear) {
  if (channels < 3)
    return linear[sample[0]];
  return 0.2126F * linear[sample[0]] + 0.7152F * linear[sample[1]] + 0.0722F * linear[sample[2]];
}

// The cells that a stretch of a box touches along one edge of the grid.
struct Stretch {
  int begin, end;
};
Stretch touched(double from, double to, int cells) {
  const int begin = std::clamp(static_cast<int>(std::floor(from * cells)), 0, cells - 1);
  return {begin, std::clamp(static_cast<int>(std::ceil(to * cells)), begin + 1, cells)};
}

// The samples that fall into one of the grid's rows or columns.
Stretch within(int cell, int cells, int samples) {
  const auto first = [&](std::int64_t n) {
    return static_cast<int>((n * samples + cells - 1) / cells);
  };
  return {first(cell), first(std::int64_t{cell} + 1)};
}

// Of one cell: light and cover in the measure of alpha, 0 to 255.
struct Gathered {
  double light = 0, cover = 0;
  std::int64_t samples = 0;

  void take(const PixelView &pixels, int y, const Stretch &across, const Linear &linear) {
    const std::uint8_t *sample = pixels.row(y) + std::ptrdiff_t{across.begin} * pixels.channels;
    for (int x = across.begin; x < across.end; ++x, sample += pixels.channels) {
      const int alpha = pixels.has_alpha() ? sample[pixels.channels - 1] : 255;
      if (alpha == 0)
        continue;
      light += alpha * static_cast<double>(luminance_of(sample, pixels.channels, linear));
      cover += alpha;
    }
    samples += across.end - across.begin;
  }
};

std::vector<double> shown(const LuminanceGrid &grid, const ShareBox &box, double paper) {
  std::vector<double> values;
  if (grid.columns == 0 || grid.rows == 0)
    return values;
  const Stretch across = touched(box.left, box.right, grid.columns);
  const Stretch down = touched(box.top, box.bottom, grid.rows);
  for (int row = down.begin; row < down.end; ++row)
    for (int column = across.begin; column < across.end; ++column) {
      const auto cell = static_cast<std::size_t>(row) * static_cast<std::size_t>(grid.columns) +
                        static_cast<std::size_t>(column);
      const double cover = grid.cover[cell];
      values.push_back(grid.luminance[cell] * cover + paper * (1 - cover));
    }
  return values;
}

} // namespace

LuminanceGrid luminance_grid(PixelView pixels) {
  constexpr int most = 64;
  LuminanceGrid grid;
  grid.columns = std::min(most, pixels.width);
  grid.rows = std::min(most, pixels.height);
  const auto cells = static_cast<std::size_t>(grid.columns) * static_cast<std::size_t>(grid.rows);
  std::vector<Gathered> gathered(cells);
  const Linear linear = linear_table();
  for (int row = 0; row < grid.rows; ++row) {
    const Stretch down = within(row, grid.rows, pixels.height);
    for (int y = down.begin; y < down.end; ++y)
      for (int column = 0; column < grid.columns; ++column)
        gathered[static_cast<std::size_t>(row) * static_cast<std::size_t>(grid.columns) +
                 static_cast<std::size_t>(column)]
            .take(pixels, y, within(column, grid.columns, pixels.width), linear);
  }
  for (const Gathered &cell : gathered) {
    grid.luminance.push_back(static_cast<float>(cell.cover > 0 ? cell.light / cell.cover : 1));
    grid.cover.push_back(static_cast<float>(cell.cover / 255 / static_cast<double>(cell.samples)));
  }
  return grid;
}

double mean_luminance(const LuminanceGrid &grid, const ShareBox &box, double paper) {
  const auto values = shown(grid, box, paper);
  double sum = 0;
  for (const double value : values)
    sum += value;
  return values.empty() ? paper : sum / static_cast<double>(values.size());
}

double luminance_at(const LuminanceGrid &grid, const ShareBox &box, double share, double paper) {
  auto values = shown(grid, box, paper);
  if (values.empty())
    return paper;
  const double rank =
      std::ceil(std::clamp(share, 0.0, 1.0) * static_cast<double>(values.size())) - 1;
  const auto at = values.begin() + static_cast<std::ptrdiff_t>(std::max(rank, 0.0));
  std::nth_element(values.begin(), at, values.end());
  return *at;
}

} // namespace bodkin::art
