// What the copy will be and what is needed to make it; what is glued on originals before.
#include "paperwork/guide_writer.hpp"

#include "paperwork/tools.hpp"
#include "problems/characters.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <map>

namespace bodkin::paperwork {
namespace {

// A page as the knife leaves it.
Measured trimmed_page(const Making &making, int page) {
  const Box left = left_of_page(making, page, all_cuts(making));
  Measured picture;
  picture.ground = PageGround{page, left};
  picture.size = {left.width, left.height};
  picture.strokes.push_back({StrokeKind::outline, {}, {left.width, left.height}, {}});
  return picture;
}

// The outermost pages of a copy, numbered on: those of the last wrap where there is one.
struct Outside {
  int front = 1, back = 1;
};

Outside outside_of(const Making &making) {
  Outside outside{1, *making.edition.page_count};
  for (const CopyPart &part : making.parts)
    if (part.piece && part.piece->is_wrap())
      outside = {part.pages_before + 1, part.pages_before + part.imposition.page_count};
  return outside;
}

Shown first_page(const GuideWriter &writer) {
  Measured picture = trimmed_page(writer.making, outside_of(writer.making).front);
  const Size copy = picture.size;
  picture.dimensions.push_back({{}, {copy.width, {}}, writer.exact(copy.width), Beside::above});
  picture.dimensions.push_back({{}, {{}, copy.height}, writer.exact(copy.height), Beside::left});
  return {picture, "The front of a finished copy.", true};
}

// The same page with the names that steps call its edges by.
Shown edges_named(const GuideWriter &writer) {
  const int front = outside_of(writer.making).front;
  Measured picture = trimmed_page(writer.making, front);
  picture.ground = EmptyGround{};
  const Size copy = picture.size;
  const Length by = copy.width / 7;
  const Length x = copy.width / 2, y = copy.height / 2;
  picture.letterings = {{{x, by}, "head"}, {{x, copy.height - by}, "foot"}};
  const SpineAt spine = writer.making.imposition.place_of(front).spine;
  if (spine != SpineAt::none) {
    const bool left = spine == SpineAt::left;
    picture.letterings.push_back({{by, y}, left ? "fold, spine" : "fore-edge", 270});
    picture.letterings.push_back({{copy.width - by, y}, left ? "fore-edge" : "fold, spine", 90});
  }
  return {picture, "What its edges are called.", true};
}

Shown last_page(const GuideWriter &writer) {
  return {trimmed_page(writer.making, outside_of(writer.making).back), "Its back.", true};
}

struct PaperNeed {
  StockId stock = StockId::none;
  Size size;
  std::int64_t sheets = 0;
  std::vector<int> piles;
};

std::vector<PaperNeed> papers(const Making &making) {
  std::vector<PaperNeed> needs;
  for (const Pile &pile : piles(making)) {
    const Sheet &sheet = making.imposition.sheets[static_cast<std::size_t>(pile.sheet)];
    auto need = std::find_if(needs.begin(), needs.end(), [&](const PaperNeed &other) {
      return other.stock == sheet.stock && other.size.upright() == sheet.size.upright();
    });
    if (need == needs.end())
      need = needs.insert(needs.end(), PaperNeed{sheet.stock, sheet.size, 0, {}});
    need->sheets += pile.sheets;
    need->piles.push_back(sheet.number);
  }
  return needs;
}

// As its merchants call it, and in grams where that says pounds.
std::string weight_words(const Edition &edition, StockId stock) {
  if (stock == StockId::none || !edition[stock].weight)
    return "";
  const Weight &weight = **edition[stock].weight;
  return weight.pounds ? fmt::format("{}, {:.0f} gsm", written(weight), weight.grammage.gsm())
                       : written(weight);
}

std::string_view grain_words(const Edition &edition, StockId stock) {
  switch (stock == StockId::none ? Grain::unsaid : *edition[stock].grain) {
  case Grain::along_long_edge:
    return "long";
  case Grain::along_short_edge:
    return "short";
  case Grain::unsaid:
    break;
  }
  return "";
}

Table papers_table(const GuideWriter &writer) {
  const Edition &edition = writer.edition();
  Table table{{"paper", "weight", "grain", "sheet", "sheets", "for pile"},
              {},
              {false, false, false, false, true}};
  for (const PaperNeed &need : papers(writer.making))
    table.rows.push_back({paper_words(edition, need.stock), weight_words(edition, need.stock),
                          std::string(grain_words(edition, need.stock)),
                          spoken::named_and_measured(need.size, edition.ruler),
                          std::to_string(need.sheets), spoken::listed(need.piles)});
  return without_empty_columns(std::move(table));
}

const PasteUp *paste_up(const Edition &edition, const HandPlace &place) {
  return std::get_if<PasteUp>(&edition[place.element].what);
}

} // namespace

void tell_copy(GuideWriter &writer) {
  Pictures pictures{{first_page(writer)}, Length::inches(13, 10)};
  if (*writer.edition().page_count > 1)
    pictures.shown.push_back(last_page(writer));
  pictures.shown.push_back(edges_named(writer));
  writer.leaflet.add(std::move(pictures));
  writer.say(fmt::format(
      "Make one whole copy{} first, through all steps in order; then the others, one step at a "
      "time for all of them. Each heading says for how many; of the first copy, it is one.",
      writer.edition().runs.empty() ? "" : " of each kind"));
  writer.first_caution = writer.leaflet.blocks.size();
  writer.head("What you need");
  writer.leaflet.add(papers_table(writer));
  const std::string more =
      "Have a few sheets more of each paper, for what goes wrong at the machine";
  if (auto tools = tools_words(writer.making); tools.empty()) {
    writer.say(more + ".");
  } else {
    writer.say(more + "; and on the table, before you begin:");
    writer.leaflet.add(Checklist{std::move(tools)});
  }
  writer.words_at = writer.leaflet.blocks.size();
}

void tell_originals(GuideWriter &writer) {
  const auto &hands = writer.making.hands;
  const bool any = std::any_of(hands.begin(), hands.end(), [&](const HandPlace &place) {
    return paste_up(writer.edition(), place) != nullptr;
  });
  if (!any)
    return;
  writer.step("Glue the originals");
  writer.say("Print originals.pdf at 100 %. It shows in pale blue, which a copier drops, where "
             "things are glued. Glue these, let them dry, and copy from the glass:");
  Table table{{"page", "what is glued"}, {}, {}};
  for (const HandPlace &place : hands)
    if (const PasteUp *glued = paste_up(writer.edition(), place))
      table.rows.push_back({page_words(writer.making, place.page), harmless(glued->text)});
  writer.leaflet.add(std::move(table));
  writer.care("Glue in an aired room, off skin and eyes and away from flames; what the label says "
              "comes first.");
}

} // namespace bodkin::paperwork
