#include "money/price_apart.hpp"

#include "edition/laid.hpp"
#include "edition/piece.hpp"
#include "edition/price_words.hpp"
#include "money/saving.hpp"
#include "sheet/speech.hpp"

#include <fmt/format.h>
#include <memory>
#include <set>

namespace bodkin {
namespace {

// Those that differ in some run for its price alone.
std::set<int> pages_of_a_price(const Edition &edition) {
  std::set<int> pages;
  for (const auto &piece : edition.pieces)
    for (std::size_t page = 1; page < piece->matter_of.size(); ++page)
      if (piece->matter_of[page] != piece->matter_but_price[page])
        pages.insert(static_cast<int>(page));
  return pages;
}

// Those of them whose sheet is made for other runs than if all copies had one price.
std::set<int> pages_apart(const std::set<int> &pages, const Imposition &now,
                          const Imposition &alike) {
  std::set<int> apart;
  for (const int page : pages)
    if (now.sheet_of(page).only != alike.sheet_of(page).only)
      apart.insert(page);
  return apart;
}

// The edition as it would be if all copies had one price.
Edition with_one_price(const Edition &edition) {
  Edition one = without_matter(edition);
  for (std::shared_ptr<const Piece> &piece : one.pieces) {
    auto alike = std::make_shared<Piece>(*piece);
    alike->matter_of = alike->matter_but_price;
    piece = std::move(alike);
  }
  return one;
}

// The first words that tell a price on one of these pages.
Range where_told(const Edition &edition, const std::set<int> &pages) {
  Range range;
  each_laid(edition, [&](ElementId id, int page) {
    const Span *told = pages.count(page) > 0 ? told_price(edition, edition[id]) : nullptr;
    if (told && !range.somewhere())
      range = told->from;
  });
  return range;
}

Problem price_apart(const Edition &edition, const std::vector<int> &pages, Range told,
                    std::size_t sheets, const Exact &more) {
  const std::string costs =
      more.is_zero() ? std::string("it costs no more")
                     : fmt::format("it costs {} more in all", shown(more, *edition.currency));
  return {
      .kind = Kind::note,
      .check = "price-apart",
      .range = told,
      .message = fmt::format("for the price on {} {} made once for each price",
                             spoken::pages_listed(pages),
                             sheets == 1 ? "a sheet is" : fmt::format("{} sheets are", sheets)),
      .why = fmt::format("in nothing else do the copies of these runs differ there; {} than one "
                         "pile for all copies",
                         costs),
      .type = {{"colophon in label",
                "in place of these words: on a page for all copies it tells each run's price"}}};
}

} // namespace

void check_price_apart(const Edition &edition, const Imposition &imposition,
                       const ChargedSides &sides, const std::vector<bool> &draws,
                       const Sources &sources, Problems &problems) {
  const std::set<int> priced = pages_of_a_price(edition);
  if (priced.empty())
    return;
  const Edition one = with_one_price(edition);
  const Laid laid = lay(one, draws, sources);
  if (laid.imposition.sheets.size() >= imposition.sheets.size())
    return;
  const std::set<int> pages = pages_apart(priced, imposition, laid.imposition);
  const Exact alike = estimate(one, laid.imposition, laid.sides).run_total;
  const Exact now = estimate(without_matter(edition), imposition, sides).run_total;
  problems.push_back(price_apart(edition, {pages.begin(), pages.end()}, where_told(edition, pages),
                                 imposition.sheets.size() - laid.imposition.sheets.size(),
                                 now - alike));
}

} // namespace bodkin
