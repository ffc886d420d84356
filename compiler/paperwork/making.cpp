#include "paperwork/making.hpp"

#include "problems/characters.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <numeric>
#include <set>

namespace bodkin::paperwork {
namespace {

std::int64_t divided_up(std::int64_t number, std::int64_t by) { return (number + by - 1) / by; }

std::string fraction(std::int64_t numerator, std::int64_t denominator) {
  const std::int64_t whole = numerator / denominator;
  std::int64_t rest = numerator % denominator;
  if (rest == 0)
    return fmt::format("{}in", whole);
  const std::int64_t common = std::gcd(rest, denominator);
  rest /= common;
  denominator /= common;
  return whole == 0 ? fmt::format("{}/{}in", rest, denominator)
                    : fmt::format("{} {}/{}in", whole, rest, denominator);
}

} // namespace

std::vector<Pile> piles(const Making &making) {
  std::vector<Pile> all;
  const std::vector<Sheet> &sheets = making.imposition.sheets;
  for (std::size_t i = 0; i < sheets.size(); ++i) {
    const auto needed = [&](std::int64_t copies) {
      return divided_up(copies * sheets[i].in_a_copy, sheets[i].up);
    };
    const Run run = making.run_of(sheets[i].only);
    const std::int64_t total = needed(run.copies + run.spare);
    all.push_back({static_cast<int>(i), total, total - needed(run.copies)});
  }
  return all;
}

std::string copies_words(const Making &making, std::optional<std::uint32_t> only) {
  const std::int64_t copies = making.run_of(only).copies;
  const std::string kind = only ? making.edition.runs[*only].name + " " : "";
  if (copies == 1)
    return fmt::format("the {}copy", kind);
  return fmt::format("{} {} {}copies", only ? "the" : "all", copies, kind);
}

int outer_sheet(const Making &making) {
  const auto &sheets = making.imposition.sheets;
  for (std::size_t i = 0; i < sheets.size(); ++i)
    if (sheets[i].piece == "wrap")
      return static_cast<int>(i);
  return 0;
}

std::string paper_words(const Edition &edition, StockId stock) {
  if (stock == StockId::none)
    return "paper";
  return harmless(edition[stock].title.empty() ? edition[stock].name : edition[stock].title);
}

std::string pages_on(const Sheet &sheet, int side) {
  std::vector<int> pages;
  for (const Place &place : sheet.sides[static_cast<std::size_t>(side)].places) {
    if (place.page > 0 && place.page == sheet.reverse)
      return "the poster";
    if (place.page > 0)
      pages.push_back(place.page - sheet.pages_before);
  }
  // Several up, one page stands many times.
  if (std::set<int>(pages.begin(), pages.end()).size() == 1 && pages.size() > 1)
    return fmt::format("{}, {} times", pages.front(), pages.size());
  std::string text;
  for (std::size_t i = 0; i < pages.size(); ++i)
    text += fmt::format("{}{}", i == 0 ? "" : i + 1 == pages.size() ? " and " : ", ", pages[i]);
  return text.empty() ? "blank" : text;
}

std::string page_words(const Making &making, int page) {
  const CopyPart &part = part_of_page(making.parts, page);
  const std::string number = fmt::format("page {}", page - part.pages_before);
  return part.piece ? fmt::format("{} of the {}", number, part.piece->name) : number;
}

std::string counted(std::int64_t number, std::string_view one, std::string_view more) {
  return fmt::format("{} {}", number, number == 1 ? one : more);
}

std::string ruled(Length length, Ruler ruler) {
  if (ruler == Ruler::millimetres) {
    const std::int64_t halves = (2 * length.units() + Length::per_mm / 2) / Length::per_mm;
    return halves % 2 == 0 ? fmt::format("{}mm", halves / 2) : fmt::format("{}.5mm", halves / 2);
  }
  constexpr std::int64_t parts = 32;
  return fraction((length.units() * parts + Length::per_inch / 2) / Length::per_inch, parts);
}

std::string measured(Length length, Ruler ruler) {
  const Length finest = ruler == Ruler::millimetres ? Length::mm(1) / 2 : Length::inches(1, 64);
  return length.units() % finest.units() == 0 ? written(length, ruler) : ruled(length, ruler);
}

} // namespace bodkin::paperwork
