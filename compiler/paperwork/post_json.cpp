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
        piece.thickness.in_points(), piece.mass ? grams(*piece.mass) : "null", goes(of),
        json::list(of.misses, [this](const MailMiss &miss) { return missed(miss); }),
        json::list(of.fits, [this](const MailFit &fit) { return mail(fit); }));
  }

  static std::string number(std::optional<std::int64_t> count) {
    return count ? std::to_string(*count) : "null";
  }

  std::string goes(const MailedPiece &of) const {
    if (!of.chosen)
      return "\"class\": null, \"up_to\": null, \"price\": null, \"room\": null, "
             "\"room_thickness\": null, \"room_sheets\": null";
    const MailStep &step = *of.chosen->step;
    const MailRoom room = room_of(of);
    return fmt::format("\"class\": {}, \"up_to\": {}, \"price\": {}, \"room\": {}, "
                       "\"room_thickness\": {}, \"room_sheets\": {}",
                       quoted(of.chosen->mail->name), grams(step.to), money(step), grams(room.mass),
                       room.thickness ? fmt::format("{}", room.thickness->in_points()) : "null",
                       number(room.sheets));
  }

  std::string missed(const MailMiss &miss) const {
    return fmt::format("{{\"class\": {}, \"up_to\": {}, \"price\": {}, \"by\": {}, "
                       "\"by_thickness\": {}, \"by_sheets\": {}}}",
                       quoted(miss.mail->name), grams(miss.step->to), money(*miss.step),
                       grams(miss.by), miss.too_thick.in_points(), number(miss.sheets));
  }

  std::string mail(const MailFit &fit) const {
    return fmt::format("{{\"class\": {}, \"price\": {}, \"refused\": {}, \"by_sheets\": {}}}",
                       quoted(fit.mail->name), fit.step ? money(*fit.step) : "null",
                       json::list(fit.refused, quoted), number(fit.sheets_over));
  }

  const Edition &edition_;
};

} // namespace

std::string post_as_json(const Edition &edition, const std::vector<Mailing> &mailings) {
  const PostDocument document(edition);
  return json::tall_list(mailings, [&](const Mailing &of) { return document.mailing(of); });
}

} // namespace bodkin::paperwork
