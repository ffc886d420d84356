// Places of a copy that a reader's hand does not reach: between the two sides of one leaf, inside a
// double leaf, and between pages that a fold keeps shut.
#include "sheet/live.hpp"
#include "sheet/piece_problems.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <fmt/format.h>
#include <optional>

namespace bodkin {
namespace {

bool on_one_side(const Imposition &book, int a, int b) {
  const Spotted &first = book.where[static_cast<std::size_t>(a)],
                &second = book.where[static_cast<std::size_t>(b)];
  return first.sheet == second.sheet && first.side == second.side;
}

bool touch(Length a, Length b) {
  const Length gap = a > b ? a - b : b - a;
  return gap < Length::mm(2); // a page may be a little smaller than its place
}

// The edge of page `a`, in its own frame, at which page `b` lies beside it on one side of a sheet:
// 0 left, 1 top, 2 right, 3 bottom.
std::optional<std::size_t> joined_at(const Imposition &book, int a, int b) {
  if (!on_one_side(book, a, b))
    return std::nullopt;
  const Place &place = book.place_of(a);
  const Box &p = place.box, &q = book.place_of(b).box;
  const bool in_a_row = touch(p.y, q.y) && touch(p.foot(), q.foot());
  const bool in_a_column = touch(p.x, q.x) && touch(p.right(), q.right());
  const std::optional<std::size_t> on_sheet =
      in_a_row && touch(p.x, q.right())     ? std::optional<std::size_t>(0)
      : in_a_column && touch(p.y, q.foot()) ? std::optional<std::size_t>(1)
      : in_a_row && touch(p.right(), q.x)   ? std::optional<std::size_t>(2)
      : in_a_column && touch(p.foot(), q.y) ? std::optional<std::size_t>(3)
                                            : std::nullopt;
  if (!on_sheet)
    return std::nullopt;
  return (*on_sheet + 4 - static_cast<std::size_t>(place.turn / 90)) % 4;
}

bool opened_by_hand(const Edition &book) {
  return std::any_of(book.finish.begin(), book.finish.end(), [](const FinishStep &step) {
    return step.kind == StepKind::cut && step.on == StepOn::folds;
  });
}

// The name of a fold, not cut, that keeps two facing pages together; empty where there is none.
std::string_view shut_at(const CopyPart &book, int left) {
  const auto edge = joined_at(book.imposition, left, left + 1);
  const Place &place = book.imposition.place_of(left);
  const std::array<Meets, 4> meets{place.left, place.top, place.right, place.bottom};
  if (!edge || meets[*edge] != Meets::fold || opened_by_hand(*book.edition))
    return {};
  const Trims trims = trims_of(*book.edition);
  const bool head = *edge == 1, foot = *edge == 3;
  const Length cut = head ? trims.head : foot ? trims.foot : trims.fore_edge;
  return cut > Length{} ? "" : head ? "head" : foot ? "foot" : "fore-edge";
}

Problem out_of_reach(const Piece &piece, std::string message, std::string why, std::string line,
                     std::string remark = {}) {
  Problem problem;
  problem.check = "out-of-reach";
  problem.range = piece.goes.from;
  problem.message = std::move(message);
  problem.why = std::move(why);
  problem.type = {{std::move(line), std::move(remark)}};
  return problem;
}

Problem within_a_leaf(const CopyPart &book, const Piece &piece) {
  const int page = piece.at_page;
  const bool doubled = on_one_side(book.imposition, page, page + 1);
  const std::string pages = fmt::format("pages {} and {}", page, page + 1);
  return out_of_reach(
      piece,
      fmt::format("{} goes after page {}, but {} are {} of one {}", piece.name, page, pages,
                  doubled ? "the outsides" : "the two sides", doubled ? "double leaf" : "leaf"),
      doubled ? "what lies inside a double leaf is not met by a reader who turns leaves"
              : "there is paper between them, and no place",
      spoken::fact("goes", fmt::format("after {}", page + 1)));
}

Problem behind_a_fold(const Piece &piece, int left, std::string_view edge) {
  return out_of_reach(
      piece,
      fmt::format("{} goes between pages {} and {}, which a fold at the {} keeps shut", piece.name,
                  left, left + 1, edge),
      "nothing in the finish cuts that fold, so the two pages do not come apart",
      edge == "fore-edge" ? "trim       fore-edge 1/8in" : fmt::format("trim       {} 1/8in", edge),
      "under finish, or `cut folds` to open them by hand");
}

} // namespace

void check_reach(const CopyPart &book, const Piece &piece, Problems &problems) {
  const int page = piece.at_page, last = book.imposition.page_count;
  const bool after = *piece.goes == Goes::after_page;
  const bool on_book = *piece.goes == Goes::on_page && piece.host.empty();
  if (page <= 0 || page > last || !book.imposition.leaves_turn || (!after && !on_book))
    return;
  if (after && page == last) {
    problems.push_back(out_of_reach(
        piece, fmt::format("{} goes after page {}, which is the last", piece.name, page),
        "behind the last page the copy ends, and what is put there falls off",
        spoken::fact("goes", "loose"), page > 2 ? fmt::format("or after page {}", page - 2) : ""));
    return;
  }
  if (after && page % 2 != 0) {
    problems.push_back(within_a_leaf(book, piece));
    return;
  }
  const int left = page % 2 == 0 ? page : page - 1;
  if (left < 2 || left >= last)
    return;
  if (const std::string_view edge = shut_at(book, left); !edge.empty())
    problems.push_back(behind_a_fold(piece, left, edge));
}

} // namespace bodkin
