// The steps of finish, each with the measures that the hand needs.
#include "paperwork/guide_writer.hpp"

#include "paperwork/finish_pictures.hpp"
#include "paperwork/tools.hpp"
#include "problems/characters.hpp"
#include "sheet/finish_text.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::paperwork {
namespace {

std::string heading_of(const FinishStep &step) {
  switch (step.kind) {
  case StepKind::collate:
    return "Gather";
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

// How it is done; common practice, no source.
std::string way_of(const FinishStep &step) {
  switch (step.kind) {
  case StepKind::crease:
    return "Press a groove along the line with a bone folder against a steel rule, on the side "
           "that "
           "will be outside; the ridge then lies inside the fold, and the card does not crack.";
  case StepKind::fold:
    return "Bring the edges together first, hold them, and then press the fold sharp from its "
           "middle "
           "outwards.";
  case StepKind::staple:
    return "Open the copy, its outside up, and lay the fold under the stapler's head. The legs "
           "close "
           "inside, in the middle of the copy.";
  case StepKind::trim:
    return "Close the copy, fold to one side, and tap it square. Cut from the fold outwards, or on "
           "a "
           "guillotine with the fold against the stop.";
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
    return "Lay it loosely into each copy, where it does not slip out.";
  case StepKind::pack:
    return "Count the good copies first, and look each over once more.";
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
    rest = fmt::format("{}, legs {}{}", counted(step.staples, "staple", "staples"),
                       written(step.leg, ruler),
                       rest.substr(std::min(rest.find(", at"), rest.size())));
  if (!rest.empty() && rest[0] >= 'a' && rest[0] <= 'z')
    rest[0] = static_cast<char>(rest[0] - 'a' + 'A');
  return rest.empty() ? rest : rest + ".";
}

// What a ruler finds; creep and margins are the compiler's care, not the hand's.
bool for_hands(const std::string &fact) {
  return fact.find("Creep") == std::string::npos && fact.find("margin") == std::string::npos;
}

void tell_places(GuideWriter &writer, std::size_t step, const FinishTold &told) {
  const FinishStep &of = writer.edition().finish[step];
  if (of.kind == StepKind::collate || of.kind == StepKind::crease || of.kind == StepKind::fold)
    return;
  std::string text = what_of(of, told, writer.edition().ruler);
  for (const std::string &fact : told.facts)
    if (for_hands(fact))
      text += (text.empty() ? "" : " ") + fact;
  if (!text.empty())
    writer.say(std::move(text));
}

} // namespace

void tell_step(GuideWriter &writer, std::size_t step) {
  const Edition &edition = writer.edition();
  const FinishStep &of = edition.finish[step];
  const FinishTold told = finish_told(edition, writer.making.imposition)[step];
  writer.step(heading_of(of));
  if (of.kind == StepKind::fold)
    tell_folding(writer, writer.making.parts.front());
  if (of.kind == StepKind::collate && !tell_gathering(writer))
    writer.say(what_of(of, told, edition.ruler));
  if (const std::string way = way_of(of); !way.empty())
    writer.say(way);
  tell_places(writer, step, told);
  if (auto picture = picture_of_step(writer.making, writer.tasks, step))
    writer.leaflet.add(Pictures{std::move(*picture), Length::inches(2)});
  for (const std::string &caution : told.cautions)
    writer.care(caution);
}

} // namespace bodkin::paperwork
