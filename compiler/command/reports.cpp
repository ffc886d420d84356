#include "command/making.hpp"
#include "command/papers.hpp"
#include "command/printing.hpp"
#include "command/telling.hpp"
#include "measure/paper.hpp"
#include "money/chart.hpp"
#include "money/report.hpp"
#include "money/spreadsheet.hpp"
#include "money/table.hpp"
#include "paperwork/evening.hpp"
#include "press/figures.hpp"
#include "problems/render.hpp"
#include "sheet/report.hpp"

namespace bodkin {
namespace {

// Problems go to standard error in any case, so that a report is never taken for one that passed.
int report(const WayThrough &way, const Options &options, const Desk &desk,
           const std::string &text) {
  Options as_text = options;
  as_text.json = false;
  tell_problems(way, as_text, desk);
  print(text);
  return stopped(way, options) ? 1 : 0;
}

// On the paper that a maker of this edition has at hand.
std::string as_pdf(std::span<const Figure> figures, WayThrough &way, const Desk &desk) {
  const Edition &edition = way.edition();
  std::string pdf;
  press::write_figures(figures, *paper_named(edition.ruler == Ruler::inches ? "letter" : "a4"),
                       imprint_of(edition, digest_of(inputs_of(way, desk.shelf_root))),
                       [&](std::string_view bytes) { pdf += bytes; });
  return pdf;
}

std::string estimate_told(WayThrough &way, const Options &options, const Desk &desk) {
  if (options.json)
    return estimate_as_json(way.estimate, way.sources,
                            paperwork::post_as_json(way.edition(), way.mailings));
  if (options.ods)
    return estimate_as_spreadsheet(way.edition(), way.imposition, way.sides, way.estimate);
  if (!options.svg && !options.pdf)
    return estimate_as_text(way.edition(), way.estimate, way.sources, false) +
           paperwork::post_in_brief(way.edition(), way.mailings) +
           paperwork::evening_as_text(making_of(way), estimate_columns);
  const Figure costs = draw_costs(way.edition(), way.imposition, way.sides, way.estimate);
  return options.svg ? costs_as_svg(way.edition(), costs) : as_pdf(std::span(&costs, 1), way, desk);
}

} // namespace

int preflight(const Options &options, const Desk &desk) {
  Progress progress(desk.progress_shown);
  const auto way =
      walk(options.subject, desk.shelf_root, options.anyway, progress, AskedAbout::money);
  if (way->reading.has_edition && !any_errors(way->problems)) {
    Papers papers(*way);
    tell_papers(*way, papers);
  }
  progress.clear();
  tell_problems(*way, options, desk);
  if (!options.json && !options.sarif) {
    const std::string found = tally(way->problems);
    print(found.empty() ? "nothing wrong\n" : found + "\n");
  }
  return stopped(*way, options) ? 1 : 0;
}

int estimate(const Options &options, const Desk &desk) {
  Progress progress(desk.progress_shown);
  const auto way = walk(options.subject, desk.shelf_root, false, progress, AskedAbout::money);
  progress.clear();
  if (!way->reading.has_edition)
    return report(*way, options, desk, {});
  return report(*way, options, desk, estimate_told(*way, options, desk));
}

int sheets(const Options &options, const Desk &desk) {
  Progress progress(desk.progress_shown);
  // Where pages land does not hang on money: a budget that is over is only a warning here.
  const auto way = walk(options.subject, desk.shelf_root, true, progress);
  progress.clear();
  if (!way->reading.has_edition)
    return report(*way, options, desk, {});
  const SheetsReport of{way->edition(), way->imposition, way->modes, way->passes, way->parts};
  if (options.pdf)
    return report(*way, options, desk, as_pdf(draw_sheets(of), *way, desk));
  return report(*way, options, desk,
                options.json  ? sheets_as_json(of)
                : options.svg ? sheets_as_svg(of)
                              : sheets_as_text(of));
}

} // namespace bodkin
