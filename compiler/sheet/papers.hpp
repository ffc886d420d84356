// Which paper each sheet is, and which machine prints each side. One page that asks speaks for its
// whole sheet (`on`) or side (`by`); the cover's paper and the edition's own fill in where none
// asks.
#pragma once

#include "edition/edition.hpp"
#include "problems/problem.hpp"
#include "problems/sources.hpp"
#include "sheet/imposition.hpp"

#include <vector>

namespace bodkin {

// Problems: no-cover, mixed-stock, mixed-machine.
void choose_papers(const Edition &edition, const Sources &sources, Imposition &imposition,
                   Problems &problems);

// Pages of a side or sheet, in the order of its places; those with no page left out.
std::vector<int> pages_of(const Side &side);
std::vector<int> pages_of(const Sheet &sheet);

// What the pages of one sheet or side ask, the earliest line first; pages of one line together.
template <typename Id>
struct Request {
  Id wanted = Id::none;
  Range from;             // the name of the stock or machine
  std::vector<int> pages; // rising
};
template <typename Id>
using Requests = std::vector<Request<Id>>;

Requests<StockId> asked_of(const Edition &edition, const Sheet &sheet);
Requests<MachineId> asked_of(const Edition &edition, const Side &side);

} // namespace bodkin
