// Drawings of sheets and of foldings, as data and as SVG.
#include "sheet/folding_drawing.hpp"

#include "sheet/paper.hpp"
#include "sheet/report.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

using namespace bodkin;
using test::Desk;

namespace {

// "flat 4 by 2: 5v 4v 3v 2v 6 7 8 1" and so on; a panel of several layers says how many.
std::string told(const FoldingDrawing &drawing) {
  std::string text;
  for (const DrawnStage &stage : drawing.stages) {
    text += fmt::format("{}, {} by {}:", stage.caption, stage.width, stage.height);
    for (int y = 0; y < stage.height; ++y)
      for (int x = 0; x < stage.width; ++x)
        for (const DrawnPanel &panel : stage.panels)
          if (panel.left == x && panel.top == y)
            text += fmt::format(" {}{}{}{}", panel.label, panel.turn == 180 ? "v" : "",
                                panel.layers > 1 ? fmt::format("*{}", panel.layers) : "",
                                panel.at_fault ? "!" : "");
    text += "\n";
  }
  return text + drawing.trouble;
}

std::size_t count_of(std::string_view text, std::string_view words) {
  std::size_t count = 0;
  for (std::size_t at = text.find(words); at != text.npos; at = text.find(words, at + 1))
    ++count;
  return count;
}

std::string svg_of(Desk &desk) {
  const Imposition imposition = desk.impose();
  const std::vector<SheetModes> modes(imposition.sheets.size());
  return sheets_as_svg({desk.edition, imposition, modes, {}});
}

} // namespace

TEST_CASE("the mini is drawn flat, folded and wrapped, its pages as they lie") {
  CHECK(told(draw_folding(test::shelf_folding("eight-page-mini"))) ==
        "flat, 4 by 2: 5v 4v 3v 2v 6 7 8 1\n"
        "top under bottom, 4 by 1: 6*2 7*2 8*2 1*2\n"
        "push the ends together until the slit opens, and wrap the leaves round, 1 by 1: 1*8\n");
}

TEST_CASE("a flap over half a panel leaves the other half to see") {
  CHECK(told(draw_folding(test::shelf_folding("single-gate"))) ==
        "flat, 4 by 1: 3 4 5\n"
        "left over right by 1 panel, 3 by 1: 1*2 4 5\n"
        "right over left by 1 panel, 2 by 1: 1*2 2*2\n");
}

TEST_CASE("where the paper stops, the panels at fault are marked") {
  CHECK(told(draw_folding(test::written_folding("\nfolding own\n"
                                                "  panels 3 by 2\n"
                                                "  fold back and forth\n"))) ==
        "flat, 3 by 2: 1. 2. 3. 4. 5.! 6.\n"
        "these panels are no strip that folds back and forth");
  CHECK(told(draw_folding(test::written_folding("\nfolding own\n"
                                                "  panels 4 by 2\n"
                                                "  cut between rows 1 and 2\n"
                                                "  fold right over left\n"))) ==
        "flat, 4 by 2: 1. 2. 3. 4. 5.! 6. 7. 8.\n"
        "right over left, 2 by 2: 4.*2 3.*2 8.*2! 7.*2\n"
        "panel 1 of row 2 falls off the sheet");
}

TEST_CASE("the SVG of sheets shows every page of both sides once, and the stages") {
  Desk desk(16, "section-16");
  const std::string svg = svg_of(desk);
  CHECK(svg.starts_with("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg "));
  CHECK(svg.ends_with("</svg>\n"));
  for (int page = 1; page <= 16; ++page) // on its sheet, and flat or folded among the stages
    CHECK(count_of(svg, fmt::format(">{}</text>", page)) >= 1);
  CHECK(count_of(svg, "rotate(180)") >= 8);
  CHECK(count_of(svg, "class=\"title\"") == 2);
  CHECK(count_of(svg, "class=\"number foot\"") > 0); // 6 and 9 are not mistaken for each other
}

TEST_CASE("names in an SVG are written so that no sign of theirs is taken for its own") {
  Desk desk(4);
  desk.edition.stocks[0].name = "<cream & rose>";
  CHECK(count_of(svg_of(desk), "sheet 1, &lt;cream &amp; rose&gt;") == 1);
}
