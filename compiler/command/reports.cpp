#include "command/making.hpp"
#include "command/printing.hpp"
#include "command/telling.hpp"
#include "measure/paper.hpp"
#include "money/report.hpp"
#include "money/table.hpp"
#include "paperwork/evening.hpp"
#include "press/figures.hpp"
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
std::string sheets_as_pdf(const SheetsReport &of, WayThrough &way, const Desk &desk) {
  const Edition &edition = way.edition();
  std::string pdf;
  press::write_figures(draw_sheets(of),
                       *paper_named(edition.ruler == Ruler::inches ? "letter" : "a4"),
                       imprint_of(edition, digest_of(inputs_of(way, desk.shelf_root))),
                       [&](std::string_view bytes) { pdf += bytes; });
  return pdf;
}

} // namespace

int preflight(const Options &options, const Desk &desk) {
  Progress progress(desk.progress_shown);
  const auto way = walk(options.subject, desk.shelf_root, options.anyway, progress);
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
  const auto way = walk(options.subject, desk.shelf_root, false, progress);
  progress.clear();
  if (!way->reading.has_edition)
    return report(*way, options, desk, {});
  return report(*way, options, desk,
                options.json
                    ? estimate_as_json(way->estimate, way->sources)
                    : estimate_as_text(way->edition(), way->estimate, way->sources, false) +
                          paperwork::evening_as_text(making_of(*way), estimate_columns));
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
    return report(*way, options, desk, sheets_as_pdf(of, *way, desk));
  return report(*way, options, desk,
                options.json  ? sheets_as_json(of)
                : options.svg ? sheets_as_svg(of)
                              : sheets_as_text(of));
}

} // namespace bodkin
