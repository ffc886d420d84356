// The words that the compiler writes on pages out of the edition's own facts: credits and colophon,
// in English sentences.
#pragma once

#include "paperwork/copy_facts.hpp"
#include "paperwork/ledger.hpp"
#include "problems/problem.hpp"
#include "problems/sources.hpp"
#include "sheet/parts.hpp"

namespace bodkin::paperwork {

// One paragraph for each source that wants naming, in the order of the pages.
Prose credits(const Edition &edition, const RightsLedger &ledger);
// How the copies came about. On a page that the copies of one run have for themselves it tells of
// these alone; where a page is printed for several runs at once, what they have alike and then of
// each what is its own, so that it is true in every copy and no sheet is printed apart for it.
class Colophons {
public:
  // `parts` of a copy, imposed.
  Colophons(const Edition &edition, const RightsLedger &ledger, std::vector<CopyPart> parts,
            const Sources &sources);
  Prose of(const RunSet &runs) const;

private:
  const Edition &edition_;
  std::string set_in_;
  std::vector<CopyFacts> facts_; // by run; one where there are no runs
};

// Fills in every `credits` and `colophon` of the edition and its pieces, before pages are set;
// tells where these, or its cards for the table, are in English and the edition is not. Credits
// tell what is `seen` to be done to pictures, where a licence asks for that.
void write_own_words(Edition &edition, const Sources &sources, Problems &problems,
                     const std::vector<PictureSeen> &seen = {});
bool credits_tell_changes(const Edition &edition);

// Who is named where readers see it.
class CreditsGiven {
public:
  explicit CreditsGiven(const Edition &edition);
  // By a `credits`, or by words on a page that hold the source's credit or its author's name.
  bool name(const ArtSource &source) const;

private:
  bool all_ = false; // some page has a `credits`
  std::string words_;
};

// What the edition writes of itself, for its own words and for the cards on its table.
std::string date_words(const Edition &edition, const Date &date);         // "November 2026"
std::vector<std::string> paper_names(const std::vector<CopyPart> &parts); // each once
// "$5", as the manuscript writes it; empty where a copy has no price or is free.
std::string asked_price(const std::optional<Known<Price>> &price, const Sources &sources);

// "a", "a and b", "a, b and c"
std::string in_a_row(const std::vector<std::string> &names);

} // namespace bodkin::paperwork
