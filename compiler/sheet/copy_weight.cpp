#include "sheet/copy_weight.hpp"

#include "edition/laid.hpp"
#include "sheet/bound_in.hpp"
#include "sheet/live.hpp"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace bodkin {
namespace {

// In square inches: areas of paper pass what 64 bits of exact units hold.
double area(Length width, Length height) {
  return std::max(width.in_inches(), 0.0) * std::max(height.in_inches(), 0.0);
}

Mass mass_of(double square_inches, Grammage grammage) {
  constexpr double square_metres = 0.0254 * 0.0254;
  return {
      std::llround(square_inches * square_metres * static_cast<double>(grammage.mg_per_m2) * 1000)};
}

// Of a panel with its slack, what the knife leaves. It cuts where `trim` says, counted from the
// outermost leaf's edges.
Size leaf_size(Place place, const Trims &trims, bool cut_out) {
  if (cut_out)
    place.slack = {}; // to the sheet that it is cut out of
  const Size page = place.turn % 180 == 0 ? place.box.size() : place.box.size().turned();
  Length width = page.width + place.slack.left + place.slack.right;
  Length height = page.height + place.slack.top + place.slack.bottom;
  if (trims.fore_edge > Length{} && place.spine != SpineAt::none)
    width = page.width - trims.fore_edge - place.creep;
  if (trims.head > Length{})
    height -= trims.head + place.slack.top;
  if (trims.foot > Length{})
    height -= trims.foot + place.slack.bottom;
  return {width, height};
}

double leaf_area(const Place &place, const Trims &trims, bool cut_out) {
  const Size leaf = leaf_size(place, trims, cut_out);
  return area(leaf.width, leaf.height);
}

bool knife_cuts(const Trims &trims) {
  return trims.fore_edge > Length{} || trims.head > Length{} || trims.foot > Length{};
}

double sheet_area(const Sheet &sheet, const Trims &trims) {
  const Size one = sheet.cell.value_or(sheet.size);
  const auto &places = sheet.sides[0].places;
  if (!knife_cuts(trims) || places.empty())
    return area(one.width, one.height);
  double sum = area(sheet.tabs.right, sheet.size.height);
  for (const Place &place : places)
    sum += leaf_area(place, trims, sheet.cell.has_value());
  return sum / sheet.up;
}

// A wrap is cut to its book, with room for the spine.
double wrap_area(const CopyPart &part, const Trims &trims) {
  const Size page = *part.edition->size;
  return area((page.width - trims.fore_edge) * 2 + part.spine,
              page.height - trims.head - trims.foot);
}

// A fold-out bound in: going outwards from the spine each panel lies folded back on the one before,
// and the knife takes what reaches past its cut. `distances` are those of the folds and at last of
// the free edge.
Length kept_of(std::vector<Length> distances, Length cut) {
  std::sort(distances.begin(), distances.end());
  Length at, before, kept;
  bool outwards = true;
  for (const Length distance : distances) {
    const Length to = outwards ? at + (distance - before) : at - (distance - before);
    kept += std::min(std::max(at, to), cut) - std::min(std::min(at, to), cut);
    at = to;
    before = distance;
    outwards = !outwards;
  }
  return kept;
}

bool only_upright(const Sheet &sheet) {
  return std::all_of(sheet.folds.begin(), sheet.folds.end(),
                     [](const Sheet::FoldLine &fold) { return fold.start.x == fold.end.x; });
}

// In square inches, of a sheet that is bound at a fold and unfolds; none of any other.
std::optional<double> fold_out_area(const CopyPart &part, const Sheet &sheet, const Trims &trims,
                                    const Size &copy) {
  const auto spine = bound_at(sheet);
  if (!part.piece || *part.piece->goes != Goes::centre || part.imposition.leaves_turn || !spine ||
      !only_upright(sheet))
    return std::nullopt;
  std::vector<Length> left{*spine}, right{sheet.size.width - *spine};
  for (const Sheet::FoldLine &fold : sheet.folds)
    if (fold.start.x != *spine)
      (fold.start.x < *spine ? left : right)
          .push_back(fold.start.x < *spine ? *spine - fold.start.x : fold.start.x - *spine);
  // Sheets round it push it out, towards the knife.
  const Length cut = trims.fore_edge > Length{} ? copy.width - sheet.creep : sheet.size.width;
  const Length over = (sheet.size.height - part.edition->size->height) / 2;
  Length height = sheet.size.height;
  for (const Length trim : {trims.head, trims.foot})
    if (trim > Length{})
      height -= trim + over;
  return area(kept_of(std::move(left), cut) + kept_of(std::move(right), cut), height);
}

std::optional<Mass> mass_of(const CopyPart &part, const Size &copy) {
  const Edition &edition = *part.edition;
  const Trims trims = trims_of(edition);
  Mass sum;
  for (const Sheet &sheet : part.imposition.sheets) {
    if (sheet.stock == StockId::none || !edition[sheet.stock].weight)
      return std::nullopt;
    const auto unfolds = knife_cuts(trims) ? fold_out_area(part, sheet, trims, copy) : std::nullopt;
    const double paper = part.spine > Length{} ? wrap_area(part, trims)
                         : unfolds             ? *unfolds
                                               : sheet_area(sheet, trims);
    sum.micrograms += mass_of(paper, (*edition[sheet.stock].weight)->grammage).micrograms;
  }
  return sum;
}

Length caliper_of(const Edition &edition, const Sheet &sheet) {
  return sheet.stock == StockId::none ? Length{} : *edition[sheet.stock].caliper;
}

Mass by_hand(const CopyPart &part, std::optional<std::uint32_t> run) {
  Mass sum;
  each_laid(*part.edition, [&](ElementId id, int) {
    const Work &work = (*part.edition)[id].work;
    if (work.only && run && **work.only != *run)
      return;
    if (const auto &mass = work.mass)
      sum.micrograms += (*mass)->micrograms;
  });
  sum.micrograms *= part.in_a_copy();
  return sum;
}

PartWeight weighed(const CopyPart &part, const Size &copy) {
  PartWeight made{part.piece ? part.piece->name : "book", part.in_a_copy(), Mass{}, {}};
  if (part.piece && part.piece->is_reverse())
    return made;
  made.mass = mass_of(part, copy);
  made.thickness = thickness_of(part);
  return made;
}

} // namespace

// A strip is folded as one; each tab is one more layer where it lies.
Length thickness_of(const CopyPart &part) {
  const auto &sheets = part.imposition.sheets;
  const bool strip = !sheets.empty() && (sheets.front().tabs.right > Length{} ||
                                         sheets.front().tabs.bottom > Length{});
  if (strip)
    return caliper_of(*part.edition, sheets.front()) *
           (part.imposition.layers + static_cast<int>(sheets.size()) - 1);
  Length sum;
  for (const Sheet &sheet : sheets)
    sum += caliper_of(*part.edition, sheet) * part.imposition.layers;
  return sum;
}

std::optional<Mass> mass_of_sheet(const CopyPart &part, const Sheet &sheet, StockId paper) {
  if (paper == StockId::none || !(*part.edition)[paper].weight)
    return std::nullopt;
  return mass_of(sheet_area(sheet, trims_of(*part.edition)),
                 (*part.edition)[paper].weight->value.grammage);
}

Size size_of_copy(std::span<const CopyPart> parts) {
  Size size = trimmed_size(*parts.front().edition);
  const auto stretch = [&size](const Size &other) {
    size = {std::max(size.width, other.width), std::max(size.height, other.height)};
  };
  const auto &sheets = parts.front().imposition.sheets;
  if (!sheets.empty())
    for (const Place &place : sheets.front().sides[0].places)
      stretch(leaf_size(place, trims_of(*parts.front().edition), sheets.front().cell.has_value()));
  for (const CopyPart &part : parts)
    if (part.piece && part.piece->is_boards())
      stretch(*part.edition->size);
  return size;
}

CopyWeight weigh(std::span<const CopyPart> parts, std::optional<std::uint32_t> asked) {
  const Edition &book = *parts.front().edition;
  const auto run = asked || book.runs.empty() ? asked : std::optional<std::uint32_t>(0);
  const std::vector<const CopyPart *> held = parts_of_copy(parts, run);
  CopyWeight copy;
  const Size trimmed = parts.empty() ? Size{} : trimmed_size(*parts.front().edition);
  Mass all;
  bool known = true;
  for (const CopyPart &part : parts) {
    const PartWeight &one = copy.parts.emplace_back(weighed(part, trimmed));
    if (std::find(held.begin(), held.end(), &part) == held.end())
      continue;
    copy.by_hand.micrograms += by_hand(part, run).micrograms;
    known = known && one.mass;
    all.micrograms += one.mass.value_or(Mass{}).micrograms * one.in_a_copy;
    copy.thickness += one.thickness * one.in_a_copy;
  }
  all.micrograms += copy.by_hand.micrograms;
  if (known)
    copy.mass = all;
  return copy;
}

CopyWeight weigh_heaviest(std::span<const CopyPart> parts) {
  CopyWeight heaviest = weigh(parts);
  const auto count = static_cast<std::uint32_t>(parts.front().edition->runs.size());
  for (std::uint32_t run = 1; run < count; ++run) {
    CopyWeight other = weigh(parts, run);
    if (other.mass.value_or(Mass{}).micrograms > heaviest.mass.value_or(Mass{}).micrograms)
      heaviest = std::move(other);
  }
  return heaviest;
}

std::string in_grams(Mass mass) {
  return fmt::format("{:.{}f} g", mass.grams(), mass.micrograms % 1'000'000 == 0 ? 0 : 1);
}

} // namespace bodkin
