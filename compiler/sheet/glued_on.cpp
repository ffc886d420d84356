#include "sheet/glued_on.hpp"

namespace bodkin {
namespace {

Box strip(const Box &box, const Glued &glued, bool left_page) {
  const bool at_left = glued.edge == (left_page ? PieceEdge::outer : PieceEdge::inner);
  if (glued.edge == PieceEdge::head)
    return {box.x, box.y, box.width, glued.width};
  if (glued.edge == PieceEdge::foot)
    return {box.x, box.foot() - glued.width, box.width, glued.width};
  return {at_left ? box.x : box.right() - glued.width, box.y, glued.width, box.height};
}

GluedOn on_page(const CopyPart &part, const CopyPart &host) {
  const Piece &piece = *part.piece;
  const Size page = host.imposition.size_of(piece.at_page), size = *part.edition->size;
  const bool left_page = piece.at_page % 2 == 0;
  const Box box{offset_of(piece.across, size.width, page.width, left_page),
                offset_of(piece.down, size.height, page.height, true), size.width, size.height};
  return {&part, &host, piece.at_page, box,
          piece.is_pocket() ? box : strip(box, *piece.glued, left_page)};
}

// Boards hide the whole outside of what they are glued to.
void add_boards(const CopyPart &part, const CopyPart &host, std::vector<GluedOn> &glued) {
  for (const int page : {1, host.imposition.page_count}) {
    const Size size = host.imposition.size_of(page);
    const Box all{{}, {}, size.width, size.height};
    glued.push_back({&part, &host, page, all, all});
  }
}

const CopyPart &outermost(const std::vector<CopyPart> &parts) {
  const std::vector<const Piece *> wraps = wraps_of(*parts.front().edition);
  return wraps.empty() ? parts.front() : part_called(parts, wraps.back()->name);
}

} // namespace

std::vector<GluedOn> glued_on(const std::vector<CopyPart> &parts) {
  std::vector<GluedOn> glued;
  for (const CopyPart &part : parts) {
    if (!part.piece)
      continue;
    if (part.piece->is_boards() && outermost(parts).imposition.page_count > 0)
      add_boards(part, outermost(parts), glued);
    // A copy is also laid with fewer pages, to price what is left out.
    const CopyPart &host = part_called(parts, part.piece->host);
    const int page = part.piece->at_page;
    if (*part.piece->goes == Goes::on_page && page > 0 && page <= host.imposition.page_count)
      glued.push_back(on_page(part, host));
  }
  return glued;
}

} // namespace bodkin
