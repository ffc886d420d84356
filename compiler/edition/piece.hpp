// What a copy holds beside its book: wraps round it, boards, inserts of every sort. Each is an
// edition of its own in little, with its own size, folding, paper and pages, and the supplies of
// the whole.
#pragma once

#include "edition/edition.hpp"

namespace bodkin {

enum class Goes {
  loose,
  centre,         // bound in
  after_page,     // gathered in
  on_page,        // glued there: a leaf tipped in, or a pocket
  in_pocket,      //
  round_the_book, // a wrap
  round_the_copy, // a band
  outside,        // boards
  behind,         // a reverse
  instead         // of the book's own sheets, in the copies of one run
};

// Of a piece that is glued on a page, as it lies there.
enum class PieceEdge { inner, outer, head, foot };
std::string_view name_of(PieceEdge edge);

struct Glued {
  PieceEdge edge = PieceEdge::inner;
  Length width = Length::inches(1, 4);
};
struct Flaps {
  Length width;
  PieceEdge open = PieceEdge::head;
};

struct Piece {
  std::string name; // "wrap", "boards" and "reverse" of these; of two wraps "inner-wrap" first
  std::string title;
  Range range;
  Known<Goes> goes;
  int at_page = 0;    // after_page, on_page; 0: no such page, which was reported
  std::string host;   // on_page: the wrap whose page it is, else empty: the book
  std::string pocket; // in_pocket: the name of the piece
  Along across, down; // on_page: where its box lies
  Range at_range;     // the line that says so
  Known<Glued> glued; // on_page, without flaps
  std::optional<Known<Flaps>> flaps;
  Known<Length> height, overlap;            // of a band
  Known<Length> squares;                    // of boards: so far they stand out
  Known<std::int64_t> count{1, {}};         // in each copy
  Known<std::int64_t> up{1, {}};            // on one sheet, cut apart after printing
  std::optional<Known<std::uint32_t>> only; // the run whose copies alone have it
  // Of another book, by page: the first run whose copies have the same matter there.
  std::vector<std::uint32_t> matter_of;
  std::vector<std::uint32_t> matter_but_price; // likewise, if all copies had one price
  std::size_t own_steps = 0; // of its finish: those that it says itself; they come first
  // Its ids are those of the whole. The size of a band and of boards is worked out where sheets are
  // laid: here they are as large as can be told without.
  Edition edition;

  bool is_wrap() const { return *goes == Goes::round_the_book; }
  // The book as one run has it, where that differs: of its sheets those are made that do.
  bool is_other_book() const { return *goes == Goes::instead; }
  // The back of the book's own sheet: no paper of its own.
  bool is_reverse() const { return *goes == Goes::behind; }
  bool is_band() const { return *goes == Goes::round_the_copy; }
  bool is_boards() const { return *goes == Goes::outside; }
  bool is_pocket() const { return *goes == Goes::on_page && flaps; }
  bool is_tipped_in() const { return *goes == Goes::on_page && !flaps; }
  // Cut out of a larger sheet, with what is left over as waste.
  bool is_cut_out() const { return *up > 1 || is_band() || is_boards() || is_pocket(); }
  // What lies within the pile when the knife comes is cut with it.
  bool is_cut_with_the_book() const { return *goes == Goes::centre || is_wrap(); }
};

// Laid by itself, and so several on a sheet where they have room.
inline bool may_go_up(const Piece &piece) {
  return !piece.is_wrap() && !piece.is_reverse() && !piece.is_other_book();
}
// Of another book only what its run alone has is its own: the rest stands in the first run's too.
bool is_own_matter(const Piece &piece, const Element &element);

// Whether runs differ in what is printed.
bool has_other_books(const Edition &edition);

// The pieces that are wraps, from the book outwards; those of a run's copies, where one is asked.
std::vector<const Piece *> wraps_of(const Edition &book, std::optional<std::uint32_t> run = {});
// Not each in the copies of another run.
bool lie_together(const Piece &one, const Piece &other);

} // namespace bodkin
