// How far a piece of mail is from what would take it for less, in mass, thickness and sheets.
#pragma once

#include "paperwork/post.hpp"

#include <optional>

namespace bodkin::paperwork {

// The most that a class takes; none where it does not say.
std::optional<Mass> heaviest(const MailClass &mail);

// What a further sheet in each copy adds, where the folding takes one.
std::optional<SheetMore> one_sheet_of(const CopyPart &book);

// Fills in how many sheets fewer would let the piece into classes that refuse it, and, once a class
// is chosen, what cheaper steps are missed by.
void tell_misses(const Edition &edition, const std::optional<Known<MailId>> &by,
                 MailedPiece &mailed);

} // namespace bodkin::paperwork
