// What must be there in the end, and the plan of the evening.
#include "paperwork/guide_writer.hpp"

#include "paperwork/evening.hpp"
#include "problems/characters.hpp"
#include "sheet/numbered.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::paperwork {
namespace {

const Hand *numbering(const GuideWriter &writer) {
  for (const MakingTask &task : writer.tasks)
    if (!task.step)
      if (const auto *hand = std::get_if<Hand>(&writer.edition()[task.element].what))
        if (hand->kind == HandKind::number)
          return hand;
  return nullptr;
}

bool prints_numbers(const Making &making) {
  return std::any_of(making.imposition.sheets.begin(), making.imposition.sheets.end(), is_numbered);
}

Counts counts_of(const Edition &edition, const Hand *hand) {
  if (hand != nullptr && hand->counts)
    return **hand->counts;
  if (edition.counts)
    return **edition.counts;
  return {1, edition.run->copies};
}

} // namespace

void tell_plan(GuideWriter &writer) {
  Leaflet plan;
  tell_evening(writer.making, plan);
  if (plan.blocks.empty())
    return;
  writer.leaflet.add(Headline{"The evening, planned", 1, {}, true});
  for (LeafletBlock &block : plan.blocks)
    writer.leaflet.blocks.push_back(std::move(block));
}

// Each number of a numbered edition, to be ticked when its copy is done.
void tell_numbers(GuideWriter &writer) {
  constexpr std::int64_t most_boxes = 1000;
  const Hand *hand = numbering(writer);
  const bool printed = prints_numbers(writer.making);
  if (hand == nullptr && !printed)
    return;
  const auto [first, last] = counts_of(writer.edition(), hand);
  writer.leaflet.add(NewPage{});
  writer.leaflet.add(Headline{"Numbers, to sign off", 1, {}});
  std::string text = fmt::format("{}: {} to {}, one on each good copy. Tick a number when its copy "
                                 "is {}, and write on its line who has it.",
                                 hand != nullptr ? harmless(hand->text) : "Printed", first, last,
                                 hand != nullptr ? "numbered" : "made");
  if (printed && !writer.edition().runs.empty())
    text += fmt::format(" The copies {}.", runs_of_numbers(writer.edition()));
  writer.say(std::move(text));
  Ticks ticks;
  for (std::int64_t number = first; number <= std::min(last, first + most_boxes - 1); ++number)
    ticks.labels.push_back(std::to_string(number));
  writer.leaflet.add(std::move(ticks));
  if (last - first + 1 > most_boxes)
    writer.remark(fmt::format("{} to {} go on in a list of your own.", first + most_boxes, last));
}

void tell_counts(GuideWriter &writer) {
  if (writer.chosen)
    return;
  writer.chosen = true;
  const Run &run = *writer.edition().run;
  writer.step("Check and count");
  writer.say(fmt::format(
      "Leaf through each copy: every page there, in order, the right way up, nothing smudged{}.{} "
      "Count {}{}.",
      prints_numbers(writer.making) ? ", its number the same wherever it stands" : "",
      run.spare == 0 ? "" : " Make spoilt ones again from loose sheets, by every step till here.",
      counted(run.copies, "good copy", "good copies"),
      writer.edition().runs.empty() ? "" : ": " + runs_words(writer.edition())));
}

void tell_rest(GuideWriter &writer) {
  const bool spares = writer.edition().run->spare > 0;
  if (spares || !writer.cautioned.empty())
    writer.leaflet.add(Headline{"In the end", 1, {}});
  if (spares)
    writer.say("Keep the loose sheets that are left for whoever asks for a missing page.");
  if (!writer.cautioned.empty())
    writer.remark(
        "Rules of the place where you work, and what labels say, come before this paper.");
}

} // namespace bodkin::paperwork
