// Copies sent by post: which class of mail takes them, by how much the next one is missed, and what
// the whole mailing costs. Masses and sizes are those of the finished copy.
#pragma once

#include "edition/edition.hpp"
#include "money/exact.hpp"
#include "problems/problem.hpp"
#include "problems/sources.hpp"
#include "sheet/parts.hpp"

#include <optional>
#include <string>
#include <vector>

namespace bodkin::paperwork {

// What lies on the scales: some copies together, perhaps in an envelope.
struct MailPiece {
  std::int64_t copies = 1;
  std::int64_t count = 1; // of such pieces
  Size size;              // lying: the longer side is its width
  Length thickness;
  std::optional<Mass> mass; // none: that of a copy is not known
};

// A class held against a piece.
struct MailFit {
  const MailClass *mail = nullptr;
  const MailStep *step = nullptr;   // the one that takes it; null: it is refused, or has no price
  std::vector<std::string> refused; // "1.2 g heavier than 28.35 g"
  bool fits() const { return refused.empty(); }
};

struct MailedPiece {
  MailPiece piece;
  std::vector<MailFit> fits;         // beside Edition::mail
  const MailFit *chosen = nullptr;   // of those; null: none takes it, or has a price
  std::optional<Mass> one_sheet;     // of the book's inner paper, as many as copies lie together
  const MailStep *cheaper = nullptr; // the step of the same class below the chosen one
};

struct Mailing {
  const Posting *posting = nullptr;
  const Envelope *envelope = nullptr;
  std::vector<MailedPiece> pieces; // the full ones, then one with what is left over
  Exact postage, envelopes;        // of all pieces
  bool priced = true;              // else some piece has no price
};

// Of a piece that some class takes: what the step leaves, and what the step below is missed by; the
// same in sheets more or fewer in each copy, where `one_sheet` is known.
Mass room_left(const MailedPiece &mailed);
Mass over_cheaper(const MailedPiece &mailed);
std::int64_t sheets_to_spare(const MailedPiece &mailed);
std::int64_t sheets_over(const MailedPiece &mailed);

// Holds pointers into the edition; `fits` stay where they are once made.
std::vector<Mailing> mailings_of(const Edition &edition, const std::vector<CopyPart> &parts);

void check_post(const Edition &edition, const std::vector<Mailing> &mailings,
                const Sources &sources, Problems &problems);

// Empty where nothing is posted.
std::string post_as_text(const Edition &edition, const std::vector<CopyPart> &parts,
                         const std::vector<Mailing> &mailings, const Sources &sources);

// A list for the estimate's document: lengths in points, masses in grams and money as decimal
// strings.
std::string post_as_json(const Edition &edition, const std::vector<Mailing> &mailings);

// The copy as the knife leaves it.
Size finished_size(const Edition &edition);
// "58.2 g (2.05 oz)"
std::string in_grams_and_ounces(Mass mass);

} // namespace bodkin::paperwork
