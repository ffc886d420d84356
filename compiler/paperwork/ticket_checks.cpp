// What is looked at on the first of each, before the whole run is printed.
#include "paperwork/ticket_writer.hpp"

#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::paperwork {
namespace {

// The page behind a page, on the same leaf.
int behind(const Sheet &sheet, const Place &place) {
  Box box = place.box;
  if (sheet.turns_upright)
    box.x = sheet.size.width - box.right();
  else
    box.y = sheet.size.height - box.foot();
  for (const Place &other : sheet.sides[1].places)
    if (other.box == box)
      return other.page;
  return 0;
}

// The row's file says already whose book it is.
std::string said(const Making &making, const Sheet &sheet, int page) {
  return sheet.in_place_of > 0 ? fmt::format("page {}", page - sheet.pages_before)
                               : page_words(making, page);
}

// Of a two-sided sheet, which page must stand behind which: the pair that a reader meets first.
std::string held_to_light(const Making &making, const Sheet &sheet) {
  int page = 0, other = 0;
  for (const Place &place : sheet.sides[0].places)
    if (const int back = behind(sheet, place);
        place.page > 0 && back > 0 && (page == 0 || place.page < page)) {
      page = place.page;
      other = back;
    }
  return page == 0 ? "both sides as in the file"
                   : fmt::format("{} behind {}, heads the same way", said(making, sheet, other),
                                 said(making, sheet, page));
}

std::string ink_of(const Making &making, const PassPage &page) {
  const SideMode mode =
      making.modes[static_cast<std::size_t>(page.sheet)][page.side == SideName::front ? 0U : 1U];
  return page.prints && mode ? std::string(spoken::mode_name(*mode)) : "empty";
}

bool prints_on(const Pass &pass, int sheet, SideName side) {
  return std::any_of(pass.pages.begin(), pass.pages.end(), [&](const PassPage &page) {
    return page.prints && page.sheet == sheet && page.side == side;
  });
}

// When the pass is through, for all passes before it are.
bool has_print(const Making &making, const Pass &last, int sheet, SideName side) {
  return std::any_of(making.passes.begin(), making.passes.end(), [&](const Pass &pass) {
    return pass.number <= last.number && prints_on(pass, sheet, side);
  });
}

// What is right of a sheet that has come out of a pass.
std::string right_when_held(const TicketWriter &writer, const Pass &pass, int sheet) {
  const bool front = has_print(writer.making, pass, sheet, SideName::front);
  const bool back = has_print(writer.making, pass, sheet, SideName::back);
  if (front && back)
    return held_to_light(writer.making, writer.sheet(sheet));
  for (const Pass *later : later_on(writer.making, pass))
    if (prints_on(*later, sheet, front ? SideName::back : SideName::front))
      return "one side so far; the other is printed by " + later->file;
  return pass.sides == PassSides::both ? held_to_light(writer.making, writer.sheet(sheet))
                                       : "one side printed, the other left bare";
}

// Of the pages of a file, those from `first` on that are of one sheet.
std::vector<std::string> check_row(const TicketWriter &writer, const Pass &pass, std::size_t first,
                                   std::size_t end) {
  const std::size_t sides = pass.sides == PassSides::both ? 2 : 1;
  std::vector<std::string> row{first == 0 ? pass.file : "",
                               sides > 1 ? fmt::format("{} and {}", first + 1, first + 2)
                                         : std::to_string(first + 1),
                               "", "", right_when_held(writer, pass, pass.pages[first].sheet)};
  if (end - first > sides)
    row[1] += fmt::format(", so on to {}", end);
  for (std::size_t i = first; i < first + sides; ++i)
    row[pass.pages[i].side == SideName::front ? 2 : 3] = ink_of(writer.making, pass.pages[i]);
  return row;
}

// A row for each sheet: one that is right says nothing of the next.
void check_rows(const TicketWriter &writer, const Pass &pass, Table &table) {
  constexpr std::size_t most = 24;
  std::size_t rows = 0;
  for (std::size_t first = 0, end = 0; first < pass.pages.size(); first = end, ++rows) {
    while (end < pass.pages.size() && pass.pages[end].sheet == pass.pages[first].sheet)
      ++end;
    if (rows < most)
      table.rows.push_back(check_row(writer, pass, first, end));
  }
  if (rows > most)
    table.rows.push_back(
        {"", "", "", "",
         fmt::format("{} more likewise",
                     counted(static_cast<std::int64_t>(rows - most), "sheet", "sheets"))});
}

// "1 + 52" is a number of sheets in two parts.
std::string first_ones_words(const TicketWriter &writer, const Counter &counter) {
  for (const Pass *pass : counter.passes)
    if (const std::int64_t sheets = sheets_of(writer.all, *pass),
        first = first_ones(writer.making, *pass);
        !pass->numbered && sheets > first)
      return fmt::format("{} counted in: {} + {} are {}. ",
                         first == 1 ? "The first is" : "The first are", first, sheets - first,
                         sheets);
  return "";
}

std::string first_to_print(const TicketWriter &writer, const Counter &counter) {
  const bool several =
      std::any_of(counter.passes.begin(), counter.passes.end(), [&](const Pass *pass) {
        return !pass->numbered && first_ones(writer.making, *pass) > 1;
      });
  const bool numbered = std::any_of(counter.passes.begin(), counter.passes.end(),
                                    [](const Pass *pass) { return pass->numbered; });
  return fmt::format("{}{}",
                     several ? "Print first of each file as many as stand before its plus sign"
                             : "Print one of each",
                     numbered ? ", and of a file printed once the pages named for the first copy"
                              : "");
}

} // namespace

void tell_checks(TicketWriter &writer, const Counter &counter) {
  writer.leaflet.add(Headline{"Before the whole run: one of each", 2, {}});
  writer.say(
      fmt::format("{}, then wait for the word of whoever ordered. {}At 100 %, not fitted or "
                  "shrunk; sorting off (uncollated). A side named black is charged as black.",
                  first_to_print(writer, counter), first_ones_words(writer, counter)));
  Table table{
      {"file", "its pages", "front", "back", "right when held to the light, by pages of the copy"},
      {},
      {}};
  for (const Pass *pass : counter.passes)
    check_rows(writer, *pass, table);
  writer.leaflet.add(std::move(table));
}

} // namespace bodkin::paperwork
