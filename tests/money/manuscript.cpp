#include "money/manuscript.hpp"

#include "problems/render.hpp"

#include <algorithm>
#include <doctest/doctest.h>
#include <utility>

namespace bodkin::tests {
namespace {

bool prints(const Edition &edition, const std::vector<ElementId> &elements) {
  return std::any_of(elements.begin(), elements.end(),
                     [&](ElementId id) { return !std::holds_alternative<Hand>(edition[id].what); });
}

} // namespace

std::string Priced::over_budget_text(bool anyway) const {
  return as_text(
      over_budget(edition(), laid.imposition, laid.sides, estimate, draws, sources(), anyway),
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
  out.laid = lay(edition, out.draws, *out.read.sources);
  out.estimate = estimate(edition, out.laid.imposition, out.laid.sides);
  return out;
}

} // namespace bodkin::tests
