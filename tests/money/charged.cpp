#include "money/charged.hpp"
#include "money/shop.hpp"

#include <doctest/doctest.h>

namespace bodkin::tests {
namespace {

PassPage pass_page(int sheet, SideName side, bool prints = true) {
  PassPage page;
  page.sheet = sheet;
  page.side = side;
  page.prints = prints;
  return page;
}

std::string told(const ChargedSides &sides) {
  std::string out;
  for (const ChargedSide &side : sides)
    out += std::to_string(side.sheet) + (side.side == 0 ? " front " : " back ") +
           (!side.printed               ? "blank"
            : side.mode == Mode::colour ? "colour"
                                        : "black") +
           (side.fed_both ? " fed" : "") + "\n";
  return out;
}

} // namespace

TEST_CASE("an empty back that goes through with its printed front is counted as fed") {
  const Shop shop(2);
  Pass pass;
  pass.machine = MachineId{0};
  pass.pages = {pass_page(0, SideName::front), pass_page(0, SideName::back, false),
                pass_page(1, SideName::front), pass_page(1, SideName::back)};
  const std::vector<SheetModes> modes = {{Mode::colour, std::nullopt}, {Mode::black, Mode::black}};
  CHECK(told(charged_sides(shop.imposition, modes, std::vector<Pass>{pass})) ==
        "0 front colour\n0 back blank fed\n1 front black\n1 back black\n");
}

TEST_CASE("an empty back that no pass feeds is not counted") {
  const Shop shop(1);
  Pass fronts;
  fronts.machine = MachineId{0};
  fronts.sides = PassSides::fronts;
  fronts.pages = {pass_page(0, SideName::front)};
  const std::vector<SheetModes> modes = {{Mode::black, std::nullopt}};
  CHECK(told(charged_sides(shop.imposition, modes, std::vector<Pass>{fronts})) ==
        "0 front black\n");
}

TEST_CASE("a sheet that nothing prints on is not counted though a pass has it") {
  const Shop shop(1);
  Pass pass;
  pass.machine = MachineId{0};
  pass.pages = {pass_page(0, SideName::front, false), pass_page(0, SideName::back, false)};
  const std::vector<SheetModes> modes = {{std::nullopt, std::nullopt}};
  CHECK(told(charged_sides(shop.imposition, modes, std::vector<Pass>{pass})) == "");
}

TEST_CASE("a side that another pass prints is counted once, by its own mode") {
  const Shop shop(1);
  Pass colour, black;
  colour.machine = black.machine = MachineId{0};
  colour.pages = {pass_page(0, SideName::front), pass_page(0, SideName::back, false)};
  black.pages = {pass_page(0, SideName::back)};
  const std::vector<SheetModes> modes = {{Mode::colour, Mode::black}};
  CHECK(told(charged_sides(shop.imposition, modes, std::vector<Pass>{colour, black})) ==
        "0 front colour\n0 back black\n");
}

} // namespace bodkin::tests
