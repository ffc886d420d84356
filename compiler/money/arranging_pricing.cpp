#include "money/arranging_pricing.hpp"

#include "money/arranging_works.hpp"
#include "money/saving.hpp"
#include "sheet/numbered.hpp"

#include <algorithm>
#include <limits>

namespace bodkin::arranging {
namespace {

constexpr Nano dearer_than_all = std::numeric_limits<Nano>::max() / 8;

} // namespace

Nano nano(const Exact &money) { return (money * Exact(1'000'000'000)).floor(); }

bool bears_numbers(const Imposition &imposition) {
  return std::ranges::any_of(imposition.sheets, is_numbered);
}

Pricing::Pricing(const AsWritten &written)
    : written_(written), work_by_sheet_(!work_by_sheet(written.edition).empty()),
      jobs_(jobs(written.edition, written.laid.imposition)) {
  const bool whole = work_by_sheet_ || bears_numbers(written.laid.imposition);
  light_ = whole ? written.edition : without_matter(written.edition);
}

Laid Pricing::laid(const std::vector<int> &order) const {
  return lay(in_order(light_, order), in_order(light_, written_.draws, order), written_.sources);
}

Stretch Pricing::stretch(const std::vector<int> &order) const {
  const Edition anew = in_order(light_, order);
  const Laid laid = lay(anew, in_order(light_, written_.draws, order), written_.sources);
  const Bill priced =
      bill(anew, laid.imposition, laid.sides, work_by_sheet_ ? jobs(anew, laid.imposition) : jobs_);
  return own_stretch(anew, priced, anew.run->copies);
}

Exact Pricing::run_total(const std::vector<int> &order) const {
  return stretch(order).at(written_.edition.run->copies);
}

Nano Pricing::operator()(const std::vector<int> &order) const {
  const Stretch of_order = stretch(order);
  return of_order.offered ? nano(of_order.at(written_.edition.run->copies)) : dearer_than_all;
}

} // namespace bodkin::arranging
