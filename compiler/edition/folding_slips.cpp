#include "edition/folding_slips.hpp"

#include "edition/problems.hpp"
#include "measure/limits.hpp"

#include <fmt/format.h>

namespace bodkin {
namespace {

Problem cannot_be(Range range, std::string message, std::string why, std::string type = {}) {
  Problem problem{.check = "folding-cannot-be",
                  .range = range,
                  .message = std::move(message),
                  .why = std::move(why)};
  if (!type.empty())
    problem.type = {{std::move(type), {}}};
  return problem;
}

std::string_view other_way(std::string_view what) { return what == "rows" ? "columns" : "rows"; }

} // namespace

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
  return cannot_be(line.range(),
                   fmt::format("the {} half comes to lie on the {} half and on no other",
                               word_of(moving), word_of(opposite(moving))),
                   "one straight fold carries a half of the paper onto the half across from it",
                   typed(reader, line.range(), line.range("onto"), word_of(opposite(moving))));
}

Problem too_many_folds(FactLine line) {
  return cannot_be(line.range(),
                   fmt::format("no sheet is folded more than {} times", limits::fold_steps),
                   "paper of any thickness gives up after about seven folds in half");
}

Problem no_panels(FactLine thing) {
  return missing_fact(thing.range("name"),
                      fmt::format("the folding {} does not say its panels", thing.words("name")),
                      "folds part a sheet into panels, and each becomes two pages",
                      "panels     2 by 1");
}

Problem panels_past_all_bounds(FactLine line) {
  return cannot_be(line.range(), fmt::format("a sheet has at most {} panels", limits::panels),
                   "smaller ones than these nobody folds or reads", "panels     4 by 2");
}

Problem shares_do_not_match(FactLine line, std::size_t shares, int panels) {
  const std::string_view what = line.word() == "widths" ? "column" : "row";
  std::string each = "1";
  for (int i = 1; i < panels && i < 12; ++i)
    each += ", 1";
  return cannot_be(line.range(),
                   fmt::format("{} {} for {} {}{}", shares, shares == 1 ? "share" : "shares",
                               panels, what, panels == 1 ? "" : "s"),
                   fmt::format("each {} of panels takes one share of the sheet", what),
                   fmt::format("{:<10} {}", line.word(), each));
}

Problem shares_past_all_bounds(FactLine line) {
  return cannot_be(
      line.range(), fmt::format("these shares part a sheet into more than {}", limits::panels),
      "a share is a width that a hand can fold; small whole numbers say every such folding",
      fmt::format("{:<10} 1, 2, 1", line.word()));
}

Problem no_such_panel(FactLine line, Range number, std::string_view what, int panels) {
  return cannot_be(number,
                   fmt::format("the sheet has {} {}{}", panels, what, panels == 1 ? "" : "s"),
                   fmt::format("{}s are counted from 1, columns from the left and rows from the "
                               "top of the flat sheet",
                               what),
                   std::string(line.statement->entry->example));
}

Problem not_neighbours(FactLine line, std::string_view what, std::int64_t before) {
  return cannot_be(line.range(), fmt::format("a slit runs between two {} beside each other", what),
                   "it is one straight cut along a line between panels",
                   fmt::format("cut        between {} {} and {}", what, before, before + 1));
}

Problem along_itself(FactLine line, std::string_view what) {
  return cannot_be(line.range(),
                   fmt::format("a slit between {} runs beside {}", what, other_way(what)),
                   fmt::format("it crosses the sheet the other way, so its length is told in {}",
                               other_way(what)),
                   fmt::format("cut        between {} 1 and 2, {} 2 to 3", what, other_way(what)));
}

Problem slit_runs_backwards(const Reader &reader, FactLine line) {
  return cannot_be(
      line.range(), "this slit ends before it begins",
      "panels are told from the lower to the higher number",
      typed(reader, line.range(), line.range("last"), reader.sources.text(line.range("first"))));
}

Problem two_sides_at_most(const Reader &reader, FactLine line) {
  return cannot_be(line.range("count"), "paper has two sides",
                   "with 1 the pages stand on one side of the sheet, with 2 on both",
                   typed(reader, line.range(), line.range("count"), "2"));
}

Problem no_page_list(FactLine line) {
  return cannot_be(line.range("pages"), "a side of a sheet holds pages by their numbers",
                   "they stand row by row as seen, so each is told by itself",
                   std::string(line.statement->entry->example));
}

} // namespace bodkin
