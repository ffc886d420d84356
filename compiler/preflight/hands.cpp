// Work by hand on pages: numbers for as many copies as there are, and a stage that comes.
#include "edition/copy_numbers.hpp"
#include "page/outline.hpp"
#include "preflight/about.hpp"
#include "preflight/copy.hpp"
#include "preflight/edge_problems.hpp"
#include "preflight/families.hpp"
#include "preflight/inward.hpp"
#include "sheet/numbered.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <set>

namespace bodkin {
namespace {

Problem counts_differ(const Inspection &inspection, const Known<Counts> &counts,
                      std::int64_t copies) {
  const std::int64_t numbers = counts->last - counts->first + 1;
  Problem problem;
  problem.check = "counts-differ";
  problem.range = counts.from;
  problem.message =
      fmt::format("{} {} for a run of {} {}", numbers, numbers == 1 ? "number" : "numbers", copies,
                  copies == 1 ? "copy" : "copies");
  problem.why = numbers < copies
                    ? "every good copy gets a number of its own, and these give out before the "
                      "copies do; spares are not numbered"
                    : "a numbered edition says how many there are: numbers that no copy bears are "
                      "missing copies";
  retype_part(inspection, problem, counts.from,
              fmt::format("{}-{}", counts->first, counts->first + copies - 1),
              fmt::format("counts     {}-{}", counts->first, counts->first + copies - 1));
  return problem;
}

bool differ(const Counts &counts, std::int64_t copies) {
  return counts.last - counts.first + 1 != copies;
}

Problem two_numbers(const Inspection &inspection, const Known<Counts> &counts,
                    const Known<Counts> &all) {
  Problem problem;
  problem.check = "counts-differ";
  problem.range = counts.from;
  problem.message = fmt::format("the first copy is number {} here, and {} by the edition's counts",
                                counts->first, all->first);
  problem.why = "a copy that bears two numbers can be signed off by neither";
  const std::string same = fmt::format("{}-{}", all->first, all->last);
  retype_part(inspection, problem, counts.from, same, fmt::format("counts     {}", same));
  problem.related = {{all.from, "the edition's numbers"}};
  return problem;
}

// A run of its own may have numbers of its own.
bool numbers_all(const Element &element) { return !element.work.only; }

// What stands in the books of all runs is counted through them.
std::int64_t copies_with(const Inspection &inspection, const Element &element) {
  const auto &only = element.work.only;
  const RunSet whose = only                         ? RunSet(**only)
                       : inspection.is_other_book() ? RunSet()
                                                    : RunSet(inspection.edition.of_run);
  return copies_of(inspection.edition, whose).good;
}

bool shows_a_number(const CopyPart &part) {
  return std::any_of(part.imposition.sheets.begin(), part.imposition.sheets.end(), is_numbered);
}

bool is_numbering(const Item &item) {
  const auto *hand = std::get_if<SetHand>(&item.what);
  return hand && hand->kind == HandKind::number;
}

bool is_numbered_by_hand(const Inspection &part) {
  const auto &pages = part.drawings.pages;
  return std::any_of(pages.begin(), pages.end(), [](const PageDrawing &page) {
    return std::any_of(page.items.begin(), page.items.end(), is_numbering);
  });
}

Problem numbers_nowhere(const Known<Counts> &counts) {
  return {.kind = Kind::note,
          .check = "numbers-nowhere",
          .range = counts.from,
          .message = "these numbers stand nowhere in a copy",
          .why = "the copies are counted, and nothing prints a copy's number or has it written in",
          .type = {{"words in body\n  says \"Copy [1](fact:copy)\"",
                    "on the page that is to show it, with a place of its own"}}};
}

bool binds(const FinishStep &step) {
  return step.kind == StepKind::staple || step.kind == StepKind::sew ||
         (step.kind == StepKind::glue && (step.on == StepOn::spine || step.on == StepOn::cover));
}

bool comes(const std::vector<FinishStep> &finish, When when) {
  if (finish.empty() || (when != When::bound && when != When::trimmed))
    return true;
  return std::any_of(finish.begin(), finish.end(), [when](const FinishStep &step) {
    return when == When::bound ? binds(step) : step.kind == StepKind::trim;
  });
}

Problem stage_never_comes(const Known<When> &when) {
  const bool bound = *when == When::bound;
  Problem problem;
  problem.check = "stage-never-comes";
  problem.range = when.from;
  problem.message = fmt::format("no copy is ever {} in this edition", bound ? "bound" : "trimmed");
  problem.why = fmt::format("finish has no step that {}, so the work would wait for ever",
                            bound ? "staples, sews or glues it" : "trims it");
  problem.type = {{"when       folded",
                   bound ? "or a staple line under finish" : "or a trim line under finish"}};
  return problem;
}

Extent place_of(const Item &item) {
  const Polygon corners = polygon_of(item.place, item.to_page);
  Extent place{corners[0].x, corners[0].y, corners[0].x, corners[0].y};
  for (const Point &p : corners)
    place = {std::min(place.left, p.x), std::min(place.top, p.y), std::max(place.right, p.x),
             std::max(place.foot, p.y)};
  return place;
}

// A name written across two pages or a number half on the table was meant on the page.
bool stays_on_paper(const Item &item) {
  const HandKind kind = std::get<SetHand>(item.what).kind;
  return kind == HandKind::signature || kind == HandKind::number || kind == HandKind::sticker;
}

// How far a thing passes its page, where that is more than a stamp or a spray may: with its middle
// past the edge, or at all.
std::optional<Past> hangs_over(const Inspection &inspection, int page, const Item &item) {
  const Size size = inspection.imposition.size_of(page);
  const Extent place = place_of(item);
  const double x = (place.left + place.right) / 2, y = (place.top + place.foot) / 2;
  const bool middle_is_off =
      x < 0 || y < 0 || x > size.width.in_points() || y > size.height.in_points();
  const Past over = past(place, {{}, {}, size.width, size.height});
  if (item.crosses_fold || place_is_broken(inspection, item) ||
      !(middle_is_off || (stays_on_paper(item) && any(over))))
    return std::nullopt;
  return over;
}

Matter passing(int page, const Item &item, const Past &over) {
  Matter matter;
  matter.item = &item;
  matter.reach = matter.place_reach = over;
  matter.faults.push_back({page, EdgeTrouble::off_the_page, over});
  return matter;
}

// A stamp may well run over the edge; one that lies past it altogether was meant elsewhere.
bool lies_off(const Inspection &inspection, int page, const Item &item) {
  const Size size = inspection.imposition.size_of(page);
  const double w = size.width.in_points(), h = size.height.in_points();
  const Polygon corners = polygon_of(item.place, item.to_page);
  const auto all = [&](auto past) { return std::all_of(corners.begin(), corners.end(), past); };
  return all([](const Point &p) { return p.x <= 0; }) ||
         all([](const Point &p) { return p.y <= 0; }) ||
         all([w](const Point &p) { return p.x >= w; }) ||
         all([h](const Point &p) { return p.y >= h; });
}

Problem hand_off_the_page(const Inspection &inspection, int page, const Item &item) {
  const Size size = inspection.imposition.size_of(page);
  const Ruler ruler = inspection.edition.ruler;
  Problem problem;
  problem.check = "off-the-page";
  problem.range = place_range(inspection, item);
  problem.message = fmt::format("this {} lies past the edge of {}", name_of(inspection, item),
                                pages_in_words(inspection, {page}));
  problem.why = fmt::format("the page is {} x {}, counted from its top left corner",
                            rounded(size.width, ruler), rounded(size.height, ruler));
  const Past over = past(place_of(item), {{}, {}, size.width, size.height});
  type_inward(inspection, passing(page, item, over), problem);
  if (problem.type.empty())
    problem.type = {{{}, "move it onto the page"}};
  return problem;
}

} // namespace

void check_hands(const Inspection &inspection, Problems &problems) {
  std::set<ElementId> seen;
  for (int page = 1; page <= inspection.imposition.page_count; ++page)
    for (const Item &item : inspection.drawings[page].items) {
      if (!std::holds_alternative<SetHand>(item.what) || !seen.insert(item.element).second)
        continue;
      if (lies_off(inspection, page, item))
        problems.push_back(hand_off_the_page(inspection, page, item));
      else if (const auto over = hangs_over(inspection, page, item))
        problems.push_back(off_the_page(inspection, passing(page, item, *over)));
      const Element &element = inspection.edition[item.element];
      const auto &counts = std::get<Hand>(element.what).counts;
      const std::int64_t copies = copies_with(inspection, element);
      if (counts && differ(**counts, copies))
        problems.push_back(counts_differ(inspection, *counts, copies));
      else if (const auto &all = inspection.edition.counts;
               counts && all && numbers_all(element) && (*counts)->first != (*all)->first)
        problems.push_back(two_numbers(inspection, *counts, *all));
      if (element.work.when && !comes(inspection.edition.finish, **element.work.when))
        problems.push_back(stage_never_comes(*element.work.when));
    }
}

void check_numbers(const CopyInspection &copy, Problems &problems) {
  const Inspection &book = copy.each.front();
  const auto &counts = book.edition.counts;
  if (!counts)
    return;
  if (differ(**counts, book.edition.run->copies))
    problems.push_back(counts_differ(book, *counts, book.edition.run->copies));
  if (std::none_of(copy.parts.begin(), copy.parts.end(), shows_a_number) &&
      std::none_of(copy.each.begin(), copy.each.end(), is_numbered_by_hand))
    problems.push_back(numbers_nowhere(*counts));
}

} // namespace bodkin
