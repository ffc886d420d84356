#include "sheet/parts.hpp"

#include "measure/paper.hpp"
#include "sheet/impose.hpp"
#include "sheet/live.hpp"
#include "sheet/several_up.hpp"
#include "sheet/spine.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <iterator>

namespace bodkin {
namespace {

Size trimmed(const Edition &book) {
  const Trims trims = trims_of(book);
  return {book.size->width - trims.fore_edge, book.size->height - trims.head - trims.foot};
}

bool fits_in(const Size &inner, const Size &outer) {
  return (inner.width <= outer.width && inner.height <= outer.height) ||
         (inner.height <= outer.width && inner.width <= outer.height);
}

// What is laid or tipped into a copy after the knife must not stand out of it.
void check_size(const Edition &book, const Piece &piece, Problems &problems) {
  const bool cut_with_it = *piece.goes == Goes::centre || piece.is_wrap() || piece.is_reverse();
  const Size copy = trimmed(book);
  if (cut_with_it || fits_in(*piece.edition.size, copy))
    return;
  Problem problem;
  problem.check = "piece-too-large";
  problem.range = piece.edition.size.from.somewhere() ? piece.edition.size.from : piece.range;
  problem.message = fmt::format("{} is {} folded, larger than the copy it goes into", piece.name,
                                written(*piece.edition.size, book.ruler));
  problem.why = fmt::format("a copy is {} when it is trimmed; what is put in after the knife and "
                            "stands out of it is bent in the first bag",
                            written(copy, book.ruler));
  problem.type = {
      {fmt::format("size       {} x {}", written(copy.width, book.ruler),
                   written(copy.height, book.ruler)),
       "or fold it once more, or let it go at the centre, where the knife cuts it too"}};
  problems.push_back(std::move(problem));
}

Problem no_reverse(const Edition &book, const Piece &piece) {
  return {.check = "no-reverse",
          .range = piece.range,
          .message =
              fmt::format("{} prints both sides of its sheets, so none is left for a reverse",
                          book.folding->name),
          .why = "a poster behind the booklet needs a folding whose pages all lie on one side",
          .type = {{"folding    eight-page-mini", "in place of the folding of this edition"}}};
}

CopyPart part(const Edition &edition, const Piece *piece, const std::vector<CopyPart> &before,
              const Sources &sources, Problems &problems) {
  CopyPart made;
  made.edition = &edition;
  made.piece = piece;
  const std::size_t told = problems.size();
  const Known<int> &up = piece ? piece->up : edition.up;
  if (*up > 1) {
    made.cut_out = std::make_shared<const Edition>(without_sheets(edition));
    made.imposition = impose(*made.cut_out, sources, problems);
    lay_several_up(piece ? std::string_view(piece->name) : "the book", up, edition, made.imposition,
                   problems);
  } else {
    made.imposition = impose(edition, sources, problems);
  }
  if (piece && piece->is_wrap() && !before.empty()) {
    made.spine = spine_of(*before.front().edition, before.front().imposition);
    // The spine and what the knife takes need paper beyond the pages: that is no wrong size.
    if (made.spine > Length{})
      problems.erase(std::remove_if(problems.begin() + static_cast<std::ptrdiff_t>(told),
                                    problems.end(),
                                    [](const Problem &p) { return p.check == "wrong-size"; }),
                     problems.end());
    open_for_spine(*piece, made.spine, made.imposition, problems);
  }
  // A piece whose size is not written has been told so; what a guess leads to is not told.
  if (piece && !piece->is_wrap() && edition.size.by_default())
    problems.resize(told);
  if (!before.empty()) {
    const CopyPart &last = before.back();
    made.pages_before = last.pages_before + last.imposition.page_count;
    const bool no_sheets = last.piece && last.piece->is_reverse();
    made.sheets_before =
        last.sheets_before + (no_sheets ? 0 : static_cast<int>(last.imposition.sheets.size()));
  }
  return made;
}

// The page behind the book lies on the back of its first sheet.
void take_reverse(Imposition &whole, const CopyPart &part) {
  whole.sheets.front().reverse = part.pages_before + 1;
  Side &back = whole.sheets.front().sides[1];
  Place place = part.imposition.place_of(1);
  place.page = part.pages_before + 1;
  back.places = {place};
  back.machine = *part.edition->machine;
  whole.where.push_back({0, 1, 0});
  whole.where.push_back({0, 1, 0}); // its own other side is the book
}

void take(Imposition &whole, const CopyPart &part) {
  if (part.piece && part.piece->is_reverse())
    return take_reverse(whole, part);
  const std::size_t first = whole.sheets.size();
  for (Sheet sheet : part.imposition.sheets) {
    sheet.number += part.sheets_before;
    sheet.in_a_copy = part.in_a_copy();
    sheet.pages_before = part.pages_before;
    sheet.piece = part.piece ? part.piece->name : std::string();
    for (Side &side : sheet.sides)
      for (Place &place : side.places)
        place.page = place.page > 0 && place.page <= part.imposition.page_count
                         ? place.page + part.pages_before
                         : 0;
    whole.sheets.push_back(std::move(sheet));
  }
  for (std::size_t page = 1; page < part.imposition.where.size(); ++page) {
    Spotted spot = part.imposition.where[page];
    spot.sheet += static_cast<int>(first);
    whole.where.push_back(spot);
  }
}

} // namespace

std::vector<CopyPart> impose_parts(const Edition &edition, const Sources &sources,
                                   Problems &problems) {
  std::vector<CopyPart> parts;
  parts.push_back(part(edition, nullptr, parts, sources, problems));
  for (const auto &piece : edition.pieces) {
    check_size(edition, *piece, problems);
    if (piece->is_reverse() && !parts.front().imposition.one_side) {
      problems.push_back(no_reverse(edition, *piece));
      continue;
    }
    parts.push_back(part(piece->edition, piece.get(), parts, sources, problems));
  }
  return parts;
}

Imposition joined(const std::vector<CopyPart> &parts) {
  Imposition whole = parts.front().imposition;
  for (std::size_t i = 1; i < parts.size(); ++i)
    take(whole, parts[i]);
  return whole;
}

std::string goes_in_words(const Piece &piece) {
  switch (*piece.goes) {
  case Goes::centre:
    return "goes at the centre and is bound in";
  case Goes::after_page:
    return fmt::format("goes after page {}", piece.at_page);
  case Goes::on_page:
    return fmt::format("is tipped in on page {}", piece.at_page);
  case Goes::round_the_book:
    return "goes round the book";
  case Goes::behind:
    return "is the unfolded back of sheet 1";
  case Goes::loose:
    break;
  }
  return "lies loose in the copy";
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
