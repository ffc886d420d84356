#include "paperwork/post.hpp"

#include "money/budget.hpp"
#include "money/charge.hpp"
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

class PostJudge {
public:
  PostJudge(const Edition &edition, const Sources &sources, Problems &problems)
      : edition_(edition), sources_(sources), problems_(problems) {
    const Size one = finished_size(edition);
    copy_ = one.width >= one.height ? one : one.turned();
  }

  void judge(const Mailing &mailing) {
    if (mailing.envelope)
      judge(mailing, *mailing.envelope);
    if (edition_.mail.empty()) {
      problems_.push_back(no_mail(mailing));
      return;
    }
    for (const MailedPiece &mailed : mailing.pieces)
      if (!mailed.chosen)
        problems_.push_back(no_mail_takes_it(mailing, mailed, edition_));
      else
        judge(mailed.chosen->step->price, mailed.chosen->step->range);
  }

private:
  void judge(const Mailing &mailing, const Envelope &envelope) {
    if (envelope.size &&
        (copy_.width > (*envelope.size)->width || copy_.height > (*envelope.size)->height))
      problems_.push_back(envelope_too_small(mailing, copy_, edition_));
    if (envelope.costs)
      judge((*envelope.costs)->price, envelope.costs->from);
  }

  // A price that several mailings pay is told once.
  void judge(const Price &price, Range from) {
    if (counts(edition_, price.currency) ||
        std::find(told_.begin(), told_.end(), from) != told_.end())
      return;
    told_.push_back(from);
    problems_.push_back(two_currencies(edition_, price, from, sources_));
  }

  const Edition &edition_;
  const Sources &sources_;
  Problems &problems_;
  Size copy_;
  std::vector<Range> told_;
};

} // namespace

void check_post(const Edition &edition, const std::vector<Mailing> &mailings,
                const Sources &sources, Problems &problems) {
  PostJudge judge(edition, sources, problems);
  for (const Mailing &mailing : mailings)
    judge.judge(mailing);
}

} // namespace bodkin::paperwork
