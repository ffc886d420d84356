#include "money/exchanges.hpp"

#include "edition/piece.hpp"

#include <algorithm>
#include <optional>
#include <set>
#include <tuple>

namespace bodkin {
namespace {

// Beyond so many sizes of sheet a maker is not choosing any more, and each is laid and priced.
constexpr std::size_t most_sizes = 12;

bool priced(const Stock &stock) { return (stock.costs || stock.included) && stock.sheet; }

// A heavier paper may need a crease and a longer staple, and would be no like exchange.
bool stands_for(const Stock &from, const Stock &to, Other other) {
  if (!priced(to) || !from.weight || !to.weight || (*from.one_side != *to.one_side))
    return false;
  const Grammage a = (*from.weight)->grammage, b = (*to.weight)->grammage;
  return other == Other::same_paper ? a == b && *from.tint == *to.tint : b <= a;
}

// Of the papers that come in such sheets the most like one.
std::optional<StockId> most_like(const Edition &edition, StockId from, const Size &sheet,
                                 Other other) {
  std::optional<StockId> best;
  const Stock &now = edition[from];
  const auto unlike = [&](StockId id) {
    const Stock &stock = edition[id];
    return std::tuple(*stock.tint != *now.tint,
                      (*now.weight)->grammage.mg_per_m2 - (*stock.weight)->grammage.mg_per_m2);
  };
  for (std::size_t i = 0; i < edition.stocks.size(); ++i) {
    const auto id = static_cast<StockId>(i);
    if (edition[id].sheet && **edition[id].sheet == sheet && stands_for(now, edition[id], other) &&
        (!best || unlike(id) < unlike(*best)))
      best = id;
  }
  return best;
}

// The exchange that brings all papers of a part to sheets of that size; none where one has no like.
std::optional<std::vector<PaperSwap>> exchange_to(const Edition &edition,
                                                  const std::vector<StockId> &used,
                                                  const Size &sheet, Other other) {
  std::vector<PaperSwap> swaps;
  for (const StockId from : used) {
    if (from == StockId::none)
      return std::nullopt;
    if (edition[from].sheet && **edition[from].sheet == sheet)
      continue;
    const auto to = most_like(edition, from, sheet, other);
    if (!to)
      return std::nullopt;
    swaps.push_back({from, *to});
  }
  return swaps;
}

} // namespace

std::vector<std::vector<PaperSwap>> exchanges(const Edition &edition,
                                              const std::vector<StockId> &used, Other other) {
  std::vector<std::vector<PaperSwap>> all{{}};
  std::set<Size> seen;
  for (const Stock &stock : edition.stocks) {
    if (!priced(stock) || seen.size() == most_sizes || !seen.insert(**stock.sheet).second)
      continue;
    auto swaps = exchange_to(edition, used, **stock.sheet, other);
    if (swaps && std::ranges::find(all, *swaps) == all.end())
      all.push_back(std::move(*swaps));
  }
  return all;
}

namespace {

void swap_paper(Known<StockId> &stock, const std::vector<PaperSwap> &swaps) {
  for (const PaperSwap &swap : swaps)
    if (*stock == swap.from) {
      stock.value = swap.to;
      return;
    }
}

} // namespace

void swap_papers(Edition &part, const std::vector<PaperSwap> &swaps) {
  swap_paper(part.paper, swaps);
  if (part.cover_stock)
    swap_paper(*part.cover_stock, swaps);
  for (Page &page : part.pages)
    if (page.asked.stock)
      swap_paper(*page.asked.stock, swaps);
}

void swap_papers_of_pieces(Edition &book, const std::vector<PaperSwap> &swaps) {
  for (std::shared_ptr<const Piece> &piece : book.pieces) {
    if (piece->is_other_book() || piece->edition.paper.from != book.paper.from)
      continue;
    auto changed = std::make_shared<Piece>(*piece);
    swap_paper(changed->edition.paper, swaps);
    piece = std::move(changed);
  }
}

} // namespace bodkin
