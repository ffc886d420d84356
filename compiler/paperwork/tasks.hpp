// What is done by hand to a run, in the order of doing: steps of finish and, where they fall
// between them, stamps, signatures and whatever else stands on pages.
#pragma once

#include "paperwork/making.hpp"

#include <optional>

namespace bodkin::paperwork {

struct MakingTask {
  std::optional<std::size_t> step; // of Edition::finish; else work on pages
  ElementId element = ElementId::none;
  std::vector<int> pages;              // that it stands on, numbered on
  std::optional<std::uint32_t> only{}; // the run whose copies alone have it
};

// Of work of one time, what has to dry comes last, so that no copy is opened while it is wet; and
// where finish has a `dry` with nothing of its own to dry, before that.
std::vector<MakingTask> tasks_in_order(const Making &making);

bool in_pencil(const Hand &hand); // by its own words; nothing of it dries
bool has_to_dry(const Element &element);

// What a task leaves wet that no later step of finish waits for.
enum class Drying {
  nothing,
  ink,  // of a stamp or a pen: ink_dries
  gum,  // wetted: gum_dries
  label // glue, spray, colours: as long as the label says, label_dries at the least
};
Drying drying_after(const Making &making, const std::vector<MakingTask> &tasks,
                    const MakingTask &task);
// A stamp pad's ink on uncoated paper; common practice, no source.
inline constexpr Duration ink_dries{600'000};
inline constexpr Duration gum_dries{300'000};
inline constexpr Duration label_dries{1'800'000};
bool is_gummed(const Element &element);
Duration dries_for(Drying drying);

// Done before anything is gathered or folded: on the sheets of spares too.
bool is_on_flat_sheets(const Edition &edition, const MakingTask &task);
// Numbers and signatures are not put on spares.
bool on_good_copies_only(const Element &element);

// "stamp", "stick", "tip in": what is done, as a verb; empty where only the maker's words say it.
std::string_view verb_of(HandKind kind);
// "stamp lino moon", "staple"
std::string task_name(const Making &making, const MakingTask &task);
const Work &work_of(const Making &making, const MakingTask &task);

// What the knife has taken from a copy before a task, head, foot and fore-edge.
struct CutBefore {
  Length fore_edge, head, foot;
};
CutBefore cut_before(const Making &making, const std::vector<MakingTask> &tasks,
                     const MakingTask &task);
CutBefore all_cuts(const Making &making);
// What is left of the paper of a page, in the page's own frame: less what the knife has taken, and
// where it has not been, with what the sheet has beyond the page. What is laid several up is cut
// out at the page's edges.
Box left_of_page(const Making &making, int page, const CutBefore &cut);

} // namespace bodkin::paperwork
