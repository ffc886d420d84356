// The rights ledger: every picture, text and face of an edition, where it stands, where it comes
// from and by what right. Facts and arithmetic only; not legal advice.
#pragma once

#include "edition/piece.hpp"
#include "paperwork/terms.hpp"

#include <string>
#include <vector>

namespace bodkin::paperwork {

enum class WorkKind { picture, text, face, pasted };

// A page of the book (`piece` is null) or of a piece.
struct PageSeen {
  const Piece *piece = nullptr;
  int page = 0;
  bool operator==(const PageSeen &) const = default;
};

// What is done to a picture, and the line that does it.
struct Change {
  std::string words; // "cropped", "printed in grey"
  Range line;
};

struct LedgerWork {
  WorkKind kind = WorkKind::picture;
  std::string what;                        // its path, its name, or what it says
  std::vector<PageSeen> pages{};           // in order
  std::vector<const Element *> elements{}; // that show it
  const ArtSource *source = nullptr;       // null: it names none
  std::string licence{};                   // of a face
  std::vector<Change> changes{};           // of a picture, in order, each once
  std::vector<TermReckoned> terms{};       // beside Edition::judged_by, where it has a source
};

// Refers to the edition. Works in the order of the pages that first show them, faces last.
struct RightsLedger {
  std::vector<LedgerWork> works;
  int own_words = 0; // places of words written in the manuscript itself, with no source
};

// What its place and its page make of a picture beside what its own lines say: known once the file
// was looked at.
struct PictureSeen {
  Range element;                     // its line
  bool cut = false, in_grey = false; // less than all of it is seen; its colours are printed black
};
RightsLedger ledger_of(const Edition &edition, const std::vector<PictureSeen> &seen = {});

// "3, 5-7; wrap front-cover; map 1"
std::string written(const std::vector<PageSeen> &pages);
std::string on_pages(const std::vector<PageSeen> &pages); // "on page 3", "on pages 3 and 5"
std::string_view word_for(WorkKind kind);
// "own", "public domain", "licence CC-BY-4.0" …
std::string right_in_words(const ArtSource &source);
// The year at which terms are reckoned; none where the edition is not dated.
std::optional<int> year_of(const Edition &edition);

std::string ledger_as_text(const Edition &edition, const RightsLedger &ledger);
std::string ledger_as_csv(const Edition &edition, const RightsLedger &ledger); // RFC 4180

} // namespace bodkin::paperwork
