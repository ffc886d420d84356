#include "money/budget_ways.hpp"

#include "money/arrange.hpp"
#include "money/run_within.hpp"

#include <algorithm>
#include <deque>
#include <set>
#include <tuple>

namespace bodkin {
namespace {

// More would be read by nobody.
constexpr std::size_t most_ways = 3;
// Each of these lays and prices the edition for every change that is left.
constexpr std::size_t most_chains = 8;

bool is_laying(const Saving &saving) { return std::holds_alternative<Laying>(saving.change); }

// What a maker gives up for a way beside what costs nothing.
auto loss_of(const Tried &way) {
  Loss loss = Loss::nothing;
  bool cover = false;
  std::size_t pages = 0;
  for (const Saving &saving : way.made) {
    loss = std::max(loss, saving.loss);
    cover = cover || saving.cover;
    pages += saving.pages;
  }
  // Another order loses nothing, but is more to do than lines that lose nothing.
  return std::tuple(loss, way.anew, cover, pages);
}

struct Trying {
  const Edition &edition;
  const Laid &laid;
  const Estimate &estimate;
  const PagesDrawn &drawn;
  const Sources &sources;
  const Edition light;
  const std::vector<Job> work;

  Exact of_budget(const Exact &run_total) const {
    return estimate.budget->of_run ? run_total : run_total / Exact(estimate.copies);
  }

  bool meets(const Exact &cost) const { return cost <= estimate.budget->limit; }

  // What is done to each sheet is another thing where others are laid.
  std::vector<Job> work_on(const std::vector<Saving> &made, const Imposition &imposition) const {
    return std::ranges::any_of(made, is_laying) ? jobs(edition, imposition) : work;
  }

  Bill bill_of(const Edition &changed, const std::vector<Saving> &made) const {
    const Laid anew = lay(changed, drawn.draws, sources);
    return bill(changed, anew.imposition, anew.sides, work_on(made, anew.imposition));
  }

  Tried with(std::vector<Saving> made) const {
    const Edition changed = applied(light, made, sources);
    const std::int64_t copies = estimate.copies;
    const Exact run = own_stretch(changed, bill_of(changed, made), copies).at(copies);
    const Exact cost = of_budget(run);
    return {std::move(made), false, cost, meets(cost)};
  }

  Tried as_it_is() const {
    const Exact cost = of_budget(estimate.run_total);
    return {{}, false, cost, meets(cost)};
  }

  // Another machine may not take the sheets that more is laid on.
  bool goes(const std::vector<Saving> &made) const {
    return made.size() < 2 || std::ranges::none_of(made, is_laying) ||
           goes_through(light, applied(light, made, sources), drawn.draws, sources);
  }

  // Nothing where the two do not go together or save nothing.
  std::optional<Tried> and_also(const Tried &before, const Saving &saving) const {
    if (!goes_with(saving, before.made))
      return std::nullopt;
    std::vector<Saving> made = before.made;
    made.push_back(saving);
    Tried after = with(std::move(made));
    if (after.cost >= before.cost || !goes(after.made))
      return std::nullopt;
    return after;
  }
};

// Of the numbers of one thing on sheets of the same papers only the cheapest.
void add(std::vector<Tried> &singles, Tried made) {
  const auto *laying = std::get_if<Laying>(&made.made.back().change);
  const auto same = std::ranges::find_if(singles, [&](const Tried &other) {
    const auto *earlier = std::get_if<Laying>(&other.made.back().change);
    return laying && earlier && earlier->piece == laying->piece &&
           earlier->papers == laying->papers;
  });
  if (same == singles.end())
    singles.push_back(std::move(made));
  else if (made.cost <= same->cost)
    *same = std::move(made);
}

struct Finding {
  const Trying &trying;
  Tried base;               // all that costs nothing, where that is not enough
  std::vector<Saving> pool; // that save something beside it, the cheapest loss first
  BudgetWays out{};
  std::set<std::set<std::size_t>> found{};

  // One alone beside what costs nothing.
  void singles(const std::vector<Saving> &all) {
    std::vector<Tried> each;
    for (const Saving &saving : all)
      if (auto made = trying.and_also(base, saving))
        add(each, std::move(*made));
    for (Tried &made : each)
      if (made.in)
        out.ways.push_back(std::move(made));
      else
        pool.push_back(made.made.back());
  }

  struct Chain {
    Tried tried;
    std::vector<std::size_t> links; // indices into the pool
  };

  // One after another, until the budget is met or nothing is left to save.
  Chain chain(const std::set<std::size_t> &without) const {
    Chain chain{base, {}};
    for (std::size_t i = 0; i < pool.size() && !chain.tried.in; ++i)
      if (!without.contains(i))
        if (auto longer = trying.and_also(chain.tried, pool[i])) {
          chain.tried = std::move(*longer);
          chain.links.push_back(i);
        }
    return chain;
  }

  // Links that are not needed in the end are taken out, the dearest loss first.
  void shorten(Chain &chain) const {
    for (std::size_t i = chain.links.size(); i-- > 0 && chain.links.size() > 1;) {
      std::vector<Saving> made = chain.tried.made;
      made.erase(made.begin() + static_cast<std::ptrdiff_t>(base.made.size() + i));
      Tried shorter = trying.with(std::move(made));
      if (!shorter.in || !trying.goes(shorter.made))
        continue;
      chain.tried = std::move(shorter);
      chain.links.erase(chain.links.begin() + static_cast<std::ptrdiff_t>(i));
    }
  }

  // A further way does without one of the changes of each that was found. Gives the most that could
  // be done.
  Tried together() {
    const Chain all = chain({});
    std::deque<std::set<std::size_t>> without{{}};
    for (std::size_t chains = 0; !without.empty() && chains < most_chains; ++chains) {
      Chain next = without.front().empty() ? all : chain(without.front());
      if (next.tried.in && !next.links.empty()) {
        shorten(next);
        for (const std::size_t link : next.links) {
          std::set<std::size_t> more = without.front();
          more.insert(link);
          without.push_back(std::move(more));
        }
        if (found.insert({next.links.begin(), next.links.end()}).second)
          out.ways.push_back(std::move(next.tried));
      }
      without.pop_front();
      if (out.ways.size() >= most_ways)
        break;
    }
    return all.tried;
  }
};

// The same pages in the order that costs least: what `bodkin arrange` finds, with less patience.
std::optional<Tried> laid_anew(const Trying &trying, const std::vector<Saving> &made) {
  arranging::Effort effort;
  effort.nodes = 200'000;
  effort.outcomes = 50'000;
  effort.priced = 500;
  effort.looks = 8;
  effort.wide_nodes = 500;
  const Edition changed =
      made.empty() ? trying.edition : applied(trying.edition, made, trying.sources);
  const Laid laid = made.empty() ? trying.laid : lay(changed, trying.drawn.draws, trying.sources);
  const Arrangement found = arrange(changed, laid, trying.drawn.draws, trying.sources, effort);
  if (!found.cheapest || !found.printable_as_written || found.saves_nothing())
    return std::nullopt;
  const Exact cost = trying.of_budget(found.total);
  return Tried{made, true, cost, trying.meets(cost)};
}

std::vector<Step> steps_of(const Trying &trying, const Tried &way) {
  std::vector<Step> steps;
  std::vector<Saving> made;
  for (const Saving &saving : way.made) {
    made.push_back(saving);
    const Exact cost =
        made.size() == way.made.size() && !way.anew ? way.cost : trying.with(made).cost;
    steps.push_back({saving.what, cost, saving.loss == Loss::nothing});
  }
  if (way.anew)
    steps.push_back({"the same pages in another order", way.cost});
  return steps;
}

// Whether more copies are sold and given away than so many.
bool is_promised(const Edition &edition, std::int64_t copies) {
  std::int64_t all = 0, of_first = 0;
  for (const Sale &sale : edition.sales) {
    all += sale.copies;
    of_first += sale.only && **sale.only == 0 ? sale.copies : 0;
  }
  for (const Gift &gift : edition.gifts)
    all += gift.copies;
  return all > copies || of_first > in_first_run(edition, copies);
}

std::optional<OtherRun> other_run(const Trying &trying, const std::vector<Saving> &made) {
  const Edition changed = applied(trying.light, made, trying.sources);
  const Bill priced = trying.bill_of(changed, made);
  const Way own = own_way(changed, priced);
  const auto copies = run_within(own, trying.estimate.copies, *trying.estimate.budget);
  if (!copies || in_first_run(trying.edition, *copies) == 0 || is_promised(trying.edition, *copies))
    return std::nullopt;
  return OtherRun{made, *copies, own.at(*copies).at(*copies)};
}

} // namespace

BudgetWays ways_under_budget(const Edition &edition, const Laid &laid, const Estimate &estimate,
                             const PagesDrawn &drawn, const Sources &sources) {
  const Trying trying{edition,
                      laid,
                      estimate,
                      drawn,
                      sources,
                      without_matter(edition),
                      jobs(edition, laid.imposition)};
  const std::vector<Saving> all = savings(edition, laid, drawn, sources);
  Tried free = trying.as_it_is();
  for (const Saving &saving : all)
    if (saving.loss == Loss::nothing)
      if (auto more = trying.and_also(free, saving))
        free = std::move(*more);
  Finding finding{trying, free.in ? trying.as_it_is() : free, {}};
  finding.singles(all);
  const bool enough = finding.out.ways.size() >= most_ways;
  const std::optional<Tried> anew = laid_anew(trying, finding.base.made);
  if (anew && anew->in)
    finding.out.ways.push_back(*anew);
  const Tried most = enough ? finding.base : finding.together();
  std::optional<Tried> last = anew;
  if (finding.out.ways.empty() && most.made.size() > finding.base.made.size()) {
    last = laid_anew(trying, most.made);
    if (last && last->in)
      finding.out.ways.push_back(*last);
  }
  BudgetWays &out = finding.out;
  std::ranges::stable_sort(out.ways, {}, loss_of);
  out.ways.resize(std::min(out.ways.size(), most_ways));
  if (!out.ways.empty())
    out.steps = steps_of(trying, out.ways.front());
  else {
    out.steps = steps_of(trying, most);
    if (last)
      out.steps.push_back({"the same pages in another order", last->cost});
  }
  out.run = other_run(trying, finding.base.made);
  if (!out.run && out.ways.empty() && most.made.size() > finding.base.made.size())
    out.run = other_run(trying, most.made);
  return std::move(finding.out);
}

} // namespace bodkin
