#include "paperwork/evening.hpp"

#include <algorithm>
#include <numeric>
#include <optional>

namespace bodkin::paperwork {
namespace {

// So many batches at the most: finer, nobody could follow the plan.
constexpr std::int64_t most_batches = 4;

std::int64_t batch_size(std::int64_t copies) {
  return std::max<std::int64_t>(1, (copies + most_batches - 1) / most_batches);
}

std::int64_t copies_of_run(const WorkOfTask &work, std::size_t run) {
  if (work.of_run.empty())
    return run == 0 ? work.copies : 0;
  return run < work.of_run.size() ? work.of_run[run] : 0;
}

// No batch has copies of two runs, so that what is done for one alone is done to whole batches.
std::vector<PlanBatch> batches_of(const std::vector<WorkOfTask> &works) {
  std::vector<std::int64_t> runs(1);
  for (const WorkOfTask &work : works) {
    runs.resize(std::max(runs.size(), work.of_run.size()));
    for (std::size_t run = 0; run < runs.size(); ++run)
      runs[run] = std::max(runs[run], copies_of_run(work, run));
  }
  const std::int64_t most = batch_size(std::accumulate(runs.begin(), runs.end(), std::int64_t{0}));
  std::vector<PlanBatch> batches;
  for (std::size_t run = 0; run < runs.size(); ++run) {
    const std::int64_t number = (runs[run] + most - 1) / most;
    const std::int64_t size = number == 0 ? 1 : (runs[run] + number - 1) / number;
    for (std::int64_t first = 0; first < runs[run]; first += size)
      batches.push_back({run, first, std::min(size, runs[run] - first)});
  }
  return batches;
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
    evening_.batches = batches_of(works);
    batches_ = static_cast<std::int64_t>(evening_.batches.size());
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
    return paperwork::copies_in(works_[task], evening_.batches[static_cast<std::size_t>(batch)]);
  }

  // The step before has done with this batch, as far as it is planned; or with all of them.
  bool is_reached(std::size_t task, std::int64_t batch) const {
    return task == 0 || next_[task - 1] > (works_[task].after_all ? batches_ - 1 : batch);
  }

  std::int64_t reached_at(std::size_t task, std::int64_t batch) const {
    const std::vector<std::int64_t> &before = done_[task - 1];
    return works_[task].after_all ? *std::max_element(before.begin(), before.end())
                                  : before[static_cast<std::size_t>(batch)];
  }

  std::optional<Job> next_of(std::size_t task) const {
    if (!made_ready_[task])
      return Job{task, -1, 0, works_[task].once, 0};
    const std::int64_t batch = next_[task];
    if (batch >= batches_ || !is_reached(task, batch))
      return std::nullopt;
    const std::int64_t copies = copies_in(task, batch);
    return Job{task, batch, copies, works_[task].each * copies,
               copies > 0 ? works_[task].waits : 0};
  }

  std::int64_t can_begin(const Job &job) const {
    std::int64_t at = 0;
    if (job.batch >= 0) {
      at = std::max(ready_[job.task], tool_free_[job.task]);
      if (job.task > 0)
        at = std::max(at, reached_at(job.task, job.batch));
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
      const auto batch = static_cast<std::size_t>(std::max<std::int64_t>(job.batch, 0));
      add({hand, job.task, begin, end, job.copies, batch, batch});
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
        earlier->to_batch = stretch.to_batch;
        return;
      }
      break;
    }
    evening_.stretches.push_back(stretch);
  }

  const std::vector<WorkOfTask> &works_;
  std::int64_t batches_ = 0;
  std::vector<std::int64_t> free_at_, tool_free_, ready_;
  std::vector<std::vector<std::int64_t>> done_; // by task and batch
  std::vector<std::int64_t> next_;              // batch, by task
  std::vector<bool> made_ready_;
  Evening evening_;
};

// Of each run that the work is done on, one copy.
void take_first_copies(WorkOfTask &work) {
  for (std::int64_t &copies : work.of_run)
    if (copies > 0) {
      --copies;
      --work.copies;
    }
  if (work.of_run.empty() && work.copies > 0)
    --work.copies;
  work.once = 0;
}

std::int64_t total(const std::vector<WorkOfTask> &works) {
  return std::accumulate(
      works.begin(), works.end(), std::int64_t{0},
      [](std::int64_t sum, const WorkOfTask &work) { return sum + work.total(); });
}

} // namespace

Evening plan_evening(const std::vector<WorkOfTask> &works, int hands) {
  return Scheduler(works, hands).plan();
}

std::int64_t copies_in(const WorkOfTask &work, const PlanBatch &batch) {
  return std::clamp<std::int64_t>(copies_of_run(work, batch.run) - batch.first, 0, batch.copies);
}

std::vector<WorkOfTask> without_first_copies(std::vector<WorkOfTask> works) {
  constexpr std::int64_t few = 3; // of so few, each is as much the first as the others
  if (std::any_of(works.begin(), works.end(),
                  [](const WorkOfTask &work) { return work.copies > few; }))
    std::for_each(works.begin(), works.end(), take_first_copies);
  return works;
}

Evening plan_from_first_copy(const std::vector<WorkOfTask> &works, int hands) {
  const std::vector<WorkOfTask> others = without_first_copies(works);
  Evening evening = plan_evening(others, hands);
  const std::int64_t first = evening.first_copy = total(works) - total(others);
  for (Stretch &stretch : evening.stretches) {
    stretch.begin += first;
    stretch.end += first;
  }
  for (Waiting &waiting : evening.waits) {
    waiting.begin += first;
    waiting.end += first;
  }
  evening.hands_free += first;
  evening.ends += first;
  return evening;
}

} // namespace bodkin::paperwork
