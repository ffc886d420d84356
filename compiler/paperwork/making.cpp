#include "paperwork/making.hpp"

#include "paperwork/own_words.hpp"
#include "problems/characters.hpp"
#include "sheet/machine_of.hpp"
#include "sheet/numbered.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <numeric>

namespace bodkin::paperwork {
namespace {

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
    const SheetsNeeded needed = sheets_needed(making.edition, sheets[i]);
    all.push_back({static_cast<int>(i), needed.all, needed.spare});
  }
  return all;
}

std::int64_t sheets_of(const std::vector<Pile> &all, const Pass &pass) {
  return pass.sheets.empty() ? 0 : all[static_cast<std::size_t>(pass.sheets.front())].sheets;
}

namespace {

std::int64_t runs_in(const Edition &edition, const RunSet &runs) {
  std::int64_t number = 0;
  for (std::uint32_t run = 0; run < edition.runs.size(); ++run)
    number += runs.holds(run) ? 1 : 0;
  return std::max<std::int64_t>(number, 1);
}

} // namespace

std::int64_t first_ones(const Making &making, const Pass &pass) {
  if (pass.sheets.empty())
    return 0;
  const Sheet &sheet = making.imposition.sheets[static_cast<std::size_t>(pass.sheets.front())];
  const std::int64_t pieces = runs_in(making.edition, pass.only) * sheet.in_a_copy;
  const std::int64_t up = std::max(sheet.up, 1);
  return std::min((pieces + up - 1) / up, sheets_of(piles(making), pass));
}

std::string times_words(const Making &making, const Pass &pass) {
  const std::int64_t sheets = sheets_of(piles(making), pass), first = first_ones(making, pass);
  return pass.numbered     ? "once"
         : first == sheets ? std::to_string(sheets)
                           : fmt::format("{} + {}", first, sheets - first);
}

int sheet_in_run(const Making &making, int sheet, std::uint32_t run) {
  const std::vector<Sheet> &sheets = making.imposition.sheets;
  const Sheet &of = sheets[static_cast<std::size_t>(sheet)];
  for (std::size_t i = 0; i < sheets.size(); ++i)
    if (of.piece.empty() && sheets[i].in_place_of == of.number && sheets[i].only &&
        sheets[i].only.holds(run))
      return static_cast<int>(i);
  return sheet;
}

int page_in_run(const Making &making, int page, std::uint32_t run) {
  const int sheet = making.imposition.where[static_cast<std::size_t>(page)].sheet;
  const int instead = sheet_in_run(making, sheet, run);
  return instead == sheet
             ? page
             : page + making.imposition.sheets[static_cast<std::size_t>(instead)].pages_before;
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

std::string machine_words(const Edition &edition, MachineId machine) {
  const Machine &of = machine_of(edition, machine);
  return of.name.empty() ? "the machine" : harmless(of.title.empty() ? of.name : of.title);
}

std::string machine_in_text(const Edition &edition, MachineId machine) {
  std::string words = machine_words(edition, machine);
  if (words.starts_with("The "))
    words[0] = 't';
  return words;
}

namespace {

std::string listed_pages(const std::vector<int> &pages) {
  std::string text;
  for (std::size_t i = 0; i < pages.size(); ++i)
    text += fmt::format("{}{}", i == 0 ? "" : i + 1 == pages.size() ? " and " : ", ", pages[i]);
  return text;
}

} // namespace

std::string pages_of_one(const Sheet &sheet, int side) {
  std::vector<int> pages;
  const auto &places = sheet.sides[static_cast<std::size_t>(side)].places;
  const auto up = static_cast<std::size_t>(std::max(sheet.up, 1));
  for (std::size_t i = 0; i < places.size() / up; ++i) {
    if (places[i].page > 0 && places[i].page == sheet.reverse)
      return "the poster";
    if (places[i].page > 0)
      pages.push_back(places[i].page - sheet.pages_before);
  }
  return pages.empty() ? "blank" : listed_pages(pages);
}

// Several up, each page stands as many times.
std::string pages_on(const Sheet &sheet, int side) {
  std::string pages = pages_of_one(sheet, side);
  return sheet.up > 1 && pages != "blank" ? fmt::format("{}, {} times", pages, sheet.up) : pages;
}

std::string page_words(const Making &making, int page) {
  const CopyPart &part = part_of_page(making.parts, page);
  const std::string number = fmt::format("page {}", page - part.pages_before);
  if (part.piece && part.piece->is_other_book())
    return fmt::format("{} of the copies {}", number,
                       harmless(names_of(making.edition, making.imposition.sheet_of(page).only)));
  return part.piece ? fmt::format("{} of the {}", number, part.piece->name) : number;
}

std::string copies_words(const Edition &edition, const RunSet &only) {
  if (only)
    return "the " + runs_words(edition, only);
  const std::int64_t good = edition.run->copies;
  return good == 1 ? "the copy" : fmt::format("all {} copies", good);
}

std::string runs_words(const Edition &edition, const RunSet &runs) {
  if (edition.runs.empty())
    return counted(edition.run->copies, "copy", "copies");
  std::vector<std::string> all;
  for (std::uint32_t run = 0; run < edition.runs.size(); ++run)
    if (runs.holds(run))
      all.push_back(fmt::format("{} {}", counted(edition.runs[run].run.copies, "copy", "copies"),
                                harmless(edition.runs[run].name)));
  return in_a_row(all);
}

std::string runs_of_numbers(const Edition &edition) {
  std::string text;
  for (std::uint32_t run = 0; run < edition.runs.size(); ++run) {
    const CopiesCounted copies = copies_of(edition, run);
    text += fmt::format("{}{} {}{}", run == 0 ? "" : ", ", harmless(edition.runs[run].name),
                        run == 0 ? "have the numbers " : "", numbers_of(edition, copies));
  }
  return text;
}

namespace {

// "1, 14, 27 and 40", of several up.
std::string first_sheet_words(const Edition &edition, const Sheet &sheet, int side) {
  std::vector<std::string> numbers;
  for (const std::int64_t copy : copies_on(edition, sheet, side, 0)) {
    std::string number = copy == spare_copy ? "no number" : number_of(edition, copy);
    if (numbers.empty() || numbers.back() != number)
      numbers.push_back(std::move(number));
  }
  std::string text;
  for (std::size_t i = 0; i < numbers.size(); ++i)
    text += fmt::format("{}{}", i == 0 ? "" : i + 1 == numbers.size() ? " and " : ", ", numbers[i]);
  return text;
}

} // namespace

namespace {

// Pages of a numbered file that are printed first: of one copy of each run.
std::vector<int> first_pages(const Making &making, const Pass &pass) {
  const Sheet &sheet = making.imposition.sheets[static_cast<std::size_t>(pass.sheets.front())];
  std::vector<std::int64_t> sheets{0};
  std::int64_t before = 0;
  for (std::uint32_t run = 0; run < making.edition.runs.size() && sheet.up == 1; ++run)
    if (pass.only.holds(run)) {
      if (before > 0)
        sheets.push_back(before);
      before += making.edition.runs[run].run.copies;
    }
  std::vector<int> pages;
  for (std::size_t i = 0; i < pass.pages.size(); ++i)
    if (std::find(sheets.begin(), sheets.end(), pass.pages[i].nth) != sheets.end())
      pages.push_back(static_cast<int>(i) + 1);
  return pages;
}

// Cut out of a sheet, or the sheet itself.
std::string spares_of_numbered(std::int64_t spare) {
  return spare == 0 ? ""
                    : fmt::format(", then {} with a line to write one on",
                                  counted(spare, "spare", "spares"));
}

} // namespace

std::string numbered_words(const Making &making, const Pass &pass) {
  const Edition &edition = making.edition;
  const Sheet &sheet = making.imposition.sheets[static_cast<std::size_t>(pass.sheets.front())];
  const CopiesCounted copies = copies_of(edition, pass.only);
  const std::vector<int> first = first_pages(making, pass);
  std::string text = fmt::format("{}: print all its pages once, none twice, in their order, and "
                                 "keep the pile as it comes out",
                                 pass.file);
  if (first.size() < pass.pages.size())
    text += fmt::format("; first {} {} alone, for the first {}, then the others",
                        first.size() == 1 ? "page" : "pages", spoken::listed(first),
                        runs_in(edition, pass.only) == 1 ? "copy" : "copy of each kind");
  if (sheet.up == 1)
    return text + fmt::format(". Each sheet has a number of its own, {}{}.",
                              numbers_of(edition, copies), spares_of_numbered(copies.spare));
  const std::int64_t places = sheets_of(piles(making), pass) * sheet.up;
  return text + fmt::format(". Of the {} on each sheet every one has a number of its own, {}{}; "
                            "the first sheet has {}.",
                            sheet.up, numbers_of(edition, copies),
                            spares_of_numbered(places - copies.good * sheet.in_a_copy),
                            first_sheet_words(edition, sheet, sheet.sides[0].numbered ? 0 : 1));
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
