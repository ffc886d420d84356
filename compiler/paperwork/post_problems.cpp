#include "paperwork/post.hpp"

#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::paperwork {
namespace {

std::string_view mail_words(const MailClass &mail) {
  return mail.title.empty() ? mail.name : mail.title;
}

std::string reasons(const MailFit &fit) {
  if (fit.fits())
    return fmt::format("{} has no price", mail_words(*fit.mail));
  std::string text = fmt::format("{}:", mail_words(*fit.mail));
  for (std::size_t i = 0; i < fit.refused.size(); ++i)
    text += (i == 0 ? " " : ", ") + fit.refused[i];
  return text;
}

// Those of classes that somebody put prices to; of all where nobody did.
std::string all_reasons(const MailedPiece &mailed) {
  const bool any_priced = std::any_of(mailed.fits.begin(), mailed.fits.end(),
                                      [](const MailFit &fit) { return !fit.mail->steps.empty(); });
  std::string text;
  for (const MailFit &fit : mailed.fits)
    if (!any_priced || !fit.mail->steps.empty())
      text += (text.empty() ? "" : "; ") + reasons(fit);
  return text;
}

std::string copies_words(const MailPiece &piece) {
  return piece.copies == 1 ? "a copy" : fmt::format("{} copies together", piece.copies);
}

std::string refusal(const Mailing &mailing, const MailedPiece &mailed, const Edition &edition) {
  const std::string copies = copies_words(mailed.piece);
  const auto &by = mailing.posting->by;
  if (!by)
    return fmt::format("no class of mail takes {}", copies);
  const std::string_view name = mail_words(edition[**by]);
  return mailed.fits[at(**by)].fits() ? fmt::format("{} has no price for {}", name, copies)
                                      : fmt::format("{} does not take {}", name, copies);
}

Problem no_mail(const Mailing &mailing) {
  return {.kind = Kind::warning,
          .check = "no-mail",
          .range = mailing.posting->range,
          .message = "copies are to be posted, and no class of mail is known",
          .why = "how large and heavy a piece may be differs from post office to post office",
          .type = {{"borrow \"mail/us\"", "which holds sizes, and no prices"},
                   {"mail letter \"Letter\"\n  largest    11 1/2in x 6 1/8in, 1/4in thick\n"
                    "  step       1 oz at $0.80 each",
                    "or your own, with the prices of the counter"}}};
}

Problem no_mail_takes_it(const Mailing &mailing, const MailedPiece &mailed,
                         const Edition &edition) {
  const auto &by = mailing.posting->by;
  return {.kind = Kind::warning,
          .check = "mail-refuses",
          .range = by ? by->from : mailing.posting->range,
          .message = refusal(mailing, mailed, edition),
          .why = by ? reasons(mailed.fits[at(**by)]) : all_reasons(mailed),
          .type = {{{}, "fewer copies together, a smaller envelope, or a class that takes it"}}};
}

Problem envelope_too_small(const Mailing &mailing, Size copy, const Edition &edition) {
  const Envelope &envelope = *mailing.envelope;
  return {.kind = Kind::warning,
          .check = "envelope-too-small",
          .range = mailing.posting->in->from,
          .message = fmt::format("a copy of {} does not go into {}, {}",
                                 spoken::measures(copy, edition.ruler), envelope.name,
                                 spoken::measures(**envelope.size, edition.ruler)),
          .why = "a copy goes in flat, and folded once more it is another edition",
          .type = {{{}, "take a larger envelope"}},
          .related = {{envelope.size->from, "its size"}}};
}

Problem other_currency(const Edition &edition, const MailStep &step) {
  return {.check = "two-currencies",
          .range = step.range,
          .message = fmt::format("this edition counts in {} and this is in {}",
                                 edition.currency->code(), step.price.currency.code()),
          .why = "no rate of exchange is ever assumed",
          .type = {{fmt::format("step       1 oz at 0.80 {} each", edition.currency->code()),
                    "with what it comes to"}}};
}

} // namespace

void check_post(const Edition &edition, const std::vector<Mailing> &mailings, Problems &problems) {
  const Size one = finished_size(edition);
  const Size copy = one.width >= one.height ? one : one.turned();
  for (const Mailing &mailing : mailings) {
    if (edition.mail.empty()) {
      problems.push_back(no_mail(mailing));
      continue;
    }
    const Envelope *envelope = mailing.envelope;
    if (envelope && envelope->size &&
        (copy.width > (*envelope->size)->width || copy.height > (*envelope->size)->height))
      problems.push_back(envelope_too_small(mailing, copy, edition));
    for (const MailedPiece &mailed : mailing.pieces)
      if (!mailed.chosen)
        problems.push_back(no_mail_takes_it(mailing, mailed, edition));
      else if (const MailStep &step = *mailed.chosen->step;
               step.price.currency != edition.currency.value)
        problems.push_back(other_currency(edition, step));
  }
}

} // namespace bodkin::paperwork
