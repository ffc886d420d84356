#include "paperwork/price_cards.hpp"

#include "paperwork/leaflet.hpp"
#include "paperwork/own_words.hpp"
#include "problems/characters.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::paperwork {
namespace {

CardSheet sheet_for(Ruler ruler) {
  const bool metric = ruler == Ruler::millimetres;
  return {.paper = home_paper(ruler),
          .card = metric ? Size{Length::mm(93), Length::mm(68)}
                         : Size{Length::inches(15, 4), Length::inches(5, 2)}};
}

std::string issue_words(const Edition &edition) {
  std::vector<std::string> parts;
  if (edition.series)
    parts.push_back(**edition.series);
  if (edition.number)
    parts.push_back(fmt::format("{} {}", edition.series ? "number" : "Number", **edition.number));
  if (edition.dated)
    parts.push_back(date_words(edition, **edition.dated));
  return harmless(fmt::format("{}", fmt::join(parts, ", ")));
}

std::string pages_fact(const Making &making) {
  const std::string pages = counted(*making.edition.page_count, "page", "pages");
  const std::vector<std::string> papers = paper_names(making.parts);
  return harmless(papers.empty() ? pages : fmt::format("{} on {}", pages, in_a_row(papers)));
}

// " at $14", of a run whose copies cost something else.
std::string own_price(const Edition &edition, const NamedRun &run, const Sources &sources) {
  if (!run.price || (edition.price && run.price->from == edition.price->from))
    return {};
  const std::string_view written = sources.text(run.price->from);
  return fmt::format(" at {}", written.substr(0, written.find(" a ")));
}

// "40 copies plain, 10 de-luxe"
std::string copies_fact(const Edition &edition, const Sources &sources) {
  std::string text = counted(edition.run->copies, "copy", "copies");
  if (!edition.runs.empty()) {
    std::vector<std::string> runs;
    for (const NamedRun &run : edition.runs)
      runs.push_back(
          fmt::format("{} {}{}", run.run.copies, run.name, own_price(edition, run, sources)));
    text += fmt::format(": {}", fmt::join(runs, ", "));
  }
  if (edition.impression && **edition.impression > 1)
    text += fmt::format("; impression {}", **edition.impression);
  return harmless(text);
}

std::string price_on_card(const Edition &edition, const Sources &sources) {
  const std::string asked = asked_price(edition.price, sources);
  return asked.empty() ? "Free" : harmless(asked);
}

} // namespace

std::vector<Box> places_of_cards(const CardSheet &sheet, int cards) {
  std::vector<Box> places;
  const Spot corner = sheet.corner();
  for (int i = 0; i < std::min(cards, sheet.most()); ++i)
    places.push_back({corner.x + sheet.card.width * (i % sheet.across),
                      corner.y + sheet.card.height * (i / sheet.across), sheet.card.width,
                      sheet.card.height});
  return places;
}

std::vector<WasteMark> marks_of_cards(const CardSheet &sheet, int cards) {
  constexpr Length off = Length::inches(1, 16), length = Length::inches(1, 8);
  std::vector<WasteMark> marks;
  if (cards <= 0)
    return marks;
  const int across = std::min(cards, sheet.across);
  const int down = (std::min(cards, sheet.most()) + sheet.across - 1) / sheet.across;
  const Spot corner = sheet.corner();
  const Length right = corner.x + sheet.card.width * across;
  const Length foot = corner.y + sheet.card.height * down;
  for (int i = 0; i <= across; ++i) {
    const Length x = corner.x + sheet.card.width * i;
    marks.push_back({{x, corner.y - off - length}, {x, corner.y - off}});
    marks.push_back({{x, foot + off}, {x, foot + off + length}});
  }
  for (int i = 0; i <= down; ++i) {
    const Length y = corner.y + sheet.card.height * i;
    marks.push_back({{corner.x - off - length, y}, {corner.x - off, y}});
    marks.push_back({{right + off, y}, {right + off + length, y}});
  }
  return marks;
}

PriceCards price_cards(const Making &making, const Sources &sources) {
  const Edition &edition = making.edition;
  const auto words = [](const std::optional<Known<std::string>> &text) {
    return text ? harmless(**text) : std::string{};
  };
  return {.count = edition.cards ? **edition.cards : 0,
          .sheet = sheet_for(edition.ruler),
          .title = harmless(*edition.title),
          .subtitle = words(edition.subtitle),
          .maker = words(edition.maker),
          .issue = issue_words(edition),
          .facts = pages_fact(making) + "\n" + copies_fact(edition, sources),
          .price = price_on_card(edition, sources)};
}

} // namespace bodkin::paperwork
