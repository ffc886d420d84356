// How the copies of one run came about: what a colophon tells of them.
#pragma once

#include "sheet/parts.hpp"
#include "sheet/passes.hpp"

#include <optional>
#include <string>
#include <vector>

namespace bodkin::paperwork {

// Something done to a copy: "stamped", " on page 5 and the cover".
struct Done {
  std::string what, where{};
  bool by_hand = true;
  bool operator==(const Done &) const = default;
};

// Each list as first met, each thing once.
struct CopyFacts {
  std::vector<Mode> inks;
  std::vector<std::string> machines, papers;
  std::vector<Done> steps; // of finish, in their order
  std::vector<Done> work;  // stamps, numbers and the like
  std::string price;       // "$5"; empty: none, or nothing
  bool operator==(const CopyFacts &) const = default;
};

// `parts` sent to their machines, `inks` by page, numbered on through them. Of all copies where
// there are no runs.
CopyFacts facts_of(const Edition &edition, const std::vector<CopyPart> &parts,
                   const std::vector<PageInk> &inks, const Sources &sources,
                   std::optional<std::uint32_t> run);

// What all have alike, and what `of` has beyond it.
CopyFacts in_common(const std::vector<CopyFacts> &all);
CopyFacts beyond(CopyFacts of, const CopyFacts &common);

} // namespace bodkin::paperwork
