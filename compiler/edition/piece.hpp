// What a copy holds beside its book: a wrap round it, and inserts. Each is an edition of its own in
// little, with its own size, folding, paper and pages, and the supplies of the whole.
#pragma once

#include "edition/edition.hpp"

namespace bodkin {

enum class Goes { loose, centre, after_page, on_page, round_the_book, behind };

// In place of a number: as many as cost least, chosen once prices are known.
inline constexpr int up_most = 0;

struct Piece {
  std::string name; // "wrap" of a wrap, "reverse" of a reverse
  std::string title;
  Range range;
  Known<Goes> goes;
  int at_page = 0;                  // of the book: after_page, on_page
  Known<std::int64_t> count{1, {}}; // in each copy
  Known<int> up{1, {}};             // on one sheet, cut apart after printing
  Edition edition;                  // its ids are those of the whole
  bool is_wrap() const { return *goes == Goes::round_the_book; }
  // The back of the book's own sheet: no paper of its own.
  bool is_reverse() const { return *goes == Goes::behind; }
};

} // namespace bodkin
