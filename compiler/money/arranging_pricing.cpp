#include "money/arranging_pricing.hpp"

#include "money/arranging_works.hpp"
#include "money/saving.hpp"

#include <limits>

namespace bodkin::arranging {
namespace {

constexpr Nano dearer_than_all = std::numeric_limits<Nano>::max() / 8;

} // namespace

Nano nano(const Exact &money) { return (money * Exact(1'000'000'000)).floor(); }

Edition in_order(Edition edition, const std::vector<int> &order) {
  std::vector<Page> pages(edition.pages.size());
  std::vector<int> becomes(edition.pages.size());
  for (std::size_t place = 1; place < pages.size(); ++place) {
    pages[place] = std::move(edition.pages[static_cast<std::size_t>(order[place])]);
    becomes[static_cast<std::size_t>(order[place])] = static_cast<int>(place);
  }
  edition.pages = std::move(pages);
  for (Spread &spread : edition.spreads) {
    spread.left = becomes[static_cast<std::size_t>(spread.left)];
    spread.right = becomes[static_cast<std::size_t>(spread.right)];
  }
  for (Running &running : edition.runnings) {
    const std::vector<bool> was = running.on_page;
    for (std::size_t place = 1; place < was.size(); ++place)
      running.on_page[place] = was[static_cast<std::size_t>(order[place])];
  }
  return edition;
}

std::vector<bool> in_order(const std::vector<bool> &draws, const std::vector<int> &order) {
  std::vector<bool> anew = draws;
  for (std::size_t place = 1; place < order.size() && place < draws.size(); ++place)
    anew[place] = draws[static_cast<std::size_t>(order[place])];
  return anew;
}

Pricing::Pricing(const AsWritten &written)
    : written_(written), work_by_sheet_(!work_by_sheet(written.edition).empty()),
      jobs_(jobs(written.edition, written.laid.imposition)) {
  light_ = work_by_sheet_ ? written.edition : without_matter(written.edition);
}

Laid Pricing::laid(const std::vector<int> &order) const {
  return lay(in_order(light_, order), in_order(written_.draws, order), written_.sources);
}

Stretch Pricing::stretch(const std::vector<int> &order) const {
  const Edition anew = in_order(light_, order);
  const Laid laid = lay(anew, in_order(written_.draws, order), written_.sources);
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
