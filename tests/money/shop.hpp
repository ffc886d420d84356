// Editions made by hand for the tests of money: nested letter sheets of four pages, one copier, a
// manuscript that prices point into.
#pragma once

#include "measure/paper.hpp"
#include "money/estimate.hpp"
#include "problems/sources.hpp"

#include <memory>
#include <string>
#include <string_view>

namespace bodkin::tests {

Decimal decimal(std::string_view written); // "0.14"
Price dollars(std::string_view written);
Rate rate(std::string_view written, Per per, std::int64_t count = 1);
SidePrice side_price(Mode mode, std::string_view written, std::int64_t from_sides = 1);

struct Shop {
  std::unique_ptr<Sources> kept = std::make_unique<Sources>();
  Sources &sources = *kept;
  FileId file = FileId::none;
  Edition edition;
  Imposition imposition;
  ChargedSides sides;

  // `sheets` letter sheets of paper that is `included`, every side printed black at $0.14 or colour
  // at $0.65, for `copies` copies without spares. The figures are those of the worked example
  // below.
  explicit Shop(int sheets, std::int64_t copies = 1, std::string manuscript = "");

  Machine &machine() { return edition.machines.front(); }
  Stock &paper() { return edition.stocks.front(); }
  ChargedSide &side(int sheet, int side);
  void colour(int sheet, int side) { this->side(sheet, side).mode = Mode::colour; }
  void blank(int sheet, int side, bool fed_both = true);
  void all_in(Mode mode);
  Element &on_page(int page, Element element);
  Range words(std::string_view text) const; // where the manuscript says so first
  Estimate priced() const { return estimate(edition, imposition, sides); }
};

Element hand(HandKind kind, std::string text);
Takes takes(std::int64_t seconds, TimePer per);

// "53 × 0.59 = 31.27 colour sides at corner-copier (printing)", one a line.
std::string lines(const Estimate &estimate);

} // namespace bodkin::tests
