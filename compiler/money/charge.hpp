// One thing that costs, as a rate and an amount that grows evenly with the run. Price steps are the
// only bends in what a run costs; between two of them every charge is a straight line.
#pragma once

#include "money/estimate.hpp"

#include <span>
#include <vector>

namespace bodkin {

// So many for each copy and spare, so many for each good copy, and so many once a run.
struct Amount {
  Exact printed, good, once;
  Exact of(std::int64_t copies, std::int64_t spare) const {
    return printed * Exact(copies + spare) + good * Exact(copies) + once;
  }
};

struct Charge {
  std::string what;
  Group group = Group::other;
  Amount amount;
  Exact rate;
  Range from;
  std::optional<StockOrder> order{}; // of paper
};

template <typename Thing>
std::span<const Thing> first_of(const std::vector<Thing> &things, std::size_t most) {
  return std::span(things).first(things.size() < most ? things.size() : most);
}

// What charges come to at any number of copies: money as an Amount.
Amount sum(const std::vector<Charge> &charges);

// Whether an amount written in `written` can be added to the edition's money. No currency written,
// or none known of the edition, fits all.
constexpr bool same_money(Currency edition, Currency written) {
  return edition.empty() || written.empty() || edition == written;
}

// The price of one where it is written for `count` ("per 500 sheets").
Exact price_of_one(const Rate &rate);

} // namespace bodkin
