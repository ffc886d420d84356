// Every element of an edition with the page that it stands on.
#pragma once

#include "edition/edition.hpp"

#include <variant>

namespace bodkin {

// Calls visit(page, element) for each page from 1 on, in order of laying: running matter first,
// what a spread holds on both of its pages, what `lay` lays after its own element.
template <typename Visit>
void each_element_on(const Edition &edition, Visit visit) {
  const auto show = [&](int page, ElementId id) {
    const Element &element = edition[id];
    visit(page, element);
    const Lay *lay = std::get_if<Lay>(&element.what);
    if (!lay || lay->standing == StandingId::none)
      return;
    for (const ElementId laid : edition.standings[at(lay->standing)].elements)
      visit(page, edition[laid]);
  };
  for (std::size_t page = 1; page < edition.pages.size(); ++page) {
    const Page &of = edition.pages[page];
    const int number = static_cast<int>(page);
    for (const Running &running : edition.runnings)
      if (page < running.on_page.size() && running.on_page[page] && !of.blank)
        for (const ElementId id : running.elements)
          show(number, id);
    if (of.spread)
      for (const ElementId id : edition.spreads[*of.spread].elements)
        show(number, id);
    for (const ElementId id : of.elements)
      show(number, id);
  }
}

} // namespace bodkin
