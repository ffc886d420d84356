// Work by hand and things bought: hand matter on pages, steps of finish, fees of sources. Each is
// one job, however many pages repeat it.
//
// `a copy` and `each` count every place where the thing stands on a copy, `a sheet` and `a side`
// the sheets and sides that carry it, `once` the run. Spares are worked on too, but signatures and
// numbers only go on good copies.
#pragma once

#include "money/charge.hpp"

#include <vector>

namespace bodkin {

struct Job {
  std::string what; // "stamp lino moon"
  Group group = Group::hand;
  bool covered_by_bids = false; // folding and stapling come with a printer's offer
  std::int64_t places = 1, sheets = 1, sides = 1; // of one copy
  Amount minutes;
  std::vector<Charge> charges;
  std::optional<Charge> labour; // where an hour of work is paid
  std::vector<Unpriced> unpriced;
  Exact kept; // tools that an earlier impression paid for
};

// What it costs, labour with it.
Amount money_of(const Job &job);

// In order of pages, then of finish, then sources as they are first used.
std::vector<Job> jobs(const Edition &edition, const Imposition &imposition);

} // namespace bodkin
