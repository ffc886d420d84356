// Whether the rights in a work have ended, by a law's table of terms: arithmetic on the years that
// its source states, never advice. Terms run to the end of a calendar year (17 U.S.C. 305;
// Directive 2006/116/EC, article 8).
#pragma once

#include "edition/law.hpp"
#include "edition/source.hpp"

#include <optional>
#include <string>

namespace bodkin::paperwork {

enum class TermAnswer { ended, lasting, untold };

struct TermReckoned {
  TermAnswer answer = TermAnswer::untold;
  int last_year = 0;     // the last of protection; 0 where untold
  std::string sum;       // "published in 1907, and 95 years: to the end of 2002"
  std::string wanted;    // untold: the line of the source that would tell, "made 1899"
  std::string missing{}; // untold: what is not said, in words
  std::string or_else{}; // another such line, where two would do
};

// At a year: that in which the edition is dated.
TermReckoned reckoned(const ArtSource &source, const Law &law, int year);

} // namespace bodkin::paperwork
