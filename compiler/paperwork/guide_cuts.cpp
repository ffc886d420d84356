// What is laid several up, cut apart: the cuts numbered in a picture, told in the order of cutting.
#include "paperwork/guide_writer.hpp"

#include "paperwork/own_words.hpp"
#include "sheet/numbered.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <set>
#include <utility>

namespace bodkin::paperwork {
namespace {

constexpr Length nothing = Length::inches(1, 64);

struct PieceCut {
  bool upright = false; // measured from the left edge; else from the head
  Length at;
  bool waste = false; // takes off what is no piece
};

std::string piles_of(const CopyPart &part) {
  std::vector<int> numbers;
  for (const Sheet &sheet : part.imposition.sheets)
    numbers.push_back(sheet.number + part.sheets_before);
  return spoken::listed(numbers);
}

std::set<Length> lines_of(const Sheet &sheet, bool upright) {
  std::set<Length> at;
  const Length end = upright ? sheet.size.width : sheet.size.height;
  for (const Sheet::FoldLine &cut : sheet.cuts) {
    const Length line = upright ? cut.start.x : cut.start.y;
    if ((cut.start.x == cut.end.x) == upright && line > nothing && end - line > nothing)
      at.insert(line);
  }
  return at;
}

bool as_wide(Length width, Length piece) {
  return width + nothing > piece && piece + nothing > width;
}

// Pieces are parted first, and their outer edges made true by the last cuts.
std::vector<PieceCut> cuts_one_way(const Sheet &sheet, bool upright) {
  const std::set<Length> lines = lines_of(sheet, upright);
  const Length whole = upright ? sheet.size.width : sheet.size.height;
  const Size cell = sheet.cell.value_or(sheet.size);
  const Length piece = upright ? cell.width : cell.height;
  std::vector<PieceCut> cuts, waste;
  for (const Length line : lines) {
    const bool outer = (line == *lines.begin() && !as_wide(line, piece)) ||
                       (line == *lines.rbegin() && !as_wide(whole - line, piece));
    (outer ? waste : cuts).push_back({upright, line, outer});
  }
  cuts.insert(cuts.end(), waste.begin(), waste.end());
  return cuts;
}

// The long ones first: what they leave is strips, cut together or one by one.
std::vector<PieceCut> in_order(const Sheet &sheet) {
  const bool upright_first = sheet.size.height >= sheet.size.width;
  std::vector<PieceCut> cuts = cuts_one_way(sheet, upright_first);
  const std::vector<PieceCut> across = cuts_one_way(sheet, !upright_first);
  cuts.insert(cuts.end(), across.begin(), across.end());
  return cuts;
}

// "1 at 4 1/4in", "2 and 3, which take off waste, at 1/4in and 8 1/4in"
std::string cuts_told(const GuideWriter &writer, const std::vector<PieceCut> &cuts, bool upright,
                      bool waste) {
  std::vector<std::string> told;
  for (std::size_t i = 0; i < cuts.size(); ++i)
    if (cuts[i].upright == upright && cuts[i].waste == waste)
      told.push_back(fmt::format("({}) {}", i + 1, writer.ruled(cuts[i].at)));
  return in_a_row(told);
}

std::string way_told(const GuideWriter &writer, const std::vector<PieceCut> &cuts, bool upright) {
  const std::string pieces = cuts_told(writer, cuts, upright, false);
  const std::string waste = cuts_told(writer, cuts, upright, true);
  if (pieces.empty() && waste.empty())
    return "";
  return fmt::format("measured from its {}: {}{}{}", upright ? "left edge" : "head", pieces,
                     pieces.empty() || waste.empty() ? "" : "; then the waste, ", waste);
}

std::string in_words(const GuideWriter &writer, const std::vector<PieceCut> &cuts) {
  const bool first = cuts.front().upright;
  std::string text = way_told(writer, cuts, first);
  if (const std::string across = way_told(writer, cuts, !first); !across.empty())
    text += fmt::format("{}{}", text.empty() ? "" : ". Then the strips, ", across);
  return text;
}

// From one line to the next, where there is room to say how far that is; the words say all.
void chain(const GuideWriter &writer, const std::set<Length> &at, Length whole, bool across,
           Measured &picture) {
  const int room = across ? 150 : 100; // points, about, of the whole in the picture
  Length last;
  std::vector<Length> ends(at.begin(), at.end());
  ends.push_back(whole);
  for (const Length end : ends) {
    const Spot from = across ? Spot{last, {}} : Spot{{}, last};
    const Spot to = across ? Spot{end, {}} : Spot{{}, end};
    const std::string says = writer.ruled(end - last);
    if ((end - last) * room >= whole * (5 * static_cast<std::int64_t>(says.size()) + 4))
      picture.dimensions.push_back({from, to, says, across ? Beside::above : Beside::left});
    last = end;
  }
}

void draw_cuts(const std::vector<PieceCut> &cuts, Measured &picture) {
  const Length right = picture.size.width, foot = picture.size.height;
  for (std::size_t i = 0; i < cuts.size(); ++i) {
    const Spot start = cuts[i].upright ? Spot{cuts[i].at, {}} : Spot{{}, cuts[i].at};
    const Spot end = cuts[i].upright ? Spot{cuts[i].at, foot} : Spot{right, cuts[i].at};
    picture.strokes.push_back({StrokeKind::cut, start, end, {}});
    picture.badges.push_back({end, std::to_string(i + 1),
                              cuts[i].upright ? Beside::below : Beside::right, cuts[i].waste});
  }
}

Shown cuts_shown(const GuideWriter &writer, int index, const std::vector<PieceCut> &cuts) {
  const Sheet &sheet = writer.making.imposition.sheets[static_cast<std::size_t>(index)];
  Measured picture;
  picture.ground = SideGround{index, 0};
  picture.size = sheet.size;
  picture.strokes.push_back({StrokeKind::outline, {}, {sheet.size.width, sheet.size.height}, {}});
  draw_cuts(cuts, picture);
  chain(writer, lines_of(sheet, true), sheet.size.width, true, picture);
  chain(writer, lines_of(sheet, false), sheet.size.height, false, picture);
  return {picture, cuts.size() == 1 ? "Where the cut goes." : "The cuts, numbered in their order.",
          true};
}

// What the knife makes of sheets with numbers.
void tell_stacks(GuideWriter &writer, const Sheet &sheet) {
  if (!is_numbered(sheet))
    return;
  const CopiesCounted copies = copies_of(writer.edition(), sheet.only);
  const std::int64_t over =
      sheets_needed(writer.edition(), sheet).all * sheet.up - copies.good * sheet.in_a_copy;
  writer.say(fmt::format(
      "The numbers run down the sheets at each place: cut the stacks from the first sheet on, and "
      "gather what comes from each place on a pile of its own, the later below the earlier. Then "
      "lay these piles on one another in the order of the picture, row by row from the upper left, "
      "the first on top, and look through them: {} in order{}. What was cut before, for a first "
      "copy, goes where its number belongs.",
      numbers_of(writer.edition(), copies),
      over == 0 ? "" : fmt::format(", and {} without a number", over)));
}

} // namespace

void tell_chain(const GuideWriter &writer, const std::set<Length> &at, Length whole,
                Measured &picture) {
  chain(writer, at, whole, true, picture);
}

bool tell_cutting_apart(GuideWriter &writer, const CopyPart &part) {
  const Sheet &sheet =
      writer.making.imposition.sheets[static_cast<std::size_t>(part.sheets_before)];
  const std::vector<PieceCut> cuts = sheet.up > 1 ? in_order(sheet) : std::vector<PieceCut>{};
  if (cuts.empty())
    return false;
  writer.care(std::string(flat_cut_caution));
  writer.say(fmt::format("Cut {} out of each sheet of {} {}, its front up.", sheet.up,
                         part.imposition.sheets.size() == 1 ? "pile" : "piles", piles_of(part)));
  const bool one = cuts.size() == 1;
  const std::string way =
      std::exchange(writer.cuts_told, true)
          ? "As before, two to four sheets at a time, all lines drawn before the first cut."
          : fmt::format(
                "Knock two to four sheets square at their upper left corner, fewer of card, "
                "and clip them where the knife does not go: one such stack at a time. Draw "
                "{} in pencil on the top sheet, marked at both ends, before the first "
                "cut.",
                one ? "the line" : "all lines");
  writer.say(fmt::format("{} Cut {}, {}.", way,
                         one ? "along it" : "in the order of the numbers, the long cuts first",
                         in_words(writer, cuts)));
  writer.leaflet.add(
      Pictures{{cuts_shown(writer, part.sheets_before, cuts)}, Length::inches(8, 5)});
  tell_stacks(writer, sheet);
  return true;
}

} // namespace bodkin::paperwork
