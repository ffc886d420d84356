// Printing, and the piles that come out of it.
#include "paperwork/guide_writer.hpp"

#include "money/charge.hpp"
#include "problems/characters.hpp"
#include "sheet/machine_of.hpp"
#include "sheet/numbered.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <span>

namespace bodkin::paperwork {
namespace {

// A guide shows so many sheets and names the others: nobody gathers more from pictures.
constexpr std::size_t most_sheets_shown = 32, most_rows = 96;

std::string_view sides_words(const Pass &pass) {
  return pass.sides == PassSides::both     ? "both"
         : pass.sides == PassSides::fronts ? "fronts"
                                           : "backs";
}

std::string_view turned_over(const Making &making, const Pass &pass) {
  if (pass.sides != PassSides::both)
    return "";
  return *machine_of(making.edition, pass.machine).flip == SheetEdge::long_edge ? "long edge"
                                                                                : "short edge";
}

std::string numbers_of(const Making &making, const Pass &pass) {
  std::vector<int> numbers;
  for (const int sheet : pass.sheets)
    numbers.push_back(making.imposition.sheets[static_cast<std::size_t>(sheet)].number);
  return spoken::listed(numbers);
}

// Sheets of one pass are of one piece, and all as many.
std::int64_t times(const std::vector<Pile> &all, const Pass &pass) {
  return pass.sheets.empty() ? 0 : all[static_cast<std::size_t>(pass.sheets.front())].sheets;
}

Table passes_table(const Making &making) {
  Table table{
      {"file", "times", "paper", "for pile", "ink", "sides", "turned over"}, {}, {false, true}};
  const std::vector<Pile> all = piles(making);
  for (const Pass &pass : making.passes)
    table.rows.push_back({pass.file, pass.numbered ? "once" : std::to_string(times(all, pass)),
                          paper_words(making.edition, pass.stock), numbers_of(making, pass),
                          std::string(spoken::mode_name(pass.mode)), std::string(sides_words(pass)),
                          std::string(turned_over(making, pass))});
  return table;
}

// Whole passes once, whatever is fed back in.
bool fed_back(const Pass &pass) {
  return std::any_of(pass.feeding.begin(), pass.feeding.end(),
                     [](const std::string &line) { return line.starts_with("Put the sheets"); });
}

// Of a page as it lies, where its number hides least.
Spot near_foot(const Place &place) {
  const Box &box = place.box;
  const Length x = box.x + box.width / 2, y = box.y + box.height / 2;
  const Length by = (place.turn % 180 == 0 ? box.height : box.width) * 38 / 100;
  switch (place.turn) {
  case 90:
    return {x - by, y};
  case 180:
    return {x, y - by};
  case 270:
    return {x + by, y};
  default:
    return {x, y + by};
  }
}

Shown side_shown(const Making &making, const Pile &pile, int side) {
  const Sheet &sheet = making.imposition.sheets[static_cast<std::size_t>(pile.sheet)];
  Measured picture;
  picture.ground = SideGround{pile.sheet, side};
  picture.size = sheet.size;
  picture.strokes.push_back({StrokeKind::outline, {}, {sheet.size.width, sheet.size.height}, {}});
  for (const Place &place : sheet.sides[static_cast<std::size_t>(side)].places)
    if (place.page > 0)
      picture.letterings.push_back(
          {near_foot(place),
           place.page == sheet.reverse ? "poster" : std::to_string(place.page - sheet.pages_before),
           place.turn});
  return {picture,
          fmt::format("Pile {}, {}: {}", sheet.number, side == 0 ? "front" : "back",
                      pages_on(sheet, side)),
          true};
}

// "the seeds, de-luxe alone"
std::string belongs_to(const Edition &edition, const Sheet &sheet) {
  const bool book = sheet.piece.empty() || sheet.in_place_of > 0;
  return harmless((book ? "the book" : "the " + sheet.piece) + alone_in(edition, sheet.only));
}

// Of sides that carry pages and print nothing.
std::string pages_seen(const Making &making, const Pile &pile, int side) {
  const auto index = static_cast<std::size_t>(pile.sheet);
  const std::string pages = pages_on(making.imposition.sheets[index], side);
  return making.modes[index][static_cast<std::size_t>(side)] || pages == "blank"
             ? pages
             : pages + ", blank";
}

Table piles_table(const GuideWriter &writer, const std::vector<Pile> &all) {
  const bool pieces = !writer.edition().pieces.empty();
  Table table{{"pile", "paper", "sheets", "of them spare", "front", "back"},
              {},
              {false, false, true, true}};
  if (pieces)
    table.heads.emplace_back("belongs to");
  for (const Pile &pile : std::span(all).first(std::min(all.size(), most_rows))) {
    const Sheet &sheet = writer.making.imposition.sheets[static_cast<std::size_t>(pile.sheet)];
    table.rows.push_back({std::to_string(sheet.number), paper_words(writer.edition(), sheet.stock),
                          std::to_string(pile.sheets), std::to_string(pile.spare),
                          pages_seen(writer.making, pile, 0), pages_seen(writer.making, pile, 1)});
    if (pieces)
      table.rows.back().push_back(belongs_to(writer.edition(), sheet));
  }
  return table;
}

bool heads_all_one_way(const Imposition &imposition) {
  return std::all_of(imposition.sheets.begin(), imposition.sheets.end(), [](const Sheet &sheet) {
    const auto &places = sheet.sides[0].places;
    return std::all_of(places.begin(), places.end(),
                       [](const Place &place) { return place.page == 0 || place.turn == 0; });
  });
}

// As the step that takes sheets from the piles needs them.
std::string lying_words(const Making &making) {
  const bool fronts = fronts_lie_up(making.parts.front());
  const bool alike =
      std::all_of(making.parts.begin(), making.parts.end(), [&](const CopyPart &part) {
        return part.edition->folding->steps.empty() || fronts_lie_up(part) == fronts;
      });
  const std::string_view side = !alike ? "" : fronts ? "fronts up, " : "backs up, ";
  return fmt::format("{}{}", side,
                     heads_all_one_way(making.imposition) ? "heads away from you"
                                                          : "all the same way round");
}

// Of the piles, and what is left beside them.
void tell_spares(GuideWriter &writer) {
  const Run &run = *writer.edition().run;
  if (run.spare > 0)
    writer.say(fmt::format("Make {}. What is over in each pile stays loose until the end: from it "
                           "comes a new sheet for whatever is spoilt on the way.",
                           runs_words(writer.edition())));
}

// " Of the numbers, plain has 1 to 40 and de-luxe 41 to 50: make the copies in this order."
std::string numbers_by_run(const Edition &edition) {
  if (edition.runs.empty())
    return {};
  return fmt::format(" The copies {}: make them in this order.", runs_of_numbers(edition));
}

// Of piles whose sheets bear numbers.
void tell_order_of_numbers(GuideWriter &writer) {
  std::vector<int> numbered;
  for (const Sheet &sheet : writer.making.imposition.sheets)
    if (is_numbered(sheet))
      numbered.push_back(sheet.number);
  if (numbered.empty())
    return;
  const bool one = numbered.size() == 1;
  writer.say(fmt::format(
      "{} {} {} in the order of the numbers, the lowest to be taken first, and {} so: take from {} "
      "always the next, one copy after another{}. Where the lowest lies undermost, lay the pile "
      "over, "
      "sheet by sheet.{}{}",
      one ? "Pile" : "Piles", spoken::listed(numbered), one ? "lies" : "lie",
      one ? "stays" : "stay", one ? "it" : "each",
      one ? "" : ", so that a copy has one number wherever it stands",
      numbers_by_run(writer.edition()),
      writer.edition().run->spare == 0
          ? ""
          : " Where a numbered sheet is spoilt, write its number on the line of a spare one."));
}

// Front and back beside each other; of many sheets, two to a row, and one alone as large as it can.
void show_sheets(GuideWriter &writer, const std::vector<Pile> &all) {
  constexpr std::size_t few = 4;
  const std::size_t to_a_row = all.size() > few ? 2 : 1;
  const std::size_t end = std::min(all.size(), most_sheets_shown);
  for (std::size_t first = 0; first < end; first += to_a_row) {
    Pictures row{{},
                 all.size() == 1 ? Length::inches(13, 5) : Length::inches(9, 5),
                 to_a_row == 1 ? 0 : 2 * to_a_row};
    for (std::size_t i = first; i < std::min(first + to_a_row, end); ++i)
      for (const int side : {0, 1})
        row.shown.push_back(side_shown(writer.making, all[i], side));
    writer.leaflet.add(std::move(row));
  }
}

bool all_of_one_sheet(const std::vector<Pass> &passes) {
  return std::all_of(passes.begin(), passes.end(),
                     [](const Pass &pass) { return pass.sheets.size() == 1; });
}

// What is in a file, and how its backs lie there.
std::string files_words(const Making &making) {
  std::string text;
  if (!all_of_one_sheet(making.passes))
    text += " Where a file is for several piles, it holds a sheet for each.";
  if (std::any_of(making.passes.begin(), making.passes.end(),
                  [](const Pass &pass) { return pass.pages.size() == 2 * pass.sheets.size(); }))
    text += " Backs are turned in the files as the edge that the table names needs them: turn "
            "nothing at the machine.";
  return text;
}

} // namespace

void tell_printing(GuideWriter &writer) {
  const Making &making = writer.making;
  if (making.passes.empty())
    return;
  writer.step("Print");
  writer.say(
      std::string("Print each file as many times as the table says, at 100 %, never fitted to "
                  "the page.") +
      (all_of_one_sheet(making.passes)
           ? ""
           : " Switch sorting off (uncollated), so that the copies of each sheet come out "
             "together.") +
      files_words(making));
  writer.leaflet.add(passes_table(making));
  for (const Pass &pass : making.passes)
    if (pass.numbered)
      writer.say(numbered_words(making, pass));
  for (const Pass &pass : making.passes)
    if (fed_back(pass))
      for (const std::string &line : pass.feeding)
        writer.remark(fmt::format("{}: {}", pass.file, line));
  writer.say(
      "Print one of each first, and hold it against the pictures of the next step: the right "
      "page behind the right page, heads as they are drawn, nothing cut off. These test prints "
      "count "
      "among the sheets of the table; bring a few sheets more of each paper for those that go "
      "wrong.");
}

void tell_piles(GuideWriter &writer) {
  const std::vector<Pile> all = piles(writer.making);
  writer.step(all.size() == 1 ? "Look at the pile" : "Lay the piles");
  writer.say(
      all.size() == 1
          ? "All sheets are alike. Front and back are as you see them when you turn the sheet "
            "like a leaf of a book."
          : fmt::format("Lay a pile of each sheet, from left to right, {}. Backs are shown as you "
                        "see them when you turn the sheet like a leaf of a book.",
                        lying_words(writer.making)));
  tell_spares(writer);
  tell_order_of_numbers(writer);
  writer.leaflet.add(Passage{
      {}, "The large numbers in the pictures name pages; they are not printed.", true, true});
  writer.leaflet.add(piles_table(writer, all));
  show_sheets(writer, all);
  if (all.size() > most_sheets_shown)
    writer.remark(fmt::format("The other {} sheets are to be seen in sheets.pdf.",
                              all.size() - most_sheets_shown));
}

} // namespace bodkin::paperwork
