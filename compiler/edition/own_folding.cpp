#include "edition/own_folding.hpp"

#include "edition/problems.hpp"
#include "edition/values.hpp"
#include "measure/limits.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {
namespace {

constexpr std::string_view usual_folding = "saddle-stitch";

Part part_of(std::string_view word) {
  if (word == "left")
    return Part::left;
  if (word == "right")
    return Part::right;
  return word == "top" ? Part::top : Part::bottom;
}

std::string_view word_of(Part part) {
  switch (part) {
  case Part::left:
    return "left";
  case Part::right:
    return "right";
  case Part::top:
    return "top";
  case Part::bottom:
    break;
  }
  return "bottom";
}

Problem not_across(const Reader &reader, FactLine line, Part moving) {
  return {
      .check = "folding-cannot-be",
      .range = line.range(),
      .message = fmt::format("the {} half comes to lie on the {} half and on no other",
                             word_of(moving), word_of(opposite(moving))),
      .why = "one straight fold carries a half of the paper onto the half across from it",
      .type = {{typed(reader, line.range(), line.range("onto"), word_of(opposite(moving))), {}}}};
}

Problem too_many_folds(FactLine line) {
  return {.check = "folding-cannot-be",
          .range = line.range(),
          .message = fmt::format("no sheet is folded more than {} times", limits::fold_steps),
          .why = "paper of any thickness gives up after about seven folds in half"};
}

void take_fold(Reader &reader, FactLine line, Folding &folding) {
  if (!line.has("moving") || !line.has("onto"))
    return;
  const Part moving = part_of(line.words("moving"));
  if (part_of(line.words("onto")) != opposite(moving))
    reader.report(not_across(reader, line, moving));
  else if (folding.steps.size() == limits::fold_steps)
    reader.report(too_many_folds(line));
  else if (folding.steps.size() < limits::fold_steps)
    folding.steps.push_back({moving, line.words("how") == "under", line.range()});
}

void take_panels(Reader &reader, FactLine thing, FactLine line, Folding &folding) {
  if (!line) {
    reader.report(missing_fact(
        thing.range("name"),
        fmt::format("the folding {} does not say its panels", thing.words("name")),
        "folds part a sheet into panels, and each becomes two pages", "panels     2 by 1"));
    return;
  }
  const auto columns = count_in(reader, line, "columns", 1, "a sheet is one panel at the least");
  const auto rows = count_in(reader, line, "rows", 1, "a sheet is one panel at the least");
  if (!columns || !rows)
    return;
  constexpr auto most = static_cast<std::int64_t>(limits::panels);
  if (columns->value > most || rows->value > most || columns->value * rows->value > most) {
    reader.report({.check = "folding-cannot-be",
                   .range = line.range(),
                   .message = fmt::format("a sheet has at most {} panels", most),
                   .why = "smaller ones than these nobody folds or reads",
                   .type = {{"panels     4 by 2", {}}}});
    return;
  }
  folding.columns = static_cast<int>(columns->value);
  folding.rows = static_cast<int>(rows->value);
}

Folding folding_of(Reader &reader, FactLine thing) {
  const Facts facts(thing);
  Folding folding;
  folding.name = thing.words("name");
  folding.title = thing.words("title");
  folding.range = thing.range();
  const FactLine sheet = facts.find("sheet");
  folding.sheet = value_in<Size>(sheet, "size");
  folding.across = !sheet || sheet.words("lies") != "upright";
  if (const auto count =
          count_in(reader, facts.find("sheets"), "count", 1, "a copy takes one sheet at the least"))
    folding.sheets = known(static_cast<int>(std::min(count->value, limits::pages)), count->from);
  take_panels(reader, thing, facts.find("panels"), folding);
  facts.each("fold", [&](FactLine line) { take_fold(reader, line, folding); });
  if (const auto how = text_in(facts.find("nest"), "how"))
    folding.gather =
        known(how->value == "in" ? Gather::nested : Gather::one_after_another, how->from);
  else
    folding.gather = known(Gather::one_after_another, {});
  return folding;
}

// The shelf keeps one folding a file, named as itself.
FactLine from_shelf(Reader &reader, std::string_view name) {
  const std::string shelf = fmt::format("foldings/{}", name);
  const FileBytes bytes = reader.files.shelf(shelf);
  if (!bytes.owner)
    return {};
  Manuscript &manuscript = reader.manuscripts.emplace_back();
  manuscript.path = shelf;
  manuscript.on_shelf = true;
  const std::string file_name = fmt::format("stdlib/{}.bodkin", shelf);
  reader.note_file(file_name, FileRole::shelf);
  Problems found;
  manuscript.tree =
      language::read(reader.sources.add(file_name, std::string(bytes.view)), reader.sources, found);
  for (Problem &problem : found)
    reader.report(std::move(problem));
  FactLine folding;
  each_line(manuscript, [&](FactLine line) {
    if (line.word() == "folding" && line.words("name") == name)
      folding = line;
  });
  return folding;
}

Problem unknown_folding(Reader &reader, FactLine line) {
  const std::string_view name = line.words("folding");
  std::vector<std::string> shelf = reader.files.shelf_names("foldings");
  std::vector<std::string_view> names = reader.things(Family::folding).names();
  names.insert(names.end(), shelf.begin(), shelf.end());
  Problem problem{.check = "unknown-name",
                  .range = line.range("folding"),
                  .message = fmt::format("no folding is called {}", name),
                  .why = fmt::format("the foldings here and on the shelf: {}", list_of(names))};
  const auto near = reader.near(name, names);
  if (near)
    problem.message += fmt::format("; did you mean {}?", *near);
  problem.type.push_back({typed(reader, line.range(), line.range("folding"),
                                near ? *near : std::string_view("saddle-stitch")),
                          {}});
  return problem;
}

FactLine find_folding(Reader &reader, std::string_view name) {
  if (const Named *own = reader.things(Family::folding).find(name)) {
    own->used = true;
    return own->line;
  }
  return from_shelf(reader, name);
}

} // namespace

void take_folding(Reader &reader) {
  const FactLine asked = reader.edition_facts.find("folding");
  FactLine folding;
  if (asked && asked.has("folding")) {
    folding = find_folding(reader, asked.words("folding"));
    if (!folding)
      reader.report(unknown_folding(reader, asked));
  }
  if (!folding)
    folding = find_folding(reader, usual_folding);
  if (folding)
    reader.edition.folding =
        known(folding_of(reader, folding), asked ? asked.range("folding") : Range{});
}

} // namespace bodkin
