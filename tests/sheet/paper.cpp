#include "sheet/paper.hpp"

#include "edition/memory.hpp"
#include "edition/read.hpp"
#include "sheet/geometry.hpp"
#include "sheet/refold.hpp"

#include <algorithm>
#include <doctest/doctest.h>
#include <filesystem>
#include <fmt/format.h>
#include <fstream>
#include <iterator>

namespace bodkin::test {
namespace {

std::string shelf_file(std::string_view name) {
  std::ifstream file(fmt::format("{}/stdlib/foldings/{}.bodkin", BODKIN_SOURCE_DIR, name));
  REQUIRE(file.good());
  return {std::istreambuf_iterator<char>(file), {}};
}

} // namespace

Folding written_folding(std::string_view lines) {
  const std::size_t name = lines.find("\nfolding ") + 9;
  MemoryFiles files;
  files.put("almanac.bodkin",
            fmt::format("edition \"Test\"\n  folding {}\n\n{}",
                        lines.substr(name, lines.find_first_of(" \n", name) - name), lines));
  Sources sources;
  Problems problems;
  const Reading reading = read_edition("almanac.bodkin", files, sources, problems);
  std::string wrong;
  for (const Problem &problem : problems)
    if (problem.check != "missing-fact") // of the edition, which says nothing else
      wrong += problem.message + "\n";
  CHECK(wrong == "");
  return *reading.edition.folding;
}

Folding shelf_folding(std::string_view name) { return written_folding("\n" + shelf_file(name)); }

std::vector<std::string> shelf_foldings() {
  std::vector<std::string> names;
  for (const auto &entry :
       std::filesystem::directory_iterator(fmt::format("{}/stdlib/foldings", BODKIN_SOURCE_DIR)))
    names.push_back(entry.path().stem().string());
  std::sort(names.begin(), names.end());
  return names;
}

Stock stock_named(std::string name, Length caliper, Size sheet, Grain grain) {
  Stock stock;
  stock.name = std::move(name);
  stock.caliper.value = caliper;
  stock.sheet = Known<Size>{sheet, {}};
  stock.grain.value = grain;
  return stock;
}

Machine copier() {
  Machine machine;
  machine.name = "corner-copier";
  machine.bare.value = Length::inches(1, 4);
  machine.drift.value = Length::inches(1, 16);
  return machine;
}

Desk::Desk(int pages, std::string_view folding, std::string text) {
  file = sources.add("almanac.bodkin", std::move(text));
  edition.title.value = "Night Bus Almanac";
  edition.page_count.value = pages;
  fold_as(shelf_folding(folding));
  const Size letter = *paper_named("letter");
  edition.stocks = {
      stock_named("cream", Length::inches(6, 1000), letter, Grain::along_short_edge),
      stock_named("rose", Length::inches(4, 1000), letter, Grain::along_long_edge),
      stock_named("board", Length::inches(10, 1000), letter),
  };
  edition.machines = {copier()};
  edition.paper.value = cream;
  edition.machine.value = MachineId{0};
  edition.pages.resize(static_cast<std::size_t>(pages) + 1);
}

void Desk::fold_as(const Folding &folding) {
  edition.folding.value = folding;
  const auto sheet = fold(folding, problems);
  INFO(messages(problems));
  REQUIRE(sheet);
  edition.size.value = page_given(*sheet, lying(*paper_named("letter"), folding.across));
}

Range Desk::line(std::string_view start) const {
  const std::string_view text = sources.text(file);
  const std::size_t begin = text.find(start);
  REQUIRE(begin != text.npos);
  const std::size_t end = std::min(text.find('\n', begin), text.size());
  return {file, static_cast<Offset>(begin), static_cast<Offset>(end)};
}

Range Desk::words(std::string_view start, std::string_view part) const {
  const Range whole = line(start);
  const std::size_t at = sources.text(whole).rfind(part);
  REQUIRE(at != std::string_view::npos);
  const std::size_t begin = bytes(whole.begin) + at;
  return {file, static_cast<Offset>(begin), static_cast<Offset>(begin + part.size())};
}

void Desk::on(int page, StockId stock, std::string_view start) {
  Page &asking = edition.pages[static_cast<std::size_t>(page)];
  asking.asked.stock = Known<StockId>{stock, {}};
  if (start.empty())
    return;
  asking.opened = line(start);
  asking.asked.stock->from = words(start, edition[stock].name);
}

void Desk::by(int page, MachineId machine, std::string_view start) {
  Page &asking = edition.pages[static_cast<std::size_t>(page)];
  asking.asked.machine = Known<MachineId>{machine, {}};
  if (start.empty())
    return;
  asking.opened = line(start);
  asking.asked.machine->from = words(start, edition[machine].name);
}

Imposition Desk::impose() {
  Imposition imposition = bodkin::impose(edition, sources, problems);
  CHECK(refold(imposition, *edition.folding) == "");
  return imposition;
}

std::vector<PageInk> inks(int pages, std::initializer_list<int> colour,
                          std::initializer_list<int> blank) {
  std::vector<PageInk> result(static_cast<std::size_t>(pages) + 1, PageInk{true, Mode::black});
  for (const int page : colour)
    result[static_cast<std::size_t>(page)].mode = Mode::colour;
  for (const int page : blank)
    result[static_cast<std::size_t>(page)].draws = false;
  return result;
}

std::string drawn(const Side &side) {
  std::string text;
  for (std::size_t i = 0; i < side.places.size(); ++i) {
    const Place &place = side.places[i];
    if (i > 0)
      text += place.box.y != side.places[i - 1].box.y ? " / " : " ";
    text += place.page > 0 ? std::to_string(place.page) : "-";
    text += place.turn == 90 ? ">" : place.turn == 180 ? "v" : place.turn == 270 ? "<" : "";
  }
  return text;
}

std::string messages(const Problems &problems) {
  std::string text;
  for (const Problem &problem : problems)
    text += fmt::format("{} [{}]\n", problem.message, problem.check);
  return text;
}

} // namespace bodkin::test
