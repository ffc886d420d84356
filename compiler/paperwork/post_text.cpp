#include "edition/read.hpp"
#include "money/charge.hpp"
#include "paperwork/post.hpp"
#include "problems/characters.hpp"
#include "problems/wrap.hpp"
#include "sheet/copy_weight.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
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
      : edition_(edition), sources_(sources), copy_(weigh_heaviest(parts)),
        size_(size_of_copy(parts)) {}

  std::string run(const std::vector<Mailing> &mailings) {
    prose(0, harmless(*edition_.title));
    prose(0, fmt::format("By post: {} is {}, {} thick and weighs {}.",
                         edition_.runs.empty() ? "a copy" : "the heaviest kind of copy",
                         spoken::measures(size_, edition_.ruler), thick(copy_.thickness),
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
      tell(mailed, lacking(mailing.envelope));
    sums(mailing);
  }

  static bool leaves_out(const Envelope &envelope, std::string_view fact) {
    const auto &unsaid = envelope.unsaid;
    return std::find(unsaid.begin(), unsaid.end(), fact) != unsaid.end();
  }
  static std::string lacking(const Envelope *envelope) {
    return envelope && leaves_out(*envelope, "mass") ? " without the envelope's own" : "";
  }

  void tell(const MailedPiece &mailed, const std::string &lacking) {
    const MailPiece &piece = mailed.piece;
    fact("pieces",
         fmt::format("{}, each with {}: {}, {} thick, {}", piece.count,
                     counted(piece.copies, "copy", "copies"),
                     spoken::measures(piece.size, edition_.ruler), thick(piece.thickness),
                     piece.mass ? in_grams_and_ounces(*piece.mass) + lacking : "weight unknown"));
    if (mailed.chosen)
      goes(mailed);
    for (const MailFit &fit : mailed.fits)
      if (&fit != mailed.chosen && !fit.mail->steps.empty() && !is_missed(mailed, fit))
        fact("", not_chosen(fit));
  }

  void goes(const MailedPiece &mailed) {
    const MailStep &step = *mailed.chosen->step;
    fact("goes as", fmt::format("{}, up to {}, at {}", mail_words(*mailed.chosen->mail),
                                in_grams_and_ounces(step.to), money(step.price)));
    fact("to spare", to_spare(mailed));
    for (std::size_t i = 0; i < mailed.misses.size(); ++i)
      fact(i == 0 ? "missed" : "", missed(mailed.misses[i]));
  }

  static bool is_missed(const MailedPiece &mailed, const MailFit &fit) {
    return std::any_of(mailed.misses.begin(), mailed.misses.end(),
                       [&](const MailMiss &miss) { return miss.mail == fit.mail; }) &&
           !fit.fits();
  }

  // Of the book's paper, in every copy.
  std::string to_spare(const MailedPiece &mailed) const {
    const MailRoom room = room_of(mailed);
    std::string text = in_grams(room.mass);
    if (room.thickness)
      text += " and " + thick(*room.thickness);
    if (!room.sheets)
      return text;
    text += *room.sheets == 0 ? ", less than a sheet more in each copy"
                              : fmt::format(", room for {} more in each copy",
                                            counted(*room.sheets, "sheet", "sheets"));
    return text + (!room.thickness ? "" : room.thickness_binds ? ", by thickness" : ", by mass");
  }

  std::string missed(const MailMiss &miss) const {
    std::string text = fmt::format("{}, up to {}, at {}, by ", mail_words(*miss.mail),
                                   in_grams_and_ounces(miss.step->to), money(miss.step->price));
    const bool both = miss.by.micrograms > 0 && miss.too_thick > Length{};
    if (miss.by.micrograms > 0)
      text += in_grams(miss.by);
    if (miss.too_thick > Length{})
      text += (both ? " and " : "") + written(miss.too_thick, edition_.ruler);
    if (!miss.sheets)
      return text;
    text += fmt::format(": {} in each copy", counted(*miss.sheets, "sheet", "sheets"));
    return text + (!both ? "" : miss.thickness_binds ? ", by thickness" : ", by mass");
  }

  std::string not_chosen(const MailFit &fit) const {
    const std::string name = mail_words(*fit.mail);
    if (fit.fits())
      return fit.step ? fmt::format("{} would take it at {}", name, money(fit.step->price))
                      : fmt::format("{} would take it; the manuscript says no price", name);
    return fmt::format("{} does not take it:{}", name, reasons_of(fit));
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
    if (mailing.envelope && leaves_out(*mailing.envelope, "costs"))
      text += ", envelopes not priced";
    fact("in all", fmt::format("{}; {} a copy", text, money(sum / Exact(mailing.posting->copies))));
  }

  const Edition &edition_;
  const Sources &sources_;
  CopyWeight copy_;
  Size size_;
  std::string out_;
};

} // namespace

std::string post_as_text(const Edition &edition, const std::vector<CopyPart> &parts,
                         const std::vector<Mailing> &mailings, const Sources &sources) {
  if (mailings.empty())
    return {};
  return PostTelling(edition, parts, sources).run(mailings);
}

std::string post_in_brief(const Edition &edition, const std::vector<Mailing> &mailings) {
  if (mailings.empty())
    return {};
  std::string text = "\n  Post is not among these figures; post.txt tells more:\n";
  for (const Mailing &mailing : mailings) {
    const Exact sum = mailing.postage + mailing.envelopes;
    const auto money = [&](const Exact &amount) { return shown(amount, edition.currency.value); };
    text += fmt::format("      {} {}\n", counted(mailing.posting->copies, "copy", "copies"),
                        mailing.priced ? fmt::format("for {}, {} a copy", money(sum),
                                                     money(sum / Exact(mailing.posting->copies)))
                                       : std::string("by no class with a price"));
  }
  return text;
}

} // namespace bodkin::paperwork
