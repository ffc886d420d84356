#include "sheet/finish_text.hpp"

#include "problems/characters.hpp"
#include "problems/wrap.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {
namespace {

std::string listed_lengths(const std::vector<Length> &lengths, Ruler ruler) {
  std::string text;
  for (std::size_t i = 0; i < lengths.size(); ++i)
    text += fmt::format("{}{}",
                        i == 0                    ? ""
                        : i + 1 == lengths.size() ? " and "
                                                  : ", ",
                        written(lengths[i], ruler));
  return text;
}

std::string counted(int count, std::string_view one, std::string_view more) {
  return fmt::format("{} {}", count, count == 1 ? one : more);
}

std::string trim_words(const FinishStep &step, Ruler ruler) {
  std::string text;
  const auto add = [&](std::string_view edge, Length width) {
    if (width > Length{})
      text += fmt::format("{}{} {}", text.empty() ? "" : ", ", edge, written(width, ruler));
  };
  add("fore-edge", step.fore_edge);
  add("head", step.head);
  add("foot", step.foot);
  return text;
}

int holes_of(const FinishStep &step, const Edition &edition) {
  return step.holes > 0 || !edition.folding->holes ? step.holes : edition.folding->holes->count;
}

std::string sewing_words(const FinishStep &step, const Edition &edition) {
  const auto &holes = edition.folding->holes;
  const std::string through =
      holes ? fmt::format("the side, {} from the spine", written(holes->from_spine, edition.ruler))
            : "the fold";
  const int count = holes_of(step, edition);
  return count == 0 ? "through " + through
                    : fmt::format("{} through {}", counted(count, "hole", "holes"), through);
}

// The book's own sheets; a wrap and inserts beside them are told where they go.
std::string gathering_words(const Imposition &imposition) {
  const auto of_book = std::count_if(imposition.sheets.begin(), imposition.sheets.end(),
                                     [](const Sheet &sheet) { return sheet.piece.empty(); });
  const bool pieces = static_cast<std::size_t>(of_book) < imposition.sheets.size();
  const std::string_view thing = pieces ? "book, with its pieces beside it" : "copy";
  return of_book == 1 ? fmt::format("one sheet makes a {}", thing)
                      : fmt::format("{} sheets make a {}", of_book, thing);
}

std::string details(const FinishStep &step, const Edition &edition, const Imposition &imposition) {
  const Ruler ruler = edition.ruler;
  switch (step.kind) {
  case StepKind::collate:
    return gathering_words(imposition);
  case StepKind::crease:
  case StepKind::fold:
    return step.all ? "all sheets" : "the cover";
  case StepKind::staple:
    return fmt::format("{}, leg {}", step.staples, written(step.leg, ruler));
  case StepKind::trim:
    return trim_words(step, ruler);
  case StepKind::sew:
    return sewing_words(step, edition);
  case StepKind::punch:
    return fmt::format("{}, {} from the spine", counted(step.holes, "hole", "holes"),
                       written(step.from_spine, ruler));
  case StepKind::round:
    return fmt::format("{}, radius {}", counted(step.corners, "corner", "corners"),
                       written(step.radius, ruler));
  case StepKind::dry:
  case StepKind::press:
    return written(step.waits);
  case StepKind::cut:
  case StepKind::glue:
  case StepKind::tie:
  case StepKind::add:
  case StepKind::pack:
    break;
  }
  return harmless(step.text);
}

// What the sheet has beyond the book's pages, and what the knife has not taken before a step.
struct Beyond {
  Length fore_edge, head, foot;
};

Beyond beyond_pages(const Edition &edition, const Imposition &imposition, std::size_t index) {
  if (imposition.where.size() < 2 || imposition.where[1].sheet < 0 || imposition.sheet_of(1).cell)
    return {}; // what is laid several up is cut out at its pages' edges
  const Place &place = imposition.place_of(1);
  Beyond beyond{place.spine == SpineAt::right ? place.slack.left : place.slack.right,
                place.slack.top, place.slack.bottom};
  for (std::size_t i = 0; i < index; ++i) {
    const FinishStep &step = edition.finish[i];
    beyond.fore_edge = step.fore_edge > Length{} ? Length{} : beyond.fore_edge;
    beyond.head = step.head > Length{} ? Length{} : beyond.head;
    beyond.foot = step.foot > Length{} ? Length{} : beyond.foot;
  }
  return beyond;
}

std::vector<Length> places_on_page(const Edition &edition, std::size_t index) {
  const FinishStep &step = edition.finish[index];
  const Length height = height_at(edition.finish, index, edition.size->height);
  const auto &holes = edition.folding->holes;
  if (step.kind == StepKind::staple)
    return places_down(step, step.staples, height);
  if (step.kind == StepKind::sew && step.holes == 0 && holes) {
    FinishStep of_folding = step;
    of_folding.from_head_and_foot = holes->from_head_and_foot;
    return places_down(of_folding, holes->count, height);
  }
  return step.holes > 0 ? places_down(step, step.holes, height) : std::vector<Length>{};
}

// From the head of the paper.
std::vector<Length> places_of(const Edition &edition, const Imposition &imposition,
                              std::size_t index) {
  std::vector<Length> places = places_on_page(edition, index);
  const Length above = beyond_pages(edition, imposition, index).head;
  for (Length &place : places)
    place += above;
  return places;
}

Length cut_before(const Edition &edition, std::size_t index) {
  Length cut;
  for (std::size_t i = 0; i < index; ++i)
    cut += edition.finish[i].fore_edge;
  return cut;
}

Length pile_at_fold(const Edition &edition, const Imposition &imposition) {
  Length pile;
  for (const Sheet &sheet : imposition.sheets)
    if (sheet.stock != StockId::none)
      pile += *edition[sheet.stock].caliper;
  return pile;
}

// A long-reach stapler's stop: from the edge that lies against it to the fold (derived).
std::vector<std::string> staple_facts(const Edition &edition, const Imposition &imposition,
                                      std::size_t index) {
  const FinishStep &step = edition.finish[index];
  const Length reach = edition.size->width - cut_before(edition, index) +
                       beyond_pages(edition, imposition, index).fore_edge;
  std::vector<std::string> facts{
      fmt::format("Set the stapler's stop {} from the staples: so far it is from the fore-edge to "
                  "the fold.",
                  written(reach, edition.ruler))};
  const Length pile = pile_at_fold(edition, imposition);
  if (pile > Length{} && step.leg > pile)
    facts.push_back(fmt::format("The fold is {} of paper; {} of each leg is left to bend over.",
                                rounded(pile, edition.ruler),
                                rounded(step.leg - pile, edition.ruler)));
  return facts;
}

// The pages that are pushed out furthest, and by how much.
struct PushedOut {
  Length creep;
  std::vector<int> pages;
};
PushedOut innermost(const Imposition &imposition) {
  PushedOut most;
  for (int page = 1; page <= imposition.page_count; ++page) {
    const Length creep = imposition.place_of(page).creep;
    if (creep > most.creep)
      most = {creep, {}};
    if (creep == most.creep)
      most.pages.push_back(page);
  }
  return most;
}

// What the knife leaves of the margin at the fore-edge; of all pages that is the narrowest where
// creep is not made up for.
std::string fore_edge_left(const Edition &edition, Length left, const PushedOut &inner) {
  const Ruler ruler = edition.ruler;
  std::string text = fmt::format("Of the {} margin at the fore-edge {} is left",
                                 written(edition.margins->outer, ruler), written(left, ruler));
  if (!edition.creep_made_up_for && inner.creep > Length{})
    text += fmt::format("; least on {}, {}, since creep is not made up for",
                        spoken::pages_listed(inner.pages), rounded(left - inner.creep, ruler));
  return text + ".";
}

std::vector<std::string> trim_facts(const Edition &edition, const Imposition &imposition,
                                    std::size_t index) {
  const FinishStep &step = edition.finish[index];
  const Ruler ruler = edition.ruler;
  Size copy = *edition.size;
  for (std::size_t i = 0; i <= index; ++i) {
    copy.width -= edition.finish[i].fore_edge;
    copy.height -= edition.finish[i].head + edition.finish[i].foot;
  }
  std::vector<std::string> facts{fmt::format(
      "The copy then measures {} x {}.", written(copy.width, ruler), written(copy.height, ruler))};
  const Length left = edition.margins->outer - cut_before(edition, index) - step.fore_edge;
  const PushedOut inner = innermost(imposition);
  if (step.fore_edge > Length{} && left > Length{})
    facts.push_back(fore_edge_left(edition, left, inner));
  const auto end = edition.finish.begin() + static_cast<std::ptrdiff_t>(index);
  const bool first = std::none_of(edition.finish.begin(), end, [](const FinishStep &earlier) {
    return earlier.kind == StepKind::trim;
  });
  if (edition.creep_made_up_for && first && inner.creep > Length{})
    facts.push_back(fmt::format(
        "Creep is made up for by moving matter towards the fold, most on {}: {} less inner margin.",
        spoken::pages_listed(inner.pages), rounded(inner.creep, ruler)));
  return facts;
}

std::vector<std::string> facts_of(const Edition &edition, const Imposition &imposition,
                                  std::size_t index) {
  switch (edition.finish[index].kind) {
  case StepKind::staple:
    return staple_facts(edition, imposition, index);
  case StepKind::trim:
    return trim_facts(edition, imposition, index);
  default:
    return {};
  }
}

} // namespace

std::vector<FinishTold> finish_told(const Edition &edition, const Imposition &imposition) {
  std::vector<FinishTold> all;
  for (std::size_t i = 0; i < edition.finish.size(); ++i) {
    const FinishStep &step = edition.finish[i];
    FinishTold told;
    told.down = places_of(edition, imposition, i);
    const std::string more = details(step, edition, imposition);
    told.says = fmt::format("{}{}{}", name_of(step), more.empty() ? "" : ": ", more);
    if (!told.down.empty())
      told.says += fmt::format(", at {} from the head", listed_lengths(told.down, edition.ruler));
    told.facts = facts_of(edition, imposition, i);
    if (step.work.caution)
      told.cautions.push_back(harmless(**step.work.caution));
    if (const std::string_view usual = usual_caution(step.kind); !usual.empty())
      told.cautions.emplace_back(usual);
    all.push_back(std::move(told));
  }
  return all;
}

std::string finish_in_words(const Edition &edition, const Imposition &imposition) {
  const std::vector<FinishTold> all = finish_told(edition, imposition);
  if (all.empty())
    return "";
  std::string text = "\nAfter printing, on each copy, in this order:\n";
  std::vector<std::string> said; // each usual caution once
  for (std::size_t i = 0; i < all.size(); ++i) {
    text += fmt::format("  {}. {}\n", i + 1, wrapped(all[i].says, report_columns, 5));
    for (const std::string &fact : all[i].facts)
      text += fmt::format("     {}\n", wrapped(fact, report_columns, 5));
    for (const std::string &caution : all[i].cautions) {
      if (std::find(said.begin(), said.end(), caution) != said.end())
        continue;
      said.push_back(caution);
      text += fmt::format("     {}\n", wrapped("Take care: " + caution, report_columns, 5));
    }
  }
  if (!said.empty())
    text += "  Rules of the place where you work come first.\n";
  return text;
}

} // namespace bodkin
