#include "edition/folding_facts.hpp"

#include "edition/folding_slips.hpp"
#include "edition/values.hpp"
#include "measure/limits.hpp"

#include <algorithm>
#include <numeric>

namespace bodkin {
namespace {

Part part_of(std::string_view word) {
  if (word == "left")
    return Part::left;
  if (word == "right")
    return Part::right;
  return word == "top" ? Part::top : Part::bottom;
}

std::optional<int> panel_number(Reader &reader, FactLine line, std::string_view part,
                                std::string_view what, int panels) {
  const auto number = value_in<language::Count>(line, part);
  if (!number)
    return std::nullopt;
  if (number->value.value >= 1 && number->value.value <= panels)
    return static_cast<int>(number->value.value);
  reader.report(no_such_panel(line, number->from, what, panels));
  return std::nullopt;
}

void take_panels(Reader &reader, FactLine thing, FactLine line, Folding &folding) {
  if (!line) {
    reader.report(no_panels(thing));
    return;
  }
  const auto columns = count_in(reader, line, "columns", 1, "a sheet is one panel at the least");
  const auto rows = count_in(reader, line, "rows", 1, "a sheet is one panel at the least");
  if (!columns || !rows)
    return;
  constexpr auto most = static_cast<std::int64_t>(limits::panels);
  if (columns->value > most || rows->value > most || columns->value * rows->value > most) {
    reader.report(panels_past_all_bounds(line));
    return;
  }
  folding.panels_range = line.range();
  folding.columns = static_cast<int>(columns->value);
  folding.rows = static_cast<int>(rows->value);
}

// Shares as written; none where they cannot be.
std::vector<int> shares_in(Reader &reader, FactLine line, int panels, int across) {
  std::vector<int> shares;
  std::int64_t sum = 0;
  for (const language::Capture &part : line.in->tree.captured(*line.statement))
    if (const auto *share = std::get_if<language::Count>(&part.value)) {
      sum += std::clamp<std::int64_t>(share->value, 0, limits::pages);
      shares.push_back(static_cast<int>(std::min(share->value, limits::pages)));
    }
  if (shares.size() != static_cast<std::size_t>(panels) ||
      *std::min_element(shares.begin(), shares.end()) < 1) {
    reader.report(shares_do_not_match(line, shares.size(), panels));
    return {};
  }
  if (sum * across > static_cast<std::int64_t>(limits::panels)) {
    reader.report(shares_past_all_bounds(line));
    return {};
  }
  return shares;
}

void take_shares(Reader &reader, const Facts &facts, Folding &folding) {
  if (const FactLine line = facts.find("widths")) {
    folding.widths = shares_in(reader, line, folding.columns, folding.rows);
    folding.widths_range = line.range();
  }
  if (const FactLine line = facts.find("heights")) {
    const int across = folding.widths.empty()
                           ? folding.columns
                           : std::accumulate(folding.widths.begin(), folding.widths.end(), 0);
    folding.heights = shares_in(reader, line, folding.rows, across);
    folding.heights_range = line.range();
  }
  facts.each("narrow", [&](FactLine line) {
    const std::string_view what = line.words("what");
    const bool column = what == "column";
    const auto number =
        panel_number(reader, line, "number", what, column ? folding.columns : folding.rows);
    const auto by = length_in(reader, line, "by", true);
    if (number && by && folding.narrowed.size() < limits::panels)
      folding.narrowed.push_back({column, *number, by->value, line.range()});
  });
}

void take_fold_over(Reader &reader, FactLine line, Folding &folding) {
  if (!line.has("moving") || !line.has("onto"))
    return;
  FoldStep step;
  step.moving = part_of(line.words("moving"));
  step.under = line.words("how") == "under";
  step.range = line.range();
  if (part_of(line.words("onto")) != opposite(step.moving)) {
    reader.report(not_across(reader, line, step.moving));
    return;
  }
  if (line.has("count")) {
    const int across = static_cast<int>(limits::panels);
    const auto panels = panel_number(reader, line, "count", "panel", across);
    if (!panels)
      return;
    step.panels = *panels;
  }
  if (line.has("depth")) {
    const auto layers =
        panel_number(reader, line, "depth", "layer", static_cast<int>(limits::panels));
    if (!layers)
      return;
    step.layers = *layers;
  }
  folding.steps.push_back(step);
}

void take_zigzag(Reader &reader, FactLine line, Folding &folding) {
  FoldStep step;
  step.kind = FoldKind::back_and_forth;
  step.range = line.range();
  if (line.has("from")) {
    const auto from = panel_number(reader, line, "from", "panel", folding.columns * folding.rows);
    if (!from)
      return;
    step.from = *from;
  }
  folding.steps.push_back(step);
}

void take_slit(Reader &reader, FactLine line, Folding &folding) {
  if (!line.has("before") || !line.has("after") || folding.slits.size() == limits::panels)
    return;
  Slit slit;
  slit.range = line.range();
  slit.between_rows = line.words("what") == "rows";
  slit.steps_before = static_cast<int>(folding.steps.size());
  const int lines = slit.between_rows ? folding.rows : folding.columns;
  const int beside = slit.between_rows ? folding.columns : folding.rows;
  const std::string_view what = slit.between_rows ? "row" : "column";
  const std::string_view along = slit.between_rows ? "column" : "row";
  const auto before = panel_number(reader, line, "before", what, lines);
  const auto after = panel_number(reader, line, "after", what, lines);
  if (!before || !after)
    return;
  if (*after != *before + 1) {
    reader.report(not_neighbours(line, line.words("what"), std::min(*before, lines - 1)));
    return;
  }
  slit.after = *before;
  slit.last = beside;
  if (line.has("along")) {
    if (line.words("along") == line.words("what")) {
      reader.report(along_itself(line, line.words("what")));
      return;
    }
    const auto first = panel_number(reader, line, "first", along, beside);
    const auto last = panel_number(reader, line, "last", along, beside);
    if (!first || !last)
      return;
    if (*first > *last) {
      reader.report(slit_runs_backwards(reader, line));
      return;
    }
    slit.first = *first;
    slit.last = *last;
  }
  folding.slits.push_back(slit);
}

void take_steps(Reader &reader, const Facts &facts, Folding &folding) {
  for (const FactLine &line : facts.lines()) {
    const bool step = line.word() == "fold" || line.word() == "push";
    if (step && folding.steps.size() == limits::fold_steps) {
      reader.report(too_many_folds(line));
      return;
    }
    if (line.word() == "cut")
      take_slit(reader, line, folding);
    else if (line.word() == "push")
      folding.steps.push_back({.range = line.range(), .kind = FoldKind::ends_together});
    else if (line.word() == "fold" && line.has("back"))
      take_zigzag(reader, line, folding);
    else if (line.word() == "fold")
      take_fold_over(reader, line, folding);
  }
}

void take_binding(Reader &reader, const Facts &facts, Folding &folding) {
  if (const auto edge = text_in(facts.find("spine"), "edge"))
    folding.spine = known(part_of(edge->value), edge->from);
  if (const FactLine line = facts.find("opens"))
    folding.opened = known(line.has("leaf") ? OpenedBy::leaves : OpenedBy::folds, line.range());
  if (const FactLine line = facts.find("holes")) {
    const auto count = count_in(reader, line, "count", 1, "thread goes through one hole at least");
    const auto inset = length_in(reader, line, "inset", true);
    const auto place = length_in(reader, line, "place", true);
    // More holes than a needle has patience for perforate the spine.
    constexpr std::int64_t most = 100;
    if (count && inset && place)
      folding.holes = {static_cast<int>(std::min(count->value, most)), inset->value, place->value,
                       line.range()};
  }
  if (const FactLine line = facts.find("paste"))
    folding.pasted = line.range();
  if (const FactLine line = facts.find("tab"))
    if (const auto width = length_in(reader, line, "width", false))
      folding.tab = {line.words("edge") == "right" ? Part::right : Part::bottom, width->value,
                     line.range()};
}

void take_gathering(Reader &reader, const Facts &facts, Folding &folding) {
  folding.gather = known(Gather::one_after_another, {});
  const FactLine line = facts.find("nest");
  if (const auto how = text_in(line, "how"))
    folding.gather =
        known(how->value == "in" ? Gather::nested : Gather::one_after_another, how->from);
  if (!line)
    return;
  if (const auto each = count_in(reader, line, "each", 1, "a section is one sheet at the least"))
    folding.sheets_a_section = static_cast<int>(std::min(each->value, limits::pages));
  folding.back_to_back = line.has("back");
  folding.round = line.has("round");
}

Known<std::vector<int>> page_numbers(Reader &reader, FactLine line) {
  Known<std::vector<int>> numbers;
  const auto *pages = line ? line.get<language::Pages>("pages") : nullptr;
  if (!pages)
    return numbers;
  numbers.from = line.range("pages");
  for (std::uint32_t i = pages->first; i < pages->first + pages->count; ++i) {
    const language::PageItem &item = line.in->tree.page_items[i];
    if (!item.word.empty() || item.but || item.first > item.last ||
        numbers.value.size() > 2 * limits::panels) {
      reader.report(no_page_list(line));
      return {};
    }
    for (auto page = item.first; page <= item.last; ++page)
      numbers.value.push_back(static_cast<int>(page));
  }
  return numbers;
}

void take_sides(Reader &reader, const Facts &facts, Folding &folding) {
  if (const auto sides = count_in(reader, facts.find("sides"), "count", 1,
                                  "pages stand on one side of the paper at the least")) {
    folding.one_side = sides->value == 1;
    folding.sides_range = facts.find("sides").range();
    if (sides->value > 2)
      reader.report(two_sides_at_most(reader, facts.find("sides")));
  }
  folding.front = page_numbers(reader, facts.find("front"));
  folding.back = page_numbers(reader, facts.find("back"));
}

} // namespace

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
  take_shares(reader, facts, folding);
  take_steps(reader, facts, folding);
  take_binding(reader, facts, folding);
  take_gathering(reader, facts, folding);
  take_sides(reader, facts, folding);
  return folding;
}

} // namespace bodkin
