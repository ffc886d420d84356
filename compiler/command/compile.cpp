#include "command/made_from.hpp"
#include "command/making.hpp"
#include "command/printing.hpp"
#include "command/telling.hpp"
#include "money/chart.hpp"
#include "money/report.hpp"
#include "money/table.hpp"
#include "paperwork/evening.hpp"
#include "problems/render.hpp"

#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <fmt/format.h>
#include <optional>

namespace bodkin {
namespace {

namespace fs = std::filesystem;

bool of_sheets(const std::string &name) {
  return name == "sheets.pdf" || name == "originals.pdf" || name == "prices.pdf" ||
         name.starts_with("assembly.") || name.starts_with("ticket.") ||
         name.starts_with("passes/");
}

Problem sheets_taken_away() {
  return {.kind = Kind::note,
          .check = "sheets-taken-away",
          .range = {},
          .message = "the sheets of an earlier compile are taken away",
          .why = "nobody should print what has not passed",
          .type = {},
          .related = {},
          .edits = {}};
}

bool over_and_anyway(const WayThrough &way, const Options &options) {
  return options.anyway && way.estimate.budget && way.estimate.budget->over;
}

std::string money(const WayThrough &way, const Exact &amount, int decimals = 2) {
  return shown(amount, way.estimate.currency, decimals);
}

// Two figures that differ show that they do.
int decimals_for(const WayThrough &way) {
  const BudgetHeld &budget = *way.estimate.budget;
  const Exact &cost = budget.of_run ? way.estimate.run_total : way.estimate.per_copy;
  return budget.over && money(way, cost) == money(way, budget.limit) ? 5 : 2;
}

// Prices that are missing, or in other money, were told; what they are for is in no sum.
std::string_view what_is_left_out(const WayThrough &way) {
  const auto left_out = [](const Problem &problem) {
    return problem.check == "two-currencies" || problem.check == "no-price";
  };
  return std::any_of(way.problems.begin(), way.problems.end(), left_out)
             ? " without what has no price in this money"
             : "";
}

void tell_made(const WayThrough &way, const std::string &folder,
               const std::vector<std::string> &files) {
  const std::string place = fs::path(folder).filename().string() + "/";
  for (const std::string &file : files)
    print(fmt::format("  {}{}\n", place, file));
  if (way.estimate.currency.empty())
    return;
  std::string line =
      fmt::format("a copy costs {}{}",
                  money(way, way.estimate.per_copy, way.estimate.budget ? decimals_for(way) : 2),
                  what_is_left_out(way));
  if (const auto &budget = way.estimate.budget)
    line += fmt::format(" ({} {}{})", budget->over ? "over the budget of" : "budget",
                        money(way, budget->limit), budget->of_run ? " a run" : "");
  print(fmt::format("{}; the run of {}{} {}\n", line, way.estimate.copies,
                    way.estimate.spare > 0 ? fmt::format(" and {} spare", way.estimate.spare) : "",
                    money(way, way.estimate.run_total)));
}

void write_depfile(const Options &options, const std::string &folder,
                   const std::vector<InputFile> &inputs) {
  if (!options.depfile)
    return;
  const std::string rule = make_rule((fs::path(folder) / "sheets.pdf").string(), inputs);
  const fs::path path = *options.depfile;
  Delivery::write_alone(path.string(), rule);
}

} // namespace

int compile(const Options &options, const Desk &desk) {
  Progress progress(desk.progress_shown);
  const auto way =
      walk(options.subject, desk.shelf_root, options.anyway, progress, AskedAbout::money);
  if (!way->reading.has_edition) {
    progress.clear();
    tell_problems(*way, options, desk);
    return 1;
  }
  const std::string folder = output_folder(options);
  std::optional<Papers> papers;
  if (!any_errors(way->problems))
    tell_papers(*way, papers.emplace(*way));
  const bool stop = stopped(*way, options);
  const std::vector<InputFile> inputs = inputs_of(*way, desk.shelf_root);
  Delivery delivery(folder);
  {
    PrintRoom printing(*way, digest_of(inputs), progress);
    if (!stop) {
      printing.sheets(delivery);
      printing.passes(delivery);
      printing.originals(delivery);
    }
    printing.proof(delivery);
    if (!stop)
      printing.papers(delivery, *papers);
  }
  delivery.write("estimate.txt", estimate_as_text(way->edition(), way->estimate, way->sources,
                                                  over_and_anyway(*way, options)) +
                                     paperwork::post_in_brief(way->edition(), way->mailings) +
                                     paperwork::evening_as_text(making_of(*way), estimate_columns));
  delivery.write("estimate.json",
                 estimate_as_json(way->estimate, way->sources,
                                  paperwork::post_as_json(way->edition(), way->mailings)));
  delivery.write("rights.txt", paperwork::ledger_as_text(way->edition(), way->rights));
  delivery.write("rights.csv", paperwork::ledger_as_csv(way->edition(), way->rights));
  if (!way->mailings.empty())
    delivery.write("post.txt", paperwork::post_as_text(way->edition(), way->parts, way->mailings,
                                                       way->sources));
  if (!way->estimate.bids.empty())
    delivery.write("costs.svg",
                   costs_as_svg(way->edition(), draw_costs(way->edition(), way->imposition,
                                                           way->sides, way->estimate)));
  std::vector<std::string> made = delivery.written();
  made.emplace_back(made_from_name);
  // A blank to measure a machine by does not grow old with the edition.
  if (const auto &earlier = delivery.earlier();
      std::find(earlier.begin(), earlier.end(), dummy_name) != earlier.end())
    delivery.keep(dummy_name);
  delivery.write(made_from_name, made_from(*way->edition().title, inputs, delivery.written()));
  // Before the outputs: killed between the two, the sheets are older than what they are made from.
  write_depfile(options, folder, inputs);
  delivery.finish();
  if (stop && std::any_of(delivery.earlier().begin(), delivery.earlier().end(), of_sheets))
    way->problems.push_back(sheets_taken_away());
  progress.clear();
  tell_problems(*way, options, desk);
  if (stop && !options.json && !options.sarif)
    print(fmt::format("no sheets are made: {}\n", tally(way->problems)));
  if (!options.json && !options.sarif)
    tell_made(*way, folder, made);
  return stop ? 1 : 0;
}

} // namespace bodkin
