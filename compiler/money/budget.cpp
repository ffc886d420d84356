#include "money/budget.hpp"

#include "edition/laid.hpp"
#include "measure/currencies.hpp"
#include "money/budget_ways.hpp"
#include "money/charge.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <set>

namespace bodkin {
namespace {

// An amount that is over by less than it can be shown by gets the decimals that it needs.
std::string over_words(const Exact &over, Currency currency) {
  const bool shows = Exact::ratio(1, 200) <= over;
  return shows ? shown(over, currency) : shown(over, currency, 12);
}

std::string message(const Estimate &estimate) {
  const BudgetHeld &budget = *estimate.budget;
  const Exact &cost = budget.of_run ? estimate.run_total : estimate.per_copy;
  const bool shows = Exact::ratio(1, 200) <= budget.over_by;
  return fmt::format("{} costs {}, which is {} over", budget.of_run ? "the run" : "a copy",
                     shown(cost, estimate.currency, shows ? 2 : 12),
                     over_words(budget.over_by, estimate.currency));
}

struct Part {
  std::string what;
  Exact total;
};

bool one_machine(const Edition &edition, const ChargedSides &sides) {
  return edition.machines.size() < 2 || std::ranges::all_of(sides, [&](const ChargedSide &side) {
           return side.machine == sides.front().machine;
         });
}

// "192 colour sides", "paper", "stamp lino moon", the dearest first.
std::vector<Part> dearest(const Edition &edition, const ChargedSides &sides,
                          const Estimate &estimate) {
  std::vector<Part> parts;
  const bool machine_is_plain = one_machine(edition, sides);
  for (const EstimateLine &line : estimate.lines) {
    std::string what = line.what;
    if (line.group == Group::printing && what.find(" sides at ") != std::string::npos)
      what = fmt::format("{} {}", line.quantity.rounded(0),
                         machine_is_plain ? what.substr(0, what.find(" at ")) : what);
    if (line.group == Group::paper)
      what = "paper";
    const auto same = std::ranges::find(parts, what, &Part::what);
    if (same != parts.end())
      same->total += line.total;
    else
      parts.push_back({what, line.total});
  }
  std::ranges::stable_sort(parts, std::greater<>{}, &Part::total);
  parts.resize(std::min<std::size_t>(parts.size(), 3));
  return parts;
}

// ", `up` new under `edition`; cut apart after printing", and what has to be heeded.
std::string beside(const Edition &edition, const std::vector<Saving> &made,
                   const ChangedLines &changed) {
  std::string text;
  for (const std::string &where : {changed.news(), changed.places()})
    if (!where.empty())
      text += ", " + where;
  bool apart = false;
  for (const Saving &saving : made)
    if (const auto *laying = std::get_if<Laying>(&saving.change)) {
      if (const std::string condition = on_condition(edition, *laying); !condition.empty())
        text += ", " + condition;
      apart = apart || laying->way.up > 1;
    }
  return text + (apart ? "; cut apart after printing" : "");
}

void count_to(const Known<Counts> &counts, std::int64_t now, std::int64_t then,
              const Sources &sources, ChangedLines &changed) {
  if (counts->last - counts->first + 1 == now && counts.from.somewhere())
    changed.rename(line_of(sources, counts.from), fmt::format("{}-{}", counts->first, counts->last),
                   fmt::format("{}-{}", counts->first, counts->first + then - 1));
}

// Every good copy of another run bears a number too.
void number_anew(const Edition &edition, std::int64_t copies, const Sources &sources,
                 ChangedLines &changed) {
  if (edition.counts)
    count_to(*edition.counts, edition.run->copies, copies, sources, changed);
  std::set<LineKey> done;
  each_laid(edition, [&](ElementId id, int) {
    const auto *hand = std::get_if<Hand>(&edition[id].what);
    if (!hand || !hand->counts || !done.insert(line_of(sources, hand->counts->from)).second)
      return;
    const auto &only = edition[id].work.only;
    if (!only)
      count_to(*hand->counts, edition.run->copies, copies, sources, changed);
    else if (**only == 0)
      count_to(*hand->counts, edition.runs.front().run.copies, in_first_run(edition, copies),
               sources, changed);
  });
}

struct Telling {
  const Edition &edition;
  const Estimate &estimate;
  const Sources &sources;
  std::vector<WayOut> ways{};
  std::vector<Edit> edits{}; // of the first

  std::string cost(const Exact &amount) const {
    return shown(amount, estimate.currency) + (estimate.budget->of_run ? " in all" : " a copy");
  }

  void add(std::string line, const std::string &remark) {
    const bool told = !line.empty() && std::ranges::any_of(ways, [&](const WayOut &way) {
      return way.line == line;
    });
    if (!told)
      ways.push_back({std::move(line), ways.empty() ? remark : "or this: " + remark});
  }

  std::string with_lines(const ChangedLines &changed) const {
    return changed.count() > 1 ? fmt::format(" with these {} lines", changed.count()) : "";
  }

  void way(const Tried &way) {
    const ChangedLines changed = lines_to_type(edition, way.made, sources);
    if (ways.empty() && !way.anew)
      edits = changed.edits();
    if (way.anew)
      return add(changed.text(),
                 fmt::format("`bodkin arrange` lays the same pages for {}{}{}", cost(way.cost),
                             with_lines(changed), beside(edition, way.made, changed)));
    add(changed.text(), cost(way.cost) + with_lines(changed) + beside(edition, way.made, changed));
  }

  void other_run(const OtherRun &run) {
    ChangedLines changed = lines_to_type(edition, run.made, sources);
    if (edition.run.from.somewhere())
      changed.first_number(line_of(sources, edition.run.from), in_first_run(edition, run.copies));
    number_anew(edition, run.copies, sources, changed);
    add(changed.text(), fmt::format("{} a copy, {} in all{}{}",
                                    shown(run.total / Exact(run.copies), estimate.currency),
                                    shown(run.total, estimate.currency), with_lines(changed),
                                    beside(edition, run.made, changed)));
  }
};

// More would be read by nobody: sides that are paid as colour for nothing are told together, and of
// many changes the first and the last.
std::vector<Step> worth_telling(const std::vector<Step> &steps) {
  constexpr std::size_t most = 5, most_free = 2;
  const auto end_of_free = std::ranges::find(steps, false, &Step::free);
  const auto free = static_cast<std::size_t>(end_of_free - steps.begin());
  std::vector<Step> told(steps.begin(), end_of_free);
  if (free > most_free)
    told = {{fmt::format("{} sides in black, where nothing is coloured", free),
             steps[free - 1].cost, true}};
  told.insert(told.end(), end_of_free, steps.end());
  if (told.size() <= most)
    return told;
  const std::size_t between = told.size() - most + 1;
  const auto first = told.begin() + most / 2, last = first + static_cast<std::ptrdiff_t>(between);
  const Step more{fmt::format("{} more such changes", between), std::prev(last)->cost, false};
  told.erase(first, last);
  told.insert(told.begin() + most / 2, more);
  return told;
}

// "page 2 in black, $2.55; the cover in black as well, $2.08: in"
std::string tried(const BudgetWays &found, Currency currency) {
  std::vector<std::string> parts;
  for (const Step &step : worth_telling(found.steps))
    parts.push_back(fmt::format("{}{}, {}", step.what, parts.empty() ? "" : " as well",
                                shown(step.cost, currency)));
  return fmt::format("{}{}", fmt::join(parts, "; "), found.ways.empty() ? "" : ": in");
}

// The budget itself, raised to the next whole of its smallest unit.
WayOut raised(const Estimate &estimate, const std::vector<Step> &steps) {
  const auto limit = [&](const Exact &cost) {
    std::int64_t unit = 1;
    for (int digit = 0; digit < minor_digits(estimate.currency); ++digit)
      unit *= 10;
    return shown(Exact::ratio((cost * Exact(unit)).ceiling(), unit), estimate.currency);
  };
  const Exact &cost = estimate.budget->of_run ? estimate.run_total : estimate.per_copy;
  std::string remark = "nothing here brings it under";
  if (!steps.empty())
    remark += fmt::format("; with all that was tried it would be {}",
                          limit(std::ranges::min(steps, {}, &Step::cost).cost));
  return {fmt::format("budget     {} a {}", limit(cost), estimate.budget->of_run ? "run" : "copy"),
          remark};
}

std::string why(const std::vector<Part> &parts, const std::string &tries, bool met,
                Currency currency) {
  std::vector<std::string> named;
  named.reserve(parts.size());
  for (const Part &part : parts)
    named.push_back(fmt::format("{} {}", part.what, shown(part.total, currency)));
  std::string text = fmt::format("dearest: {}", fmt::join(named, ", "));
  if (!tries.empty())
    text += fmt::format("; tried: {}{}", tries, met ? "" : ", and still over");
  return text;
}

} // namespace

Problems over_budget(const Edition &edition, const Imposition &imposition,
                     const ChargedSides &sides, const Estimate &estimate, const PagesDrawn &drawn,
                     const Sources &sources, bool anyway) {
  // Where the run is not known, what a copy costs is not either.
  if (!estimate.budget || !estimate.budget->over || !edition.run.from.somewhere())
    return {};
  const BudgetWays found =
      ways_under_budget(edition, {imposition, sides}, estimate, drawn, sources);
  Telling telling{edition, estimate, sources};
  for (const Tried &way : found.ways)
    telling.way(way);
  if (found.run)
    telling.other_run(*found.run);
  Problem problem;
  problem.kind = anyway ? Kind::warning : Kind::error;
  problem.check = "over-budget";
  problem.range = estimate.budget->from;
  problem.message = message(estimate);
  problem.why = why(dearest(edition, sides, estimate), tried(found, estimate.currency),
                    !telling.ways.empty(), estimate.currency);
  problem.type = std::move(telling.ways);
  problem.edits = std::move(telling.edits);
  if (problem.type.empty())
    problem.type.push_back(raised(estimate, found.steps));
  return {problem};
}

} // namespace bodkin
