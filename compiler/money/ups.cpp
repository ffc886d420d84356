#include "money/ups.hpp"

#include "edition/piece.hpp"
#include "measure/paper.hpp"
#include "money/bill.hpp"
#include "money/layings.hpp"
#include "money/saving.hpp"
#include "money/send.hpp"
#include "sheet/parts.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <string>

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
  for (const Laying &laying : found) {
    const Edition changed = laid_so(trial.light, laying);
    const Laid laid = lay(changed, trial.draws, trial.sources);
    const Bill priced =
        bill(changed, laid.imposition, laid.sides, jobs(trial.edition, laid.imposition));
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
  if (laying.papers.empty())
    return "a sheet";
  const std::string sheet = written(laying.sheet, edition.ruler);
  const std::string &paper = edition[laying.papers.front().to].name;
  return fmt::format("a {}sheet of {}", sheet == paper ? "" : sheet + " ", paper);
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

Problem cheaper_up(const Edition &edition, const Priced &now, const Priced &best,
                   const Sources &sources) {
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
      "{}the run costs {} then, and {} as it is laid",
      up == 1 ? "" : fmt::format("in {}, cut apart after printing; ", rows_of(best.laying.way)),
      money(edition, best.run), money(edition, now.run));
  problem.type = {way_out(edition, best.laying, sources)};
  return problem;
}

// Against one on a sheet, or the fewest that can be laid.
std::string why_chosen(const Edition &edition, const std::vector<Priced> &all, const Priced &now) {
  if (all.size() < 2)
    return "its paper holds no other number";
  if (edition.currency->empty())
    return "its paper holds no more";
  const auto fewest =
      std::ranges::find_if(all, [](const Priced &one) { return one.laying.papers.empty(); });
  const Exact saved = fewest->run - now.run;
  const int up = fewest->laying.way.up;
  if (up == now.laying.way.up || saved <= Exact())
    return "no other number on the sheets of its paper costs less";
  return fmt::format("the run costs {}, {} less than with {} on a sheet", money(edition, now.run),
                     money(edition, saved), up == 1 ? "one" : std::to_string(up));
}

Problem up_chosen(const Edition &edition, const std::vector<Priced> &all, const Priced &now) {
  const Piecewise piece = now.laying.piece;
  const WayUp way = now.laying.way;
  Problem problem;
  problem.kind = Kind::note;
  problem.check = "up-chosen";
  problem.range = place_of(edition, piece);
  problem.message = way.up == 1
                        ? fmt::format("one of {} is laid on a sheet", name_of(edition, piece))
                        : fmt::format("{} of {} are laid on a sheet, in {}", way.up,
                                      name_of(edition, piece), rows_of(way));
  problem.why = why_chosen(edition, all, now);
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

// A band and boards are as large as the copy asks.
bool lacks_a_size(const Edition &edition, Piecewise piece) {
  if (!piece)
    return edition.size_guessed || edition.size.by_default();
  const Piece &of = *edition.pieces[*piece];
  return of.edition.size.by_default() && !of.is_band() && !of.is_boards();
}

// The number was left to the compiler, which has chosen it since.
bool asked_for_most(const Edition &edition, Piecewise piece, const Sources &sources) {
  const Range from = piece ? edition.pieces[*piece]->up.from : edition.up.from;
  return bare_line(sources, line_of(sources, from)).ends_with("most");
}

void check_up(const Trial &trial, Problems &problems) {
  const bool chosen = asked_for_most(trial.edition, trial.piece, trial.sources);
  if (trial.edition.currency->empty() && !chosen)
    return;
  std::vector<Priced> all = priced(trial);
  if (all.empty() && chosen)
    all.push_back({{trial.piece, {}, {}, {}, {}, false}, {}});
  const auto now = std::ranges::find_if(all, [&](const Priced &one) {
    const std::int64_t up =
        trial.piece ? *trial.edition.pieces[*trial.piece]->up : *trial.edition.up;
    return one.laying.papers.empty() && one.laying.way.up == up;
  });
  if (now == all.end())
    return;
  const Priced &best = cheapest_of(all);
  if (now->run - best.run >= Exact::ratio(1, 200))
    problems.push_back(cheaper_up(trial.edition, *now, best, trial.sources));
  else if (chosen)
    problems.push_back(up_chosen(trial.edition, all, *now));
}

// As far as can be told before pages are set.
std::vector<bool> draws_as_asked(const Edition &edition, const Sources &sources) {
  Problems said_later;
  std::vector<bool> draws;
  for (const PageInk &ink : inks_asked_for(impose_parts(edition, sources, said_later)))
    draws.push_back(ink.draws);
  return draws;
}

} // namespace

void choose_ups(Edition &edition, const Sources &sources) {
  const std::vector<Piecewise> all = all_of(edition);
  std::vector<Piecewise> to_choose;
  for (const Piecewise piece : all)
    if (wants_most(edition, piece)) {
      to_choose.push_back(piece);
      // Until it is chosen one is laid.
      set_up(edition, piece, 1);
    }
  if (to_choose.empty())
    return;
  const std::vector<bool> draws = draws_as_asked(edition, sources);
  for (const Piecewise piece : to_choose) {
    if (lacks_a_size(edition, piece))
      continue;
    const Edition light = without_matter(edition);
    std::vector<Priced> found = priced({edition, light, piece, draws, sources});
    std::erase_if(found, [](const Priced &one) { return !one.laying.papers.empty(); });
    if (!found.empty())
      set_up(edition, piece, cheapest_of(found).laying.way.up);
  }
}

void check_ups(const Edition &edition, const std::vector<bool> &draws, const Sources &sources,
               Problems &problems) {
  const Edition light = without_matter(edition);
  for (const Piecewise piece : all_of(edition)) {
    const bool alone = !piece || may_go_up(*edition.pieces[*piece]);
    if (alone && !lacks_a_size(edition, piece))
      check_up({edition, light, piece, draws, sources}, problems);
  }
}

} // namespace bodkin
