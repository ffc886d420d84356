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

// A step of finish that nobody does anything in.
bool only_waits(const WorkOfTask &work) {
  return work.waits > 0 && !work.timed && work.drying == Drying::nothing;
}

Table work_table(const std::vector<WorkOfTask> &all) {
  Table table{{"work", "copies", "a copy", "once", "in all", "then waits"},
              {},
              {false, true, true, true, true, true}};
  for (const WorkOfTask &work : all)
    table.rows.push_back({work.name, only_waits(work) ? "" : std::to_string(work.copies),
                          work.each > 0 ? spoken_time(work.each) : "",
                          work.once > 0 ? spoken_time(work.once) : "",
                          work.timed         ? spoken_time(work.total())
                          : only_waits(work) ? ""
                                             : "not said",
                          work.drying == Drying::label ? "till dry"
                          : work.waits > 0             ? spoken_time(work.waits)
                                                       : ""});
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

std::string head_of_hand(const Evening &evening, int hand) {
  return evening.hands == 1 ? "hands" : hand == 0 ? "first pair of hands" : "second pair of hands";
}

std::string with_capital(std::string text) {
  if (!text.empty() && text[0] >= 'a' && text[0] <= 'z')
    text[0] = static_cast<char>(text[0] - 'a' + 'A');
  return text;
}

// "stamp a lino moon" of "stamp a lino moon, in the blank destination blind", where nothing else
// begins so.
std::string short_name(const std::vector<WorkOfTask> &all, std::size_t task) {
  const std::string &name = all[task].name;
  const std::string begins = name.substr(0, name.find(','));
  const std::string alone = name.ends_with(" alone") ? name.substr(name.rfind(", ")) : "";
  const auto alike = std::count_if(all.begin(), all.end(), [&](const WorkOfTask &work) {
    return work.name.starts_with(begins);
  });
  return alike == 1 ? begins + alone : name;
}

std::string turn_words(const Turn &turn, const std::vector<WorkOfTask> &all) {
  if (turn.copies == 0)
    return fmt::format("Make ready: {}, to {}", short_name(all, turn.tasks.front()),
                       clock(turn.end));
  std::string text;
  for (const std::size_t task : turn.tasks)
    text += (text.empty() ? "" : ", then ") + short_name(all, task);
  text += ": " + counted(turn.copies, "copy", "copies");
  if (turn.at_once > 0)
    text += fmt::format(", {} at a time", turn.at_once);
  return with_capital(fmt::format("{}, to {}", text, clock(turn.end)));
}

struct PlanCell {
  std::int64_t at = 0;
  std::size_t column = 0;
  std::string says;
};

// Down the page goes the time; across it stand pairs of hands, then what needs none.
Table plan_table(const Evening &evening, const std::vector<WorkOfTask> &all) {
  Table table{{"at"}, {}, {true}};
  std::vector<PlanCell> cells;
  for (int hand = 0; hand < evening.hands; ++hand) {
    table.heads.push_back(head_of_hand(evening, hand));
    for (const Turn &turn : turns_of(evening, hand))
      cells.push_back({turn.begin, table.heads.size() - 1, turn_words(turn, all)});
  }
  if (!evening.waits.empty())
    table.heads.emplace_back("dries or lies");
  for (const Waiting &waiting : evening.waits)
    cells.push_back({waiting.begin, table.heads.size() - 1,
                     with_capital(fmt::format("{}, to {}", short_name(all, waiting.task),
                                              clock(waiting.end)))});
  std::stable_sort(cells.begin(), cells.end(),
                   [](const PlanCell &one, const PlanCell &other) { return one.at < other.at; });
  for (PlanCell &cell : cells) {
    const std::string at = clock(cell.at);
    if (table.rows.empty() || table.rows.back()[0] != at || !table.rows.back()[cell.column].empty())
      table.rows.emplace_back(table.heads.size()).front() = at;
    table.rows.back()[cell.column] = std::move(cell.says);
  }
  return table;
}

void tell_ends(Leaflet &leaflet, const std::vector<WorkOfTask> &all) {
  std::int64_t sum = 0;
  for (const WorkOfTask &work : all)
    sum += work.total();
  std::string text = fmt::format("{} of work in all.", spoken_time(sum));
  for (int hands = 1; hands <= most_hands; ++hands) {
    const Evening evening = plan_evening(all, hands);
    text += fmt::format(" {} {} done after {}", hands_words(hands), hands == 1 ? "is" : "are",
                        spoken_time(evening.hands_free));
    text += evening.ends > evening.hands_free
                ? fmt::format(", all ready after {}.", spoken_time(evening.ends))
                : ".";
  }
  leaflet.add(Passage{{}, text, false});
}

// What these figures take for granted, in one small passage.
class TakenForGranted {
public:
  TakenForGranted(const Edition &edition, const std::vector<WorkOfTask> &all) {
    const auto any = [&](auto is) { return std::any_of(all.begin(), all.end(), is); };
    if (any([](const WorkOfTask &work) { return !work.timed && !only_waits(work); }))
      say("Work whose time the edition does not say is left out of these sums; `takes` says it.");
    if (any([](const WorkOfTask &work) { return work.drying == Drying::ink; }))
      say(fmt::format("A stamp's ink is given {} to dry, as uncoated paper takes it; a line `dry` "
                      "under `finish` in the manuscript sets another time.",
                      spoken_time(ink_dries.milliseconds)));
    if (any([](const WorkOfTask &work) { return work.drying == Drying::label; }))
      say("Glue, spray and colours dry as long as their labels say; `dry 20 min` in `finish` puts "
          "it into this plan.");
    if (edition.run->spare > 0)
      say("Times allow for every spare to be needed.");
  }
  void say(std::string_view sentence) { text_.append(text_.empty() ? "" : " ").append(sentence); }
  void tell(Leaflet &leaflet) const {
    if (!text_.empty())
      leaflet.add(Passage{{}, text_, true});
  }

private:
  std::string text_;
};

} // namespace

void tell_evening(const Making &making, Leaflet &leaflet) {
  const std::vector<WorkOfTask> all = works(making);
  const auto timed =
      std::count_if(all.begin(), all.end(), [](const WorkOfTask &work) { return work.timed; });
  if (timed == 0)
    return;
  const Evening alone = plan_evening(all, 1);
  const bool straight = timed > 1 && goes_straight(alone, all);
  Table table = work_table(all);
  if (straight)
    add_hours(table, alone);
  leaflet.add(without_empty_columns(std::move(table)));
  tell_ends(leaflet, all);
  TakenForGranted granted(making.edition, all);
  if (timed < 2)
    return granted.tell(leaflet);
  for (const int hands : {1, 2}) {
    if (hands == 1 && straight)
      continue;
    leaflet.add(Headline{hands_words(hands), 3, {}});
    leaflet.add(plan_table(plan_evening(all, hands), all));
  }
  granted.say("Hours and minutes are from the start. Copies go from step to step in batches; there "
              "is one of each tool.");
  granted.tell(leaflet);
}

std::string evening_as_text(const Making &making, int columns) {
  Leaflet leaflet;
  leaflet.add(Headline{"The evening's work", 1, {}});
  tell_evening(making, leaflet);
  return leaflet.blocks.size() == 1 ? "" : blocks_as_text(leaflet, columns);
}

} // namespace bodkin::paperwork
