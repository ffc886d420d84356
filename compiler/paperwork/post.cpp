#include "paperwork/post.hpp"

#include "money/charge.hpp"
#include "paperwork/post_misses.hpp"
#include "sheet/copy_weight.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::paperwork {
namespace {

Size lying(Size size) { return size.width >= size.height ? size : size.turned(); }

std::string over(Length by, std::string_view what, Ruler ruler) {
  return fmt::format("{} too {}", written(by, ruler), what);
}

void ask_size(const MailPiece &piece, const MailClass &mail, Ruler ruler, MailFit &fit) {
  if (mail.largest) {
    const Size most = **mail.largest;
    if (piece.size.width > most.width)
      fit.refused.push_back(over(piece.size.width - most.width, "long", ruler));
    if (piece.size.height > most.height)
      fit.refused.push_back(over(piece.size.height - most.height, "high", ruler));
  }
  if (mail.smallest) {
    const Size least = **mail.smallest;
    if (piece.size.width < least.width)
      fit.refused.push_back(over(least.width - piece.size.width, "short", ruler));
    if (piece.size.height < least.height)
      fit.refused.push_back(over(least.height - piece.size.height, "low", ruler));
  }
  if (mail.thickest && piece.thickness > **mail.thickest)
    fit.refused.push_back(over(piece.thickness - **mail.thickest, "thick", ruler));
}

MailFit fit_of(const MailPiece &piece, const MailClass &mail, Ruler ruler) {
  MailFit fit{&mail, nullptr, {}, {}};
  ask_size(piece, mail, ruler, fit);
  if (!piece.mass)
    return fit;
  if (const auto most = heaviest(mail); most && *most < *piece.mass)
    fit.refused.push_back(
        fmt::format("{} too heavy", in_grams({piece.mass->micrograms - most->micrograms})));
  if (!fit.fits())
    return fit;
  const auto at = std::find_if(mail.steps.begin(), mail.steps.end(),
                               [&](const MailStep &step) { return !(step.to < *piece.mass); });
  if (at != mail.steps.end())
    fit.step = &*at;
  return fit;
}

// The cheapest with a price; of two that cost the same the one written first.
const MailFit *cheapest(const Edition &edition, const std::vector<MailFit> &fits) {
  const MailFit *best = nullptr;
  for (const MailFit &fit : fits)
    if (fit.step && (!best || in_own_money(edition, fit.step->price) <
                                  in_own_money(edition, best->step->price)))
      best = &fit;
  return best;
}

class Mailroom {
public:
  Mailroom(const Edition &edition, const std::vector<CopyPart> &parts)
      : edition_(edition), copy_(weigh_heaviest(parts)), size_(lying(size_of_copy(parts))),
        one_sheet_(one_sheet_of(parts.front())) {}

  Mailing mailing(const Posting &posting) const {
    Mailing mailing;
    mailing.posting = &posting;
    if (posting.in)
      mailing.envelope = &edition_[**posting.in];
    const std::int64_t full = posting.copies / posting.together;
    const std::int64_t left = posting.copies % posting.together;
    add(mailing, posting.together, full);
    if (left > 0)
      add(mailing, left, 1);
    return mailing;
  }

private:
  MailPiece piece_of(const Mailing &mailing, std::int64_t copies, std::int64_t count) const {
    MailPiece piece{copies, count, size_, copy_.thickness * static_cast<int>(copies), {}};
    if (copy_.mass)
      piece.mass = Mass{copy_.mass->micrograms * copies};
    if (const Envelope *envelope = mailing.envelope) {
      if (envelope->size)
        piece.size = **envelope->size;
      if (envelope->thick)
        piece.thickness = piece.thickness + **envelope->thick;
      if (piece.mass && envelope->mass)
        piece.mass->micrograms += (*envelope->mass)->micrograms;
    }
    return piece;
  }

  void add(Mailing &mailing, std::int64_t copies, std::int64_t count) const {
    MailedPiece mailed;
    mailed.piece = piece_of(mailing, copies, count);
    for (const MailClass &mail : edition_.mail)
      mailed.fits.push_back(fit_of(mailed.piece, mail, edition_.ruler));
    const auto &by = mailing.posting->by;
    if (!by)
      mailed.chosen = cheapest(edition_, mailed.fits);
    else if (const MailFit &asked = mailed.fits[at(**by)]; asked.step)
      mailed.chosen = &asked;
    if (one_sheet_)
      mailed.one_sheet = SheetMore{{one_sheet_->mass.micrograms * copies},
                                   one_sheet_->thickness * copies,
                                   one_sheet_->in_book};
    tell_misses(edition_, mailing.posting->by, mailed);
    if (mailed.chosen)
      mailing.postage += in_own_money(edition_, mailed.chosen->step->price) * Exact(count);
    mailing.priced = mailing.priced && mailed.chosen;
    if (mailing.envelope && mailing.envelope->costs)
      mailing.envelopes += in_own_money(edition_, (**mailing.envelope->costs).price) * Exact(count);
    mailing.pieces.push_back(std::move(mailed));
  }

  const Edition &edition_;
  CopyWeight copy_;
  Size size_;
  std::optional<SheetMore> one_sheet_;
};

} // namespace

std::string reasons_of(const MailFit &fit) {
  std::string text;
  for (std::size_t i = 0; i < fit.refused.size(); ++i)
    text += (i == 0 ? " " : ", ") + fit.refused[i];
  if (fit.sheets_over)
    text += fmt::format(" ({} sheet{} in each copy)", *fit.sheets_over,
                        *fit.sheets_over == 1 ? "" : "s");
  return text;
}

std::string in_grams_and_ounces(Mass mass) {
  // The international avoirdupois ounce of 1959.
  constexpr double grams_an_ounce = 28.349523125;
  return fmt::format("{} ({:.2f} oz)", in_grams(mass), mass.grams() / grams_an_ounce);
}

std::vector<Mailing> mailings_of(const Edition &edition, const std::vector<CopyPart> &parts) {
  std::vector<Mailing> mailings;
  if (edition.postings.empty())
    return mailings;
  const Mailroom room(edition, parts);
  for (const Posting &posting : edition.postings)
    mailings.push_back(room.mailing(posting));
  return mailings;
}

} // namespace bodkin::paperwork
