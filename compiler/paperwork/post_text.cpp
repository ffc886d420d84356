#include "edition/read.hpp"
#include "money/charge.hpp"
#include "paperwork/post.hpp"
#include "problems/characters.hpp"
#include "problems/wrap.hpp"
#include "sheet/copy_weight.hpp"
#include "sheet/speech.hpp"

#include <fmt/format.h>

namespace bodkin::paperwork {
namespace {

constexpr int columns = 80, fact_column = 16;

std::string mail_words(const MailClass &mail) {
  return harmless(mail.title.empty() ? mail.name : mail.title);
}

std::string counted(std::int64_t count, std::string_view one, std::string_view many) {
  return fmt::format("{} {}", count, count == 1 ? one : many);
}

class PostTelling {
public:
  PostTelling(const Edition &edition, const std::vector<CopyPart> &parts, const Sources &sources)
      : edition_(edition), sources_(sources), copy_(weigh_heaviest(parts)) {}

  std::string run(const std::vector<Mailing> &mailings) {
    prose(0, harmless(*edition_.title));
    prose(0, fmt::format("By post: {} is {}, {} thick and weighs {}.",
                         edition_.runs.empty() ? "a copy" : "the heaviest kind of copy",
                         spoken::measures(finished_size(edition_), edition_.ruler),
                         thick(copy_.thickness),
                         copy_.mass ? in_grams_and_ounces(*copy_.mass)
                                    : "what its papers, not all of which say their weight, weigh"));
    for (const Mailing &mailing : mailings)
      tell(mailing);
    out_ += '\n';
    prose(0, "Classes, steps and prices are those of the manuscript; the counter weighs again.");
    return std::move(out_);
  }

private:
  void prose(int indent, std::string_view text) {
    out_.append(static_cast<std::size_t>(indent), ' ');
    out_ += wrapped(text, columns, indent) + "\n";
  }
  void fact(std::string_view name, std::string_view text) {
    std::string line = fmt::format("    {}", name);
    line.resize(fact_column, ' ');
    out_ += line + wrapped(text, columns, fact_column) + "\n";
  }

  std::string thick(Length length) const {
    return edition_.ruler == Ruler::inches ? fmt::format("{:.2f}in", length.in_inches())
                                           : fmt::format("{:.1f}mm", length.in_inches() * 25.4);
  }
  std::string money(const Exact &amount) const { return shown(amount, edition_.currency.value); }
  std::string money(const Price &price) const { return money(in_own_money(edition_, price)); }

  void tell(const Mailing &mailing) {
    out_ += '\n';
    std::string what = counted(mailing.posting->copies, "copy", "copies");
    if (mailing.posting->together > 1)
      what += fmt::format(", {} together", mailing.posting->together);
    if (mailing.envelope)
      what += fmt::format(", in {}",
                          harmless(mailing.envelope->title.empty() ? mailing.envelope->name
                                                                   : mailing.envelope->title));
    prose(2, fmt::format("{} ({})", what, origin_words(mailing.posting->range, sources_)));
    for (const MailedPiece &mailed : mailing.pieces)
      tell(mailed);
    sums(mailing);
  }

  void tell(const MailedPiece &mailed) {
    const MailPiece &piece = mailed.piece;
    fact("pieces", fmt::format("{}, each with {}: {}, {} thick, {}", piece.count,
                               counted(piece.copies, "copy", "copies"),
                               spoken::measures(piece.size, edition_.ruler), thick(piece.thickness),
                               piece.mass ? in_grams_and_ounces(*piece.mass) : "weight unknown"));
    if (mailed.chosen)
      goes(mailed);
    for (const MailFit &fit : mailed.fits)
      if (&fit != mailed.chosen && !fit.mail->steps.empty())
        fact("", not_chosen(fit));
  }

  void goes(const MailedPiece &mailed) {
    const MailStep &step = *mailed.chosen->step;
    fact("goes as", fmt::format("{}, up to {}, at {}", mail_words(*mailed.chosen->mail),
                                in_grams_and_ounces(step.to), money(step.price)));
    fact("to spare", in_grams(room_left(mailed)) + sheets_in_room(mailed));
    if (mailed.cheaper)
      fact("missed", missed(mailed));
  }

  // Of the book's paper, in every copy.
  static std::string sheets_in_room(const MailedPiece &mailed) {
    if (!mailed.one_sheet || mailed.one_sheet->micrograms <= 0)
      return {};
    const std::int64_t sheets = sheets_to_spare(mailed);
    return sheets == 0
               ? ", less than a sheet more in each copy"
               : fmt::format(", room for {} more in each copy", counted(sheets, "sheet", "sheets"));
  }

  std::string missed(const MailedPiece &mailed) const {
    const MailStep &step = *mailed.cheaper;
    std::string text = fmt::format("the step up to {}, at {}, by {}", in_grams_and_ounces(step.to),
                                   money(step.price), in_grams(over_cheaper(mailed)));
    if (mailed.one_sheet && mailed.one_sheet->micrograms > 0)
      text += fmt::format(": {} in each copy", counted(sheets_over(mailed), "sheet", "sheets"));
    return text;
  }

  std::string not_chosen(const MailFit &fit) const {
    const std::string name = mail_words(*fit.mail);
    if (fit.fits())
      return fit.step ? fmt::format("{} would take it at {}", name, money(fit.step->price))
                      : fmt::format("{} would take it; the manuscript says no price", name);
    std::string text = name + " does not take it:";
    for (std::size_t i = 0; i < fit.refused.size(); ++i)
      text += (i == 0 ? " " : ", ") + fit.refused[i];
    return text;
  }

  void sums(const Mailing &mailing) {
    if (!mailing.priced) {
      fact("in all", "no price, since not every piece has a class with one");
      return;
    }
    const Exact sum = mailing.postage + mailing.envelopes;
    std::string text = fmt::format("postage {}", money(mailing.postage));
    if (mailing.envelope && mailing.envelope->costs)
      text += fmt::format(", envelopes {}, together {}", money(mailing.envelopes), money(sum));
    fact("in all", fmt::format("{}; {} a copy", text, money(sum / Exact(mailing.posting->copies))));
  }

  const Edition &edition_;
  const Sources &sources_;
  CopyWeight copy_;
  std::string out_;
};

} // namespace

std::string post_as_text(const Edition &edition, const std::vector<CopyPart> &parts,
                         const std::vector<Mailing> &mailings, const Sources &sources) {
  if (mailings.empty())
    return {};
  return PostTelling(edition, parts, sources).run(mailings);
}

} // namespace bodkin::paperwork
