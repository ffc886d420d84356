// What the estimate says of an order of pages.
#pragma once

#include "edition/edition.hpp"
#include "money/arranging_search.hpp"
#include "money/bill.hpp"
#include "money/charged.hpp"

namespace bodkin::arranging {

// The edition as it stands, laid on its sheets. `draws` is by page, numbered on through the pieces.
struct AsWritten {
  const Edition &edition;
  const Laid &laid;
  const std::vector<bool> &draws;
  const Sources &sources;
};

// The edition with its pages in another order: page p is order[p] as written.
Edition in_order(Edition edition, const std::vector<int> &order);
std::vector<bool> in_order(const std::vector<bool> &draws, const std::vector<int> &order);

// Whole billionths, rounded down.
Nano nano(const Exact &money);

// Lays and prices one order after another, as the estimate would.
class Pricing {
public:
  explicit Pricing(const AsWritten &written);
  // Of the run. An order at a price that no machine offers is dearer than all others.
  Nano operator()(const std::vector<int> &order) const;
  Exact run_total(const std::vector<int> &order) const;
  Laid laid(const std::vector<int> &order) const;

private:
  Stretch stretch(const std::vector<int> &order) const;
  const AsWritten &written_;
  Edition light_; // without what stands on its pages, unless work on them is priced by the sheet
  bool work_by_sheet_ = false;
  std::vector<Job> jobs_;
};

} // namespace bodkin::arranging
