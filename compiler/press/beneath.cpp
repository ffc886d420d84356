#include "press/beneath.hpp"

#include "edition/piece.hpp"

#include <algorithm>

namespace bodkin::press {
namespace {

// As for words over what shows through: common practice, no source.
constexpr double hides_enough = 0.9;

// The part that a wrap lies on: the wrap within it, else the book.
const CopyPart &lies_on(const PrintJob &job, const Piece &wrap) {
  const std::vector<const Piece *> wraps = wraps_of(job.edition);
  const auto at = std::find(wraps.begin(), wraps.end(), &wrap);
  return at == wraps.begin() || at == wraps.end() ? job.parts.front()
                                                  : part_called(job.parts, (*std::prev(at))->name);
}

} // namespace

std::optional<Beneath> seen_beneath(const PrintJob &job, int page) {
  const CopyPart &part = job.part_of(page);
  const StockId stock = job.imposition.sheet_of(page).stock;
  if (!part.piece || !part.piece->is_wrap() || stock == StockId::none)
    return std::nullopt;
  const auto &opacity = job.edition[stock].opacity;
  if (!opacity || (*opacity)->value() >= hides_enough)
    return std::nullopt;
  const double hidden = (*opacity)->value();
  const int own = page - part.pages_before, last = part.imposition.page_count;
  if (own == 2 || own == last - 1)
    return Beneath{part.pages_before + (own == 2 ? 1 : last), true, hidden};
  const CopyPart &under = lies_on(job, *part.piece);
  if (under.imposition.page_count < 1)
    return std::nullopt;
  return Beneath{under.pages_before + (own == 1 ? 1 : under.imposition.page_count), false, hidden};
}

} // namespace bodkin::press
