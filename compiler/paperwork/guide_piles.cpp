// The piles that come out of printing, as the steps after it need them.
#include "paperwork/guide_writer.hpp"

#include "money/charge.hpp"
#include "problems/characters.hpp"
#include "sheet/numbered.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <span>

namespace bodkin::paperwork {
namespace {

// A guide shows so many sheets and names the others: nobody gathers more from pictures.
constexpr std::size_t most_sheets_shown = 32, most_rows = 96;

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

Spot middle_of(const Place &place) {
  return {place.box.x + place.box.width / 2, place.box.y + place.box.height / 2};
}

// Two pages side by side are told below the picture, which is seen whole.
bool told_by_caption(const std::vector<Place> &places) {
  return places.size() <= 2 && std::all_of(places.begin(), places.end(), [&](const Place &place) {
           return place.turn == 0 && place.box.y == places.front().box.y;
         });
}

// Of what is laid several up, the first: the others are alike.
std::vector<Place> one_of_several(const std::vector<Place> &places, const Sheet &sheet) {
  std::vector<Place> some;
  for (std::size_t i = 0; i < places.size() / static_cast<std::size_t>(std::max(sheet.up, 1)); ++i)
    if (places[i].page > 0)
      some.push_back(places[i]);
  return some;
}

bool any_numbers_drawn(const std::vector<Pile> &all, const Imposition &imposition) {
  return std::any_of(all.begin(), all.end(), [&](const Pile &pile) {
    const Sheet &sheet = imposition.sheets[static_cast<std::size_t>(pile.sheet)];
    return std::any_of(sheet.sides.begin(), sheet.sides.end(), [&](const Side &side) {
      return !told_by_caption(one_of_several(side.places, sheet));
    });
  });
}

Shown side_shown(const Making &making, const Pile &pile, int side) {
  const Sheet &sheet = making.imposition.sheets[static_cast<std::size_t>(pile.sheet)];
  Measured picture;
  picture.ground = SideGround{pile.sheet, side};
  picture.size = sheet.size;
  picture.strokes.push_back({StrokeKind::outline, {}, {sheet.size.width, sheet.size.height}, {}});
  const auto &places = sheet.sides[static_cast<std::size_t>(side)].places;
  if (const std::vector<Place> one = one_of_several(places, sheet); !told_by_caption(one))
    for (const Place &place : one)
      picture.letterings.push_back(
          {sheet.up > 1 ? middle_of(place) : near_foot(place),
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
    writer.say(fmt::format(
        "Make {}, no more. The spare sheets stay loose in their piles until the "
        "end: from them comes a new sheet for whatever is spoilt on the way. {}",
        runs_words(writer.edition()),
        writer.edition().runs.empty()
            ? "Where your first copy is made already, each pile has one sheet less."
            : "Where a first copy of each kind is made already, each pile has one sheet less for "
              "each of them that is made of it."));
}

// " Of the numbers, plain has 1 to 40 and de-luxe 41 to 50: make the copies in this order."
std::string numbers_by_run(const Edition &edition) {
  if (edition.runs.empty())
    return {};
  return fmt::format(" The copies {}: make them in this order.", runs_of_numbers(edition));
}

// Where the side with the number lies down.
std::string number_hidden(const GuideWriter &writer, const Sheet &sheet) {
  const bool fronts = fronts_lie_up(writer.making.parts.front());
  return sheet.sides[fronts ? 0 : 1].numbered
             ? ""
             : " Its number stands on the side that lies down: lift the uppermost to see it.";
}

// What is cut out or laid in comes to its copy by a step of its own.
bool sheet_is_of_piece(const Sheet &sheet) {
  return !sheet.piece.empty() && sheet.in_place_of == 0;
}

// Of piles whose sheets bear numbers.
void tell_order_of_numbers(GuideWriter &writer) {
  std::vector<int> numbered;
  const Sheet *first = nullptr;
  for (const Sheet &sheet : writer.making.imposition.sheets)
    if (is_numbered(sheet) && !sheet_is_of_piece(sheet)) {
      numbered.push_back(sheet.number);
      first = first == nullptr ? &sheet : first;
    }
  if (first == nullptr)
    return;
  const bool one = numbered.size() == 1;
  writer.say(fmt::format(
      "{} {} {} in the order of the numbers, the lowest uppermost, and {} so: take from {} always "
      "the next, one copy after another{}.{} Where the highest is uppermost, move the sheets one "
      "by one, without turning any, onto a new pile.{}{}",
      one ? "Pile" : "Piles", spoken::listed(numbered), one ? "lies" : "lie",
      one ? "stays" : "stay", one ? "it" : "each",
      one ? "" : ", so that a copy has one number wherever it stands",
      number_hidden(writer, *first), numbers_by_run(writer.edition()),
      writer.edition().run->spare == 0
          ? ""
          : " Where a numbered sheet is spoilt, write its number into the gap that a spare one "
            "has for it, or "
            "print the pages of that number once more."));
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

// "53 sheets in each: 50 copies and 3 spare", where all piles are alike.
std::string piles_count(const Making &making, const std::vector<Pile> &all) {
  const bool alike = std::all_of(all.begin(), all.end(), [&](const Pile &pile) {
    return pile.sheets == all.front().sheets && pile.spare == all.front().spare;
  });
  const Run &run = *making.edition.run;
  if (!alike || all.front().sheets != making.printed() || run.spare == 0)
    return "";
  return fmt::format("{}{}: {} and {} spare", counted(all.front().sheets, "sheet", "sheets"),
                     all.size() == 1 ? "" : " in each", counted(run.copies, "copy", "copies"),
                     run.spare);
}

} // namespace

void tell_piles(GuideWriter &writer) {
  const std::vector<Pile> all = piles(writer.making);
  writer.step(all.size() == 1 ? "Look at the pile" : "Lay the piles",
              piles_count(writer.making, all));
  writer.say(
      all.size() == 1
          ? "All sheets are alike. Lay one as its front is drawn, and turn it like a leaf of a "
            "book: its back lies up as it is drawn."
          : fmt::format("Lay a pile of each sheet, in the order of the table, {}. A sheet that "
                        "is laid as its front is drawn, and then turned like a leaf of a "
                        "book, has its back up as it is drawn.",
                        lying_words(writer.making)));
  tell_spares(writer);
  tell_order_of_numbers(writer);
  if (any_numbers_drawn(all, writer.making.imposition))
    writer.leaflet.add(Passage{
        {}, "The large numbers in the pictures name pages; they are not printed.", true, true});
  else
    writer.leaflet.add(
        Passage{{}, "Below the pictures, pages are named from left to right.", true, true});
  writer.leaflet.add(piles_table(writer, all));
  show_sheets(writer, all);
  if (all.size() > most_sheets_shown)
    writer.remark(fmt::format("The other {} sheets are to be seen in sheets.pdf.",
                              all.size() - most_sheets_shown));
}

} // namespace bodkin::paperwork
