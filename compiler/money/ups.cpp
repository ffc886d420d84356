#include "money/ups.hpp"

#include "edition/piece.hpp"
#include "money/estimate.hpp"
#include "money/saving.hpp"
#include "sheet/bare.hpp"
#include "sheet/machine_of.hpp"
#include "sheet/several_up.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <fmt/ranges.h>

namespace bodkin {
namespace {

struct Priced {
  WayUp way;
  Exact run;
};

struct Trial {
  const Edition &light;
  std::size_t piece; // index into Edition::pieces
  const std::vector<bool> &draws;
  const Sources &sources;
};

Exact run_with(const Trial &trial, int up) {
  Edition changed = trial.light;
  auto piece = std::make_shared<Piece>(*changed.pieces[trial.piece]);
  piece->up.value = up;
  changed.pieces[trial.piece] = std::move(piece);
  const Laid laid = lay(changed, trial.draws, trial.sources);
  return estimate(changed, laid.imposition, laid.sides).run_total;
}

std::vector<Priced> priced(const Trial &trial) {
  std::vector<Priced> all;
  for (const WayUp &way : ways_up(trial.light, trial.piece, trial.sources))
    all.push_back({way, run_with(trial, way.up)});
  return all;
}

// Of two that cost the same, the one with more on a sheet: less paper is handled.
const Priced &cheapest_of(const std::vector<Priced> &all) {
  return *std::min_element(all.begin(), all.end(), [](const Priced &a, const Priced &b) {
    return a.run < b.run || (a.run == b.run && a.way.up > b.way.up);
  });
}

std::string money(const Edition &edition, const Exact &amount) {
  return shown(amount, *edition.currency);
}

// "1 up $9.10, 4 up $3.20 and 9 up $2.05 for the run"
std::string all_prices(const Edition &edition, const std::vector<Priced> &all) {
  std::vector<std::string> each;
  each.reserve(all.size());
  for (const Priced &one : all)
    each.push_back(fmt::format("{} up {}", one.way.up, money(edition, one.run)));
  if (each.size() == 1)
    return each.front();
  const std::string last = std::move(each.back());
  each.pop_back();
  return fmt::format("{} and {}", fmt::join(each, ", "), last);
}

std::string rows_of(const WayUp &way) {
  return fmt::format("{} {} of {}", way.rows, way.rows == 1 ? "row" : "rows", way.columns);
}

// The outer ones lie so near to the sheet's edge that the machine leaves some of them bare.
std::string if_clear_of_edges(const Edition &edition, const Piece &piece, const WayUp &way) {
  const Machine &machine = machine_of(edition, *piece.edition.machine);
  if (way.margin >= *machine.bare)
    return {};
  return fmt::format("if nothing on it comes nearer than {} to its edges",
                     written(*machine.bare - way.margin, edition.ruler));
}

Problem cheaper_up(const Edition &edition, const Piece &piece, const std::vector<Priced> &all,
                   const Priced &now, const Priced &best) {
  Problem problem;
  problem.kind = Kind::note;
  problem.check = "cheaper-up";
  problem.range = piece.up.from.somewhere() ? piece.up.from : piece.range;
  problem.message = fmt::format(
      "{} of {} go on a sheet, where {} {}: {} less for the run", best.way.up, piece.name,
      now.way.up, now.way.up == 1 ? "is laid" : "are laid", money(edition, now.run - best.run));
  problem.why = fmt::format("in {}, cut apart after printing; the run costs {}", rows_of(best.way),
                            all_prices(edition, all));
  problem.type = {{spoken::fact("up", std::to_string(best.way.up)),
                   if_clear_of_edges(edition, piece, best.way)}};
  return problem;
}

Problem up_chosen(const Edition &edition, const Piece &piece, const std::vector<Priced> &all,
                  const Priced &best) {
  Problem problem;
  problem.kind = Kind::note;
  problem.check = "up-chosen";
  problem.range = piece.up.from;
  problem.message = fmt::format("{} of {} are laid on a sheet, in {}", best.way.up, piece.name,
                                rows_of(best.way));
  if (best.way.up == 1)
    problem.message = fmt::format("one of {} is laid on a sheet", piece.name);
  problem.why =
      edition.currency->empty() || all.size() == 1
          ? fmt::format("its paper holds {}", all.size() == 1 ? "no other number" : "no more")
          : fmt::format("that is the cheapest: the run costs {} if both its sides are printed",
                        all_prices(edition, all));
  problem.type = {
      {spoken::fact("up", std::to_string(best.way.up)), "to keep it whatever prices do"}};
  return problem;
}

bool is_insert(const Piece &piece) { return !piece.is_wrap() && !piece.is_reverse(); }

} // namespace

void choose_ups(Edition &edition, const Sources &sources, Problems &problems) {
  const auto wants = [](const auto &piece) { return *piece->up == up_most; };
  if (std::none_of(edition.pieces.begin(), edition.pieces.end(), wants))
    return;
  std::size_t pages = edition.pages.size();
  for (const auto &piece : edition.pieces)
    pages += piece->edition.pages.size();
  const std::vector<bool> all_draw(pages, true);
  for (std::size_t i = 0; i < edition.pieces.size(); ++i) {
    if (!wants(edition.pieces[i]))
      continue;
    auto piece = std::make_shared<Piece>(*edition.pieces[i]);
    const Edition light = without_matter(edition);
    const std::vector<Priced> all = priced({light, i, all_draw, sources});
    piece->up.value = all.empty() ? 1 : cheapest_of(all).way.up;
    if (!all.empty())
      problems.push_back(up_chosen(edition, *piece, all, cheapest_of(all)));
    edition.pieces[i] = std::move(piece);
  }
}

void check_ups(const Edition &edition, const std::vector<bool> &draws, const Sources &sources,
               Problems &problems) {
  if (edition.currency->empty() ||
      std::none_of(edition.pieces.begin(), edition.pieces.end(),
                   [](const auto &piece) { return is_insert(*piece); }))
    return;
  const Edition light = without_matter(edition);
  for (std::size_t i = 0; i < edition.pieces.size(); ++i) {
    const Piece &piece = *edition.pieces[i];
    if (!is_insert(piece) || piece.edition.size.by_default())
      continue;
    const std::vector<Priced> all = priced({light, i, draws, sources});
    const auto now = std::find_if(all.begin(), all.end(),
                                  [&](const Priced &one) { return one.way.up == *piece.up; });
    if (all.size() < 2 || now == all.end())
      continue;
    const Priced &best = cheapest_of(all);
    if (now->run - best.run >= Exact::ratio(1, 200))
      problems.push_back(cheaper_up(edition, piece, all, *now, best));
  }
}

} // namespace bodkin
