#include "paperwork/post.hpp"

#include "money/charge.hpp"
#include "sheet/copy_weight.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <tuple>

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

std::optional<Mass> heaviest(const MailClass &mail) {
  if (mail.heaviest)
    return **mail.heaviest;
  return mail.steps.empty() ? std::nullopt : std::optional(mail.steps.back().to);
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

// What a further sheet in each copy adds, where the folding takes one.
std::optional<SheetMore> one_sheet_of(const CopyPart &book) {
  const auto &sheets = book.imposition.sheets;
  const StockId paper = *book.edition->paper;
  if (paper == StockId::none || sheets.empty() || book.edition->folding->sheets)
    return std::nullopt;
  // Those that come and go lie inmost, where the knife leaves the least.
  const auto mass = mass_of_sheet(book, sheets.back(), paper);
  if (!mass || mass->micrograms <= 0)
    return std::nullopt;
  return SheetMore{*mass, *(*book.edition)[paper].caliper * book.imposition.layers,
                   static_cast<std::int64_t>(sheets.size())};
}

std::int64_t rounded_up(std::int64_t amount, std::int64_t one) {
  return one <= 0 ? 0 : (std::max<std::int64_t>(amount, 0) + one - 1) / one;
}

// The most that a class takes at a step.
Mass most_at(const MailClass &mail, const MailStep &step) {
  return mail.heaviest ? std::min(step.to, **mail.heaviest) : step.to;
}

Length too_thick_for(const MailPiece &piece, const MailClass &mail) {
  return mail.thickest ? std::max(piece.thickness - **mail.thickest, Length{}) : Length{};
}

// A book is a sheet at the least.
void count_sheets(const std::optional<SheetMore> &one, MailMiss &miss) {
  if (!one)
    return;
  const std::int64_t by_mass = rounded_up(miss.by.micrograms, one->mass.micrograms);
  const std::int64_t by_thickness = rounded_up(miss.too_thick.units(), one->thickness.units());
  miss.thickness_binds = by_thickness > by_mass;
  const bool flat = miss.too_thick > Length{} && one->thickness <= Length{};
  if (const std::int64_t sheets = std::max(by_mass, by_thickness); sheets < one->in_book && !flat)
    miss.sheets = sheets;
}

MailMiss miss_of(const MailedPiece &mailed, const MailClass &mail, const MailStep *step,
                 Mass most) {
  const Mass over{std::max<std::int64_t>(mailed.piece.mass->micrograms - most.micrograms, 0)};
  MailMiss miss{&mail, step, over, too_thick_for(mailed.piece, mail), {}, false};
  count_sheets(mailed.one_sheet, miss);
  return miss;
}

bool size_fits(const MailPiece &piece, const MailClass &mail) {
  const auto within = [](const Size &a, const Size &b) {
    return a.width <= b.width && a.height <= b.height;
  };
  return (!mail.largest || within(piece.size, **mail.largest)) &&
         (!mail.smallest || within(**mail.smallest, piece.size));
}

// Of a class, the dearest step that would still be cheaper than what is paid.
std::optional<MailMiss> miss_in(const Edition &edition, const MailedPiece &mailed,
                                const MailClass &mail) {
  const Exact paid = in_own_money(edition, mailed.chosen->step->price);
  if (!size_fits(mailed.piece, mail))
    return std::nullopt;
  for (auto step = mail.steps.rbegin(); step != mail.steps.rend(); ++step) {
    const MailMiss miss = miss_of(mailed, mail, &*step, most_at(mail, *step));
    if ((miss.by.micrograms > 0 || miss.too_thick > Length{}) &&
        in_own_money(edition, step->price) < paid)
      return miss;
  }
  return std::nullopt;
}

bool nearer(const MailMiss &a, const MailMiss &b) {
  const auto distance = [](const MailMiss &miss) {
    return miss.sheets ? std::tuple(false, *miss.sheets, Mass{}, Length{})
                       : std::tuple(true, std::int64_t{}, miss.by, miss.too_thick);
  };
  return distance(a) < distance(b);
}

// What is farther off and no cheaper is of no use.
std::vector<MailMiss> misses_of(const Edition &edition, const MailedPiece &mailed,
                                const std::optional<Known<MailId>> &by) {
  std::vector<MailMiss> all, kept;
  for (const MailClass &mail : edition.mail)
    if (!by || &mail == &edition[**by])
      if (const auto miss = miss_in(edition, mailed, mail))
        all.push_back(*miss);
  const auto price = [&](const MailMiss &miss) { return in_own_money(edition, miss.step->price); };
  std::stable_sort(all.begin(), all.end(), [&](const MailMiss &a, const MailMiss &b) {
    return nearer(a, b) || (!nearer(b, a) && price(a) < price(b));
  });
  for (const MailMiss &miss : all)
    if (kept.empty() || price(miss) < price(kept.back()))
      kept.push_back(miss);
  return kept;
}

void let_in(MailedPiece &mailed) {
  for (MailFit &fit : mailed.fits) {
    const auto most = heaviest(*fit.mail);
    if (fit.fits() || !mailed.piece.mass || !size_fits(mailed.piece, *fit.mail))
      continue;
    fit.sheets_over = miss_of(mailed, *fit.mail, nullptr, most.value_or(*mailed.piece.mass)).sheets;
  }
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
    let_in(mailed);
    if (mailed.chosen)
      mailed.misses = misses_of(edition_, mailed, by);
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

MailRoom room_of(const MailedPiece &mailed) {
  const MailClass &mail = *mailed.chosen->mail;
  MailRoom room;
  room.mass = {most_at(mail, *mailed.chosen->step).micrograms - mailed.piece.mass->micrograms};
  if (mail.thickest)
    room.thickness = **mail.thickest - mailed.piece.thickness;
  if (!mailed.one_sheet)
    return room;
  room.sheets = room.mass.micrograms / mailed.one_sheet->mass.micrograms;
  const std::int64_t one = mailed.one_sheet->thickness.units();
  if (!room.thickness || one <= 0 || room.thickness->units() / one >= *room.sheets)
    return room;
  room.sheets = room.thickness->units() / one;
  room.thickness_binds = true;
  return room;
}

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
