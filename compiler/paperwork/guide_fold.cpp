// Gathering and folding, drawn from the folding's own simulation.
#include "paperwork/guide_writer.hpp"

#include "sheet/fold.hpp"
#include "sheet/layout.hpp"
#include "sheet/steps_text.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::paperwork {
namespace {

struct PartFolding {
  const CopyPart &part;
  const Folding &folding;
  FoldedSheet folded;
  int sheets;

  // Flat sheets laid on each other and folded as one.
  bool together() const {
    return sheets > 1 && *folding.gather == Gather::nested && folding.steps.size() == 1 &&
           folding.sheets_a_section == 0 && !folding.back_to_back;
  }
};

std::optional<PartFolding> folding_of(const CopyPart &part) {
  Problems none;
  const Folding &folding = *part.edition->folding;
  const auto folded = fold(folding, none, panels_of_strip(folding, part.imposition.page_count));
  if (!folded)
    return std::nullopt;
  return PartFolding{part, folding, *folded, static_cast<int>(part.imposition.sheets.size())};
}

// The pictures are of one sheet by itself; its pages are those of a sheet of the copy.
void rename_pages(DrawnStage &stage, const PartFolding &of, int sheet) {
  const Layout laid = layout(of.folded, of.folding, of.part.imposition.page_count);
  for (DrawnPanel &panel : stage.panels) {
    if (panel.label.empty() || panel.label.find_first_not_of("0123456789") != std::string::npos)
      continue;
    const int page = laid.page_of(sheet, std::stoi(panel.label) - 1);
    panel.label = page <= of.part.imposition.page_count ? std::to_string(page) : "";
  }
}

Size cell_of(const PartFolding &of) {
  const Size page = of.part.imposition.page_size;
  const Sheet &sheet = of.part.imposition.sheets.front();
  // Pages that lie on their side make panels that do.
  const bool lying =
      !sheet.sides[0].places.empty() && sheet.sides[0].places.front().turn % 180 != 0;
  const Shares shares = shares_of(of.folding, of.part.imposition, of.part.edition->ruler);
  const Size cell = lying ? page.turned() : page;
  return {shares.across.value_or(cell.width), shares.down.value_or(cell.height)};
}

// What lies up, where that is a page or two: "pages 12 and 13 to be seen".
std::string seen_in(const DrawnStage &stage) {
  std::vector<std::string> pages;
  for (const DrawnPanel &panel : stage.panels)
    if (!panel.label.empty() && panel.label.find_first_not_of("0123456789") == std::string::npos)
      pages.push_back(panel.label);
  return pages.size() == 1   ? fmt::format("page {} to be seen", pages[0])
         : pages.size() == 2 ? fmt::format("pages {} and {} to be seen", pages[0], pages[1])
                             : "";
}

// What is done to the flat sheet before its first fold.
std::string first_words(const PartFolding &of, bool slit_before) {
  const bool pushed =
      std::any_of(of.folded.steps.begin(), of.folded.steps.end(),
                  [](const FoldStep &step) { return step.kind == FoldKind::ends_together; });
  return std::string(pushed ? "Crease every dashed line, forth and back, and lay the sheet flat "
                              "again. "
                            : "") +
         (of.folding.slits.empty() || slit_before ? "" : "Cut along the thick line, no further. ");
}

std::string caption_of(const PartFolding &of, const FoldingDrawing &drawing, std::size_t stage,
                       const DrawnStage &drawn, bool slit_before) {
  const bool last = stage + 1 == drawing.stages.size();
  const std::string seen = seen_in(drawn);
  const std::string next =
      last || stage >= of.folded.steps.size()
          ? ""
          : fmt::format(
                "Now {}{}.", of.folded.steps[stage].kind == FoldKind::ends_together ? "" : "fold ",
                step_in_words(of.folded.steps[stage],
                              shares_of(of.folding, of.part.imposition, of.part.edition->ruler)));
  if (stage == 0)
    return fmt::format("{} up{}{}. {}{}", of.folded.front_up ? "Front" : "Back",
                       seen.empty() ? "" : ", ", seen, first_words(of, slit_before), next);
  return !last ? next : seen.empty() ? "Done." : fmt::format("Done: {}.", seen);
}

Pictures stages_of(const PartFolding &of, bool slit_before) {
  FoldingDrawing drawing = draw_folding(of.folding);
  Pictures pictures{{}, Length::inches(8, 5)};
  for (std::size_t i = 0; i < drawing.stages.size(); ++i) {
    FoldStage stage{drawing.stages[i], cell_of(of), {}};
    rename_pages(stage.drawn, of, of.together() && i == 0 ? of.sheets - 1 : 0);
    if (of.together())
      for (DrawnPanel &panel : stage.drawn.panels)
        panel.layers *= of.sheets;
    if (i < of.folded.steps.size() && i + 1 < drawing.stages.size() &&
        of.folded.steps[i].kind == FoldKind::over_a_line)
      stage.moving = of.folded.steps[i].moving;
    pictures.shown.push_back({stage, caption_of(of, drawing, i, stage.drawn, slit_before)});
  }
  return pictures;
}

std::string sheets_from(const PartFolding &of, bool first) {
  const int number = of.part.sheets_before + (first ? 1 : of.sheets);
  return fmt::format("pile {}", number);
}

// Flat sheets laid on each other are folded by one fold.
std::string together_words(const PartFolding &of) {
  return fmt::format("Lay the gathered sheets before you as they are drawn, {} up, and fold {}, {} "
                     "at once: page 1 is then on top.",
                     of.folded.front_up ? "fronts" : "backs",
                     step_in_words(of.folded.steps.front()),
                     of.sheets == 2 ? "both" : fmt::format("all {}", of.sheets));
}

bool gathered_before(const GuideWriter &writer) {
  const auto &finish = writer.edition().finish;
  return std::any_of(finish.begin(), finish.end(),
                     [](const FinishStep &step) { return step.kind == StepKind::collate; });
}

// "pile 1 is for the copies plain alone; in the copies de-luxe, pile 4 takes its place"
std::string instead_of(const GuideWriter &writer, const Sheet &book) {
  const Edition &edition = writer.edition();
  std::string text =
      fmt::format("Pile {} is for {} alone", book.number, copies_words(edition, book.only));
  for (const Sheet &sheet : writer.making.imposition.sheets)
    if (sheet.in_place_of == book.number)
      text += fmt::format("; in {} take pile {} in its place", copies_words(edition, sheet.only),
                          sheet.number);
  return text + ".";
}

// What is seen of a sheet that lies so in the heap: "pile 6: 12 and 13".
std::string name_in_heap(const PartFolding &of, int sheet) {
  const Sheet &paper = of.part.imposition.sheets[static_cast<std::size_t>(sheet)];
  const int side = of.folding.steps.empty() || of.folded.front_up ? 0 : 1;
  return fmt::format("pile {}: {}", paper.number + of.part.sheets_before,
                     pages_of_one(paper, side));
}

// "each pile, 6 in all", or "each of the piles 1 and 2; the other piles wait".
std::string piles_taken(const GuideWriter &writer, const PartFolding &of) {
  if (writer.edition().pieces.empty())
    return fmt::format("each pile, {} in all", of.sheets);
  return fmt::format("each of the piles {} {} {}; the other piles wait", of.part.sheets_before + 1,
                     of.sheets == 2 ? "and" : "to", of.part.sheets_before + of.sheets);
}

std::string heads_words(const PartFolding &of) {
  const auto &sheets = of.part.imposition.sheets;
  const bool all_up = std::all_of(sheets.begin(), sheets.end(), [](const Sheet &sheet) {
    return std::all_of(sheet.sides[0].places.begin(), sheet.sides[0].places.end(),
                       [](const Place &place) { return place.page == 0 || place.turn == 0; });
  });
  return all_up ? "heads up" : "all the same way round";
}

void show_heap(GuideWriter &writer, const PartFolding &of, bool first_on_top, const Size &size) {
  constexpr int most = 20; // more are a block of lines
  if (of.sheets > most)
    return;
  Heap heap{size, {}};
  for (int i = 0; i < of.sheets; ++i)
    heap.names.push_back(name_in_heap(of, first_on_top ? of.sheets - 1 - i : i));
  writer.leaflet.add(
      Pictures{{{heap,
                 fmt::format("Fanned out here, so that each is seen, {}: they lie edge on edge.",
                             heads_words(of)),
                 true}},
               size.height > size.width ? Length::inches(3, 2) : Length::inches(11, 10)});
}

} // namespace

namespace {

// Nothing is printed on the side that lies up when the folding begins.
bool lies_blank(const GuideWriter &writer, const PartFolding &of) {
  const auto index = static_cast<std::size_t>(of.part.sheets_before);
  return of.sheets == 1 && !of.folded.front_up && index < writer.making.modes.size() &&
         !writer.making.modes[index][1];
}

} // namespace

void tell_other_piles(GuideWriter &writer) {
  for (const Sheet &sheet : writer.making.imposition.sheets)
    if (sheet.piece.empty() && sheet.only)
      writer.say(instead_of(writer, sheet));
}

bool fronts_lie_up(const CopyPart &part) {
  const auto of = folding_of(part);
  return of && of->folded.front_up;
}

bool tell_gathering(GuideWriter &writer) {
  const auto of = folding_of(writer.making.parts.front());
  if (of && of->sheets > 1 && *of->folding.gather != Gather::nested && !of->folding.tab) {
    writer.say(fmt::format("Take one {} from each pile, {} in all. The one from {} is on top, page "
                           "1 up; the next lies below it, and so on.",
                           of->folding.steps.empty() ? "sheet" : "folded sheet", of->sheets,
                           sheets_from(*of, true)));
    if (of->folding.steps.empty())
      show_heap(writer, *of, true, of->part.imposition.sheets.front().size);
    return true;
  }
  if (!of || !of->together())
    return false;
  writer.say(fmt::format(
      "Take one sheet from {}. The one from {} goes down first, its {} up; {} is on top. See that "
      "no two cling together, and knock them square at the head.",
      piles_taken(writer, *of), sheets_from(*of, true), of->folded.front_up ? "front" : "back",
      of->sheets == 2
          ? fmt::format("the one from {} lies on it, the same way round, and",
                        sheets_from(*of, false))
          : fmt::format("the next lies on it, the same way round, and so on; the one from {}",
                        sheets_from(*of, false))));
  show_heap(writer, *of, false, of->part.imposition.sheets.front().size);
  tell_other_piles(writer);
  return true;
}

void tell_slits(GuideWriter &writer) {
  const auto of = folding_of(writer.making.parts.front());
  if (!of || of->folding.slits.empty())
    return;
  writer.slit = true;
  writer.care(std::string(blade_caution));
  writer.say(fmt::format("Lay the sheet {} up, as it is drawn here, and cut along the thick lines, "
                         "no further: {}.",
                         of->folded.front_up ? "front" : "back", slits_in_words(of->folded)));
  Pictures pictures = stages_of(*of, true);
  pictures.shown.resize(1);
  std::get<FoldStage>(pictures.shown.front().what).moving.reset();
  pictures.shown.front().caption = fmt::format("{} up: dashed lines are folds, thick ones are cut.",
                                               of->folded.front_up ? "Front" : "Back");
  writer.leaflet.add(std::move(pictures));
}

void tell_strip(GuideWriter &writer) {
  const CopyPart &book = writer.making.parts.front();
  const auto of = folding_of(book);
  if (!of)
    return;
  const std::string words = strip_in_words(*book.edition, of->folded, book.imposition);
  writer.strip = !words.empty();
  if (writer.strip)
    writer.say(words);
}

void tell_folding(GuideWriter &writer, const CopyPart &part) {
  const auto of = folding_of(part);
  if (!of || of->folding.steps.empty())
    return;
  const bool slits_told = !part.piece && writer.slit;
  if (!of->folded.slits.empty() && !slits_told)
    writer.care(std::string(blade_caution));
  if (!part.piece && !gathered_before(writer) && !tell_gathering(writer))
    tell_other_piles(writer);
  if (lies_blank(writer, *of))
    writer.say("What lies up is blank: lay the sheet as its front is drawn at the piles, head away "
               "from you, and turn it like a leaf of a book. When it is folded, page 1 is on top, "
               "the right way up.");
  writer.leaflet.add(stages_of(*of, !part.piece && writer.slit));
  if (of->folding.tab && of->sheets > 1)
    writer.leaflet.add(Passage{
        {}, "Only the strip's first sheet is drawn; the others go on behind it.", true, true});
  const FoldingTold told{!part.piece && writer.slit, !part.piece && writer.strip};
  std::string text = folding_in_words(*part.edition, of->folded, part.imposition, told);
  if (of->together())
    text = together_words(*of);
  if (!part.piece && !writer.edition().runs.empty())
    text += fmt::format("\nLay the copies of each kind on a heap of their own: {}.",
                        runs_words(writer.edition()));
  for (std::size_t begin = 0; begin < text.size();) {
    const std::size_t end = std::min(text.find('\n', begin), text.size());
    if (end > begin)
      writer.say(text.substr(begin, end - begin));
    begin = end + 1;
  }
}

} // namespace bodkin::paperwork
