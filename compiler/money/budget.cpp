#include "money/budget.hpp"

#include "money/arrange.hpp"
#include "money/bill.hpp"
#include "money/charge.hpp"
#include "money/run_within.hpp"
#include "money/saving.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <fmt/ranges.h>

namespace bodkin {
namespace {

// Ways out that one message offers: more would be read by nobody.
constexpr std::size_t most_ways = 3;

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
    if (line.group == Group::printing)
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

// One change, or several made together, as it came out.
struct Try {
  std::vector<Saving> made;
  std::string what;
  Exact cost; // of what the budget speaks of
  bool in = false;
};

struct Trying {
  const Edition &edition;
  const Laid laid;
  const Estimate &estimate;
  const std::vector<bool> &draws;
  const Sources &sources;
  Edition light;
  std::vector<Job> work;

  Exact cost_of_budget(const Exact &run_total, std::int64_t copies) const {
    return estimate.budget->of_run ? run_total : run_total / Exact(copies);
  }

  Try with(std::vector<Saving> made, std::string what) const {
    const Edition changed = applied(light, made, sources);
    const Laid anew = lay(changed, draws, sources);
    const Bill priced = bill(changed, anew.imposition, anew.sides, work);
    const std::int64_t copies = estimate.copies;
    const Exact cost = cost_of_budget(own_stretch(changed, priced, copies).at(copies), copies);
    return {std::move(made), std::move(what), cost, cost <= estimate.budget->limit};
  }

  Exact cost_now() const { return cost_of_budget(estimate.run_total, estimate.copies); }

  // Each saving alone, those that save nothing left out.
  std::vector<Try> alone() const {
    std::vector<Try> tries;
    for (const Saving &saving : savings(edition, laid, draws, sources))
      if (Try made = with({saving}, saving.what); made.cost < cost_now())
        add(tries, std::move(made));
    return tries;
  }

  // Of the numbers of one thing on sheets of the same papers only the cheapest.
  static void add(std::vector<Try> &tries, Try made) {
    const auto *laying = std::get_if<Laying>(&made.made.front().change);
    const auto same = std::ranges::find_if(tries, [&](const Try &other) {
      const auto *earlier = std::get_if<Laying>(&other.made.front().change);
      return laying && earlier && earlier->piece == laying->piece &&
             earlier->papers == laying->papers;
    });
    if (same == tries.end())
      tries.push_back(std::move(made));
    else if (made.cost <= same->cost)
      *same = std::move(made);
  }

  // Another machine may not take the sheets that more is laid on.
  bool goes(const std::vector<Saving> &made) const {
    const auto is_laid = [](const Saving &saving) {
      return std::holds_alternative<Laying>(saving.change);
    };
    return made.size() < 2 || std::ranges::none_of(made, is_laid) ||
           goes_through(light, applied(light, made, sources), draws, sources);
  }

  // One after another on top of each other, until the budget is met or nothing is left to save.
  std::vector<Try> together(const std::vector<Try> &singles) const {
    std::vector<Try> chain;
    std::vector<Saving> made;
    for (const Try &single : singles) {
      const Saving &saving = single.made.front();
      if (!goes_with(saving, made))
        continue;
      made.push_back(saving);
      Try so_far = with(made, saving.what + (chain.empty() ? "" : " as well"));
      if (!chain.empty() && (so_far.cost >= chain.back().cost || !goes(made))) {
        made.pop_back();
        continue;
      }
      chain.push_back(std::move(so_far));
      if (chain.back().in)
        break;
    }
    return chain;
  }
};

// Where no change is enough by itself: the chain, and those that begin with a later change and do
// without the earlier ones.
std::vector<Try> chains_from(const Trying &trying, const std::vector<Try> &singles,
                             const std::vector<Try> &chain) {
  constexpr std::size_t most_begun = 4;
  std::vector<Try> ends{chain.back()};
  for (std::size_t first = 1; first < std::min(singles.size(), most_begun); ++first) {
    const auto from = singles.begin() + static_cast<std::ptrdiff_t>(first);
    const std::vector<Try> other = trying.together({from, singles.end()});
    if (!other.empty() && other.back().in)
      ends.push_back(other.back());
  }
  return ends;
}

// The same pages in the order that costs least, which loses nothing: what `bodkin arrange` finds,
// with less patience.
std::optional<Try> laid_anew(const Trying &trying, const Edition &edition) {
  arranging::Effort effort;
  effort.nodes = 200'000;
  effort.outcomes = 50'000;
  effort.priced = 500;
  effort.looks = 8;
  effort.wide_nodes = 500;
  const Arrangement made = arrange(edition, trying.laid, trying.draws, trying.sources, effort);
  if (!made.cheapest || !made.printable_as_written || made.saves_nothing())
    return std::nullopt;
  const Exact cost = trying.cost_of_budget(made.total, trying.estimate.copies);
  return Try{{}, "the same pages in another order", cost, cost <= trying.estimate.budget->limit};
}

WayOut way_of(const Try &anew, const Trying &trying) {
  return {{},
          fmt::format("`bodkin arrange` lays the same pages for {}{}",
                      shown(anew.cost, trying.estimate.currency),
                      trying.estimate.budget->of_run ? " in all" : " a copy")};
}

void put_first(std::vector<WayOut> &ways, WayOut first) {
  if (!ways.empty())
    ways.front().remark = "or this: " + ways.front().remark;
  ways.insert(ways.begin(), std::move(first));
}

std::string said(const Try &made, Currency currency) {
  return fmt::format("{}, {}{}", made.what, shown(made.cost, currency), made.in ? ": in" : "");
}

// Where a single change does it, those up to the first that does; else the whole chain.
std::string tried(const std::vector<Try> &singles, const std::vector<Try> &chain,
                  Currency currency) {
  std::vector<std::string> parts;
  const auto first_in = std::ranges::find_if(singles, &Try::in);
  if (first_in != singles.end()) {
    const auto shown_from = first_in - std::min<std::ptrdiff_t>(first_in - singles.begin(), 2);
    for (auto one = shown_from; one <= first_in; ++one)
      parts.push_back(said(*one, currency));
  } else {
    for (const Try &so_far : chain)
      parts.push_back(said(so_far, currency));
  }
  return fmt::format("{}", fmt::join(parts, "; "));
}

// ", `up` new under `edition`; cut apart after printing", and what has to be heeded.
std::string beside(const Edition &edition, const Try &made, const ChangedLines &changed) {
  std::string text;
  if (const std::string news = changed.news(); !news.empty())
    text += ", " + news;
  for (const Saving &saving : made.made)
    if (const auto *laying = std::get_if<Laying>(&saving.change)) {
      if (const std::string condition = on_condition(edition, *laying); !condition.empty())
        text += ", " + condition;
      if (laying->way.up > 1)
        text += "; cut apart after printing";
    }
  return text;
}

std::vector<WayOut> ways_of(const Trying &trying, const std::vector<Try> &tries) {
  std::vector<WayOut> ways;
  const std::string per = trying.estimate.budget->of_run ? " in all" : " a copy";
  for (const Try &made : tries) {
    if (!made.in || ways.size() == most_ways)
      continue;
    const ChangedLines changed = lines_to_type(trying.edition, made.made, trying.sources);
    const std::string lines = changed.text();
    if (std::ranges::any_of(ways, [&](const WayOut &way) { return way.line == lines; }))
      continue;
    std::string remark = shown(made.cost, trying.estimate.currency) + per;
    if (changed.count() > 1)
      remark += fmt::format(" with these {} lines", changed.count());
    remark += beside(trying.edition, made, changed);
    ways.push_back({lines, ways.empty() ? remark : "or this: " + remark});
  }
  return ways;
}

std::string run_line(const Edition &edition, const Sources &sources, std::int64_t copies) {
  if (!edition.run.from.somewhere())
    return fmt::format("run        {} copies", copies);
  ChangedLines lines(sources);
  lines.first_number(line_of(sources, edition.run.from), in_first_run(edition, copies));
  return lines.text();
}

void other_run(const Trying &trying, std::vector<WayOut> &ways) {
  const Bill priced = bill(trying.edition, trying.laid.imposition, trying.laid.sides, trying.work);
  const auto copies =
      run_within(own_way(trying.edition, priced), trying.estimate.copies, *trying.estimate.budget);
  if (!copies || in_first_run(trying.edition, *copies) == 0)
    return;
  const Exact total = own_stretch(trying.edition, priced, *copies).at(*copies);
  const Currency currency = trying.estimate.currency;
  ways.push_back({run_line(trying.edition, trying.sources, *copies),
                  fmt::format("{}{} a copy, {} in all", ways.empty() ? "" : "or this: ",
                              shown(total / Exact(*copies), currency), shown(total, currency))});
}

// The budget itself, raised to the next whole cent.
WayOut raised(const Estimate &estimate, const Exact &cost) {
  const Exact limit = Exact::ratio((cost * Exact(100)).ceiling(), 100);
  return {fmt::format("budget     {} a {}", shown(limit, estimate.currency),
                      estimate.budget->of_run ? "run" : "copy"),
          "nothing here brings it under"};
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
                     const ChargedSides &sides, const Estimate &estimate,
                     const std::vector<bool> &draws, const Sources &sources, bool anyway) {
  // Where the run is not known, what a copy costs is not either.
  if (!estimate.budget || !estimate.budget->over || !edition.run.from.somewhere())
    return {};
  const Trying trying{edition,
                      {imposition, sides},
                      estimate,
                      draws,
                      sources,
                      without_matter(edition),
                      jobs(edition, imposition)};
  const std::vector<Try> singles = trying.alone();
  const bool one_is_enough = std::ranges::any_of(singles, &Try::in);
  const std::vector<Try> chain = one_is_enough ? std::vector<Try>{} : trying.together(singles);
  Problem problem;
  problem.kind = anyway ? Kind::warning : Kind::error;
  problem.check = "over-budget";
  problem.range = estimate.budget->from;
  problem.message = message(estimate);
  problem.type = ways_of(trying, one_is_enough ? singles : chain);
  if (problem.type.size() == 1 && !one_is_enough)
    problem.type = ways_of(trying, chains_from(trying, singles, chain));
  std::string tries = tried(singles, chain, estimate.currency);
  if (const std::optional<Try> anew = laid_anew(trying, edition)) {
    tries = said(*anew, estimate.currency) + (tries.empty() ? "" : "; ") + tries;
    if (anew->in)
      put_first(problem.type, way_of(*anew, trying));
  }
  problem.why =
      why(dearest(edition, sides, estimate), tries, !problem.type.empty(), estimate.currency);
  other_run(trying, problem.type);
  if (problem.type.empty())
    problem.type.push_back(raised(estimate, trying.cost_now()));
  return {problem};
}

} // namespace bodkin
