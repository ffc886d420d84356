// Pieces beside the book: how each is cut out and folded, and where it goes, with a picture to
// measure by.
#include "paperwork/guide_writer.hpp"

#include "edition/copy_numbers.hpp"
#include "paperwork/own_words.hpp"
#include "problems/characters.hpp"
#include "sheet/finish_text.hpp"
#include "sheet/glued_on.hpp"
#include "sheet/numbered.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <set>

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

// Where a sheet is cut, from its left edge and from its head; its own edges are no cuts.
struct CutLines {
  std::set<Length> across, down;
};

CutLines cut_lines(const Sheet &sheet) {
  constexpr Length nothing = Length::inches(1, 64);
  CutLines lines;
  const auto add = [&](std::set<Length> &at, Length line, Length end) {
    if (line > nothing && end - line > nothing)
      at.insert(line);
  };
  for (const Sheet::FoldLine &cut : sheet.cuts)
    if (cut.start.x == cut.end.x)
      add(lines.across, cut.start.x, sheet.size.width);
    else
      add(lines.down, cut.start.y, sheet.size.height);
  return lines;
}

// "2in and 4in from its left edge; 3in from its head"
std::string in_words(const GuideWriter &writer, const CutLines &lines) {
  std::string text;
  const auto add = [&](const std::set<Length> &at, std::string_view from) {
    std::vector<std::string> measures;
    measures.reserve(at.size());
    for (const Length length : at)
      measures.push_back(writer.ruled(length));
    if (!measures.empty())
      text += fmt::format("{}{} from its {}", text.empty() ? "" : "; ", in_a_row(measures), from);
  };
  add(lines.across, "left edge");
  add(lines.down, "head");
  return text;
}

// From one line to the next, where there is room to say how far that is; the caption says all.
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
  for (const Sheet::FoldLine &cut : sheet.cuts)
    picture.strokes.push_back({StrokeKind::cut, cut.start, cut.end, {}});
  const CutLines lines = cut_lines(sheet);
  chain(writer, lines.across, sheet.size.width, true, picture);
  chain(writer, lines.down, sheet.size.height, false, picture);
  const std::string at = in_words(writer, lines);
  return Shown{picture,
               fmt::format("Cut {} out of each sheet of {} {}, its front up, along these lines{}.",
                           sheet.up, part.imposition.sheets.size() == 1 ? "pile" : "piles",
                           piles_of(part), at.empty() ? "" : ": " + at)};
}

// Goes through the binding, or is a side of the book itself.
bool is_bound(const Piece &piece) {
  return piece.is_wrap() || piece.is_reverse() || *piece.goes == Goes::centre ||
         *piece.goes == Goes::after_page;
}

// A band as it lies before it goes round: where it is folded, and which part shows where.
void tell_band(GuideWriter &writer, const CopyPart &part) {
  const auto &panels = part.imposition.panels;
  const Size size = *part.edition->size;
  Measured picture;
  picture.ground = PageGround{part.pages_before + 1};
  picture.size = size;
  picture.strokes.push_back({StrokeKind::outline, {}, {size.width, size.height}, {}});
  std::vector<std::string> folds;
  std::set<Length> at;
  for (std::size_t i = 0; i < panels.size(); ++i) {
    const Length left = panels[i].box.x;
    if (i == 0)
      continue;
    picture.strokes.push_back({StrokeKind::fold, {left, {}}, {left, size.height}, {}});
    folds.push_back(writer.ruled(left));
    at.insert(left);
  }
  chain(writer, at, size.width, true, picture);
  std::vector<std::string> names;
  names.reserve(panels.size());
  for (const BandPart &panel : panels)
    names.emplace_back(name_of(panel.panel));
  writer.say(fmt::format("Fold it, its print outside, at {} from the left end. Lay it round the "
                         "closed copy, halfway between head and foot, draw it tight, brush a "
                         "thin line of glue along the print side of its right end and tuck that "
                         "under the left one, at the back; no glue touches the copy.",
                         in_a_row(folds)));
  writer.leaflet.add(Pictures{
      {{picture, fmt::format("The band flat, print up, {} long. Its parts, from the left: {}.",
                             writer.ruled(size.width), fmt::join(names, ", "))}},
      Length::inches(1)});
}

void tell_glued(GuideWriter &writer, const CopyPart &part, const CutBefore &cut) {
  const Piece &piece = *part.piece;
  if (piece.is_pocket()) {
    const Flaps &flaps = **piece.flaps;
    writer.say(fmt::format("Fold its flaps, {} wide, under on the three sides that are not its {}, "
                           "and glue the flaps alone: the {} stays open.",
                           writer.exact(flaps.width), name_of(flaps.open), name_of(flaps.open)));
  } else if (piece.is_tipped_in()) {
    writer.say(fmt::format("Brush a strip of glue, {} wide, on its back along its {} edge, and "
                           "lay it down; the rest of it lifts.",
                           writer.exact(piece.glued->width), name_of(piece.glued->edge)));
  } else {
    return;
  }
  Pictures pictures{{}, Length::inches(8, 5)};
  for (const GluedOn &glued : glued_on(writer.making.parts))
    if (glued.piece == &part) {
      const HandPlace place{ElementId::none, glued.page + glued.host->pages_before, glued.box, {}};
      pictures.shown.push_back(place_shown(writer, place, cut));
    }
  if (!pictures.shown.empty())
    writer.leaflet.add(std::move(pictures));
}

// What the piece's own finish says.
void tell_own_steps(GuideWriter &writer, const CopyPart &part) {
  std::vector<FinishTold> steps = finish_told(*part.edition, part.imposition);
  steps.resize(std::min(part.piece->own_steps, steps.size()));
  for (const FinishTold &told : steps) {
    std::string says = told.says;
    if (!says.empty() && says[0] >= 'a' && says[0] <= 'z')
      says[0] = static_cast<char>(says[0] - 'a' + 'A');
    writer.say(says + ".");
    for (const std::string &caution : told.cautions)
      writer.care(caution);
  }
}

// What the knife makes of sheets with numbers.
void tell_stacks(GuideWriter &writer, const CopyPart &part) {
  const Sheet &sheet =
      writer.making.imposition.sheets[static_cast<std::size_t>(part.sheets_before)];
  if (is_numbered(sheet))
    writer.say("The numbers run down each of the piles that the knife makes. Do not mix them: lay "
               "them on one another in the order of the picture, row by row from the upper left, "
               "the first on top, and the numbers run through from first to last.");
}

void tell_piece(GuideWriter &writer, const CopyPart &part, const CutBefore &cut) {
  const Piece &piece = *part.piece;
  writer.head(name_words(piece));
  if (piece.is_reverse()) {
    writer.say("It is printed on the back of the book's own sheet: there is nothing to add.");
    return;
  }
  writer.say(fmt::format("From pile {}. {} {}.{}", piles_of(part),
                         piece.is_boards() ? "They" : "It", goes_in_words(piece),
                         part.in_a_copy() > 1 ? fmt::format(" Each copy gets {}.", part.in_a_copy())
                                              : std::string()));
  if (piece.only)
    writer.say(fmt::format("Only {} {} it.", copies_words(writer.edition(), **piece.only),
                           copies_of(writer.edition(), **piece.only).good == 1 ? "has" : "have"));
  tell_cutting_apart(writer, part);
  tell_folding(writer, part);
  if (piece.is_band())
    tell_band(writer, part);
  tell_own_steps(writer, part);
  tell_glued(writer, part, cut);
}

} // namespace

bool tell_cutting_apart(GuideWriter &writer, const CopyPart &part) {
  auto cut = cut_apart(writer, part);
  if (!cut)
    return false;
  writer.leaflet.add(Pictures{{std::move(*cut)}, Length::inches(8, 5)});
  tell_stacks(writer, part);
  writer.care(std::string(blade_caution));
  return true;
}

void tell_pieces(GuideWriter &writer, bool bound, const CutBefore &cut) {
  std::vector<const CopyPart *> these;
  for (const CopyPart &part : writer.making.parts)
    if (part.piece && !part.piece->is_other_book() && is_bound(*part.piece) == bound)
      these.push_back(&part);
  if (these.empty())
    return;
  writer.step(bound ? "Add what is bound with it" : "Add the pieces");
  for (const CopyPart *part : these)
    tell_piece(writer, *part, cut);
}

} // namespace bodkin::paperwork
