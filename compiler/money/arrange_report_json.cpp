// What programs read of an arrangement.
#include "money/arrange_report.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

namespace bodkin {
namespace {

std::string amount(const Exact &of_run, const Edition &edition) {
  return fmt::format("\"{}\"", (of_run / Exact(edition.run->copies)).rounded(2));
}

std::string extra_json(const Extra &extra, const Edition &edition) {
  const std::string stock =
      extra.stock == StockId::none ? "null" : fmt::format("\"{}\"", edition[extra.stock].name);
  return fmt::format("{{\"pages\": [{}], \"stock\": {}, \"more\": {}}}",
                     fmt::join(extra.pages, ", "), stock, amount(extra.more, edition));
}

std::string runs_json(const Arrangement &made, const Edition &edition) {
  std::vector<std::string> runs;
  for (std::size_t run = 0; run < made.runs.size(); ++run)
    runs.push_back(fmt::format(
        "{{\"name\": \"{}\", \"as_written\": {}, \"per_copy\": \"{}\"}}", edition.runs[run].name,
        made.printable_as_written ? fmt::format("\"{}\"", made.runs_as_written[run].rounded(2))
                                  : "null",
        made.runs[run].rounded(2)));
  return fmt::format("[{}]", fmt::join(runs, ", "));
}

std::string none_as_json(const ArrangeReport &report) {
  return fmt::format(
      "{{\n  \"order\": null,\n  \"moves\": 0,\n  \"saves\": \"0.00\",\n  \"per_copy\": null,\n"
      "  \"proved\": {0},\n  \"gap\": \"0.00\",\n  \"fewest_moves\": {0},\n"
      "  \"as_written\": null,\n  \"movable\": [{1}],\n  \"colour_sides\": {2},\n"
      "  \"colour_for_nothing\": [],\n  \"next_colour\": [],\n  \"next_paper\": [],\n"
      "  \"runs\": []\n}}\n",
      report.arrangement.none_for_sure, fmt::join(report.arrangement.movable, ", "),
      report.room.colour_sides);
}

} // namespace

std::string arrangement_as_json(const ArrangeReport &report) {
  const Arrangement &made = report.arrangement;
  const Edition &edition = report.edition;
  if (!made.cheapest)
    return none_as_json(report);
  const std::vector<int> order(made.cheapest->order.begin() + 1, made.cheapest->order.end());
  std::vector<std::string> sides, papers;
  for (const Extra &extra : report.room.sides)
    sides.push_back(extra_json(extra, edition));
  for (const Extra &extra : report.room.papers)
    papers.push_back(extra_json(extra, edition));
  return fmt::format(
      "{{\n  \"order\": [{}],\n  \"moves\": {},\n  \"saves\": {},\n  \"per_copy\": {},\n"
      "  \"proved\": {},\n  \"gap\": {},\n  \"fewest_moves\": {},\n  \"as_written\": {},\n"
      "  \"movable\": [{}],\n  \"colour_sides\": {},\n  \"colour_for_nothing\": [{}],\n"
      "  \"next_colour\": [{}],\n  \"next_paper\": [{}],\n  \"runs\": {}\n}}\n",
      fmt::join(order, ", "), made.cheapest->moves,
      made.printable_as_written ? amount(made.saved(), edition) : "\"0.00\"",
      amount(made.total, edition), made.proved(), amount(made.gap(), edition),
      made.cheapest->fewest_moves,
      made.printable_as_written ? amount(made.total_as_written, edition) : "null",
      fmt::join(made.movable, ", "), report.room.colour_sides, fmt::join(report.room.free, ", "),
      fmt::join(sides, ", "), fmt::join(papers, ", "), runs_json(made, edition));
}

} // namespace bodkin
