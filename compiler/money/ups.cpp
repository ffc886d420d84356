#include "money/ups.hpp"

#include "edition/piece.hpp"
#include "measure/paper.hpp"
#include "money/bill.hpp"
#include "money/layings.hpp"
#include "money/saving.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <fmt/ranges.h>

namespace bodkin {
namespace {

using Piecewise = std::optional<std::size_t>; // index into Edition::pieces; none: the book

struct Priced {
  Laying laying;
  Exact run;
};

struct Trial {
  const Edition &edition;
  const Edition &light; // without its matter
  Piecewise piece;
  const std::vector<bool> &draws;
  const Sources &sources;
};

std::vector<Priced> priced(const Trial &trial) {
  std::vector<Priced> all;
  const std::vector<Laying> found =
      layings(trial.light, trial.piece, Other::same_paper, trial.draws, trial.sources);
  if (found.empty())
    return all;
  // Work by hand is the same however it is laid.
  const std::vector<Job> work =
      jobs(trial.edition, lay(trial.light, trial.draws, trial.sources).imposition);
  for (const Laying &laying : found) {
    const Edition changed = laid_so(trial.light, laying);
    const Laid laid = lay(changed, trial.draws, trial.sources);
    const Bill priced = bill(changed, laid.imposition, laid.sides, work);
    const std::int64_t copies = changed.run->copies;
    all.push_back({laying, own_stretch(changed, priced, copies).at(copies)});
  }
  return all;
}

// Of two that cost the same, the one with more on a sheet, since less paper is handled; but no
// other paper for nothing.
const Priced &cheapest_of(const std::vector<Priced> &all) {
  return *std::ranges::min_element(all, [](const Priced &a, const Priced &b) {
    if (a.run != b.run)
      return a.run < b.run;
    if (a.laying.papers.size() != b.laying.papers.size())
      return a.laying.papers.size() < b.laying.papers.size();
    return a.laying.way.up > b.laying.way.up;
  });
}

std::string money(const Edition &edition, const Exact &amount) {
  return shown(amount, *edition.currency);
}

std::string joined(std::vector<std::string> each) {
  if (each.size() == 1)
    return each.front();
  const std::string last = std::move(each.back());
  each.pop_back();
  return fmt::format("{} and {}", fmt::join(each, ", "), last);
}

// "1 up $9.10, 4 up $3.20 and 9 up $2.05 for the run"; of other papers the cheapest alone.
std::string all_prices(const Edition &edition, const std::vector<Priced> &all) {
  std::vector<std::string> each;
  for (const Priced &one : all)
    if (one.laying.papers.empty())
      each.push_back(fmt::format("{} up {}", one.laying.way.up, money(edition, one.run)));
  const Priced &best = cheapest_of(all);
  if (!best.laying.papers.empty())
    each.push_back(fmt::format("{} up of {} {}", best.laying.way.up,
                               edition[best.laying.papers.front().to].name,
                               money(edition, best.run)));
  return joined(std::move(each));
}

std::string rows_of(const WayUp &way) {
  return fmt::format("{} {} of {}", way.rows, way.rows == 1 ? "row" : "rows", way.columns);
}

std::string name_of(const Edition &edition, Piecewise piece) {
  return piece ? edition.pieces[*piece]->name : "the book";
}

Range place_of(const Edition &edition, Piecewise piece) {
  const Range up = piece ? edition.pieces[*piece]->up.from : edition.up.from;
  if (up.somewhere())
    return up;
  return piece ? edition.pieces[*piece]->range : edition.paper.from;
}

std::string on_which(const Edition &edition, const Laying &laying) {
  return laying.papers.empty()
             ? "a sheet"
             : fmt::format("a {} sheet of {}", written(laying.sheet, edition.ruler),
                           edition[laying.papers.front().to].name);
}

// What to type, and what is to be heeded.
WayOut way_out(const Edition &edition, const Laying &laying, const Sources &sources) {
  ChangedLines lines(sources);
  type_lines(edition, laying, sources, lines);
  std::vector<std::string> remarks;
  // One new fact of a piece needs no telling where it goes.
  if (const std::string news = lines.news(); !news.empty() && (lines.count() > 1 || !laying.piece))
    remarks.push_back(news);
  if (std::string condition = on_condition(edition, laying); !condition.empty())
    remarks.push_back(std::move(condition));
  return {lines.text(), fmt::format("{}", fmt::join(remarks, ", "))};
}

Problem cheaper_up(const Edition &edition, const std::vector<Priced> &all, const Priced &now,
                   const Priced &best, const Sources &sources) {
  const Piecewise piece = best.laying.piece;
  const int up = best.laying.way.up, laid = now.laying.way.up;
  Problem problem;
  problem.kind = Kind::note;
  problem.check = "cheaper-up";
  problem.range = place_of(edition, piece);
  problem.message =
      fmt::format("{} of {} {} on {}, where {} {}: {} less for the run", up,
                  name_of(edition, piece), up == 1 ? "goes" : "go", on_which(edition, best.laying),
                  laid, laid == 1 ? "is laid" : "are laid", money(edition, now.run - best.run));
  problem.why = fmt::format(
      "{}the run costs {}",
      up == 1 ? "" : fmt::format("in {}, cut apart after printing; ", rows_of(best.laying.way)),
      all_prices(edition, all));
  problem.type = {way_out(edition, best.laying, sources)};
  return problem;
}

std::string why_chosen(const Edition &edition, Piecewise piece, const std::vector<Priced> &all) {
  if (all.size() < 2)
    return "its paper holds no other number";
  if (edition.currency->empty())
    return "its paper holds no more";
  return fmt::format("that is the cheapest: the run costs {} if {} sides are printed",
                     all_prices(edition, all), piece ? "both its" : "all its");
}

Problem up_chosen(const Edition &edition, Piecewise piece, const std::vector<Priced> &all) {
  const WayUp way = all.empty() ? WayUp{} : cheapest_of(all).laying.way;
  Problem problem;
  problem.kind = Kind::note;
  problem.check = "up-chosen";
  problem.range = place_of(edition, piece);
  problem.message = way.up == 1
                        ? fmt::format("one of {} is laid on a sheet", name_of(edition, piece))
                        : fmt::format("{} of {} are laid on a sheet, in {}", way.up,
                                      name_of(edition, piece), rows_of(way));
  problem.why = why_chosen(edition, piece, all);
  problem.type = {{spoken::fact("up", std::to_string(way.up)), "to keep it whatever prices do"}};
  return problem;
}

bool wants_most(const Edition &edition, Piecewise piece) {
  return (piece ? *edition.pieces[*piece]->up : *edition.up) == up_most;
}

// The book, then each piece.
std::vector<Piecewise> all_of(const Edition &edition) {
  std::vector<Piecewise> all{std::nullopt};
  for (std::size_t i = 0; i < edition.pieces.size(); ++i)
    all.emplace_back(i);
  return all;
}

void set_up(Edition &edition, Piecewise piece, int up) {
  if (!piece) {
    edition.up.value = up;
    return;
  }
  auto changed = std::make_shared<Piece>(*edition.pieces[*piece]);
  changed->up.value = up;
  edition.pieces[*piece] = std::move(changed);
}

std::vector<bool> all_drawn(const Edition &edition) {
  std::size_t pages = edition.pages.size();
  for (const auto &piece : edition.pieces)
    pages += piece->edition.pages.size();
  return std::vector<bool>(pages, true);
}

} // namespace

void choose_ups(Edition &edition, const Sources &sources, Problems &problems) {
  for (const Piecewise piece : all_of(edition)) {
    if (!wants_most(edition, piece))
      continue;
    // Until it is chosen one is laid.
    Edition light = without_matter(edition);
    for (const Piecewise other : all_of(light))
      if (wants_most(light, other))
        set_up(light, other, 1);
    const std::vector<bool> draws = all_drawn(edition);
    std::vector<Priced> all = priced({edition, light, piece, draws, sources});
    std::erase_if(all, [](const Priced &one) { return !one.laying.papers.empty(); });
    set_up(edition, piece, all.empty() ? 1 : cheapest_of(all).laying.way.up);
    problems.push_back(up_chosen(edition, piece, all));
  }
}

void check_ups(const Edition &edition, const std::vector<bool> &draws, const Sources &sources,
               Problems &problems) {
  if (edition.currency->empty())
    return;
  const Edition light = without_matter(edition);
  for (const Piecewise piece : all_of(edition)) {
    if (piece &&
        (!may_go_up(*edition.pieces[*piece]) || edition.pieces[*piece]->edition.size.by_default()))
      continue;
    const std::vector<Priced> all = priced({edition, light, piece, draws, sources});
    const auto now = std::ranges::find_if(all, [&](const Priced &one) {
      return one.laying.papers.empty() &&
             one.laying.way.up == (piece ? *edition.pieces[*piece]->up : *edition.up);
    });
    if (all.size() < 2 || now == all.end())
      continue;
    const Priced &best = cheapest_of(all);
    if (now->run - best.run >= Exact::ratio(1, 200))
      problems.push_back(cheaper_up(edition, all, *now, best, sources));
  }
}

} // namespace bodkin
