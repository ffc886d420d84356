#include "sheet/parts.hpp"

#include "sheet/band.hpp"
#include "sheet/bound_in.hpp"
#include "sheet/copy_weight.hpp"
#include "sheet/flaps.hpp"
#include "sheet/impose.hpp"
#include "sheet/live.hpp"
#include "sheet/numbered.hpp"
#include "sheet/own_sheets.hpp"
#include "sheet/piece_problems.hpp"
#include "sheet/several_up.hpp"
#include "sheet/spine.hpp"
#include "sheet/told_by_run.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <iterator>

namespace bodkin {
namespace {

Problem no_reverse(const Edition &book, const Piece &piece) {
  return {.check = "no-reverse",
          .range = piece.range,
          .message =
              fmt::format("{} prints both sides of its sheets, so none is left for a reverse",
                          book.folding->name),
          .why = "a poster behind the booklet needs a folding whose pages all lie on one side",
          .type = {{"folding    eight-page-mini", "in place of the folding of this edition"}}};
}

Problem no_whole_back(const Edition &book, const Piece &piece) {
  return {
      .check = "no-reverse",
      .range = piece.range,
      .message =
          fmt::format("the book is laid {} up, so no sheet has a back for one reverse", *book.up),
      .why = "each sheet is cut apart before it is folded; a reverse is the back of a whole one",
      .type = {{"up         1", "under `edition`, with a paper of that sheet"}},
      .related = {{book.up.from, "it is laid so here"}}};
}

Problem two_spines(const Edition &book, const Piece &wrap) {
  const std::string paper = *wrap.edition.paper == StockId::none
                                ? std::string("card")
                                : wrap.edition[*wrap.edition.paper].name;
  const int second = *book.page_count / 2 + 1;
  return {.check = "two-spines",
          .range = wrap.range,
          .message = "two books back to back have two spines, and a wrap goes round one",
          .why =
              fmt::format("the second book begins at page {} and is read from the other side, so "
                          "that its spine lies at the first one's fore-edge; a cover round both is "
                          "a sheet of three panels folded like a Z, which is not laid here",
                          second),
          .type = {{fmt::format("page 1 on {0}\npage {1} on {0}", paper, second),
                    "each book's outermost sheet as its cover, in place of the wrap"}}};
}

// A piece that goes round the copy, or is glued to it, is as large as the copy makes it.
void size_by_copy(const Edition &book, Length thickness, CopyPart &part) {
  const Piece &piece = *part.piece;
  if (!piece.is_band() && !piece.is_boards())
    return;
  auto sized = std::make_shared<Edition>(*part.edition);
  sized->size.value = piece.is_band() ? band_size(piece, trimmed_size(book), thickness)
                                      : board_size(piece, trimmed_size(book));
  part.edition = sized.get();
  part.sized = std::move(sized);
}

// The spine and what the knife takes need paper beyond the pages: that is no wrong size.
void forget_sizes(Problems &problems, std::size_t from) {
  problems.erase(std::remove_if(problems.begin() + static_cast<std::ptrdiff_t>(from),
                                problems.end(),
                                [](const Problem &p) { return p.check == "wrong-size"; }),
                 problems.end());
}

// What does not go on its sheet, said of a piece that asks for no number of its own.
Problem of_the_piece(const CopyPart &made, Problem problem) {
  const Piece &piece = *made.piece;
  const StockId paper = *made.edition->paper;
  if (*piece.up != 1)
    return problem;
  if (piece.is_band() && paper != StockId::none && (*made.edition)[paper].sheet)
    return band_too_long(piece, **(*made.edition)[paper].sheet, *made.edition->size);
  problem.range = piece.range;
  return problem;
}

void impose_cut_out(CopyPart &made, Length thickness, const Edition &book, const Sources &sources,
                    Problems &problems) {
  made.cut_out = std::make_shared<const Edition>(without_sheets(*made.edition));
  made.imposition = impose(*made.cut_out, sources, problems);
  if (made.piece->is_band())
    make_band(*made.piece, trimmed_size(book), thickness, made.imposition);
  if (made.piece->is_pocket())
    add_flaps(*made.piece, made.imposition);
  Problems found;
  lay_several_up(made.piece->name, made.piece->up, *made.edition, made.imposition, found);
  for (Problem &problem : found)
    problems.push_back(of_the_piece(made, std::move(problem)));
}

void impose_wrap(CopyPart &made, const CopyPart &book, const Sources &sources, Problems &problems) {
  const std::size_t told = problems.size();
  made.imposition = impose(*made.edition, sources, problems);
  if (!book.edition->folding->back_to_back)
    made.spine = spine_of(*book.edition, book.imposition);
  if (made.spine > Length{}) {
    forget_sizes(problems, told);
    made.imposition.wrong_size = false;
  }
  open_for_spine(*made.piece, made.spine, made.imposition, problems);
}

// A card smaller than its sheet is cut out of it: that is said first, and no size is taken from it.
void cut_it_out(const CopyPart &made, const Sources &sources, std::size_t told,
                Problems &problems) {
  const StockId paper = *made.edition->paper;
  if (!made.imposition.wrong_size || paper == StockId::none || !(*made.edition)[paper].sheet)
    return;
  Problems ignored;
  const Size cell = impose(without_sheets(*made.edition), sources, ignored).sheets.front().size;
  const Size sheet = **(*made.edition)[paper].sheet;
  const auto goes_on = [&](const Size &on) {
    return cell.width <= on.width && cell.height <= on.height;
  };
  if (!goes_on(sheet) && !goes_on(sheet.turned()))
    return;
  for (std::size_t i = told; i < problems.size(); ++i)
    if (problems[i].check == "wrong-size" && !problems[i].type.empty()) {
      const std::string size = problems[i].type.front().line;
      problems[i].type = {{"up         most", fmt::format("under {}, to cut it out of the sheet; "
                                                          "or `{}`",
                                                          made.piece->name, size)}};
      problems[i].edits.clear();
    }
}

// `thickness` is of what a band goes round.
CopyPart book_part(const Edition &edition, const Sources &sources, Problems &problems);

CopyPart piece_part(const Piece &piece, const CopyPart &book, Length thickness,
                    const Sources &sources, Problems &problems) {
  if (piece.is_other_book()) {
    CopyPart other = book_part(piece.edition, sources, problems);
    other.piece = &piece;
    return other;
  }
  CopyPart made;
  made.edition = &piece.edition;
  made.piece = &piece;
  const std::size_t told = problems.size();
  size_by_copy(*book.edition, thickness, made);
  if (piece.is_cut_out())
    impose_cut_out(made, thickness, *book.edition, sources, problems);
  else if (piece.is_wrap())
    impose_wrap(made, book, sources, problems);
  else {
    made.imposition = impose(*made.edition, sources, problems);
    cut_it_out(made, sources, told, problems);
  }
  lie_in_the_pile(book, made);
  hide_glue(made);
  // A piece whose size is not written has been told so; what a guess leads to is not told.
  if (piece.edition.size.by_default() && !piece.is_wrap() && !piece.is_boards())
    problems.resize(told);
  return made;
}

CopyPart book_part(const Edition &edition, const Sources &sources, Problems &problems) {
  CopyPart made;
  made.edition = &edition;
  if (*edition.up <= 1) {
    made.imposition = impose(edition, sources, problems);
    return made;
  }
  made.cut_out = std::make_shared<const Edition>(without_sheets(edition));
  made.imposition = impose(*made.cut_out, sources, problems);
  lay_several_up("the book", edition.up, edition, made.imposition, problems);
  return made;
}

// In its place, so that parts stand in the order of the pieces.
CopyPart still_to_be_made(const Piece &piece) {
  CopyPart part;
  part.edition = &piece.edition;
  part.piece = &piece;
  return part;
}

int sheets_made(const CopyPart &part) {
  if (part.piece && part.piece->is_reverse())
    return 0;
  if (part.piece && part.piece->is_other_book())
    return static_cast<int>(std::count(part.made_with.begin(), part.made_with.end(), std::nullopt));
  return static_cast<int>(part.imposition.sheets.size());
}

void number_on(std::vector<CopyPart> &parts) {
  for (std::size_t i = 1; i < parts.size(); ++i) {
    const CopyPart &last = parts[i - 1];
    parts[i].pages_before = last.pages_before + last.imposition.page_count;
    parts[i].sheets_before = last.sheets_before + sheets_made(last);
  }
}

Length thickness_without_bands(const std::vector<CopyPart> &parts) {
  Length sum;
  for (const CopyPart &part : parts)
    if (holds(part, std::nullopt) &&
        !(part.piece && (part.piece->is_band() || part.piece->is_reverse())))
      sum += thickness_of(part) * part.in_a_copy();
  return sum;
}

} // namespace

std::vector<CopyPart> impose_parts(const Edition &edition, const Sources &sources,
                                   Problems &problems) {
  std::vector<Problems> found(1); // by part
  const CopyPart book = book_part(edition, sources, found.front());
  std::vector<CopyPart> parts{book};
  for (const auto &piece : edition.pieces) {
    if (piece->is_wrap() && edition.folding->back_to_back)
      problems.push_back(two_spines(edition, *piece));
    if (piece->is_reverse() && !book.imposition.one_side) {
      problems.push_back(no_reverse(edition, *piece));
    } else if (piece->is_reverse() && *edition.up > 1) {
      problems.push_back(no_whole_back(edition, *piece));
    } else {
      Problems &of_piece = found.emplace_back();
      parts.push_back(piece->is_band() ? still_to_be_made(*piece)
                                       : piece_part(*piece, book, {}, sources, of_piece));
    }
  }
  tell_by_run(parts, std::move(found), problems);
  const Length thickness = thickness_without_bands(parts);
  for (CopyPart &part : parts)
    if (part.piece && part.piece->is_band())
      part = piece_part(*part.piece, book, thickness, sources, problems);
  for (CopyPart &part : parts)
    find_numbered(*part.edition, part.imposition);
  find_own_sheets(parts);
  number_on(parts);
  check_pieces(parts, problems);
  return parts;
}

Size trimmed_size(const Edition &book) {
  const Trims trims = trims_of(book);
  return {book.size->width - trims.fore_edge, book.size->height - trims.head - trims.foot};
}

const CopyPart &part_called(const std::vector<CopyPart> &parts, std::string_view name) {
  const auto found = std::find_if(parts.begin(), parts.end(), [&](const CopyPart &part) {
    return part.piece && part.piece->name == name;
  });
  return found == parts.end() ? parts.front() : *found;
}

const CopyPart &part_of_page(const std::vector<CopyPart> &parts, int page) {
  const auto after = std::find_if(parts.begin() + 1, parts.end(),
                                  [&](const CopyPart &p) { return p.pages_before >= page; });
  return *std::prev(after);
}

const CopyPart &part_of_sheet(const std::vector<CopyPart> &parts, int sheet) {
  const auto after = std::find_if(parts.begin() + 1, parts.end(),
                                  [&](const CopyPart &p) { return p.sheets_before > sheet; });
  return *std::prev(after);
}

} // namespace bodkin
