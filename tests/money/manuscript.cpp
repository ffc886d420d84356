#include "money/manuscript.hpp"

#include "edition/piece.hpp"
#include "problems/render.hpp"

#include <algorithm>
#include <doctest/doctest.h>
#include <fmt/format.h>
#include <utility>

namespace bodkin::tests {
namespace {

bool prints(const Edition &edition, const std::vector<ElementId> &elements) {
  return std::any_of(elements.begin(), elements.end(),
                     [&](ElementId id) { return !std::holds_alternative<Hand>(edition[id].what); });
}

} // namespace

std::string Priced::over_budget_text(bool anyway) const {
  return as_text(over_budget(edition(), laid.imposition, laid.sides, estimate, {draws, coloured},
                             sources(), anyway),
                 sources(), false);
}

std::string Priced::price_problems_text() const {
  return as_text(price_problems(edition(), laid.imposition, laid.sides, estimate, sources()),
                 sources(), false);
}

Priced priced(std::string_view manuscript, MoreFiles more) {
  Priced out;
  out.read = read(manuscript, more);
  const Edition &edition = out.edition();
  const bool errors = any_errors(out.read.problems);
  CAPTURE(as_text(out.read.problems, *out.read.sources, false));
  REQUIRE_FALSE(errors);
  for (const Page &page : edition.pages)
    out.draws.push_back(prints(edition, page.elements));
  for (const auto &piece : edition.pieces)
    for (std::size_t page = 1; page < piece->edition.pages.size(); ++page)
      out.draws.push_back(prints(edition, piece->edition.pages[page].elements));
  out.laid = lay(edition, out.draws, *out.read.sources);
  out.estimate = estimate(edition, out.laid.imposition, out.laid.sides);
  return out;
}

std::string small_zine(std::string_view facts, std::string_view rest, std::string_view pages) {
  return fmt::format("edition \"Rain\"\n"
                     "  size       half-letter\n"
                     "  dated      2026-11\n"
                     "  run        50 copies\n"
                     "  paper      plain\n"
                     "  machine    copier\n"
                     "{}"
                     "stock plain\n"
                     "  weight     20 lb bond\n"
                     "  sheet      letter, grain short\n"
                     "  costs      included\n"
                     "stock rose like plain\n"
                     "  tint       #f3b3c0\n"
                     "machine copier\n"
                     "  prints     black at $0.10 a side\n"
                     "face typed from \"Courier Prime\"\n"
                     "style label\n"
                     "  face       typed 9/11\n"
                     "{}{}",
                     facts, rest, pages);
}

} // namespace bodkin::tests
