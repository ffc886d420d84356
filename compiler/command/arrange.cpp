#include "money/arrange.hpp"

#include "command/delivery.hpp"
#include "command/telling.hpp"
#include "edition/renumbered.hpp"
#include "money/arrange_report.hpp"
#include "problems/render.hpp"

#include <algorithm>

namespace bodkin {
namespace {

FileId manuscript_of(const Edition &edition) {
  const auto opened =
      std::ranges::find_if(edition.pages, [](const Page &page) { return page.opened.somewhere(); });
  return opened == edition.pages.end() ? edition.title.from.file : opened->opened.file;
}

std::vector<int> order_of(const WayThrough &way, const Arrangement &made) {
  std::vector<int> order;
  for (int page = 0; page <= *way.edition().page_count; ++page)
    order.push_back(made.cheapest ? made.cheapest->order[static_cast<std::size_t>(page)] : page);
  return order;
}

void write_anew(const WayThrough &way, const Options &options, const Arrangement &made) {
  Delivery::write_alone(*options.write, renumbered(way.edition(), manuscript_of(way.edition()),
                                                   way.sources, order_of(way, made)));
}

} // namespace

int arrange(const Options &options, const Desk &desk) {
  Progress progress(desk.progress_shown);
  const auto way = walk(options.subject, desk.shelf_root, true, progress);
  Options as_text = options;
  as_text.json = false;
  const bool has_pages = way->reading.has_edition && *way->edition().page_count > 0;
  if (!has_pages) {
    progress.clear();
    tell_problems(*way, as_text, desk);
    return 1;
  }
  progress.say("trying orders of pages");
  const std::vector<bool> draws = draws_of(*way);
  const Edition &edition = way->edition();
  const Laid as_written{way->imposition, way->sides};
  const Arrangement made = arrange(edition, as_written, draws, way->sources);
  for (Problem &problem : arranging_problems(edition, as_written, draws, made, way->sources))
    way->problems.push_back(std::move(problem));
  const std::vector<int> order = order_of(*way, made);
  for (Problem &problem : borrowed_numbers(edition, way->reading.files, way->sources, order))
    way->problems.push_back(std::move(problem));
  sort_problems(way->problems);
  const ColourRoom room = colour_room(arranging::in_order(edition, order),
                                      arranging::in_order(edition, draws, order), way->sources);
  if (options.write && made.cheapest)
    write_anew(*way, options, made);
  progress.clear();
  tell_problems(*way, as_text, desk);
  const ArrangeReport report{edition,
                             made,
                             as_written,
                             room,
                             way->sources,
                             options.subject,
                             options.write ? *options.write : ""};
  print(options.json ? arrangement_as_json(report) : arrangement_as_text(report));
  return stopped(*way, options) ? 1 : 0;
}

} // namespace bodkin
