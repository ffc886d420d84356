#include "money/saving.hpp"

#include "edition/copy_numbers.hpp"
#include "edition/laid.hpp"
#include "edition/piece.hpp"

namespace bodkin {
namespace {

std::shared_ptr<const Piece> without_matter(const Piece &piece) {
  auto light = std::make_shared<Piece>();
  light->name = piece.name;
  light->range = piece.range;
  light->goes = piece.goes;
  light->at_page = piece.at_page;
  light->host = piece.host;
  light->pocket = piece.pocket;
  light->across = piece.across;
  light->down = piece.down;
  light->glued = piece.glued;
  light->flaps = piece.flaps;
  light->overlap = piece.overlap;
  light->squares = piece.squares;
  light->count = piece.count;
  light->up = piece.up;
  light->only = piece.only;
  light->matter_of = piece.matter_of;
  light->matter_but_price = piece.matter_but_price;
  light->own_steps = piece.own_steps;
  light->edition = without_matter(piece.edition);
  return light;
}

// Sheets that show a copy's number are a pass of their own: one element stands for all that do.
void keep_numbers(const Edition &edition, Edition &light) {
  each_laid(edition, [&](ElementId id, int page) {
    if (!bears_number(edition[id]))
      return;
    if (light.elements.empty())
      light.elements.push_back(edition[id]);
    const auto &spread = edition.pages[static_cast<std::size_t>(page)].spread;
    for (const int on : {page, spread ? edition.spreads[*spread].right : page})
      light.pages[static_cast<std::size_t>(on)].elements = {ElementId{0}};
  });
}

} // namespace

Edition without_matter(const Edition &edition) {
  Edition light;
  light.title = edition.title;
  light.size = edition.size;
  light.page_count = edition.page_count;
  light.folding = edition.folding;
  light.run = edition.run;
  light.runs = edition.runs;
  light.impression = edition.impression;
  light.labour = edition.labour;
  light.exchanges = edition.exchanges;
  light.other_machines = edition.other_machines;
  light.paper = edition.paper;
  light.cover_stock = edition.cover_stock;
  light.cover_mode = edition.cover_mode;
  light.printing = edition.printing;
  light.machine = edition.machine;
  light.margins = edition.margins;
  light.creep = edition.creep;
  light.creep_made_up_for = edition.creep_made_up_for;
  light.budget = edition.budget;
  light.currency = edition.currency;
  light.marks = edition.marks;
  light.up = edition.up;
  light.stocks = edition.stocks;
  light.machines = edition.machines;
  light.finish = edition.finish;
  for (const auto &piece : edition.pieces)
    light.pieces.push_back(without_matter(*piece));
  light.finish_range = edition.finish_range;
  light.ruler = edition.ruler;
  light.pages.resize(edition.pages.size());
  for (std::size_t i = 0; i < edition.pages.size(); ++i) {
    light.pages[i].opened = edition.pages[i].opened;
    light.pages[i].asked = edition.pages[i].asked;
    light.pages[i].mode = edition.pages[i].mode;
    light.pages[i].machine = edition.pages[i].machine;
    light.pages[i].blank = edition.pages[i].blank;
  }
  keep_numbers(edition, light);
  return light;
}

} // namespace bodkin
