#include "money/arrange.hpp"

#include "edition/piece.hpp"
#include "money/changed_lines.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <set>

namespace bodkin {

using namespace arranging;

namespace {

std::vector<int> as_written(const Edition &edition) {
  std::vector<int> order;
  for (int page = 0; page <= *edition.page_count; ++page)
    order.push_back(page);
  return order;
}

// A line that asks something of an order of pages.
struct Demand {
  enum class Of { place, paper, machine };
  Of of = Of::place;
  Range line;
  std::vector<int> pages;
};

void add(std::vector<Demand> &demands, Demand::Of of, Range line, int page) {
  const auto same = std::ranges::find(demands, line, &Demand::line);
  if (same != demands.end())
    same->pages.push_back(page);
  else
    demands.push_back({of, line, {page}});
}

std::vector<Demand> demands_of(const Edition &edition, const std::vector<Wish> &wishes) {
  std::vector<Demand> demands;
  for (const Wish &wish : wishes)
    if (wish.why == Wish::Why::maker)
      demands.push_back({Demand::Of::place, wish.from, wish.pages});
  for (int page = 1; page <= *edition.page_count; ++page) {
    const Asked &asked = edition.pages[static_cast<std::size_t>(page)].asked;
    if (asked.stock)
      add(demands, Demand::Of::paper, asked.stock->from, page);
    if (asked.machine)
      add(demands, Demand::Of::machine, asked.machine->from, page);
  }
  return demands;
}

Edition without(const Edition &edition, const Demand &demand) {
  return in_every_book(edition, [&](Edition &book) {
    for (const int page : demand.pages) {
      Asked &asked = book.pages[static_cast<std::size_t>(page)].asked;
      if (demand.of == Demand::Of::paper)
        asked.stock = {};
      if (demand.of == Demand::Of::machine)
        asked.machine = {};
    }
  });
}

bool printable_without(const AsWritten &written, std::vector<Wish> wishes, const Demand &demand) {
  const Edition eased = without(written.edition, demand);
  std::erase_if(wishes, [&](const Wish &wish) {
    return demand.of == Demand::Of::place && wish.why == Wish::Why::maker &&
           wish.from == demand.line;
  });
  return any_order(
      task_of({eased, written.laid, written.draws, written.sources}, blocks_of(eased, wishes)));
}

std::string_view little_word(const Demand &demand) {
  switch (demand.of) {
  case Demand::Of::paper:
    return "on ";
  case Demand::Of::machine:
    return "by ";
  case Demand::Of::place:
    break;
  }
  return "";
}

std::string demanded(const Demand &demand, const Sources &sources) {
  return fmt::format("{} {}{}{}", spoken::pages_listed(demand.pages), little_word(demand),
                     sources.text(demand.line), spoken::on_line(sources, demand.line));
}

WayOut dropped(const Demand &demand, const Sources &sources) {
  std::string line = bare_line(sources, line_of(sources, demand.line));
  if (demand.of == Demand::Of::place)
    return {{}, fmt::format("take out `{}`{}", line, spoken::on_line(sources, demand.line))};
  const std::string asked = fmt::format(" {}{}", little_word(demand), sources.text(demand.line));
  if (const std::size_t at = line.rfind(asked); at != std::string::npos)
    line.erase(at, asked.size());
  return {line, spoken::on_line(sources, demand.line).empty()
                    ? ""
                    : fmt::format("on line {}", sources.line_number(demand.line))};
}

} // namespace

bool Arrangement::proved() const {
  constexpr Nano half_a_cent = 5'000'000;
  return cheapest && (cheapest->proved || cheapest->cost - cheapest->bound < half_a_cent);
}

Exact Arrangement::gap() const {
  return cheapest && !proved() ? Exact::ratio(cheapest->cost - cheapest->bound, 1'000'000'000)
                               : Exact();
}

namespace {

std::vector<Exact> of_each_run(const Edition &edition, const Laid &laid) {
  std::vector<Exact> costs;
  if (!edition.runs.empty())
    for (const RunFigures &run : estimate(edition, laid.imposition, laid.sides).runs)
      costs.push_back(run.per_copy);
  return costs;
}

} // namespace

Arrangement arrange(const Edition &edition, const Laid &laid, const std::vector<bool> &draws,
                    const Sources &sources, const Effort &effort) {
  const AsWritten written{edition, laid, draws, sources};
  const Pricing pricing(written);
  Arrangement made;
  made.wishes = wishes_of(edition);
  made.blocks = blocks_of(edition, made.wishes);
  for (const PageBlock &block : made.blocks)
    for (int page = block.first; page < block.first + block.length; ++page)
      if (!block.stays)
        made.movable.push_back(page);
  const Task task = task_of(written, made.blocks);
  made.printable_as_written = !sheets_of(task, as_written(edition)).empty();
  made.total_as_written = pricing.run_total(as_written(edition));
  made.cheapest = cheapest_order(
      task, [&](const std::vector<int> &order) { return pricing(order); }, effort);
  made.total = made.total_as_written;
  if (!made.cheapest) {
    made.none_for_sure = !any_order(task);
    return made;
  }
  made.total = pricing.run_total(made.cheapest->order);
  made.laid = pricing.laid(made.cheapest->order);
  made.runs_as_written = of_each_run(edition, laid);
  made.runs = of_each_run(in_order(edition, made.cheapest->order), made.laid);
  return made;
}

Problems arranging_problems(const Edition &edition, const Laid &laid,
                            const std::vector<bool> &draws, const Arrangement &arrangement,
                            const Sources &sources) {
  if (arrangement.cheapest)
    return {};
  const AsWritten written{edition, laid, draws, sources};
  const std::vector<Demand> demands = demands_of(edition, arrangement.wishes);
  std::vector<Demand> at_odds;
  for (const Demand &demand : demands)
    if (demand.line.somewhere() && printable_without(written, arrangement.wishes, demand))
      at_odds.push_back(demand);
  Problem problem;
  problem.check = "cannot-arrange";
  problem.message =
      arrangement.none_for_sure
          ? "no order of the pages gives every line what it asks for"
          : "no order was found that gives every line what it asks for; there are too "
            "many to try all";
  problem.why = "one sheet is one paper, one side goes through one machine, and a page that stays, "
                "or keeps to its neighbours, brings what it asks for to where it lies";
  const auto first =
      std::ranges::find_if(demands, [](const Demand &d) { return d.line.somewhere(); });
  problem.range = !at_odds.empty()         ? at_odds.front().line
                  : first != demands.end() ? first->line
                                           : edition.page_count.from;
  std::vector<std::string> asked;
  for (const Demand &demand : at_odds) {
    asked.push_back(demanded(demand, sources));
    if (problem.type.size() < 3)
      problem.type.push_back(dropped(demand, sources));
    if (demand.line != problem.range)
      problem.related.push_back({demand.line, "this is at odds with it"});
  }
  if (!asked.empty())
    problem.why += "; at odds: " + fmt::format("{}", fmt::join(asked, "; ")) +
                   "; without any one of them there is an order";
  else
    problem.type.push_back(
        {{},
         "take out more than one of the lines that ask for a paper or a machine, or keep "
         "pages where they are"});
  return {problem};
}

} // namespace bodkin
