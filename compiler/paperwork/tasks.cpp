#include "paperwork/tasks.hpp"

#include "money/charge.hpp"
#include "money/standing.hpp"
#include "problems/characters.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <initializer_list>

namespace bodkin::paperwork {
namespace {

bool binds(const FinishStep &step) {
  return step.kind == StepKind::staple || step.kind == StepKind::sew ||
         (step.kind == StepKind::glue && (step.on == StepOn::spine || step.on == StepOn::cover));
}

bool cuts(const FinishStep &step) {
  return step.kind == StepKind::trim || step.kind == StepKind::round;
}

bool works_on_flat_sheets(const FinishStep &step) {
  return step.kind == StepKind::crease ||
         (step.kind == StepKind::cut && (step.on == StepOn::sheets || step.on == StepOn::slit));
}

// What comes last whatever else is done.
bool closes(const FinishStep &step) {
  return step.kind == StepKind::tie || step.kind == StepKind::press || step.kind == StepKind::add ||
         step.kind == StepKind::pack;
}

// The number of steps that are done before work of that time.
std::size_t steps_before(const std::vector<FinishStep> &finish, When when) {
  const auto after_last = [&](auto is) {
    const auto last = std::find_if(finish.rbegin(), finish.rend(), is);
    return static_cast<std::size_t>(finish.rend() - last);
  };
  switch (when) {
  case When::flat:
    return static_cast<std::size_t>(
        std::find_if_not(finish.begin(), finish.end(), works_on_flat_sheets) - finish.begin());
  case When::folded:
    return after_last([](const FinishStep &step) { return step.kind == StepKind::fold; });
  case When::bound:
    return after_last(binds);
  case When::trimmed:
    return after_last(cuts);
  case When::unsaid:
    break;
  }
  return static_cast<std::size_t>(std::find_if(finish.begin(), finish.end(), closes) -
                                  finish.begin());
}

// The first `dry` with no glue of finish before it, since the one before: it is there for ink.
std::size_t drying_of_ink(const std::vector<FinishStep> &finish) {
  bool glued = false;
  for (std::size_t step = 0; step < finish.size(); ++step) {
    if (finish[step].kind == StepKind::dry && !glued)
      return step;
    if (finish[step].kind == StepKind::glue)
      glued = true;
    else if (finish[step].kind == StepKind::dry)
      glued = false;
  }
  return finish.size();
}

// Work on an original is done before anything is printed, and told there.
bool by_hand_on_copies(const Element &element) {
  return std::holds_alternative<Hand>(element.what) ||
         (element.work.takes && !std::holds_alternative<PasteUp>(element.what));
}

When when_of(const Element &element) {
  return element.work.when ? **element.work.when : When::unsaid;
}

std::size_t steps_before(const std::vector<FinishStep> &finish, const Element &element) {
  const When when = when_of(element);
  const std::size_t steps = steps_before(finish, when);
  return when == When::unsaid && has_to_dry(element) ? std::min(steps, drying_of_ink(finish))
                                                     : steps;
}

bool follows(const Making &making, const std::vector<MakingTask> &tasks, const MakingTask &task,
             std::initializer_list<StepKind> kinds) {
  bool after = false;
  for (const MakingTask &other : tasks) {
    if (after && other.step &&
        std::find(kinds.begin(), kinds.end(), making.edition.finish[*other.step].kind) !=
            kinds.end())
      return true;
    after = after || (other.step == task.step && other.element == task.element);
  }
  return false;
}

std::optional<std::uint32_t> run_of(const std::optional<Known<std::uint32_t>> &only) {
  return only ? std::optional(**only) : std::nullopt;
}

// Numbers and signatures go on copies that nothing more can spoil; what is wet is left alone.
int rank_of(const Element &element) {
  return (on_good_copies_only(element) ? 2 : 0) + (has_to_dry(element) ? 1 : 0);
}

} // namespace

bool in_pencil(const Hand &hand) { return hand.text.find("pencil") != std::string::npos; }

// Common practice, no source.
bool has_to_dry(const Element &element) {
  const auto *hand = std::get_if<Hand>(&element.what);
  if (hand == nullptr)
    return false;
  switch (hand->kind) {
  case HandKind::stamp:
  case HandKind::signature:
  case HandKind::number:
  case HandKind::spray:
  case HandKind::colour:
  case HandKind::tip_in:
    return !in_pencil(*hand);
  default:
    return false;
  }
}

Drying drying_after(const Making &making, const std::vector<MakingTask> &tasks,
                    const MakingTask &task) {
  const auto *hand = task.step ? nullptr : std::get_if<Hand>(&making.edition[task.element].what);
  const bool glue = task.step ? making.edition.finish[*task.step].kind == StepKind::glue
                              : hand != nullptr && hand->kind == HandKind::tip_in;
  const bool coat =
      hand != nullptr && (hand->kind == HandKind::spray || hand->kind == HandKind::colour);
  if (glue)
    return follows(making, tasks, task, {StepKind::dry, StepKind::press}) ? Drying::nothing
                                                                          : Drying::label;
  if (hand == nullptr || in_pencil(*hand) || follows(making, tasks, task, {StepKind::dry}))
    return Drying::nothing;
  if (coat)
    return Drying::label;
  if (is_gummed(making.edition[task.element]))
    return Drying::gum;
  return has_to_dry(making.edition[task.element]) ? Drying::ink : Drying::nothing;
}

bool is_gummed(const Element &element) {
  const auto *hand = std::get_if<Hand>(&element.what);
  return hand != nullptr && hand->kind == HandKind::sticker &&
         hand->text.find("gummed") != std::string::npos;
}

Duration dries_for(Drying drying) {
  switch (drying) {
  case Drying::ink:
    return ink_dries;
  case Drying::gum:
    return gum_dries;
  case Drying::label:
    return label_dries;
  case Drying::nothing:
    break;
  }
  return {};
}

bool is_on_flat_sheets(const Edition &edition, const MakingTask &task) {
  if (!task.step)
    return when_of(edition[task.element]) == When::flat &&
           !on_good_copies_only(edition[task.element]);
  const auto step = edition.finish.begin() + static_cast<std::ptrdiff_t>(*task.step);
  const bool wrap_alone =
      step->kind == StepKind::crease && !step->all && !wraps_of(edition).empty();
  return wrap_alone || (works_on_flat_sheets(*step) &&
                        std::none_of(edition.finish.begin(), step, [](const FinishStep &earlier) {
                          return earlier.kind == StepKind::collate ||
                                 earlier.kind == StepKind::fold;
                        }));
}

std::string_view verb_of(HandKind kind) {
  switch (kind) {
  case HandKind::sticker:
    return "stick";
  case HandKind::tip_in:
    return "tip in";
  case HandKind::other:
    return "";
  default:
    return name_of(kind);
  }
}

bool on_good_copies_only(const Element &element) {
  const auto *hand = std::get_if<Hand>(&element.what);
  return hand != nullptr && (hand->kind == HandKind::signature || hand->kind == HandKind::number);
}

std::vector<MakingTask> tasks_in_order(const Making &making) {
  const std::vector<FinishStep> &finish = making.edition.finish;
  std::vector<StandingCharge> stands = where_work_stands_in_all(making.edition);
  std::stable_sort(
      stands.begin(), stands.end(), [&](const StandingCharge &one, const StandingCharge &other) {
        return rank_of(making.edition[one.element]) < rank_of(making.edition[other.element]);
      });
  std::vector<MakingTask> tasks;
  for (std::size_t step = 0; step <= finish.size(); ++step) {
    for (const StandingCharge &stand : stands) {
      const Element &element = making.edition[stand.element];
      if (by_hand_on_copies(element) && steps_before(finish, element) == step)
        tasks.push_back({std::nullopt, stand.element, stand.pages,
                         run_of(element.work.only ? element.work.only : stand.only)});
    }
    if (step < finish.size())
      tasks.push_back({step, ElementId::none, {}, run_of(finish[step].work.only)});
  }
  return tasks;
}

std::string task_name(const Making &making, const MakingTask &task) {
  const std::string alone = alone_in(making.edition, task.only);
  if (task.step)
    return name_of(making.edition.finish[*task.step]) + alone;
  const Element &element = making.edition[task.element];
  if (const auto *hand = std::get_if<Hand>(&element.what))
    return harmless(fmt::format("{}{}{}{}", verb_of(hand->kind),
                                verb_of(hand->kind).empty() ? "" : " ", hand->text, alone));
  return fmt::format("work on the {}{}", name_of(element), alone);
}

const Work &work_of(const Making &making, const MakingTask &task) {
  return task.step ? making.edition.finish[*task.step].work : making.edition[task.element].work;
}

CutBefore cut_before(const Making &making, const std::vector<MakingTask> &tasks,
                     const MakingTask &task) {
  CutBefore cut;
  for (const MakingTask &earlier : tasks) {
    if (earlier.step == task.step && earlier.element == task.element)
      break;
    if (!earlier.step)
      continue;
    const FinishStep &step = making.edition.finish[*earlier.step];
    cut.fore_edge += step.fore_edge;
    cut.head += step.head;
    cut.foot += step.foot;
  }
  return cut;
}

CutBefore all_cuts(const Making &making) {
  CutBefore cut;
  for (const FinishStep &step : making.edition.finish) {
    cut.fore_edge += step.fore_edge;
    cut.head += step.head;
    cut.foot += step.foot;
  }
  return cut;
}

Box left_of_page(const Making &making, int page, const CutBefore &cut) {
  const Place &place = making.imposition.place_of(page);
  const Size size = making.imposition.size_of(page);
  const Edges beyond = making.imposition.sheet_of(page).cell ? Edges{} : place.slack;
  const auto edge = [](Length taken, Length slack) {
    return taken > Length{} ? taken : Length{} - slack;
  };
  const Length left = edge(place.spine == SpineAt::right ? cut.fore_edge : Length{}, beyond.left);
  const Length right = edge(place.spine == SpineAt::left ? cut.fore_edge : Length{}, beyond.right);
  const Length head = edge(cut.head, beyond.top), foot = edge(cut.foot, beyond.bottom);
  return {left, head, size.width - left - right, size.height - head - foot};
}

} // namespace bodkin::paperwork
