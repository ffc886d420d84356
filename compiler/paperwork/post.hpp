// Copies sent by post: which class of mail takes them, by how much the next one is missed, and what
// the whole mailing costs. Masses and sizes are those of the finished copy.
#pragma once

#include "edition/edition.hpp"
#include "money/exact.hpp"
#include "problems/problem.hpp"
#include "problems/sources.hpp"
#include "sheet/parts.hpp"

#include <optional>
#include <span>
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
  std::vector<std::string> refused; // "1.2 g too heavy"
  // Refused for mass and thickness alone: sheets fewer in each copy that let it in.
  std::optional<std::int64_t> sheets_over;
  bool fits() const { return refused.empty(); }
};

// What a further sheet of the book's inner paper, one in each of the copies, adds to a piece.
struct SheetMore {
  Mass mass;
  Length thickness;
  std::int64_t in_book = 0; // sheets that the book has
};

// A step that would cost less, and what keeps a piece out of it.
struct MailMiss {
  const MailClass *mail = nullptr;
  const MailStep *step = nullptr;
  Mass by;                            // too heavy; nothing: it is not
  Length too_thick;                   // likewise
  std::optional<std::int64_t> sheets; // fewer in each copy; none: it has not so many
  bool thickness_binds = false;
};

struct MailedPiece {
  MailPiece piece;
  std::vector<MailFit> fits;          // beside Edition::mail
  const MailFit *chosen = nullptr;    // of those; null: none takes it, or has a price
  std::optional<SheetMore> one_sheet; // none: its paper's weight is not known, or no sheet is added
  std::vector<MailMiss> misses;       // the nearest first, each cheaper than those before
};

struct Mailing {
  const Posting *posting = nullptr;
  const Envelope *envelope = nullptr;
  std::vector<MailedPiece> pieces; // the full ones, then one with what is left over
  Exact postage, envelopes;        // of all pieces
  bool priced = true;              // else some piece has no price
};

// Of a piece that some class takes: what its step and its class leave.
struct MailRoom {
  Mass mass;
  std::optional<Length> thickness;    // none: the class says nothing of it
  std::optional<std::int64_t> sheets; // more in each copy
  bool thickness_binds = false;
};
MailRoom room_of(const MailedPiece &mailed);

// Holds pointers into the edition; `fits` stay where they are once made.
std::vector<Mailing> mailings_of(const Edition &edition, const std::vector<CopyPart> &parts);

void check_post(const Edition &edition, std::span<const CopyPart> parts,
                const std::vector<Mailing> &mailings, const Sources &sources, Problems &problems);

// Empty where nothing is posted.
std::string post_as_text(const Edition &edition, const std::vector<CopyPart> &parts,
                         const std::vector<Mailing> &mailings, const Sources &sources);

// What mailings come to, for the estimate to read, which does not count them; empty likewise.
std::string post_in_brief(const Edition &edition, const std::vector<Mailing> &mailings);

// A list for the estimate's document: lengths in points, masses in grams and money as decimal
// strings.
std::string post_as_json(const Edition &edition, const std::vector<Mailing> &mailings);

// " 1.2 g too heavy, 3mm too long"; with what it comes to in sheets.
std::string reasons_of(const MailFit &fit);
// "58.2 g (2.05 oz)"
std::string in_grams_and_ounces(Mass mass);

} // namespace bodkin::paperwork
