#include "paperwork/post_misses.hpp"

#include "money/charge.hpp"
#include "sheet/copy_weight.hpp"

#include <algorithm>
#include <tuple>

namespace bodkin::paperwork {
namespace {

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

} // namespace

std::optional<Mass> heaviest(const MailClass &mail) {
  if (mail.heaviest)
    return **mail.heaviest;
  return mail.steps.empty() ? std::nullopt : std::optional(mail.steps.back().to);
}

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

void tell_misses(const Edition &edition, const std::optional<Known<MailId>> &by,
                 MailedPiece &mailed) {
  let_in(mailed);
  if (mailed.chosen)
    mailed.misses = misses_of(edition, mailed, by);
}

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

} // namespace bodkin::paperwork
