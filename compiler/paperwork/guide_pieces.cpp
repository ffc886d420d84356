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
  tell_chain(writer, at, size.width, picture);
  std::vector<std::string> names;
  names.reserve(panels.size());
  for (const BandPart &panel : panels)
    names.emplace_back(name_of(panel.panel));
  writer.say(fmt::format("Fold it, its print outside, at {} from the left end. Lay it round the "
                         "closed copy, halfway between head and foot, draw it tight, brush a "
                         "thin line of glue along the print side of its right end and tuck that "
                         "under the left one, at the back; no glue touches the copy.",
                         in_a_row(folds)));
  writer.say_thin_film();
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
  writer.say_thin_film();
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
    for (const std::string &caution : told.cautions)
      writer.care(caution);
    writer.say(says + ".");
  }
}

// What lies loose is laid in by a step of finish, when the copies are checked.
bool laid_in_later(const Edition &edition) {
  return std::any_of(edition.finish.begin(), edition.finish.end(),
                     [](const FinishStep &step) { return step.kind == StepKind::add; });
}

// "7 sheets of 4: 24 for the copies, 4 over"
std::string count_of_piece(const GuideWriter &writer, const CopyPart &part) {
  const Sheet &sheet =
      writer.making.imposition.sheets[static_cast<std::size_t>(part.sheets_before)];
  const std::int64_t sheets = sheets_needed(writer.edition(), sheet).all;
  const CopiesCounted copies = copies_of(writer.edition(), sheet.only);
  const std::int64_t in_copies = copies.good * part.in_a_copy();
  const std::int64_t over = sheets * std::max(sheet.up, 1) - in_copies;
  return fmt::format("{}{}{}: {} for the copies{}", counted(sheets, "sheet", "sheets"),
                     part.imposition.sheets.size() > 1 ? " of each pile" : "",
                     sheet.up > 1 ? fmt::format(" of {}", sheet.up) : "", in_copies,
                     over == 0 ? "" : fmt::format(", {} over", over));
}

// A card that is higher or wider than the page: which way it lies, or how far it stands out.
std::string size_words(const GuideWriter &writer, const Piece &piece) {
  const bool lies_free = *piece.goes == Goes::loose || *piece.goes == Goes::after_page;
  const Size card = *piece.edition.size, copy = trimmed_size(writer.edition());
  if (!lies_free || (card.width <= copy.width && card.height <= copy.height))
    return "";
  const std::string measures =
      fmt::format("{} x {}", writer.exact(card.width), writer.exact(card.height));
  if (card.height <= copy.width && card.width <= copy.height)
    return fmt::format("It is {}, wider than the page: lay it in turned on its side, its head "
                       "towards the fold.",
                       measures);
  std::vector<std::string> out;
  if (card.width > copy.width)
    out.push_back(writer.ruled(card.width - copy.width) + " at the fore-edge");
  if (card.height > copy.height)
    out.push_back(writer.ruled(card.height - copy.height) + " at the head");
  return fmt::format("It is {}, larger than a copy: push it to the fold and to the foot; it then "
                     "stands out {}, and nothing of it is cut off.",
                     measures, in_a_row(out));
}

// Nested sheets have one middle: " It lies in the middle, between pages 6 and 7."
std::string middle_words(const GuideWriter &writer, const Piece &piece) {
  const CopyPart &book = writer.making.parts.front();
  const int pages = book.imposition.page_count;
  if (*piece.goes != Goes::loose || !book.imposition.leaves_turn || pages % 4 != 0 ||
      *book.edition->folding->gather != Gather::nested)
    return "";
  return fmt::format(" Lay it into the middle, between pages {} and {}.", pages / 2, pages / 2 + 1);
}

std::string_view binding_words(const Piece &piece) {
  switch (*piece.goes) {
  case Goes::round_the_book:
    return "Lay the folded book into it, heads together, fold in fold.";
  case Goes::centre:
    return "Lay it into the middle of the copy, heads together, fold in fold.";
  default:
    return "";
  }
}

// What is done to a piece that has been cut out, as a heading; empty where nothing is.
std::string_view after_cutting(const CopyPart &part) {
  const Piece &piece = *part.piece;
  return piece.is_band()                         ? "Lay it round the copy"
         : piece.is_pocket()                     ? "Glue it on"
         : piece.is_tipped_in()                  ? "Glue it in"
         : !part.edition->folding->steps.empty() ? "Fold it"
         : piece.own_steps > 0                   ? "Then"
                                                 : "";
}

void tell_piece(GuideWriter &writer, const CopyPart &part, const CutBefore &cut) {
  const Piece &piece = *part.piece;
  writer.head(name_words(piece), piece.is_reverse() ? "" : count_of_piece(writer, part));
  if (piece.is_reverse()) {
    writer.say("It is printed on the back of the book's own sheet: there is nothing to add.");
    return;
  }
  const bool later = *piece.goes == Goes::loose && laid_in_later(writer.edition());
  writer.say(fmt::format(
      "From pile {}. {} {}.{}{}", piles_of(part), piece.is_boards() ? "They" : "It",
      later ? "is laid into the copy later, at a step of its own" : goes_in_words(piece),
      later ? "" : middle_words(writer, piece),
      part.in_a_copy() > 1 ? fmt::format(" Each copy gets {}.", part.in_a_copy()) : std::string()));
  if (piece.only)
    writer.say(fmt::format("Only {} {} it.", copies_words(writer.edition(), **piece.only),
                           copies_of(writer.edition(), **piece.only).good == 1 ? "has" : "have"));
  if (is_numbered(writer.making.imposition.sheets[static_cast<std::size_t>(part.sheets_before)]))
    writer.say("Its pile stays in the order of the numbers. Each goes into the copy of its own "
               "number: see that the two agree.");
  if (const std::string size = size_words(writer, piece); !size.empty())
    writer.say(size);
  if (tell_cutting_apart(writer, part))
    if (const std::string_view next = after_cutting(part); !next.empty())
      writer.leaflet.add(Headline{std::string(next), 3, {}});
  tell_folding(writer, part);
  if (const std::string_view way = binding_words(piece); !way.empty())
    writer.say(std::string(way));
  if (piece.is_band())
    tell_band(writer, part);
  tell_own_steps(writer, part);
  tell_glued(writer, part, cut);
}

} // namespace

void tell_pieces(GuideWriter &writer, bool bound, const CutBefore &cut) {
  std::vector<const CopyPart *> these;
  for (const CopyPart &part : writer.making.parts)
    if (part.piece && !part.piece->is_other_book() && is_bound(*part.piece) == bound)
      these.push_back(&part);
  if (these.empty())
    return;
  writer.step(bound                             ? "Add what is bound with it"
              : laid_in_later(writer.edition()) ? "Make the pieces"
                                                : "Add the pieces");
  for (const CopyPart *part : these)
    tell_piece(writer, *part, cut);
}

} // namespace bodkin::paperwork
