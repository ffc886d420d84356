// Pieces beside the book, and what must be there in the end.
#include "paperwork/guide_writer.hpp"

#include "paperwork/evening.hpp"
#include "problems/characters.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::paperwork {
namespace {

std::string name_words(const Piece &piece) {
  return piece.title.empty() ? fmt::format("The {}", piece.name)
                             : fmt::format("The {}: {}", piece.name, harmless(piece.title));
}

std::string piles_of(const CopyPart &part) {
  std::vector<int> numbers;
  for (const Sheet &sheet : part.imposition.sheets)
    numbers.push_back(sheet.number + part.sheets_before);
  return spoken::listed(numbers);
}

// How many are cut from a sheet, and where.
std::optional<Shown> cut_apart(const GuideWriter &writer, const CopyPart &part) {
  const auto index = static_cast<std::size_t>(part.sheets_before);
  const Sheet &sheet = writer.making.imposition.sheets[index];
  if (sheet.up <= 1)
    return std::nullopt;
  Measured picture;
  picture.ground = SideGround{static_cast<int>(index), 0};
  picture.size = sheet.size;
  picture.strokes.push_back({StrokeKind::outline, {}, {sheet.size.width, sheet.size.height}, {}});
  for (const Sheet::FoldLine &cut : sheet.cuts) {
    picture.strokes.push_back({StrokeKind::cut, cut.start, cut.end, {}});
    if (cut.start.x == cut.end.x)
      picture.dimensions.push_back(
          {{}, {cut.start.x, {}}, writer.exact(cut.start.x), Beside::above});
    else
      picture.dimensions.push_back(
          {{}, {{}, cut.start.y}, writer.exact(cut.start.y), Beside::left});
  }
  return Shown{picture,
               fmt::format("Cut {} out of each sheet of {} {}, along these lines.", sheet.up,
                           part.imposition.sheets.size() == 1 ? "pile" : "piles", piles_of(part))};
}

// Goes through the binding, or is a side of the book itself.
bool is_bound(const Piece &piece) {
  return piece.is_wrap() || piece.is_reverse() || *piece.goes == Goes::centre;
}

void tell_piece(GuideWriter &writer, const CopyPart &part) {
  const Piece &piece = *part.piece;
  writer.head(name_words(piece));
  if (piece.is_reverse()) {
    writer.say("It is printed on the back of the book's own sheet: there is nothing to add.");
    return;
  }
  writer.say(fmt::format("From pile {}. It {}.{}", piles_of(part), goes_in_words(piece),
                         part.in_a_copy() > 1 ? fmt::format(" Each copy gets {}.", part.in_a_copy())
                                              : std::string()));
  tell_cutting_apart(writer, part);
  tell_folding(writer, part);
}

} // namespace

bool tell_cutting_apart(GuideWriter &writer, const CopyPart &part) {
  auto cut = cut_apart(writer, part);
  if (!cut)
    return false;
  writer.leaflet.add(Pictures{{std::move(*cut)}, Length::inches(2)});
  writer.care(
      "Cut with a sharp blade along a steel edge, on a mat, fingers behind the edge and off "
      "the line; several light cuts, a few sheets at a time; the blade is covered when it is "
      "laid down.");
  return true;
}

void tell_pieces(GuideWriter &writer, bool bound) {
  std::vector<const CopyPart *> these;
  for (const CopyPart &part : writer.making.parts)
    if (part.piece && is_bound(*part.piece) == bound)
      these.push_back(&part);
  if (these.empty())
    return;
  writer.step(bound ? "Add what is bound with it" : "Add the pieces");
  for (const CopyPart *part : these)
    tell_piece(writer, *part);
}

void tell_plan(GuideWriter &writer) {
  Leaflet plan;
  tell_evening(writer.making, plan);
  if (plan.blocks.empty())
    return;
  writer.leaflet.add(Headline{"The evening, planned", 1, {}});
  for (LeafletBlock &block : plan.blocks)
    writer.leaflet.blocks.push_back(std::move(block));
}

namespace {

const Hand *numbering(const GuideWriter &writer) {
  for (const MakingTask &task : writer.tasks)
    if (!task.step)
      if (const auto *hand = std::get_if<Hand>(&writer.edition()[task.element].what))
        if (hand->kind == HandKind::number)
          return hand;
  return nullptr;
}

} // namespace

// Each number of a numbered edition, to be ticked when its copy is done.
void tell_numbers(GuideWriter &writer) {
  constexpr std::int64_t most_boxes = 1000;
  const Hand *hand = numbering(writer);
  if (hand == nullptr)
    return;
  const std::int64_t first = hand->counts ? (*hand->counts)->first : 1;
  const std::int64_t last = hand->counts ? (*hand->counts)->last : writer.edition().run->copies;
  writer.leaflet.add(NewPage{});
  writer.leaflet.add(Headline{"Numbers, to sign off", 1, {}});
  writer.say(fmt::format("{}: {} to {}, one on each good copy. Tick a number when its copy is "
                         "numbered, and write on its line who has it.",
                         harmless(hand->text), first, last));
  Ticks ticks;
  for (std::int64_t number = first; number <= std::min(last, first + most_boxes - 1); ++number)
    ticks.labels.push_back(std::to_string(number));
  writer.leaflet.add(std::move(ticks));
  if (last - first + 1 > most_boxes)
    writer.remark(fmt::format("{} to {} go on in a list of your own.", first + most_boxes, last));
}

void tell_counts(GuideWriter &writer) {
  if (writer.chosen)
    return;
  writer.chosen = true;
  const Run &run = *writer.edition().run;
  writer.step("Check and count");
  writer.say(fmt::format(
      "Leaf through each copy: every page there, in order, the right way up, nothing smudged.{} "
      "Count {}.",
      run.spare == 0
          ? ""
          : " Make what is spoilt again from loose sheets, through every step till here.",
      counted(run.copies, "good copy", "good copies")));
}

void tell_rest(GuideWriter &writer) {
  if (writer.edition().run->spare > 0)
    writer.say("Keep the loose sheets that are left for whoever asks for a missing page.",
               "In the end.");
  if (!writer.cautioned.empty())
    writer.remark(
        "Rules of the place where you work, and what labels say, come before this paper.");
}

} // namespace bodkin::paperwork
