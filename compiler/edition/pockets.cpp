#include "edition/pockets.hpp"

#include "edition/problems.hpp"

#include <fmt/format.h>

namespace bodkin {
namespace {

Problem not_a_pocket(const Piece &piece, const Piece &other) {
  return {.check = "not-a-pocket",
          .range = piece.goes.from,
          .message = fmt::format("{} is no pocket to put {} in", other.name, piece.name),
          .why = "a pocket goes on a page and has flaps that it is glued by; nothing else holds "
                 "what is put in it",
          .type = {{"flaps      1/2in, open head",
                    fmt::format("under `insert {}`, which then goes on a page", other.name)}},
          .related = {{other.range, "it is made here"}}};
}

Problem holds_itself(const Piece &piece, const std::string &way) {
  return {.check = "holds-itself",
          .range = piece.goes.from,
          .message = fmt::format("{} would lie in itself", piece.name),
          .why = fmt::format("{}: no paper is put into what lies in it", way),
          .type = {{"goes       loose", "or on a page, or in another pocket"}}};
}

using Pieces = std::vector<std::shared_ptr<Piece>>;

const Piece *named(const Pieces &pieces, std::string_view name) {
  for (const auto &piece : pieces)
    if (piece->name == name)
      return piece.get();
  return nullptr;
}

// "map in sleeve, sleeve in map"; empty where following it comes to an end.
std::string way_round(const Pieces &pieces, const Piece &start) {
  std::string way;
  const Piece *at = &start;
  for (std::size_t steps = 0; at && *at->goes == Goes::in_pocket && steps < pieces.size();
       ++steps) {
    way += fmt::format("{}{} in {}", way.empty() ? "" : ", ", at->name, at->pocket);
    at = named(pieces, at->pocket);
    if (at == &start)
      return way;
  }
  return {};
}

// Whether it lies in a pocket; if not, that is told.
bool lies_in_one(Reader &reader, const Pieces &pieces, const Piece &piece) {
  const FactLine line = Facts(reader.things(Family::insert).find(piece.name)->line).find("goes");
  const Piece *pocket = named(pieces, piece.pocket);
  if (const std::string way = way_round(pieces, piece); !way.empty())
    reader.report(holds_itself(piece, way));
  else if (!pocket)
    reader.report(unknown_name(reader, Family::insert, line, "in"));
  else if (!pocket->is_pocket())
    reader.report(not_a_pocket(piece, *pocket));
  else
    return true;
  return false;
}

} // namespace

void settle_pockets(Reader &reader, const Pieces &pieces) {
  // All are asked before any is let go: of a ring, each is told.
  std::vector<Piece *> lost;
  for (const auto &piece : pieces)
    if (*piece->goes == Goes::in_pocket && !lies_in_one(reader, pieces, *piece))
      lost.push_back(piece.get());
  for (Piece *piece : lost) {
    piece->goes.value = Goes::loose;
    piece->pocket.clear();
  }
}

} // namespace bodkin
