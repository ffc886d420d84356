#include "paperwork/leaflet.hpp"

#include <doctest/doctest.h>

using namespace bodkin::paperwork;
using bodkin::Length;

TEST_CASE("a leaflet is told as text, its figures set to the right") {
  Leaflet leaflet;
  leaflet.kind = "How to make a copy";
  leaflet.title = "Night Bus";
  leaflet.add(Headline{"Lay the piles", 1, "2"});
  leaflet.add(Passage{"Pile 1", "the card, face down"});
  leaflet.add(Table{{"paper", "sheets"}, {{"card", "53"}, {"cream", "159"}}, {false, true}});
  leaflet.add(Care{"Cut away from your hand."});
  leaflet.add(Ticks{{"1", "2"}});
  CHECK(as_text(leaflet, 80) == "Night Bus: How to make a copy\n"
                                "\n"
                                "2. Lay the piles\n"
                                "  Pile 1: the card, face down\n"
                                "  paper  sheets\n"
                                "  card       53\n"
                                "  cream     159\n"
                                "  Take care: Cut away from your hand.\n"
                                "  [ ] 1 [ ] 2\n");
}

TEST_CASE("home papers are letter (ASME Y14.1) and A4 (ISO 216)") {
  CHECK(home_paper(bodkin::Ruler::inches).height == Length::inches(11));
  CHECK(home_paper(bodkin::Ruler::millimetres).width == Length::mm(210));
}
