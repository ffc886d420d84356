#include "sheet/piece_problems.hpp"

#include "measure/paper.hpp"
#include "sheet/bound_in.hpp"
#include "sheet/glued_on.hpp"
#include "sheet/live.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <array>
#include <fmt/format.h>

namespace bodkin {
namespace {

bool fits_in(const Size &inner, const Size &outer) {
  return (inner.width <= outer.width && inner.height <= outer.height) ||
         (inner.height <= outer.width && inner.width <= outer.height);
}

Range size_range(const Piece &piece) {
  return piece.edition.size.from.somewhere() ? piece.edition.size.from : piece.range;
}

std::string size_line(const Size &size, Ruler ruler) {
  return fmt::format("size       {} x {}", written(size.width, ruler), written(size.height, ruler));
}

// What is laid into a copy after the knife must not stand out of it.
Problem larger_than_copy(const Edition &book, const Piece &piece) {
  const Size copy = trimmed_size(book);
  Problem problem;
  problem.check = "piece-too-large";
  problem.range = size_range(piece);
  problem.message = fmt::format("{} is {} folded, larger than the copy it goes into", piece.name,
                                written(*piece.edition.size, book.ruler));
  problem.why = fmt::format("a copy is {} when it is trimmed; what is put in after the knife and "
                            "stands out of it is bent in the first bag",
                            written(copy, book.ruler));
  problem.type = {
      {size_line(copy, book.ruler),
       "or fold it once more, or let it go at the centre, where the knife cuts it too"}};
  return problem;
}

Problem larger_than_pocket(const Edition &book, const Piece &piece, const CopyPart &pocket) {
  const Size room = *pocket.edition->size;
  Problem problem;
  problem.check = "piece-too-large";
  problem.range = size_range(piece);
  problem.message =
      fmt::format("{} is {} folded, larger than the pocket {} that it lies in", piece.name,
                  written(*piece.edition.size, book.ruler), pocket.piece->name);
  problem.why = fmt::format("the pocket is {} between its flaps", written(room, book.ruler));
  problem.type = {{size_line(room, book.ruler), "or a larger pocket"}};
  problem.related = {{pocket.piece->range, "the pocket is made here"}};
  return problem;
}

bool lies_free(const Piece &piece) {
  return *piece.goes == Goes::loose || *piece.goes == Goes::after_page ||
         *piece.goes == Goes::in_pocket;
}

void check_size(const std::vector<CopyPart> &parts, const Piece &piece, Problems &problems) {
  const Edition &book = *parts.front().edition;
  if (!lies_free(piece) || piece.edition.size.by_default())
    return;
  const CopyPart &pocket = part_called(parts, piece.pocket);
  if (!piece.pocket.empty() && pocket.piece && !fits_in(*piece.edition.size, *pocket.edition->size))
    problems.push_back(larger_than_pocket(book, piece, pocket));
  else if (!fits_in(*piece.edition.size, trimmed_size(book)))
    problems.push_back(larger_than_copy(book, piece));
}

// How far a box passes the edges of its page after the knife: left, head, right, foot.
std::array<Length, 4> past_the_page(const GluedOn &glued) {
  const Size page = glued.host->imposition.size_of(glued.page);
  const Trims trims = trims_of(*glued.host->edition);
  const bool left_page = glued.page % 2 == 0;
  const Length left = left_page ? trims.fore_edge : Length{};
  const Length right = page.width - (left_page ? Length{} : trims.fore_edge);
  return {left - glued.box.x, trims.head - glued.box.y, glued.box.right() - right,
          glued.box.foot() - (page.height - trims.foot)};
}

std::string edge_name(std::size_t edge, bool left_page) {
  if (edge == 1)
    return "head";
  if (edge == 3)
    return "foot";
  return (edge == 0) == left_page ? "fore-edge" : "spine";
}

Problem sticks_out(const GluedOn &glued, std::size_t edge, Length by) {
  const Piece &piece = *glued.piece->piece;
  const Ruler ruler = glued.host->edition->ruler;
  const Size room = trimmed_size(*glued.host->edition);
  Problem problem;
  problem.check = "sticks-out";
  problem.range = piece.at_range.somewhere() ? piece.at_range : size_range(piece);
  problem.message = fmt::format("{} sticks out {} past the {} of {}", piece.name,
                                rounded(by, ruler), edge_name(edge, glued.page % 2 == 0),
                                page_in_words(glued.host->piece, glued.page));
  problem.why = fmt::format("it is {} and the page is {} after the knife; what stands out is bent "
                            "or cut",
                            written(*glued.piece->edition->size, ruler), written(room, ruler));
  const bool fits = glued.box.width <= room.width && glued.box.height <= room.height;
  problem.type = {{fits ? "at         centred, centred" : size_line(room, ruler), {}}};
  return problem;
}

Problem all_glue(const GluedOn &glued) {
  const Piece &piece = *glued.piece->piece;
  const Ruler ruler = glued.host->edition->ruler;
  Problem problem;
  problem.check = "sticks-out";
  problem.range = piece.glued.from;
  problem.message =
      fmt::format("the glue of {} is {} wide, and the leaf is {}", piece.name,
                  written(piece.glued->width, ruler), written(*glued.piece->edition->size, ruler));
  problem.why = "what is glued past the leaf's own edge is glue on the page";
  problem.type = {{fmt::format("glued      {}, 1/4in wide", name_of(piece.glued->edge)), {}}};
  return problem;
}

bool all_glued(const GluedOn &glued) {
  const Box &box = glued.box, &strip = glued.hides;
  return glued.piece->piece->is_tipped_in() &&
         (strip.width > box.width || strip.height > box.height);
}

void check_glued(const GluedOn &glued, Problems &problems) {
  const Piece &piece = *glued.piece->piece;
  if (piece.is_boards() || piece.edition.size.by_default())
    return;
  if (all_glued(glued))
    problems.push_back(all_glue(glued));
  const std::array<Length, 4> past = past_the_page(glued);
  const auto worst = std::max_element(past.begin(), past.end());
  if (*worst > Length::mm(1) / 10)
    problems.push_back(sticks_out(glued, static_cast<std::size_t>(worst - past.begin()), *worst));
}

} // namespace

void check_pieces(const std::vector<CopyPart> &parts, Problems &problems) {
  for (const CopyPart &part : parts) {
    if (!part.piece || part.piece->is_other_book())
      continue;
    check_size(parts, *part.piece, problems);
    check_reach(parts.front(), *part.piece, problems);
    check_knife(parts.front(), part, problems);
  }
  for (const GluedOn &glued : glued_on(parts))
    check_glued(glued, problems);
}

} // namespace bodkin
