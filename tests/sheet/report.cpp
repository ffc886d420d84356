#include "sheet/report.hpp"

#include "sheet/paper.hpp"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

using namespace bodkin;
using test::Desk;
using test::inks;

namespace {

struct Told {
  std::string text, json;
};
Told told(Desk &desk, const std::vector<PageInk> &ink) {
  const Imposition imposition = desk.impose();
  const std::vector<SheetModes> modes = modes_of(imposition, ink);
  const std::vector<Pass> passes =
      passes_of(desk.edition, imposition, modes, desk.sources, desk.problems);
  const SheetsReport report{desk.edition, imposition, modes, passes};
  return {sheets_as_text(report), sheets_as_json(report)};
}

void make_almanac(Desk &desk) {
  desk.edition.cover_stock = Known<StockId>{test::board, {}};
  desk.edition.stocks[1].caliper.value = Length::inches(38, 10'000);
  desk.edition.stocks[2].caliper.value = Length::inches(78, 10'000);
  desk.on(4, test::rose);
}

} // namespace

TEST_CASE("the report in JSON has every sheet, side and place, lengths in points") {
  Desk desk(8);
  make_almanac(desk);
  const nlohmann::json json = nlohmann::json::parse(told(desk, inks(8, {1}, {2, 7})).json);
  CHECK(json["edition"] == "Night Bus Almanac");
  CHECK(json["page_count"] == 8);
  CHECK(json["folding"] == "saddle-stitch");
  REQUIRE(json["sheets"].size() == 2);
  CHECK(json["sheets"][0] == nlohmann::json::parse(R"({
    "sheet": 1, "stock": "board", "width": 792, "height": 612, "creep": 0.0,
    "sides": [
      {"side": "front", "mode": "colour", "passes": [{"file": "passes/01-board.pdf", "pdf_page": 1}],
       "places": [{"page": 8, "x": 0, "y": 0, "width": 396, "height": 612, "turn": 0, "shift": 0.0},
                  {"page": 1, "x": 396, "y": 0, "width": 396, "height": 612, "turn": 0, "shift": 0.0}]},
      {"side": "back", "mode": "blank", "passes": [],
       "places": [{"page": 2, "x": 0, "y": 0, "width": 396, "height": 612, "turn": 0, "shift": 0.0},
                  {"page": 7, "x": 396, "y": 0, "width": 396, "height": 612, "turn": 0, "shift": 0.0}]}]})"));
  CHECK(json["sheets"][1]["stock"] == "rose");
  CHECK(json["sheets"][1]["creep"] == 0.4176); // (0.0078in + 0.0038in) / 2, at 72 points an inch
  CHECK(json["sheets"][1]["sides"][1]["passes"][0]["pdf_page"] == 2);
}

TEST_CASE("keys of the report stand in their fixed order") {
  Desk desk(4);
  const std::string json = told(desk, inks(4)).json;
  std::size_t at = 0;
  for (const char *key :
       {"edition", "page_count", "folding", "sheets", "sheet",  "stock", "width",    "height",
        "creep",   "sides",      "side",    "mode",   "passes", "file",  "pdf_page", "places",
        "page",    "x",          "y",       "width",  "height", "turn",  "shift"}) {
    at = json.find("\"" + std::string(key) + "\":", at);
    REQUIRE(at != std::string::npos);
  }
}

TEST_CASE("a place past the last page has no page") {
  Desk desk(3);
  const nlohmann::json json = nlohmann::json::parse(told(desk, inks(3)).json);
  CHECK(json["page_count"] == 3);
  CHECK(json["sheets"][0]["sides"][0]["places"][0]["page"] == nullptr);
}

TEST_CASE("the report as text is followed with paper in hand") {
  Desk desk(8);
  make_almanac(desk);
  CHECK(
      told(desk, inks(8, {1}, {2, 7})).text ==
      "Night Bus Almanac: 8 pages on 2 sheets, saddle-stitch\n"
      "Each side is drawn as you see it; a back as you see it when the sheet is turned like a "
      "leaf.\n"
      "\n"
      "sheet 1 of 2: board, letter (11in x 8 1/2in), creep 0\n"
      "  front  colour  passes/01-board.pdf page 1\n"
      "    8 | 1\n"
      "  back   blank   not printed\n"
      "    2 | 7\n"
      "\n"
      "sheet 2 of 2: rose, letter (11in x 8 1/2in), creep 0.0058in\n"
      "  front  black   passes/02-rose.pdf page 1\n"
      "    6 | 3\n"
      "  back   black   passes/02-rose.pdf page 2\n"
      "    4 | 5\n"
      "\n"
      "To fold a sheet, lay it as its back is drawn here, that side up; fold left over right. The "
      "fold is the spine.\n"
      "Nest the folded sheets one in another, sheet 1 outermost.\n"
      "\n"
      "passes/01-board.pdf: fronts by corner-copier, 1 PDF page\n"
      "  Load unprinted board for sheet 1.\n"
      "\n"
      "passes/02-rose.pdf: fronts and backs by corner-copier, 2 PDF pages\n"
      "  Load unprinted rose for sheet 2.\n"
      "  Both sides are printed; corner-copier turns each sheet over its short edge.\n");
}

TEST_CASE("pages that stand on their heads are marked") {
  Desk desk(8, "section-8");
  const std::string text = told(desk, inks(8, {}, {1, 2, 3, 4, 5, 6, 7, 8})).text;
  CHECK(text ==
        "Night Bus Almanac: 8 pages on 1 sheet, section-8\n"
        "Each side is drawn as you see it; a back as you see it when the sheet is turned like "
        "a leaf.\n"
        "v after a page: its head points down; < left; > right.\n"
        "\n"
        "sheet 1 of 1: cream, letter (8 1/2in x 11in), creep 0.006in\n"
        "  front  blank   not printed\n"
        "    5v | 4v\n"
        "     8 |  1\n"
        "  back   blank   not printed\n"
        "    3v | 6v\n"
        "     2 |  7\n"
        "\n"
        "To fold a sheet, lay it as its back is drawn here, that side up; fold top over bottom, "
        "then left over right. The last fold is the spine.\n"
        "Folds at the head are cut open, by the trim or with a paper knife away from your "
        "fingers.\n");
}

TEST_CASE("the folding told in the report folds the sheet as it is drawn") {
  // Whatever way the shelf file lays its sheet down, front up or down, one half or the other.
  for (const Part part : {Part::left, Part::right})
    for (const bool beneath : {false, true}) {
      Desk desk(4);
      Folding folding = *desk.edition.folding;
      folding.steps = {{part, beneath, {}}};
      desk.fold_as(folding);
      const std::string text = told(desk, inks(4)).text;
      // Drawn 4 1 in front and 2 3 behind: only these two ways give 1 in front with the fold left.
      const std::string right =
          beneath ? "lay it as its front is drawn here, that side up; fold left under right"
                  : "lay it as its back is drawn here, that side up; fold left over right";
      CHECK(text.find(right) != std::string::npos);
    }
}
