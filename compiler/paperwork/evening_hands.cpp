// The plan for pairs of hands, hour by hour.
#include "paperwork/evening_words.hpp"

#include "problems/characters.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::paperwork {

std::string spoken_time(std::int64_t milliseconds) { return written(Duration{milliseconds}); }

std::string clock(std::int64_t milliseconds) {
  const std::int64_t minutes = (milliseconds + 30'000) / 60'000;
  return fmt::format("{}:{:02}", minutes / 60, minutes % 60);
}

std::string first_copy_words(const Evening &evening) {
  const bool several = !evening.batches.empty() && evening.batches.back().run > 0;
  return several ? "One whole copy of each kind, all steps" : "One whole copy, all steps";
}

std::string hands_words(int hands) {
  return hands == 1 ? "One pair of hands" : "Two pairs of hands";
}

namespace {

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
  const auto alike = std::count_if(all.begin(), all.end(), [&](const WorkOfTask &work) {
    return work.name.starts_with(begins);
  });
  return alike == 1 ? begins : name;
}

std::string letter_of(std::size_t batch) {
  return batch < 26 ? std::string(1, static_cast<char>('A' + batch)) : std::to_string(batch + 1);
}

bool takes_all(const Turn &turn, const Evening &evening) {
  return turn.from_batch == 0 && turn.to_batch + 1 == evening.batches.size();
}

// "A", "A and B", "A to D".
std::string batches_words(const Turn &turn) {
  const std::size_t more = turn.to_batch - turn.from_batch;
  return letter_of(turn.from_batch) + (more == 0   ? ""
                                       : more == 1 ? " and " + letter_of(turn.to_batch)
                                                   : " to " + letter_of(turn.to_batch));
}

std::string turn_words(const Turn &turn, const Evening &evening,
                       const std::vector<WorkOfTask> &all) {
  if (turn.copies == 0)
    return fmt::format("Make ready: {}, to {}", short_name(all, turn.tasks.front()),
                       clock(turn.end));
  std::string text;
  for (const std::size_t task : turn.tasks)
    text += (text.empty() ? "" : ", then ") + short_name(all, task);
  text += ": " + (takes_all(turn, evening) ? all[turn.tasks.front()].on_sheets
                                                 ? counted(turn.copies, "sheet", "sheets")
                                                 : counted(turn.copies, "copy", "copies")
                                           : batches_words(turn));
  if (turn.at_once > 0)
    text += ", one after the other";
  if (all[turn.tasks.front()].after_all)
    text += ", checked before";
  return with_capital(fmt::format("{}, to {}", text, clock(turn.end)));
}

// Plans name batches by letters where somebody takes less than all.
bool names_batches(const Evening &evening) {
  for (int hand = 0; hand < evening.hands; ++hand)
    for (const Turn &turn : turns_of(evening, hand))
      if (turn.copies > 0 && !takes_all(turn, evening))
        return true;
  return false;
}

// "A: 14 plain, B: 10 de-luxe"; sheets of spares are in no batch of copies.
std::string batches_told(const Edition &edition, const Evening &evening,
                         const std::vector<WorkOfTask> &all) {
  std::string text;
  for (std::size_t i = 0; i < evening.batches.size(); ++i) {
    const PlanBatch &batch = evening.batches[i];
    std::int64_t copies = batch.copies;
    for (const WorkOfTask &work : all)
      if (const std::int64_t in = copies_in(work, batch); in > 0)
        copies = std::min(copies, in);
    text += fmt::format("{}{}: {}{}", text.empty() ? "" : ", ", letter_of(i), copies,
                        edition.runs.empty() ? "" : " " + harmless(edition.runs[batch.run].name));
  }
  return text;
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
  if (evening.first_copy >= told_from)
    cells.push_back(
        {0, 1, fmt::format("{}, to {}", first_copy_words(evening), clock(evening.first_copy))});
  for (int hand = 0; hand < evening.hands; ++hand) {
    table.heads.push_back(head_of_hand(evening, hand));
    for (const Turn &turn : turns_of(evening, hand))
      cells.push_back({turn.begin, table.heads.size() - 1, turn_words(turn, evening, all)});
  }
  if (!evening.waits.empty())
    table.heads.emplace_back("meanwhile waits");
  for (const Waiting &waiting : evening.waits)
    cells.push_back(
        {waiting.begin, table.heads.size() - 1,
         with_capital(fmt::format("{}: {} each, the last to {}", short_name(all, waiting.task),
                                  spoken_time(all[waiting.task].waits), clock(waiting.end)))});
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

} // namespace

void tell_hands(const Making &making, int hands, const std::vector<WorkOfTask> &all,
                Leaflet &leaflet) {
  const Evening evening = plan_from_first_copy(all, hands);
  leaflet.add(Headline{hands_words(hands), 3, {}, true});
  if (names_batches(evening))
    leaflet.add(
        Passage{{},
                fmt::format("{} go from step to step in batches, each a heap of its own: {}.",
                            evening.first_copy > 0 ? "The other copies" : "Copies",
                            batches_told(making.edition, evening, without_first_copies(all))),
                false});
  leaflet.add(plan_table(evening, all));
}

} // namespace bodkin::paperwork
