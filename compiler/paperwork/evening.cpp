#include "paperwork/evening.hpp"

#include "edition/copy_numbers.hpp"

#include <algorithm>
#include <optional>

namespace bodkin::paperwork {
namespace {

// So many batches at the most: finer, nobody could follow the plan.
constexpr std::int64_t most_batches = 4;

std::int64_t batch_size(std::int64_t copies) {
  return std::max<std::int64_t>(1, (copies + most_batches - 1) / most_batches);
}

// Work of one task on one batch, or its making ready.
struct Job {
  std::size_t task = 0;
  std::int64_t batch = 0; // -1: making ready
  std::int64_t copies = 0;
  std::int64_t takes = 0, waits = 0;
};

class Scheduler {
public:
  Scheduler(const std::vector<WorkOfTask> &works, int hands)
      : works_(works), free_at_(static_cast<std::size_t>(hands), 0), tool_free_(works.size(), 0),
        ready_(works.size(), 0) {
    evening_.hands = hands;
    for (const WorkOfTask &work : works)
      copies_ = std::max(copies_, work.copies);
    batches_ = copies_ == 0 ? 0 : (copies_ + batch_size(copies_) - 1) / batch_size(copies_);
    done_.assign(works.size(), std::vector<std::int64_t>(static_cast<std::size_t>(batches_), 0));
    next_.assign(works.size(), 0);
    made_ready_.assign(works.size(), false);
    for (std::size_t task = 0; task < works.size(); ++task)
      made_ready_[task] = works[task].once == 0;
  }

  Evening plan() {
    while (const auto job = best())
      take(*job);
    std::sort(evening_.stretches.begin(), evening_.stretches.end(),
              [](const Stretch &a, const Stretch &b) {
                return std::pair{a.begin, a.hand} < std::pair{b.begin, b.hand};
              });
    std::sort(evening_.waits.begin(), evening_.waits.end(),
              [](const Waiting &a, const Waiting &b) { return a.task < b.task; });
    return std::move(evening_);
  }

private:
  std::int64_t copies_in(std::size_t task, std::int64_t batch) const {
    const std::int64_t size = batch_size(copies_);
    return std::clamp<std::int64_t>(works_[task].copies - batch * size, 0, size);
  }

  std::optional<Job> next_of(std::size_t task) const {
    if (!made_ready_[task])
      return Job{task, -1, 0, works_[task].once, 0};
    const std::int64_t batch = next_[task];
    if (batch >= batches_)
      return std::nullopt;
    // The step before has done with this batch, as far as it is planned.
    if (task > 0 && next_[task - 1] <= batch)
      return std::nullopt;
    const std::int64_t copies = copies_in(task, batch);
    return Job{task, batch, copies, works_[task].each * copies, works_[task].waits};
  }

  std::int64_t can_begin(const Job &job) const {
    std::int64_t at = 0;
    if (job.batch >= 0) {
      at = std::max(ready_[job.task], tool_free_[job.task]);
      if (job.task > 0)
        at = std::max(at, done_[job.task - 1][static_cast<std::size_t>(job.batch)]);
    }
    if (job.takes == 0)
      return at;
    return std::max(at, *std::min_element(free_at_.begin(), free_at_.end()));
  }

  // What can begin first; of what can begin together, what is furthest from the end of its way:
  // making ready, then the earliest step, so that a hand stays at its step.
  std::optional<Job> best() const {
    std::optional<Job> found;
    std::int64_t begins = 0;
    for (std::size_t task = 0; task < works_.size(); ++task)
      if (const auto job = next_of(task)) {
        const std::int64_t at = can_begin(*job);
        if (!found || at < begins) {
          found = job;
          begins = at;
        }
      }
    return found;
  }

  // The hand that did this step last keeps it if it is free by then; else the first that is.
  int hand_for(const Job &job, std::int64_t at) const {
    for (auto stretch = evening_.stretches.rbegin(); stretch != evening_.stretches.rend();
         ++stretch)
      if (stretch->task == job.task && free_at_[static_cast<std::size_t>(stretch->hand)] <= at)
        return stretch->hand;
    return static_cast<int>(std::min_element(free_at_.begin(), free_at_.end()) - free_at_.begin());
  }

  void take(const Job &job) {
    const std::int64_t begin = can_begin(job), end = begin + job.takes;
    if (job.takes > 0) {
      const int hand = hand_for(job, begin);
      free_at_[static_cast<std::size_t>(hand)] = end;
      add({hand, job.task, begin, end, job.copies});
    }
    if (job.batch < 0) {
      made_ready_[job.task] = true;
      ready_[job.task] = end;
    } else {
      done_[job.task][static_cast<std::size_t>(job.batch)] = end + job.waits;
      wait(job, end);
      tool_free_[job.task] = end;
      ++next_[job.task];
    }
    if (job.takes > 0)
      evening_.hands_free = std::max(evening_.hands_free, end);
    evening_.ends = std::max(evening_.ends, end + (job.batch < 0 ? 0 : job.waits));
  }

  void wait(const Job &job, std::int64_t from) {
    if (job.waits == 0)
      return;
    const auto known =
        std::find_if(evening_.waits.begin(), evening_.waits.end(),
                     [&](const Waiting &waiting) { return waiting.task == job.task; });
    if (known == evening_.waits.end())
      evening_.waits.push_back({job.task, from, from + job.waits});
    else
      known->end = std::max(known->end, from + job.waits);
  }

  // One batch after another is one stretch.
  void add(const Stretch &stretch) {
    for (auto earlier = evening_.stretches.rbegin(); earlier != evening_.stretches.rend();
         ++earlier) {
      if (earlier->hand != stretch.hand)
        continue;
      if (earlier->task == stretch.task && earlier->end == stretch.begin &&
          (earlier->copies > 0) == (stretch.copies > 0)) {
        earlier->end = stretch.end;
        earlier->copies += stretch.copies;
        return;
      }
      break;
    }
    evening_.stretches.push_back(stretch);
  }

  const std::vector<WorkOfTask> &works_;
  std::int64_t copies_ = 0, batches_ = 0;
  std::vector<std::int64_t> free_at_, tool_free_, ready_;
  std::vector<std::vector<std::int64_t>> done_; // by task and batch
  std::vector<std::int64_t> next_;              // batch, by task
  std::vector<bool> made_ready_;
  Evening evening_;
};

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

} // namespace

std::vector<WorkOfTask> works(const Making &making) {
  std::vector<WorkOfTask> all;
  const std::vector<MakingTask> tasks = tasks_in_order(making);
  for (const MakingTask &task : tasks) {
    WorkOfTask work;
    work.drying = drying_after(making, tasks, task);
    work.waits = work.drying == Drying::ink ? ink_dries.milliseconds : 0;
    work.name = task_name(making, task);
    const CopiesCounted copies = copies_of(making.edition, task.only);
    work.copies = good_copies_only(making, task) ? copies.good : copies.all();
    if (task.step)
      work.waits = making.edition.finish[*task.step].waits.milliseconds;
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

Evening plan_evening(const std::vector<WorkOfTask> &works, int hands) {
  return Scheduler(works, hands).plan();
}

} // namespace bodkin::paperwork
