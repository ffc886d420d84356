#include "edition/finish.hpp"

#include <fmt/format.h>

namespace bodkin {

std::string_view name_of(StepKind kind) {
  switch (kind) {
  case StepKind::collate:
    return "collate";
  case StepKind::crease:
    return "crease";
  case StepKind::staple:
    return "staple";
  case StepKind::trim:
    return "trim";
  case StepKind::sew:
    return "sew";
  case StepKind::punch:
    return "punch";
  case StepKind::cut:
    return "cut";
  case StepKind::glue:
    return "glue";
  case StepKind::round:
    return "round";
  case StepKind::tie:
    return "tie";
  case StepKind::dry:
    return "dry";
  case StepKind::press:
    return "press";
  case StepKind::add:
    return "add";
  case StepKind::pack:
    return "pack";
  case StepKind::fold:
    break;
  }
  return "fold";
}

std::string_view name_of(StepOn on) {
  switch (on) {
  case StepOn::sheets:
    return "sheets";
  case StepOn::slit:
    return "slit";
  case StepOn::folds:
    return "folds";
  case StepOn::window:
    return "window";
  case StepOn::spine:
    return "spine";
  case StepOn::cover:
    return "cover";
  case StepOn::tabs:
    return "tabs";
  case StepOn::other:
    return "other";
  case StepOn::unsaid:
    break;
  }
  return "";
}

std::string name_of(const FinishStep &step) {
  const std::string_view on = name_of(step.on);
  return on.empty() ? std::string(name_of(step.kind))
                    : fmt::format("{} {}", name_of(step.kind), on);
}

bool comes_with_a_bid(StepKind kind) {
  return kind == StepKind::collate || kind == StepKind::crease || kind == StepKind::fold ||
         kind == StepKind::staple || kind == StepKind::trim;
}

std::string_view usual_caution(StepKind kind) {
  switch (kind) {
  case StepKind::trim:
  case StepKind::cut:
    return "Cut with a sharp blade along a steel edge, on a mat, fingers behind the edge and off "
           "the line; several light cuts, a few sheets at a time; the blade is covered when it is "
           "laid down.";
  case StepKind::sew:
    return "Prick the holes downwards into a board, never towards the hand that holds the paper; "
           "push the needle with a thimble, and count the needles when you put them away.";
  case StepKind::punch:
    return "Keep fingers out of the punch's mouth; a hollow punch is struck on a soft board, with "
           "goggles.";
  case StepKind::glue:
    return "Glue in an aired room, off skin and eyes and away from flames; hot glue burns. What "
           "the label says comes first.";
  case StepKind::round:
    return "Keep fingers out of the corner cutter's mouth; a chisel is pushed away from the hand "
           "that holds the copy.";
  case StepKind::dry:
    return "What dries off glue, ink or spray is aired while it dries, away from flames and from "
           "where people sleep. What the label says comes first.";
  default:
    return "";
  }
}

Length height_at(const std::vector<FinishStep> &finish, std::size_t step, Length page_height) {
  for (std::size_t i = 0; i < step && i < finish.size(); ++i)
    if (finish[i].kind == StepKind::trim)
      page_height = page_height - finish[i].head - finish[i].foot;
  return page_height;
}

std::vector<Length> places_down(const FinishStep &step, int count, Length height) {
  std::vector<Length> down;
  if (count == 1)
    return {height / 2};
  const bool evenly = step.kind == StepKind::punch && !step.place_written;
  const Length first = evenly ? height / (std::int64_t{2} * count) : step.from_head_and_foot;
  down.reserve(static_cast<std::size_t>(count));
  for (int i = 0; i < count; ++i)
    down.push_back(first + (height - first * 2) * i / (count - 1));
  return down;
}

} // namespace bodkin
