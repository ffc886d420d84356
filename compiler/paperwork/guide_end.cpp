// What must be there in the end, and the plan of the evening.
#include "paperwork/guide_writer.hpp"

#include "paperwork/evening.hpp"
#include "paperwork/own_words.hpp"
#include "problems/characters.hpp"
#include "sheet/numbered.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::paperwork {
namespace {

const Hand *numbering(const GuideWriter &writer) {
  for (const MakingTask &task : writer.tasks)
    if (!task.step)
      if (const auto *hand = std::get_if<Hand>(&writer.edition()[task.element].what))
        if (hand->kind == HandKind::number)
          return hand;
  return nullptr;
}

// On several sheets of the book itself, which can then be compared.
bool shows_number_twice(const Making &making) {
  return std::count_if(making.imposition.sheets.begin(), making.imposition.sheets.end(),
                       [](const Sheet &sheet) {
                         return is_numbered(sheet) && sheet.piece.empty() && !sheet.only;
                       }) > 1;
}

bool prints_numbers(const Making &making) {
  return std::any_of(making.imposition.sheets.begin(), making.imposition.sheets.end(), is_numbered);
}

Counts counts_of(const Edition &edition, const Hand *hand) {
  if (hand != nullptr && hand->counts)
    return **hand->counts;
  if (edition.counts)
    return **edition.counts;
  return {1, edition.run->copies};
}

} // namespace

void tell_plan(GuideWriter &writer) {
  Leaflet plan;
  tell_evening(writer.making, PlanReader::at_the_table, plan);
  if (plan.blocks.empty())
    return;
  writer.leaflet.add(Headline{"The evening, planned", 1, {}, true});
  for (LeafletBlock &block : plan.blocks)
    writer.leaflet.blocks.push_back(std::move(block));
}

// Each number of a numbered edition, to be ticked when its copy is done.
void tell_numbers(GuideWriter &writer) {
  constexpr std::int64_t most_boxes = 1000;
  const Hand *hand = numbering(writer);
  const bool printed = prints_numbers(writer.making);
  if (hand == nullptr && !printed)
    return;
  const auto [first, last] = counts_of(writer.edition(), hand);
  writer.leaflet.add(NewPage{});
  writer.leaflet.add(Headline{"Numbers, to sign off", 1, {}});
  std::string text =
      fmt::format("The numbers {} to {}, {}, one on each good copy. Tick a number when its copy is "
                  "{}, and write on its line who has it.",
                  first, last, hand != nullptr ? harmless(hand->text) : "as they are printed",
                  hand != nullptr ? "numbered" : "made");
  if (printed && !writer.edition().runs.empty())
    text += fmt::format(" The copies {}.", runs_of_numbers(writer.edition()));
  writer.say(std::move(text));
  Ticks ticks;
  for (std::int64_t number = first; number <= std::min(last, first + most_boxes - 1); ++number)
    ticks.labels.push_back(std::to_string(number));
  writer.leaflet.add(std::move(ticks));
  if (last - first + 1 > most_boxes)
    writer.remark(fmt::format("{} to {} go on in a list of your own.", first + most_boxes, last));
}

namespace {

// The book's pages as a reader meets them, small, to leaf through a copy by.
void show_pages_in_order(GuideWriter &writer) {
  constexpr int most = 48, to_a_row = 12;
  const int pages = *writer.edition().page_count;
  if (pages > most || pages < 4)
    return;
  for (int first = 1; first <= pages; first += to_a_row) {
    Pictures row{{}, Length::inches(1), to_a_row, true};
    for (int page = first; page < first + to_a_row && page <= pages; ++page) {
      Measured picture;
      picture.ground = PageGround{page};
      picture.size = writer.making.imposition.size_of(page);
      picture.strokes.push_back(
          {StrokeKind::outline, {}, {picture.size.width, picture.size.height}, {}});
      row.shown.push_back({picture, std::to_string(page), true});
    }
    writer.leaflet.add(std::move(row));
  }
}

// What the step before it has left wet.
std::string waiting_words(const GuideWriter &writer, const MakingTask *before) {
  switch (before == nullptr ? Drying::nothing
                            : drying_after(writer.making, writer.tasks, *before)) {
  case Drying::ink:
    return fmt::format("First wait till the ink of the last copy is dry: {} on bare paper, "
                       "longer where it lies on print. ",
                       written(ink_dries));
  case Drying::gum:
    return fmt::format("First wait till the gum of the last copy is dry, {}. ", written(gum_dries));
  case Drying::label:
    return "First wait till the last copy is dry, as long as the label says. ";
  case Drying::nothing:
    break;
  }
  return "";
}

// What was done by hand before, and what is bound with the book: ", with the stamp on page 1".
std::string made_words(const GuideWriter &writer, const MakingTask *before) {
  std::vector<std::string> made;
  for (const CopyPart &part : writer.making.parts)
    if (part.piece && (part.piece->is_wrap() || *part.piece->goes == Goes::centre))
      made.push_back("the " + part.piece->name);
  for (const MakingTask &task : writer.tasks) {
    const auto *hand = task.step || before == nullptr
                           ? nullptr
                           : std::get_if<Hand>(&writer.edition()[task.element].what);
    if (hand != nullptr && hand->kind != HandKind::other && !task.pages.empty() &&
        !on_good_copies_only(writer.edition()[task.element]))
      made.push_back(fmt::format("the {} on {}", name_of(hand->kind),
                                 page_words(writer.making, task.pages.front())));
    if (&task == before)
      break;
  }
  return made.empty() ? "" : fmt::format(" Look for {} too.", in_a_row(made));
}

// Where a number that is spoilt is found in its file.
std::string pages_of_numbers(const Making &making) {
  for (const Pass &pass : making.passes) {
    if (!pass.numbered ||
        making.imposition.sheets[static_cast<std::size_t>(pass.sheets.front())].up > 1)
      continue;
    std::vector<int> second;
    for (std::size_t i = 0; i < pass.pages.size(); ++i)
      if (pass.pages[i].nth == 1)
        second.push_back(static_cast<int>(i) + 1);
    const CopiesCounted copies = copies_of(making.edition, pass.only);
    if (!second.empty() && copies.good > 1)
      return fmt::format(" Of a numbered file print the pages of that number alone: {} has number "
                         "{} on {} {}, and so on.",
                         pass.file, number_of(making.edition, copies.place(1)),
                         second.size() == 1 ? "page" : "pages", spoken::listed(second));
  }
  return "";
}

} // namespace

void tell_counts(GuideWriter &writer, const MakingTask *before) {
  if (writer.chosen)
    return;
  writer.chosen = true;
  const Run &run = *writer.edition().run;
  const std::string good = counted(run.copies, "good copy", "good copies");
  writer.step("Check and count", good);
  writer.say(fmt::format(
      "{}Leaf through each copy: every page there, none twice, in order, the right way up, nothing "
      "smudged{}.{} Count {}{}.",
      waiting_words(writer, before),
      shows_number_twice(writer.making) ? ", its number the same wherever it stands" : "",
      made_words(writer, before), good,
      writer.edition().runs.empty() ? "" : ": " + runs_words(writer.edition())));
  writer.say(run.spare == 0
                 ? "Of a spoilt copy, print the sheets that are spoilt once more."
                 : std::string("Make spoilt copies again from the loose sheets, by every step till "
                               "here. Where more are spoilt than there are spares, print the "
                               "sheets that are missing once more.") +
                       pages_of_numbers(writer.making));
  show_pages_in_order(writer);
}

void tell_rest(GuideWriter &writer) {
  if (writer.edition().run->spare == 0)
    return;
  writer.leaflet.add(Headline{"In the end", 1, {}});
  writer.say("Loose sheets that were not needed make no copies: keep them for whoever asks for a "
             "missing page.");
}

} // namespace bodkin::paperwork
