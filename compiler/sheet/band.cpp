#include "sheet/band.hpp"

#include "measure/paper.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <array>
#include <fmt/format.h>
#include <utility>

namespace bodkin {
namespace {

// Printed under the seam, so that a band glued a little askew shows no bare paper: common practice,
// no source.
constexpr Length under_the_seam = Length::inches(1, 8);

void fold_between(const std::vector<BandPart> &panels, Sheet &sheet) {
  for (std::size_t i = 1; i < panels.size(); ++i) {
    Sheet::FoldLine fold;
    fold.start = {panels[i].box.x, {}};
    fold.end = {panels[i].box.x, sheet.size.height};
    fold.valley = false; // the printed side is the outside
    sheet.folds.push_back(fold);
  }
}

// A paper of this edition whose sheets have room for it; empty where none has.
std::string_view stock_for(const Edition &edition, const Size &size) {
  for (const Stock &stock : edition.stocks)
    if (stock.sheet && (*stock.sheet)->height >= size.width && (*stock.sheet)->width >= size.height)
      return stock.name;
  return {};
}

} // namespace

Size band_size(const Piece &band, const Size &copy, Length thickness) {
  return {(copy.width + thickness) * 2 + *band.overlap, band.edition.size->height};
}

Size board_size(const Piece &boards, const Size &copy) {
  return {copy.width + *boards.squares, copy.height + *boards.squares * 2};
}

void make_band(const Piece &band, const Size &copy, Length thickness, Imposition &imposition) {
  const std::array<std::pair<BandPanel, Length>, 5> widths{{{BandPanel::back, copy.width},
                                                            {BandPanel::spine, thickness},
                                                            {BandPanel::front, copy.width},
                                                            {BandPanel::fore_edge, thickness},
                                                            {BandPanel::overlap, *band.overlap}}};
  Length from;
  for (const auto &[panel, width] : widths) {
    imposition.panels.push_back({panel, {from, {}, width, band.edition.size->height}});
    from += width;
  }
  for (Sheet &sheet : imposition.sheets) {
    fold_between(imposition.panels, sheet);
    for (Place &place : sheet.sides[0].places)
      place.hidden.right = std::max(*band.overlap - under_the_seam, Length{});
  }
}

Problem band_too_long(const Piece &band, const Size &paper, const Size &size) {
  const Ruler ruler = band.edition.ruler;
  Problem problem;
  problem.check = "band-too-long";
  problem.range = band.goes.from;
  problem.message = fmt::format("{} is {} long and {} high, and {} has no room for it", band.name,
                                rounded(size.width, ruler), written(size.height, ruler),
                                spoken::named_and_measured(paper, ruler));
  const Length twice = size.width - *band.overlap;
  problem.why = fmt::format("round the trimmed copy it is {}, and {} of it are glued",
                            rounded(twice, ruler), written(*band.overlap, ruler));
  const std::string_view longer = stock_for(band.edition, size);
  problem.type = {longer.empty()
                      ? WayOut{{}, "print it on a stock with longer sheets: legal, tabloid, a3"}
                      : WayOut{spoken::fact("paper", longer), "whose sheets are long enough"}};
  return problem;
}

} // namespace bodkin
