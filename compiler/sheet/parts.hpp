// The book and what else a copy holds (a wrap, inserts), each imposed by itself, and all of them as
// one run of sheets: those of the pieces are numbered on after the book's, their pages likewise.
#pragma once

#include "edition/piece.hpp"
#include "problems/problem.hpp"
#include "sheet/imposition.hpp"

#include <memory>
#include <span>
#include <string>
#include <vector>

namespace bodkin {

// Edition and piece are owned by the whole edition, which outlives this.
struct CopyPart {
  const Edition *edition = nullptr;
  const Piece *piece = nullptr; // null: the book
  Imposition imposition;        // its own sheets and pages, each from 1
  Length spine;                 // of the book, in a wrap round it; 0: it has a fold there
  int pages_before = 0;         // of the parts before it
  int sheets_before = 0;
  // Of a band and of boards: the piece with the size that the copy gives it, which `edition` then
  // is.
  std::shared_ptr<const Edition> sized;
  // Of a piece that is another book, by sheet: the part that it is made with, where an earlier run
  // has the same sheet; else none.
  std::vector<std::optional<std::size_t>> made_with;
  // Laid several up, the piece is folded from a part of the sheet: an edition without sheet sizes.
  std::shared_ptr<const Edition> cut_out;
  std::int64_t in_a_copy() const { return piece ? *piece->count : 1; }
  bool is_other_book() const { return piece && piece->is_other_book(); }
  bool makes(std::size_t sheet) const { return sheet >= made_with.size() || !made_with[sheet]; }
};

// The book first. Problems as impose() has them, and those of the pieces: piece-too-large,
// sticks-out, does-not-go-up, band-too-long, wrap-too-narrow, no-reverse, two-spines,
// knife-through-fold, out-of-reach.
std::vector<CopyPart> impose_parts(const Edition &edition, const Sources &sources,
                                   Problems &problems);

// Whether the copies of a run hold a part; none asked: of the first run, or of all.
bool holds(const CopyPart &part, std::optional<std::uint32_t> run);
// The parts of a copy of one run, its own book in place of the first's.
std::vector<const CopyPart *> parts_of_copy(std::span<const CopyPart> parts,
                                            std::optional<std::uint32_t> run);

// All parts as one; of a book alone it is the book's own imposition.
Imposition joined(const std::vector<CopyPart> &parts);

// A copy after the knife.
Size trimmed_size(const Edition &book);
// Of the parts: the book, or the wrap of that name.
const CopyPart &part_called(const std::vector<CopyPart> &parts, std::string_view name);

// "page 8", or "inside-back of the wrap".
std::string page_in_words(const Piece *host, int page);

// "goes after page 8", "lies loose in the copy", "goes round the book".
std::string goes_in_words(const Piece &piece);

const CopyPart &part_of_page(const std::vector<CopyPart> &parts, int page);   // numbered on
const CopyPart &part_of_sheet(const std::vector<CopyPart> &parts, int sheet); // index, numbered on
// Of a part, the index among its own sheets of one that is numbered on.
int sheet_of_part(const CopyPart &part, int sheet);
// The other way round; of a sheet that is made with another part, where it stands with that one.
int sheet_of_copy(const std::vector<CopyPart> &parts, const CopyPart &part, std::size_t sheet);

} // namespace bodkin
