// The steps of finish, each with the measures that the hand needs.
#include "paperwork/guide_writer.hpp"

#include "paperwork/finish_pictures.hpp"
#include "paperwork/tools.hpp"
#include "problems/characters.hpp"
#include "sheet/finish_text.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::paperwork {
namespace {

std::string heading_of(const FinishStep &step) {
  switch (step.kind) {
  case StepKind::collate:
    return "Collate";
  case StepKind::crease:
    return step.all ? "Crease" : "Crease the cover";
  case StepKind::fold:
    return "Fold";
  case StepKind::staple:
    return "Staple";
  case StepKind::trim:
    return "Trim";
  case StepKind::sew:
    return "Sew";
  case StepKind::punch:
    return "Punch";
  case StepKind::cut:
    return step.on == StepOn::slit     ? "Cut the slit"
           : step.on == StepOn::folds  ? "Cut the folds open"
           : step.on == StepOn::window ? "Cut a window"
                                       : "Cut the sheets";
  case StepKind::glue:
    return step.on == StepOn::spine   ? "Glue the spine"
           : step.on == StepOn::cover ? "Glue the cover on"
           : step.on == StepOn::tabs  ? "Glue the tabs"
                                      : "Glue";
  case StepKind::round:
    return "Round the corners";
  case StepKind::tie:
    return "Tie";
  case StepKind::dry:
    return "Let dry";
  case StepKind::press:
    return "Press";
  case StepKind::add:
    return "Add";
  case StepKind::pack:
    return "Pack";
  }
  return "";
}

// Likewise: what is glued, and how.
std::string gluing_of(const FinishStep &step) {
  switch (step.on) {
  case StepOn::spine:
    return "Knock the pile square at its spine and hold it between two boards, the spine just "
           "showing. Brush glue along it, thin, and once more when the first coat is dry.";
  case StepOn::cover:
    return "Brush glue on the spine of the book, lay it into the open cover, fold the cover round "
           "it and press it on along the spine.";
  default:
    return "";
  }
}

// Thread that goes through the side of a pile, not through its fold.
constexpr std::string_view sewing_at_side =
    "Clamp the pile square and prick the holes through all of it, from the front. Sew out and in "
    "from hole to hole, round the spine at each, and back again; knot the ends at the back.";

// How it is done; common practice, no source.
std::string way_of(const FinishStep &step) {
  switch (step.kind) {
  case StepKind::crease:
    return "Lay it on something that gives. Mark the line at both ends, close to the edges, lay "
           "the rule along the "
           "marks, and press a groove with the bone folder, twice, firmly, without cutting. The "
           "groove is on the outside: fold away from it, and the card does not crack.";
  case StepKind::fold:
    return "Bring the edges together first, hold them, and then press the fold sharp with the bone "
           "folder, from its middle outwards.";
  case StepKind::staple:
    return "Open the copy, knock its sheets square at the head, see that their folds lie in one "
           "another, and clip them. Lay it outside up under the stapler, each staple along the "
           "fold; its legs close inside, in the middle of the copy.";
  case StepKind::trim:
    return "Close the copy and knock it square against the fold. Cut one at a time, all its leaves "
           "together: a pile of copies slips.";
  case StepKind::sew:
    return "Prick the holes from the inside of the fold. Go in at the middle one, out at the next, "
           "and end where you began; knot over the long stitch.";
  case StepKind::punch:
    return "Mark the middle of each hole on one copy, and keep it as a pattern for the others.";
  case StepKind::dry:
    return "Spread everything out so that nothing touches what is wet, and wait.";
  case StepKind::press:
    return "Lay the copies between clean boards, spines turned this way and that, under a heavy "
           "book or two, and leave them there.";
  case StepKind::add:
    return "Lay it into the middle of each copy, against the fold, where it does not slip out; of "
           "several, the smaller lies in the larger.";
  case StepKind::pack:
    return "Look each good copy over once more.";
  case StepKind::glue:
    return gluing_of(step);
  case StepKind::round:
    return "Hold the closed copy against both walls of the corner cutter.";
  default:
    return "";
  }
}

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
std::string piles_like(const Imposition &imposition, const Sheet &of) {
  std::vector<int> numbers{of.number};
  for (const Sheet &sheet : imposition.sheets)
    if (sheet.in_place_of == of.number && of.piece.empty())
      numbers.push_back(sheet.number);
  return fmt::format("{} {}", numbers.size() == 1 ? "pile" : "piles", spoken::listed(numbers));
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
  return fmt::format(
      "Take the sheets of {} one at a time, front up; crease each, and lay it, {} up, on a new "
      "pile beside, which you go on from.",
      piles_like(writer.making.imposition, cover), lies);
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
  if (of.kind == StepKind::sew && edition.folding->holes)
    writer.say(std::string(sewing_at_side));
  else if (const std::string way = way_of(of); !way.empty())
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
