// One thing that costs, as a rate and an amount that grows evenly with the run. Price steps are the
// only bends in what a run costs; between two of them every charge is a straight line.
#pragma once

#include "money/estimate.hpp"

#include <span>
#include <vector>

namespace bodkin {

// So many for each copy and spare, so many for each good copy, and so many once a run. What only
// some copies have is so many once, as long as their run stays what it is; `of_spares` is the part
// of it that a printer, who needs no spares, leaves out.
struct Amount {
  Exact printed, good, once, of_spares{};
  Exact of(std::int64_t copies, std::int64_t spare) const {
    return printed * Exact(copies + spare) + good * Exact(copies) + once + of_spares;
  }
};

Amount operator+(Amount a, const Amount &b);
Amount operator*(Amount a, const Exact &times);

// Of an amount, sheets or sides of which several copies' share is cut: so many alike, of each of
// which a run takes the next whole number.
struct InWhole {
  Exact each, once; // of one of them, a printed copy and beside
  Exact alike = 1;
  Exact unused(std::int64_t printed) const; // of all that are alike
};
// Adds what is counted as one of its kind; a whole number a copy, and of the run, needs no
// rounding.
void add_whole(std::vector<InWhole> &all, const InWhole &more);
Exact unused(const std::vector<InWhole> &all, std::int64_t printed);

// How a charge's amount and rate come about, for whoever counts anew for another run: so many for
// each of the copies that it is for.
struct Counted {
  Amount amount{};              // before for_run()
  std::vector<InWhole> whole{}; // of it, for the same copies
  MachineId machine = MachineId::none;
  std::optional<Mode> mode{}; // of sides: their price hangs on all of this mode
  std::optional<Size> size{}; // where they have a price of their size
};

struct Charge {
  std::string what;
  Group group = Group::other;
  Amount amount;
  Exact rate;
  Range from;
  std::optional<StockOrder> order{}; // of paper
  std::string bought_as{};           // all lines of one paper are bought together
  RunSet only{};                     // whose copies it is for
  bool in_one_sum = false;           // told as one sum, however it grows
  std::vector<InWhole> whole{};      // of sheets and sides
  Counted counted{};
};

template <typename Thing>
std::span<const Thing> first_of(const std::vector<Thing> &things, std::size_t most) {
  return std::span(things).first(things.size() < most ? things.size() : most);
}

// What is so many for each copy, where only the copies of some runs have it.
Amount for_run(const Edition &edition, const RunSet &only, Amount each);
// What the line of the first run says where `copies` are made in all: the others stay what they
// are. 0 where these alone are as many.
std::int64_t in_first_run(const Edition &edition, std::int64_t copies);
// The copies of all runs but the first, and one of it.
std::int64_t fewest_copies(const Edition &edition);
// ", de-luxe alone" after the name of what some runs have; nothing where all copies have it.
std::string alone_in(const Edition &edition, const RunSet &only);

// What charges come to at any number of copies: money as an Amount.
Amount sum(const std::vector<Charge> &charges);

// Whether an amount written in `written` can be added to the edition's money. No currency written,
// or none known of the edition, fits all.
constexpr bool same_money(Currency edition, Currency written) {
  return edition.empty() || written.empty() || edition == written;
}

// Whether a price can be added to the edition's money: it is in it, or a rate of exchange is
// written.
bool counts(const Edition &edition, Currency written);
// A price in the edition's money; as written where it does not count.
Exact in_own_money(const Edition &edition, const Price &price);

// The price of one in the edition's money, where it is written for `count` ("per 500 sheets").
Exact price_of_one(const Edition &edition, const Rate &rate);

} // namespace bodkin
