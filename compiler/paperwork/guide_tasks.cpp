// All tasks in order, and the pieces between them.
#include "paperwork/guide_writer.hpp"

#include "paperwork/evening.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::paperwork {
namespace {

void tell_time(GuideWriter &writer, const WorkOfTask &work) {
  if (!work.timed)
    return;
  std::string text = fmt::format("Time: {} in all", about_so_long(work.total()));
  if (work.each > 0)
    text += fmt::format(", {} a copy", written(Duration{work.each}));
  if (work.once > 0)
    text += fmt::format(", {} of it to make ready", written(Duration{work.once}));
  writer.remark(text + ".");
}

bool binds(StepKind kind) {
  return kind == StepKind::staple || kind == StepKind::sew || kind == StepKind::glue;
}

// On flat sheets there are no copies to choose from yet.
bool chooses_before(const Edition &edition, const MakingTask &task) {
  if (task.step)
    return false;
  const Element &element = edition[task.element];
  return on_good_copies_only(element) && (!element.work.when || **element.work.when != When::flat);
}

bool comes_last(StepKind kind) {
  return kind == StepKind::add || kind == StepKind::tie || kind == StepKind::pack;
}

// What is glued that is neither the binding nor the sheets' own: pieces, which have to be there.
bool needs_pieces(const FinishStep &step) {
  return comes_last(step.kind) ||
         (step.kind == StepKind::glue && (step.on == StepOn::other || step.on == StepOn::unsaid));
}

} // namespace

void tell_tasks(GuideWriter &writer) {
  const std::vector<FinishStep> &finish = writer.edition().finish;
  const bool folds = std::any_of(finish.begin(), finish.end(), [](const FinishStep &step) {
    return step.kind == StepKind::fold;
  });
  if (writer.making.imposition.sheets.front().up > 1 &&
      std::none_of(finish.begin(), finish.end(), cuts_sheets)) {
    writer.step("Cut the sheets apart");
    tell_cutting_apart(writer, writer.making.parts.front());
  }
  // An edition without steps of finish is folded all the same.
  if (!folds && !writer.edition().folding->steps.empty()) {
    writer.step("Fold");
    tell_folding(writer, writer.making.parts.front());
  }
  const std::vector<WorkOfTask> all = works(writer.making);
  bool bound_told = false, others_told = false;
  for (std::size_t i = 0; i < writer.tasks.size(); ++i) {
    const MakingTask &task = writer.tasks[i];
    const CutBefore cut = cut_before(writer.making, writer.tasks, task);
    if (!bound_told && task.step && binds(finish[*task.step].kind))
      tell_pieces(writer, bound_told = true, cut);
    if (!others_told && task.step && needs_pieces(finish[*task.step])) {
      if (!bound_told)
        tell_pieces(writer, bound_told = true, cut);
      others_told = true;
      tell_pieces(writer, false, cut);
    }
    if (chooses_before(writer.edition(), task) ||
        (task.step && comes_last(finish[*task.step].kind)))
      tell_counts(writer, i == 0 ? nullptr : &writer.tasks[i - 1]);
    if (task.step)
      tell_step(writer, task);
    else
      tell_hand(writer, task);
    tell_time(writer, all[i]);
  }
  const CutBefore cut = all_cuts(writer.making);
  if (!bound_told)
    tell_pieces(writer, true, cut);
  if (!others_told)
    tell_pieces(writer, false, cut);
}

} // namespace bodkin::paperwork
