// The steps of finish, each with the measures that the hand needs.
#include "paperwork/guide_writer.hpp"

#include "paperwork/finish_pictures.hpp"
#include "paperwork/step_words.hpp"
#include "paperwork/tools.hpp"
#include "problems/characters.hpp"
#include "sheet/finish_text.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::paperwork {
namespace {

// "staple: 2, leg 1/4in, …" as a sentence.
std::string what_of(const FinishStep &step, const FinishTold &told, Ruler ruler) {
  const std::size_t colon = told.says.find(": ");
  std::string rest = colon == std::string::npos ? "" : told.says.substr(colon + 2);
  if (step.kind == StepKind::staple)
    rest = fmt::format("{} in each, legs {}{}, to the middle of the staple",
                       counted(step.staples, "staple", "staples"), written(step.leg, ruler),
                       rest.substr(std::min(rest.find(", at"), rest.size())));
  if (!rest.empty() && rest[0] >= 'a' && rest[0] <= 'z')
    rest[0] = static_cast<char>(rest[0] - 'a' + 'A');
  return rest.empty() ? rest : rest + ".";
}

// Sheets that are grooved one by one before they are gathered need not be looked for.
bool gathered_before(const Edition &edition, std::size_t step) {
  const auto end = edition.finish.begin() + static_cast<std::ptrdiff_t>(step);
  return std::any_of(edition.finish.begin(), end,
                     [](const FinishStep &earlier) { return earlier.kind == StepKind::collate; });
}

// The piles of a sheet, and of what other runs have in its place.
std::vector<int> piles_like(const Imposition &imposition, const Sheet &of) {
  std::vector<int> numbers{of.number};
  for (const Sheet &sheet : imposition.sheets)
    if (sheet.in_place_of == of.number && of.piece.empty())
      numbers.push_back(sheet.number);
  return numbers;
}

bool lies_bare(const Making &making, const Sheet &sheet, bool front_up) {
  const auto index = static_cast<std::size_t>(&sheet - making.imposition.sheets.data());
  return !making.modes[index][front_up ? 0 : 1];
}

// Wraps lie in piles of their own while the book is grooved.
std::string wraps_too(const Making &making) {
  std::vector<int> piles;
  for (const CopyPart &part : making.parts)
    if (part.piece && part.piece->is_wrap())
      piles.push_back(part.sheets_before + 1);
  return piles.empty() ? ""
                       : fmt::format(" Crease the sheets of pile {} likewise, front up.",
                                     spoken::listed(piles));
}

std::string creasing_words(const GuideWriter &writer, std::size_t step) {
  const Edition &edition = writer.edition();
  const bool fronts = fronts_lie_up(writer.making.parts.front());
  const std::string_view lies = fronts ? "front" : "back";
  const Sheet &cover =
      writer.making.imposition.sheets[static_cast<std::size_t>(outer_sheet(writer.making))];
  // A wrap is laid round the book after gathering.
  const bool wrapped = !edition.finish[step].all && !cover.piece.empty();
  const bool out = gathered_before(edition, step) && !wrapped;
  if (edition.finish[step].all)
    return (out ? "Take the sheets of a copy apart, crease one after the other, and gather them "
                  "again as they lay."
                : fmt::format("Take one sheet at a time from its pile, crease it front up, and lay "
                              "it, {} up, on a new pile beside, which you go on from.",
                              lies)) +
           wraps_too(writer.making);
  if (out)
    return fmt::format("Take the cover out of the gathered sheets, lay it front up, crease it, and "
                       "put it back where it was, {} up.",
                       lies);
  const std::vector<int> piles = piles_like(writer.making.imposition, cover);
  return fmt::format(
      "Take the sheets of {} {} one at a time, front up; crease each, and lay it, {} up, on a new "
      "pile beside{}, which you go on from.{}",
      piles.size() == 1 ? "pile" : "piles", spoken::listed(piles), lies,
      piles.size() == 1 ? "" : ", one for each",
      lies_bare(writer.making, cover, fronts) ? " That side is bare: keep the heads all one way."
                                              : "");
}

// Places that no ruler shows are told as near as one does.
std::string as_measured(std::string text, const std::vector<Length> &places, Ruler ruler) {
  for (const Length place : places) {
    const std::string told = written(place, ruler), shown = measured(place, ruler);
    for (std::size_t at = text.find(told); told != shown && at != std::string::npos;
         at = text.find(told, at + shown.size()))
      text.replace(at, told.size(), shown);
  }
  return text;
}

// What a ruler finds; creep and margins are the compiler's care, not the hand's.
bool for_hands(const std::string &fact) {
  return fact.find("Creep") == std::string::npos && fact.find("margin") == std::string::npos &&
         fact.find("bend over") == std::string::npos;
}

void tell_places(GuideWriter &writer, std::size_t step, const FinishTold &told) {
  const FinishStep &of = writer.edition().finish[step];
  if (of.kind == StepKind::collate || of.kind == StepKind::crease || of.kind == StepKind::fold)
    return;
  std::string text =
      of.kind == StepKind::trim
          ? cuts_in_order(writer.making, step,
                          cut_before(writer.making, writer.tasks, {step, ElementId::none, {}}))
          : as_measured(what_of(of, told, writer.edition().ruler), told.down,
                        writer.edition().ruler);
  for (const std::string &fact : told.facts)
    if (for_hands(fact))
      text += (text.empty() ? "" : " ") + fact;
  if (!text.empty())
    writer.say(std::move(text));
}

// Below the step's picture, where there is room beside its words.
std::string told_below(const GuideWriter &writer, std::size_t step) {
  switch (writer.edition().finish[step].kind) {
  case StepKind::staple:
    return " Without such a stapler: lay the open copy, outside up, on a soft board, press each "
           "staple through the fold with the stapler opened flat, and bend the legs over inside "
           "with a spoon.";
  case StepKind::trim:
    return rim_words(writer, step);
  default:
    return "";
  }
}

// Where a step is more than its own way: what it is held to, and what is looked at afterwards.
void tell_more(GuideWriter &writer, std::size_t step) {
  const FinishStep &of = writer.edition().finish[step];
  if (of.kind == StepKind::staple)
    writer.say("Look inside: the staples lie in the fold, their legs flat; lift out one that "
               "missed with something blunt, and set it anew.");
  if (of.kind == StepKind::glue && of.on != StepOn::spine && of.on != StepOn::cover)
    writer.say_thin_film();
  if (of.kind == StepKind::trim) {
    const CutBefore was = cut_before(writer.making, writer.tasks, {step, ElementId::none, {}});
    writer.say(trimming_by_knife(writer.making, step, was));
    writer.say(trimming_by_stop(writer.making, step, was));
  }
}

// Before the work, since whoever reads on has begun; the usual first, then the maker's own.
void tell_cautions(GuideWriter &writer, const FinishStep &step, const FinishTold &told) {
  if (step.kind == StepKind::trim)
    writer.care(std::string(trim_caution));
  if (step.kind == StepKind::staple)
    writer.care("Keep fingers from under the stapler's head, and off open legs: they are sharp.");
  for (auto caution = told.cautions.rbegin(); caution != told.cautions.rend(); ++caution)
    if (step.kind != StepKind::trim || *caution != blade_caution)
      writer.care(*caution);
}

} // namespace

void tell_step(GuideWriter &writer, const MakingTask &task) {
  const std::size_t step = *task.step;
  const Edition &edition = writer.edition();
  const FinishStep &of = edition.finish[step];
  const FinishTold told = finish_told(edition, writer.making.imposition)[step];
  const bool apart = cuts_sheets(of) && writer.making.imposition.sheets.front().up > 1;
  const bool wrap = of.kind == StepKind::crease && !of.all && !wraps_of(edition).empty();
  writer.step(apart  ? "Cut the sheets apart"
              : wrap ? "Crease the wrap"
                     : heading_of(of),
              count_of(writer.making, task));
  tell_cautions(writer, of, told);
  if (task.only)
    writer.say(fmt::format("This is done on {} alone.", copies_words(edition, task.only)));
  if (apart)
    tell_cutting_apart(writer, writer.making.parts.front());
  if (of.kind == StepKind::fold)
    tell_folding(writer, writer.making.parts.front());
  if (of.kind == StepKind::collate && !tell_gathering(writer))
    writer.say(what_of(of, told, edition.ruler));
  if (of.kind == StepKind::crease)
    writer.say(creasing_words(writer, step));
  if (of.kind == StepKind::cut && of.on == StepOn::slit)
    tell_slits(writer);
  if (of.kind == StepKind::glue && of.on == StepOn::tabs)
    tell_strip(writer);
  const bool what_first = of.kind == StepKind::add || of.kind == StepKind::pack;
  if (what_first)
    tell_places(writer, step, told);
  if (const std::string way = way_of(writer.making, of); !way.empty())
    writer.say(way);
  if (!what_first)
    tell_places(writer, step, told);
  tell_more(writer, step);
  if (auto picture = picture_of_step(writer.making, writer.tasks, step)) {
    picture->front().caption += told_below(writer, step);
    writer.leaflet.add(Pictures{std::move(*picture), Length::inches(9, 5)});
  }
}

} // namespace bodkin::paperwork
