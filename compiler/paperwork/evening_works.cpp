// The work of an evening, as the edition's tasks and their times tell it.
#include "paperwork/evening.hpp"

#include "edition/copy_numbers.hpp"

#include <algorithm>

namespace bodkin::paperwork {
namespace {

const Takes *takes_of(const Work &work) { return work.takes ? &**work.takes : nullptr; }

std::int64_t sheets_of(const Making &making, const MakingTask &task) {
  if (!task.step)
    return static_cast<std::int64_t>(task.pages.size());
  const FinishStep &step = making.edition.finish[*task.step];
  const std::vector<Sheet> &sheets = making.imposition.sheets;
  return step.all ? std::count_if(sheets.begin(), sheets.end(),
                                  [](const Sheet &sheet) { return sheet.in_place_of == 0; })
                  : 1;
}

bool good_copies_only(const Making &making, const MakingTask &task) {
  return !task.step && on_good_copies_only(making.edition[task.element]);
}

std::int64_t copies_done(const Making &making, const MakingTask &task,
                         std::optional<std::uint32_t> run) {
  const CopiesCounted copies = copies_of(making.edition, run);
  return is_on_flat_sheets(making.edition, task) ? copies.all() : copies.good;
}

void count_copies(const Making &making, const MakingTask &task, WorkOfTask &work) {
  work.copies = copies_done(making, task, task.only);
  for (std::uint32_t run = 0; run < making.edition.runs.size(); ++run)
    work.of_run.push_back(!task.only || *task.only == run ? copies_done(making, task, run) : 0);
}

} // namespace

std::vector<WorkOfTask> works(const Making &making) {
  std::vector<WorkOfTask> all;
  const std::vector<MakingTask> tasks = tasks_in_order(making);
  for (const MakingTask &task : tasks) {
    WorkOfTask work;
    work.drying = drying_after(making, tasks, task);
    work.waits = dries_for(work.drying).milliseconds;
    work.name = task_name(making, task);
    count_copies(making, task, work);
    work.on_sheets = is_on_flat_sheets(making.edition, task);
    work.after_all = good_copies_only(making, task) && !is_on_flat_sheets(making.edition, task);
    if (task.step)
      work.waits = std::max(work.waits, making.edition.finish[*task.step].waits.milliseconds);
    if (const Takes *takes = takes_of(work_of(making, task))) {
      work.timed = true;
      const std::int64_t time = takes->time.milliseconds;
      const std::int64_t places = task.step ? 1 : static_cast<std::int64_t>(task.pages.size());
      if (takes->per == TimePer::once)
        work.once = time;
      else
        work.each = time * (takes->per == TimePer::sheet ? sheets_of(making, task) : places);
    }
    all.push_back(std::move(work));
  }
  return all;
}

} // namespace bodkin::paperwork
