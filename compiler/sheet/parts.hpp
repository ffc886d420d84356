// The book and what else a copy holds (a wrap, inserts), each imposed by itself, and all of them as
// one run of sheets: those of the pieces are numbered on after the book's, their pages likewise.
#pragma once

#include "edition/piece.hpp"
#include "problems/problem.hpp"
#include "sheet/imposition.hpp"

#include <memory>
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
  // Laid several up, the piece is folded from a part of the sheet: an edition without sheet sizes.
  std::shared_ptr<const Edition> cut_out;
  std::int64_t in_a_copy() const { return piece ? *piece->count : 1; }
};

// The book first. Problems as impose() has them, and piece-too-large, does-not-go-up.
std::vector<CopyPart> impose_parts(const Edition &edition, const Sources &sources,
                                   Problems &problems);

// All parts as one; of a book alone it is the book's own imposition.
Imposition joined(const std::vector<CopyPart> &parts);

// "goes after page 8", "lies loose in the copy", "goes round the book".
std::string goes_in_words(const Piece &piece);

const CopyPart &part_of_page(const std::vector<CopyPart> &parts, int page);   // numbered on
const CopyPart &part_of_sheet(const std::vector<CopyPart> &parts, int sheet); // index, numbered on

} // namespace bodkin
