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
                                "  [ ] 1  [ ] 2\n");
}

TEST_CASE("a step is told with its number and for how many it is") {
  Leaflet leaflet;
  leaflet.add(Headline{"Crease", 1, "3", false, "53 sheets: 50 copies and 3 spare"});
  CHECK(blocks_as_text(leaflet, 80) == "\n3. Crease\n  For 53 sheets: 50 copies and 3 spare.\n");
}

TEST_CASE("a column with nothing in it is left out") {
  const Table table = without_empty_columns(
      {{"file", "turned over", "times"}, {{"a", "", "2"}}, {false, false, true}});
  CHECK(table.heads == std::vector<std::string>{"file", "times"});
  CHECK(table.rows == std::vector<std::vector<std::string>>{{"a", "2"}});
  CHECK(table.figures == std::vector<bool>{false, true});
}

TEST_CASE("a table that is too wide breaks its widest cells between words") {
  Leaflet leaflet;
  leaflet.add(Table{{"file", "paper", "sheets"},
                    {{"passes/01-board.pdf", "White card, grain short", "53"},
                     {"passes/02-rose.pdf", "Rose", "1060"}},
                    {false, false, true}});
  CHECK(blocks_as_text(leaflet, 42) == "  file                 paper        sheets\n"
                                       "  passes/01-board.pdf  White card,      53\n"
                                       "                       grain short\n"
                                       "  passes/02-rose.pdf   Rose           1060\n");
}

TEST_CASE(
    "what only eyes have use for is left out of the text, and no box is parted from its number") {
  Leaflet leaflet;
  leaflet.add(Passage{{}, "The large numbers name pages.", true, true});
  leaflet.add(Pictures{{{Measured{}, "Pile 1, front: 24 and 1", true}, {Measured{}, "Cut here."}},
                       Length::inches(1)});
  leaflet.add(Ticks{{"8", "9", "10"}});
  CHECK(blocks_as_text(leaflet, 20) == "    Cut here.\n"
                                       "  [ ] 8   [ ] 9\n"
                                       "  [ ] 10\n");
}

TEST_CASE("no word of a table is broken, even where there is no room for it") {
  Leaflet leaflet;
  leaflet.add(Table{{}, {{"passes/01-board.pdf", "short edge"}}, {}});
  CHECK(blocks_as_text(leaflet, 10) == "  passes/01-board.pdf  short\n"
                                       "                       edge\n");
}

TEST_CASE("a checklist has a box before each phrase, and a leaflet says in text what text lacks") {
  Leaflet leaflet;
  leaflet.title = "Night Bus";
  leaflet.kind = "How to make a copy";
  leaflet.in_text = "Its pictures are in assembly.pdf.";
  leaflet.add(Checklist{{"a bone folder, and a steel rule, for creasing", "a soft pencil"}});
  CHECK(as_text(leaflet, 40) == "Night Bus: How to make a copy\n"
                                "Its pictures are in assembly.pdf.\n"
                                "  [ ] a bone folder, and a steel rule,\n"
                                "      for creasing\n"
                                "  [ ] a soft pencil\n");
}

TEST_CASE("home papers are letter (ASME Y14.1) and A4 (ISO 216)") {
  CHECK(home_paper(bodkin::Ruler::inches).height == Length::inches(11));
  CHECK(home_paper(bodkin::Ruler::millimetres).width == Length::mm(210));
}
