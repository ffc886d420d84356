#include "money/charge.hpp"
#include "money/json.hpp"
#include "paperwork/post.hpp"

#include <fmt/format.h>

namespace bodkin::paperwork {
namespace {

using json::quoted;

// No finer than the scales: a milligram.
std::string grams(Mass mass) {
  return quoted(Exact::ratio(mass.micrograms, 1'000'000).rounded(1, 3));
}

class PostDocument {
public:
  explicit PostDocument(const Edition &edition) : edition_(edition) {}

  std::string mailing(const Mailing &of) const {
    const Posting &posting = *of.posting;
    const Exact sum = of.postage + of.envelopes;
    return fmt::format(
        "{{\"copies\": {}, \"together\": {}, \"envelope\": {}, \"pieces\": {}, \"postage\": {}, "
        "\"envelopes\": {}, \"total\": {}, \"per_copy\": {}}}",
        posting.copies, posting.together, of.envelope ? quoted(of.envelope->name) : "null",
        json::list(of.pieces, [this](const MailedPiece &mailed) { return piece(mailed); }),
        priced(of, of.postage), json::money(of.envelopes), priced(of, sum),
        priced(of, sum / Exact(posting.copies)));
  }

private:
  static std::string priced(const Mailing &of, const Exact &amount) {
    return of.priced ? json::money(amount) : "null";
  }
  std::string money(const MailStep &step) const {
    return json::money(in_own_money(edition_, step.price));
  }

  std::string piece(const MailedPiece &of) const {
    const MailPiece &piece = of.piece;
    return fmt::format(
        "{{\"pieces\": {}, \"copies\": {}, \"width\": {}, \"height\": {}, \"thickness\": {}, "
        "\"grams\": {}, {}, \"missed\": {}, \"classes\": {}}}",
        piece.count, piece.copies, piece.size.width.in_points(), piece.size.height.in_points(),
        piece.thickness.in_points(), piece.mass ? grams(*piece.mass) : "null", goes(of), missed(of),
        json::list(of.fits, [this](const MailFit &fit) { return mail(fit); }));
  }

  std::string goes(const MailedPiece &of) const {
    if (!of.chosen)
      return "\"class\": null, \"up_to\": null, \"price\": null, \"room\": null, "
             "\"room_sheets\": null";
    const MailStep &step = *of.chosen->step;
    return fmt::format("\"class\": {}, \"up_to\": {}, \"price\": {}, \"room\": {}, "
                       "\"room_sheets\": {}",
                       quoted(of.chosen->mail->name), grams(step.to), money(step),
                       grams(room_left(of)),
                       of.one_sheet ? std::to_string(sheets_to_spare(of)) : "null");
  }

  std::string missed(const MailedPiece &of) const {
    if (!of.cheaper)
      return "null";
    return fmt::format("{{\"up_to\": {}, \"price\": {}, \"by\": {}, \"by_sheets\": {}}}",
                       grams(of.cheaper->to), money(*of.cheaper), grams(over_cheaper(of)),
                       of.one_sheet ? std::to_string(sheets_over(of)) : "null");
  }

  std::string mail(const MailFit &fit) const {
    return fmt::format("{{\"class\": {}, \"price\": {}, \"refused\": {}}}", quoted(fit.mail->name),
                       fit.step ? money(*fit.step) : "null", json::list(fit.refused, quoted));
  }

  const Edition &edition_;
};

} // namespace

std::string post_as_json(const Edition &edition, const std::vector<Mailing> &mailings) {
  const PostDocument document(edition);
  return json::tall_list(mailings, [&](const Mailing &of) { return document.mailing(of); });
}

} // namespace bodkin::paperwork
