// What the estimate says of an order of pages.
#pragma once

#include "money/arranging_books.hpp"
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

// Whole billionths, rounded down.
Nano nano(const Exact &money);

// Whether pages bear the number of their copy: such sheets are a pass of their own.
bool bears_numbers(const Imposition &imposition);

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
  Edition light_; // without what stands on its pages, unless that is work or a number that counts
  bool work_by_sheet_ = false;
  std::vector<Job> jobs_;
};

} // namespace bodkin::arranging
