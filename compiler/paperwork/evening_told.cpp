// The plan of an evening in words and tables.
#include "paperwork/evening.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::paperwork {
namespace {

constexpr int most_hands = 3;

std::string spoken_time(std::int64_t milliseconds) { return written(Duration{milliseconds}); }

// "0:25", hours and minutes from the start.
std::string clock(std::int64_t milliseconds) {
  const std::int64_t minutes = (milliseconds + 30'000) / 60'000;
  return fmt::format("{}:{:02}", minutes / 60, minutes % 60);
}

Table work_table(const std::vector<WorkOfTask> &all) {
  Table table{{"work", "copies", "a copy", "once", "in all", "then waits"},
              {},
              {false, true, true, true, true, true}};
  for (const WorkOfTask &work : all)
    table.rows.push_back(
        {work.name, work.waits > 0 && !work.timed ? "" : std::to_string(work.copies),
         work.each > 0 ? spoken_time(work.each) : "", work.once > 0 ? spoken_time(work.once) : "",
         work.timed       ? spoken_time(work.total())
         : work.waits > 0 ? ""
                          : "not said",
         work.waits > 0 ? spoken_time(work.waits) : ""});
  return table;
}

// Columns with nothing in them say nothing.
Table without_empty_columns(Table table) {
  for (std::size_t column = table.heads.size(); column-- > 0;) {
    if (!std::all_of(table.rows.begin(), table.rows.end(),
                     [&](const auto &row) { return row[column].empty(); }))
      continue;
    const auto at = static_cast<std::ptrdiff_t>(column);
    table.heads.erase(table.heads.begin() + at);
    table.figures.erase(table.figures.begin() + at);
    for (auto &row : table.rows)
      row.erase(row.begin() + at);
  }
  return table;
}

// Alone, and with nothing to wait for, one does work after work.
bool goes_straight(const Evening &evening, const std::vector<WorkOfTask> &all) {
  const auto worked = std::count_if(all.begin(), all.end(),
                                    [](const WorkOfTask &work) { return work.total() > 0; });
  return static_cast<std::ptrdiff_t>(evening.stretches.size()) == worked &&
         std::is_sorted(
             evening.stretches.begin(), evening.stretches.end(),
             [](const Stretch &one, const Stretch &other) { return one.task < other.task; });
}

// The plan of one pair of hands then needs no table of its own.
void add_hours(Table &table, const Evening &evening) {
  table.heads.insert(table.heads.end(), {"alone, from", "to"});
  table.figures.insert(table.figures.end(), {true, true});
  for (auto &row : table.rows)
    row.resize(table.heads.size());
  for (const Stretch &stretch : evening.stretches) {
    std::vector<std::string> &row = table.rows[stretch.task];
    row[row.size() - 2] = clock(stretch.begin);
    row[row.size() - 1] = clock(stretch.end);
  }
}

std::string hands_words(int hands) {
  return hands == 1 ? "One pair of hands" : hands == 2 ? "Two pairs of hands" : "Three pairs";
}

std::string name_of_hand(int hand) { return hand == 0 ? "first" : hand == 1 ? "second" : "third"; }

// Hand by hand, so that each may read down their own part.
Table plan_table(const Evening &evening, const std::vector<WorkOfTask> &all) {
  Table table{{"from", "to", "work", "copies"}, {}, {true, true, false, true}};
  if (evening.hands > 1) {
    table.heads.insert(table.heads.begin(), "hands");
    table.figures.insert(table.figures.begin(), false);
  }
  for (int hand = 0; hand < evening.hands; ++hand)
    for (const Stretch &stretch : evening.stretches) {
      if (stretch.hand != hand)
        continue;
      table.rows.push_back(
          {clock(stretch.begin), clock(stretch.end),
           stretch.copies > 0 ? all[stretch.task].name : "make ready: " + all[stretch.task].name,
           stretch.copies > 0 ? std::to_string(stretch.copies) : ""});
      if (evening.hands > 1)
        table.rows.back().insert(table.rows.back().begin(), name_of_hand(hand));
    }
  return table;
}

void tell_ends(Leaflet &leaflet, const std::vector<WorkOfTask> &all) {
  std::int64_t sum = 0;
  for (const WorkOfTask &work : all)
    sum += work.total();
  std::string text = fmt::format("{} of work in all.", spoken_time(sum));
  for (int hands = 1; hands <= most_hands; ++hands)
    text += fmt::format(" {} {} done after {}.", hands_words(hands), hands == 1 ? "is" : "are",
                        spoken_time(plan_evening(all, hands).ends));
  leaflet.add(Passage{{}, text, false});
}

} // namespace

void tell_evening(const Making &making, Leaflet &leaflet) {
  const std::vector<WorkOfTask> all = works(making);
  if (std::none_of(all.begin(), all.end(), [](const WorkOfTask &work) { return work.timed; }))
    return;
  const auto timed =
      std::count_if(all.begin(), all.end(), [](const WorkOfTask &work) { return work.timed; });
  const Evening alone = plan_evening(all, 1);
  const bool straight = timed > 1 && goes_straight(alone, all);
  Table table = work_table(all);
  if (straight)
    add_hours(table, alone);
  leaflet.add(without_empty_columns(std::move(table)));
  tell_ends(leaflet, all);
  if (std::any_of(all.begin(), all.end(),
                  [](const WorkOfTask &work) { return !work.timed && work.waits == 0; }))
    leaflet.add(Passage{{},
                        "Work whose time the edition does not say is left out of these sums; "
                        "`takes` says it.",
                        true});
  if (making.edition.run->spare > 0)
    leaflet.add(Passage{{}, "Times allow for every spare to be needed.", true});
  if (timed < 2)
    return;
  for (const int hands : {1, 2}) {
    if (hands == 1 && straight)
      continue;
    leaflet.add(Headline{hands_words(hands), 3, {}});
    leaflet.add(plan_table(plan_evening(all, hands), all));
  }
  leaflet.add(Passage{{},
                      "Hours and minutes from the start. Copies go from step to step in batches; "
                      "there is one of each tool.",
                      true});
}

std::string evening_as_text(const Making &making, int columns) {
  Leaflet leaflet;
  leaflet.add(Headline{"The evening's work", 1, {}});
  tell_evening(making, leaflet);
  return leaflet.blocks.size() == 1 ? "" : blocks_as_text(leaflet, columns);
}

} // namespace bodkin::paperwork
