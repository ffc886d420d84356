#include "paperwork/post.hpp"

#include "money/budget.hpp"
#include "money/charge.hpp"
#include "money/money_lines.hpp"
#include "sheet/copy_weight.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <array>
#include <fmt/format.h>
#include <set>
#include <span>

namespace bodkin::paperwork {
namespace {

std::string_view mail_words(const MailClass &mail) {
  return mail.title.empty() ? mail.name : mail.title;
}

std::string reasons(const MailFit &fit) {
  return fit.fits() ? fmt::format("{} has no price", mail_words(*fit.mail))
                    : fmt::format("{}:{}", mail_words(*fit.mail), reasons_of(fit));
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

std::string in_a_list(const std::vector<std::string> &words) {
  std::string text;
  for (std::size_t i = 0; i < words.size(); ++i)
    text += (i == 0 ? "" : i + 1 == words.size() ? " and " : ", ") + words[i];
  return text;
}

struct Unsaid {
  std::string_view fact, what, taken, line;
};
constexpr std::array<Unsaid, 3> can_be_unsaid{{
    {"size", "how large it is", "were as large as the copy", "  size       9in x 6in"},
    {"mass", "what it weighs", "weighed nothing", "  mass       9 g"},
    {"costs", "what it costs", "cost nothing", "  costs      {} each"},
}};

// A shelf file is not written into: a like one of one's own says what it does not.
Problem envelope_untold(const Mailing &mailing, const Edition &edition) {
  const Envelope &envelope = *mailing.envelope;
  const bool own = envelope.range.file == mailing.posting->range.file;
  const bool weighed =
      std::find(envelope.unsaid.begin(), envelope.unsaid.end(), "mass") != envelope.unsaid.end();
  std::vector<std::string> what, taken;
  std::string lines = own ? "" : fmt::format("envelope mine like {}", envelope.name);
  for (const Unsaid &one : can_be_unsaid) {
    if (std::find(envelope.unsaid.begin(), envelope.unsaid.end(), one.fact) ==
        envelope.unsaid.end())
      continue;
    what.emplace_back(one.what);
    taken.emplace_back(one.taken);
    lines += (lines.empty() ? "" : "\n") +
             fmt::format(fmt::runtime(one.line), money_to_fill_in(edition.currency.value));
  }
  return {.kind = Kind::warning,
          .check = "envelope-untold",
          .range = mailing.posting->in->from,
          .message = fmt::format("the envelope {} does not say {}", envelope.name, in_a_list(what)),
          .why = fmt::format("post is reckoned as if it {}, and may come out too low",
                             in_a_list(taken)),
          .type = {{own ? fmt::format("envelope {}\n{}", envelope.name, lines) : lines,
                    weighed ? "ten of yours on the scales, divided, and what one costs"
                            : "with what yours has"}},
          .related = {{envelope.range, "the envelope"}}};
}

Problem more_posted_than_made(const Edition &edition, std::int64_t posted, Range line) {
  Problem problem{
      .check = "more-than-made",
      .range = line,
      .message = fmt::format("{} copies are posted, and {} are made", posted, edition.run->copies),
      .why = "a copy goes to one reader; spares are those that go wrong"};
  if (edition.runs.empty())
    problem.type = {
        {fmt::format("run        {} copies", posted), "or fewer in one of these lines"}};
  else
    problem.type = {{{}, "make more, or post fewer"}};
  problem.related = {{edition.run.from, "what is made"}};
  return problem;
}

class PostJudge {
public:
  PostJudge(const Edition &edition, std::span<const CopyPart> parts, const Sources &sources,
            Problems &problems)
      : edition_(edition), sources_(sources), problems_(problems) {
    const Size one = size_of_copy(parts);
    copy_ = one.width >= one.height ? one : one.turned();
  }

  // Once, at the line that goes beyond what is made.
  void judge_run(const std::vector<Mailing> &mailings) {
    std::int64_t posted = 0;
    Range beyond;
    for (const Mailing &mailing : mailings) {
      posted += mailing.posting->copies;
      if (posted > edition_.run->copies && !beyond.somewhere())
        beyond = mailing.posting->range;
    }
    if (beyond.somewhere() && edition_.run.from.somewhere())
      problems_.push_back(more_posted_than_made(edition_, posted, beyond));
  }

  void judge(const Mailing &mailing) {
    if (mailing.envelope)
      judge(mailing, *mailing.envelope);
    if (edition_.mail.empty()) {
      problems_.push_back(no_mail(mailing));
      return;
    }
    // A paper that does not say its weight is told where it stands.
    for (const MailedPiece &mailed : mailing.pieces)
      if (mailed.piece.mass && !mailed.chosen)
        problems_.push_back(no_mail_takes_it(mailing, mailed, edition_));
      else if (mailed.chosen)
        judge(mailed.chosen->step->price, mailed.chosen->step->range);
  }

private:
  void judge(const Mailing &mailing, const Envelope &envelope) {
    if (envelope.size &&
        (copy_.width > (*envelope.size)->width || copy_.height > (*envelope.size)->height))
      problems_.push_back(envelope_too_small(mailing, copy_, edition_));
    if (!envelope.unsaid.empty() && told_envelopes_.insert(&envelope).second)
      problems_.push_back(envelope_untold(mailing, edition_));
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
  std::set<const Envelope *> told_envelopes_;
};

} // namespace

void check_post(const Edition &edition, std::span<const CopyPart> parts,
                const std::vector<Mailing> &mailings, const Sources &sources, Problems &problems) {
  if (mailings.empty())
    return;
  PostJudge judge(edition, parts, sources, problems);
  for (const Mailing &mailing : mailings)
    judge.judge(mailing);
  judge.judge_run(mailings);
}

} // namespace bodkin::paperwork
