// The plan of an evening in words and tables.
#include "paperwork/evening_words.hpp"

#include "paperwork/own_words.hpp"
#include "problems/characters.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::paperwork {
namespace {

constexpr int most_hands = 2; // for whom there is a plan

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
                          work.timed         ? about_so_long(work.total())
                          : only_waits(work) ? ""
                                             : "not said",
                          work.drying == Drying::label ? "till dry, " + spoken_time(work.waits)
                          : work.waits > 0             ? spoken_time(work.waits)
                                                       : ""});
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
  if (evening.first_copy < told_from)
    return;
  std::vector<std::string> row(table.heads.size());
  row.front() = first_copy_words(evening);
  row[row.size() - 2] = clock(0);
  row[row.size() - 1] = clock(evening.first_copy);
  table.rows.insert(table.rows.begin(), std::move(row));
}

std::int64_t untimed(const std::vector<WorkOfTask> &all) {
  return std::count_if(all.begin(), all.end(),
                       [](const WorkOfTask &work) { return !work.timed && !only_waits(work); });
}

// Hours of half the work would be taken for those of the evening.
bool can_be_planned(const std::vector<WorkOfTask> &all) {
  return 2 * untimed(all) < static_cast<std::int64_t>(all.size());
}

// What the sums leave out: work of no said time, and what is done to pieces.
std::string without_words(const Making &making, const std::vector<WorkOfTask> &all) {
  constexpr std::size_t most = 4;
  std::vector<std::string> names;
  for (const WorkOfTask &work : all)
    if (!work.timed && !only_waits(work))
      names.push_back(work.name);
  for (const CopyPart &part : making.parts)
    if (part.piece && !part.piece->is_other_book() && !part.piece->is_reverse())
      names.push_back("the " + part.piece->name);
  if (names.size() > most)
    return ", without the work whose time is not said.";
  return names.empty() ? "." : fmt::format(", without {}: no time is said.", in_a_row(names));
}

void tell_ends(const Making &making, Leaflet &leaflet, const std::vector<WorkOfTask> &all) {
  std::int64_t sum = 0;
  for (const WorkOfTask &work : all)
    sum += work.total();
  std::string text =
      fmt::format("{} of work in all{}", about_so_long(sum), without_words(making, all));
  for (int hands = 1; can_be_planned(all) && hands <= most_hands; ++hands) {
    const Evening evening = plan_from_first_copy(all, hands);
    text += fmt::format(" {} {} done after {}", hands_words(hands), hands == 1 ? "is" : "are",
                        about_so_long(evening.hands_free));
    text += evening.ends > evening.hands_free
                ? fmt::format(", all ready after {}.", about_so_long(evening.ends))
                : ".";
  }
  text += " Printing, making ready, checking, rests and clearing up come on top, and a first copy "
          "takes longer than these times say.";
  leaflet.add(Passage{{}, text, false});
}

// For one copy that is made again, of sheets that have been worked on while they were flat.
std::int64_t made_again(const Making &making, const std::vector<WorkOfTask> &all) {
  const std::vector<MakingTask> tasks = tasks_in_order(making);
  std::int64_t sum = 0;
  for (std::size_t i = 0; i < tasks.size(); ++i)
    if (!is_on_flat_sheets(making.edition, tasks[i]) && !all[i].after_all)
      sum += all[i].each;
  return sum;
}

// What these figures take for granted, in one small passage.
class TakenForGranted {
public:
  TakenForGranted(const Making &making, const std::vector<WorkOfTask> &all, PlanReader reader) {
    const bool maker = reader == PlanReader::maker;
    const auto any = [&](auto is) { return std::any_of(all.begin(), all.end(), is); };
    if (maker && untimed(all) > 0)
      say("Work whose time the edition does not say is left out of these sums; `takes` says it.");
    if (any([](const WorkOfTask &work) { return work.drying == Drying::ink; }))
      say(fmt::format("Ink is given {} to dry, as bare uncoated paper takes it{}",
                      spoken_time(ink_dries.milliseconds),
                      maker ? "; a line `dry` under `finish` in the manuscript sets another time."
                            : "; where it lies on print it takes longer."));
    if (any([](const WorkOfTask &work) { return work.drying == Drying::label; }))
      say(fmt::format("Glue, spray and colours are given {}; where their labels say more, that "
                      "comes first{}",
                      spoken_time(label_dries.milliseconds),
                      maker ? ", and `dry 1 h` in `finish` puts it into this plan." : "."));
    if (const std::int64_t again = made_again(making, all);
        making.edition.run->spare > 0 && again > 0)
      say(fmt::format("Each spoilt copy that is made again takes {} more.", about_so_long(again)));
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

std::string about_so_long(std::int64_t milliseconds) {
  constexpr std::int64_t minute = 60'000;
  const std::int64_t rounded =
      milliseconds < minute ? milliseconds : (milliseconds + minute / 2) / minute * minute;
  return spoken_time(rounded);
}

void tell_evening(const Making &making, PlanReader reader, Leaflet &leaflet) {
  const std::vector<WorkOfTask> all = works(making);
  const auto timed =
      std::count_if(all.begin(), all.end(), [](const WorkOfTask &work) { return work.timed; });
  if (timed == 0)
    return;
  const Evening alone = plan_from_first_copy(all, 1);
  const bool planned = timed > 1 && can_be_planned(all);
  const bool straight = planned && goes_straight(alone, all);
  Table table = work_table(all);
  if (straight)
    add_hours(table, alone);
  leaflet.add(without_empty_columns(std::move(table)));
  tell_ends(making, leaflet, all);
  TakenForGranted granted(making, all, reader);
  if (!planned)
    return granted.tell(leaflet);
  granted.say("Hours and minutes are from the start. There is one of each tool.");
  if (untimed(all) > 0)
    granted.say("Work without a time has no hour here: it is done when its step comes.");
  if (alone.first_copy > 0 && !alone.waits.empty())
    granted.say("Where the first copy has to dry or to lie, the others are begun meanwhile.");
  granted.tell(leaflet);
  for (const int hands : {1, 2})
    if (hands > 1 || !straight)
      tell_hands(making, hands, all, leaflet);
}

std::string evening_as_text(const Making &making, int columns) {
  Leaflet leaflet;
  leaflet.add(Headline{"The evening's work", 1, {}});
  tell_evening(making, PlanReader::maker, leaflet);
  return leaflet.blocks.size() == 1 ? "" : blocks_as_text(leaflet, columns);
}

} // namespace bodkin::paperwork
