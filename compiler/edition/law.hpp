// How long rights last, as tables that a maker may write, and licences that lend a work to
// everybody.
#pragma once

#include "edition/known.hpp"

#include <optional>
#include <string>
#include <vector>

namespace bodkin {

enum class TermFrom { publication, death, making };
struct TermYears {
  int years = 0;
  TermFrom from = TermFrom::publication;
};

// A line of a law: so many years, to the end of the calendar year, for the works that it speaks of.
struct TermRule {
  Range range;
  TermYears span;
  std::optional<TermYears> other; // whichever of the two ends first
  std::optional<int> published_since, published_before, made_before;
  bool never_published = false;
  std::optional<int> never_within; // so many years from its making; later counts as never
  std::string country;             // published there; empty: anywhere
  std::optional<bool> author_known, renewed;
  std::optional<int> at_least; // the last year of protection is this or a later one
};

struct Law {
  std::string name, title;
  Range range;
  std::vector<TermRule> terms; // the first that fits counts
};

struct Licence {
  std::string name, title; // the title is what sources and editions write
  Range range;
  std::string called, link;
  bool asks_credit = false, asks_changes_said = false, asks_same_licence = false;
  bool forbids_sale = false, forbids_changes = false;
};

} // namespace bodkin
