#include "paperwork/tools.hpp"

#include "edition/piece.hpp"
#include "paperwork/tasks.hpp"
#include "problems/characters.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::paperwork {
namespace {

constexpr std::string_view for_cuts =
    "a sharp knife, a steel rule and a cutting mat, or a guillotine";

// Several on a sheet, of the book or of what goes with it.
bool is_cut_apart(const Edition &edition) {
  return *edition.up > 1 || std::any_of(edition.pieces.begin(), edition.pieces.end(),
                                        [](const auto &piece) { return piece->is_cut_out(); });
}

// Common practice, no source: what these steps are done with at a table.
std::string tool_of(const FinishStep &step, Ruler ruler) {
  switch (step.kind) {
  case StepKind::crease:
    return "a bone folder or a spent ballpoint, and a steel rule, for creasing";
  case StepKind::fold:
    return "a bone folder or the back of a spoon, for sharp folds";
  case StepKind::staple:
    return fmt::format("a stapler that reaches the fold, with staples whose legs are {}",
                       written(step.leg, ruler));
  case StepKind::trim:
  case StepKind::cut:
    return std::string(for_cuts);
  case StepKind::sew:
    return "a needle, thread, an awl and a board to prick into";
  case StepKind::punch:
    return "a punch";
  case StepKind::glue:
    return "glue, a brush and waste paper to lay under";
  case StepKind::round:
    return "a corner cutter";
  case StepKind::tie:
    return step.text.empty() ? "something to tie it with" : harmless(step.text);
  case StepKind::dry:
    return "room, or a line with pegs, for things to dry";
  case StepKind::press:
    return "two clean boards and a weight";
  case StepKind::add:
    return step.text.empty() ? "what is laid in" : "to lay in: " + harmless(step.text);
  case StepKind::pack:
    return step.text.empty() ? "something to pack the copies in"
                             : "for packing: " + harmless(step.text);
  case StepKind::collate:
    break;
  }
  return "";
}

std::string tool_of(const Hand &hand) {
  const std::string text = harmless(hand.text);
  switch (hand.kind) {
  case HandKind::stamp:
    return fmt::format("the stamp ({}) and an ink pad", text);
  case HandKind::sticker:
    return fmt::format("stickers ({})", text);
  case HandKind::signature:
  case HandKind::number:
    return in_pencil(hand) ? "a soft pencil" : "a pen whose ink does not fade";
  case HandKind::spray:
    return fmt::format("spray and a mask for it ({}), gloves, and a place with moving air", text);
  case HandKind::colour:
    return fmt::format("colours ({})", text);
  case HandKind::punch:
    return "a punch";
  case HandKind::tip_in:
    return fmt::format("what is tipped in ({}), and glue", text);
  case HandKind::tear:
  case HandKind::other:
    break;
  }
  return "";
}

void add_new(std::vector<std::string> &tools, std::string tool) {
  if (!tool.empty() && std::find(tools.begin(), tools.end(), tool) == tools.end())
    tools.push_back(std::move(tool));
}

} // namespace

std::vector<std::string> tools_words(const Edition &edition) {
  std::vector<std::string> tools;
  if (!edition.folding->slits.empty()) // a guillotine cuts from edge to edge
    add_new(tools, "a sharp knife, a steel rule and a cutting mat, for the slit");
  if (is_cut_apart(edition))
    add_new(tools, std::string(for_cuts));
  for (const FinishStep &step : edition.finish)
    add_new(tools, tool_of(step, edition.ruler));
  if (std::any_of(edition.pieces.begin(), edition.pieces.end(),
                  [](const auto &piece) { return piece->is_band(); }))
    add_new(tools, "glue for paper and a narrow brush, for the band");
  for (const Element &element : edition.elements)
    if (const auto *hand = std::get_if<Hand>(&element.what))
      add_new(tools, tool_of(*hand));
  return tools;
}

std::string_view usual_caution(HandKind kind) {
  switch (kind) {
  case HandKind::spray:
    return "Spray outdoors or in moving air, never near a flame or anything that glows, with the "
           "mask, gloves and goggles that the label asks for; let it dry there before you stack "
           "it.";
  case HandKind::colour:
    return "Dust of chalks and pigments is not for breathing: wipe it off damp, never blow it. "
           "What "
           "the label says comes first.";
  case HandKind::punch:
    return "Keep fingers out of the punch's mouth; a hollow punch is struck on a soft board, with "
           "goggles.";
  case HandKind::tip_in:
    return "Glue in an aired room, off skin and eyes and away from flames; hot glue burns. What "
           "the label says comes first.";
  default:
    return "";
  }
}

} // namespace bodkin::paperwork
