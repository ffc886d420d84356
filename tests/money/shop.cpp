#include "money/shop.hpp"

#include <doctest/doctest.h>
#include <stdexcept>

namespace bodkin::tests {

Decimal decimal(std::string_view written) {
  Decimal decimal;
  bool after_point = false;
  for (const char c : written) {
    if (c == '.') {
      after_point = true;
      continue;
    }
    decimal.digits = decimal.digits * 10 + (c - '0');
    decimal.places += after_point ? 1 : 0;
  }
  return decimal;
}

Price dollars(std::string_view written) { return {decimal(written), currency_of("USD")}; }

Rate rate(std::string_view written, Per per, std::int64_t count) {
  return {dollars(written), per, count};
}

SidePrice side_price(Mode mode, std::string_view written, std::int64_t from_sides) {
  SidePrice price;
  price.mode = mode;
  price.rate = rate(written, Per::side);
  price.from_sides = from_sides;
  return price;
}

namespace {

Imposition nested(int sheets) {
  Imposition imposition;
  const int pages = 4 * sheets;
  const Size letter = *paper_named("letter");
  imposition.page_count = pages;
  imposition.sheets.resize(static_cast<std::size_t>(sheets));
  imposition.where.resize(static_cast<std::size_t>(pages) + 1);
  for (int k = 1; k <= sheets; ++k) {
    Sheet &sheet = imposition.sheets[static_cast<std::size_t>(k) - 1];
    sheet.number = k;
    sheet.stock = StockId{0};
    sheet.size = letter.turned();
    const int sides[2][2] = {{pages - 2 * k + 2, 2 * k - 1}, {2 * k, pages - 2 * k + 1}};
    for (int side = 0; side < 2; ++side)
      for (int place = 0; place < 2; ++place) {
        const int page = sides[side][place];
        Place on_sheet;
        on_sheet.page = page;
        sheet.sides[static_cast<std::size_t>(side)].places.push_back(on_sheet);
        imposition.where[static_cast<std::size_t>(page)] = {k - 1, side, place};
      }
  }
  return imposition;
}

} // namespace

Shop::Shop(int sheets, std::int64_t copies, std::string manuscript) : imposition(nested(sheets)) {
  file = sources.add("almanac.bodkin", std::move(manuscript));
  edition.title.value = "Almanac";
  edition.currency.value = currency_of("USD");
  edition.run.value = {copies, 0};
  edition.page_count.value = imposition.page_count;
  edition.pages.resize(static_cast<std::size_t>(imposition.page_count) + 1);
  Machine copier;
  copier.name = "copier";
  copier.prints = {side_price(Mode::black, "0.14"), side_price(Mode::colour, "0.65")};
  edition.machines.push_back(copier);
  Stock plain;
  plain.name = "plain";
  plain.included = true;
  edition.stocks.push_back(plain);
  for (int sheet = 0; sheet < sheets; ++sheet)
    for (int side = 0; side < 2; ++side)
      sides.push_back({sheet, side, MachineId{0}, true, Mode::black, false});
}

ChargedSide &Shop::side(int sheet, int side) {
  for (ChargedSide &charged : sides)
    if (charged.sheet == sheet - 1 && charged.side == side)
      return charged;
  throw std::out_of_range("no such side");
}

void Shop::blank(int sheet, int number, bool fed_both) {
  side(sheet, number).printed = false;
  side(sheet, number).fed_both = fed_both;
}

void Shop::all_in(Mode mode) {
  for (ChargedSide &charged : sides)
    charged.mode = mode;
}

Element &Shop::on_page(int page, Element element) {
  const auto id = static_cast<ElementId>(edition.elements.size());
  edition.elements.push_back(std::move(element));
  edition.pages[static_cast<std::size_t>(page)].elements.push_back(id);
  return edition.elements.back();
}

Range Shop::words(std::string_view text) const {
  const std::size_t begin = sources.text(file).find(text);
  REQUIRE(begin != std::string_view::npos);
  return {file, Offset{static_cast<std::uint32_t>(begin)},
          Offset{static_cast<std::uint32_t>(begin + text.size())}};
}

Element hand(HandKind kind, std::string text) {
  Element element;
  Hand made;
  made.kind = kind;
  made.text = std::move(text);
  element.what = std::move(made);
  return element;
}

Takes takes(std::int64_t seconds, TimePer per) { return {Duration{seconds * 1000}, per}; }

std::string lines(const Estimate &estimate) {
  std::string out;
  for (const EstimateLine &line : estimate.lines)
    out += line.quantity.rounded(0, 6) + " × " + line.rate.rounded(2, 12) + " = " +
           line.total.rounded(2) + " " + line.what + " (" + std::string(name_of(line.group)) +
           ")\n";
  return out;
}

} // namespace bodkin::tests
