// Printing: one of each first, then the others.
#include "paperwork/guide_writer.hpp"

#include "paperwork/own_words.hpp"
#include "paperwork/ticket_writer.hpp"
#include "sheet/machine_of.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::paperwork {
namespace {

std::string_view sides_words(const Pass &pass) {
  return pass.sides == PassSides::both     ? "both"
         : pass.sides == PassSides::fronts ? "fronts"
                                           : "backs";
}

std::string_view turned_over(const Making &making, const Pass &pass) {
  if (pass.sides != PassSides::both)
    return "";
  return *machine_of(making.edition, pass.machine).flip == SheetEdge::long_edge ? "long edge"
                                                                                : "short edge";
}

std::string numbers_of(const Making &making, const Pass &pass) {
  std::vector<int> numbers;
  for (const int sheet : pass.sheets)
    numbers.push_back(making.imposition.sheets[static_cast<std::size_t>(sheet)].number);
  return spoken::listed(numbers);
}

Table passes_table(const Making &making) {
  Table table{
      {"file", "times", "paper", "for pile", "ink", "sides", "turned over"}, {}, {false, true}};
  for (const Pass &pass : making.passes)
    table.rows.push_back({pass.file, times_words(making, pass),
                          paper_words(making.edition, pass.stock), numbers_of(making, pass),
                          std::string(spoken::mode_name(pass.mode)), std::string(sides_words(pass)),
                          std::string(turned_over(making, pass))});
  return without_empty_columns(std::move(table));
}

// Of several machines: "Home printer prints files 02 and 03."
void tell_machines(GuideWriter &writer) {
  const std::vector<Counter> counters = counters_of(writer.making);
  for (const Counter &counter : counters) {
    std::vector<std::string> files;
    for (const Pass *pass : counter.passes)
      files.push_back(fmt::format("{:02}", pass->number));
    if (counters.size() > 1)
      writer.remark(fmt::format("{} prints {} {}.",
                                machine_words(writer.edition(), counter.machine),
                                files.size() == 1 ? "file" : "files", in_a_row(files)));
  }
}

// Whole passes once, whatever is fed back in.
bool fed_back(const Pass &pass) {
  return std::any_of(pass.feeding.begin(), pass.feeding.end(),
                     [](const std::string &line) { return line.starts_with("Put the sheets"); });
}

bool all_of_one_sheet(const std::vector<Pass> &passes) {
  return std::all_of(passes.begin(), passes.end(),
                     [](const Pass &pass) { return pass.sheets.size() == 1; });
}

// What is in a file, and what comes out first.
std::string files_words(const Making &making) {
  if (all_of_one_sheet(making.passes))
    return "";
  return " A file for several piles has a sheet for each of them. Switch sorting off (uncollated): "
         "then "
         "all sheets of the first come out together, then those of the next. Part them into their "
         "piles where the sheet changes, and count each.";
}

bool any_two_sided(const Making &making) {
  return std::any_of(making.passes.begin(), making.passes.end(),
                     [](const Pass &pass) { return pass.sides == PassSides::both; });
}

bool any_one_sided(const Making &making) {
  return std::any_of(making.passes.begin(), making.passes.end(),
                     [](const Pass &pass) { return pass.sides != PassSides::both; });
}

// What is chosen where a printer is told how to print.
std::string settings_words(const Making &making) {
  return std::string("The files lie in the folder passes. Choose for each: actual size (100 %), "
                     "never fitted to the page") +
         (any_two_sided(making)
              ? fmt::format("; where the table says both, both sides, turned over the edge that it "
                            "names (printers call it flipping on the short or on the long edge)"
                            "{}. Turn nothing else: the backs lie in the files as that edge needs "
                            "them.",
                            any_one_sided(making) ? "; where it says fronts or backs, one side, "
                                                    "two-sided printing switched off"
                                                  : "")
              : "; one side.");
}

// Heavier than printers at home take from their trays; common practice, no source.
bool any_card(const Making &making) {
  constexpr double card = 160; // g/m²
  return std::any_of(making.passes.begin(), making.passes.end(), [&](const Pass &pass) {
    return pass.stock != StockId::none && making.edition[pass.stock].weight &&
           (*making.edition[pass.stock].weight)->grammage.gsm() > card;
  });
}

// From one of each a copy is made before the others are printed.
std::string first_print_words(const Making &making) {
  const bool kinds = !making.edition.runs.empty();
  const bool numbered = std::any_of(making.passes.begin(), making.passes.end(),
                                    [](const Pass &pass) { return pass.numbered; });
  return fmt::format(
      "First print {}{}, and hold the sheets against the pictures of the next step: the right page "
      "behind the right page, heads as they are drawn, nothing cut off. Make your first whole {} "
      "of them, through all steps, and only then print the others. A shop prints by ticket.pdf; "
      "sheets.pdf is to look at and not to print.",
      kinds ? "of each file as many as stand before the plus sign" : "each file once",
      numbered ? ", and of files that are printed once the pages named below the table" : "",
      kinds ? "copy of each kind" : "copy");
}

} // namespace

void tell_printing(GuideWriter &writer) {
  const Making &making = writer.making;
  if (making.passes.empty())
    return;
  writer.step("Print");
  writer.say(first_print_words(making));
  writer.say(settings_words(making) + files_words(making));
  writer.leaflet.add(passes_table(making));
  tell_machines(writer);
  if (any_card(making))
    writer.remark(
        "Card goes through a printer sheet by sheet, by its straightest way, if it takes card "
        "at all: see its book, or have a shop print it.");
  for (const Pass &pass : making.passes)
    if (pass.numbered)
      writer.say(numbered_words(making, pass));
  for (const Pass &pass : making.passes)
    if (fed_back(pass))
      for (const std::string &line : pass.feeding)
        writer.remark(fmt::format("{}: {}", pass.file, line));
}

} // namespace bodkin::paperwork
