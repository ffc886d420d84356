#include "language/match.hpp"
#include "language/slips.hpp"
#include "measure/limits.hpp"
#include "measure/paper.hpp"

namespace bodkin::language {
namespace {

constexpr std::int64_t most_length = limits::length_inches * Length::per_inch;
constexpr std::int64_t most_thousandths = 3'600'000; // ten times round
constexpr std::int64_t most_millionths = 100'000'000;
constexpr std::int64_t most_columns = 1000;

bool read_length(Cursor &cursor, Length &length) {
  if (!cursor.is(LexemeKind::number))
    return cursor.wanted(Piece::whole);
  const Amount amount = read_amount(cursor.words(cursor.at));
  if (amount.bare() && amount.zero() && amount.whole()) {
    ++cursor.at;
    length = {};
    return true;
  }
  const std::optional<std::int64_t> per = units_in(amount.unit);
  if (!per || amount.denominator == 0)
    return cursor.wanted(Piece::whole);
  const std::optional<std::int64_t> units = scaled(amount, *per, most_length);
  if (!units)
    return cursor.wanted(Piece::too_big);
  if (amount.inch_mark)
    cursor.inch_mark = &cursor.lexemes[cursor.at];
  ++cursor.at;
  length = Length::units(*units);
  return true;
}

bool read_size(Cursor &cursor, Size &size) {
  if (cursor.is(LexemeKind::word)) {
    const std::string_view name = cursor.words(cursor.at);
    const std::optional<Size> paper = paper_named(name);
    if (!paper)
      return cursor.wanted(paper_named(small_letters(name)) ? Piece::capitals : Piece::whole);
    ++cursor.at;
    size = *paper;
    return true;
  }
  if (!read_length(cursor, size.width))
    return false;
  if (!cursor.is(LexemeKind::times) &&
      !(cursor.is(LexemeKind::word) && cursor.words(cursor.at) == "x"))
    return cursor.wanted(Piece::cross);
  ++cursor.at;
  return read_length(cursor, size.height);
}

struct Edge {
  std::string_view word;
  Anchor anchor;
};
constexpr std::array<Edge, 4> edges_across{{{"left", Anchor::start},
                                            {"right", Anchor::end},
                                            {"outer", Anchor::outer},
                                            {"inner", Anchor::inner}}};
constexpr std::array<Edge, 2> edges_down{{{"head", Anchor::start}, {"foot", Anchor::end}}};

template <std::size_t n>
bool read_edge(Cursor &cursor, const std::array<Edge, n> &edges, Anchor &anchor) {
  for (const Edge &edge : edges)
    if (cursor.word(edge.word)) {
      anchor = edge.anchor;
      return true;
    }
  return cursor.wanted(n == edges_across.size() ? Piece::edge : Piece::edge_down);
}

template <std::size_t n>
bool read_along(Cursor &cursor, const std::array<Edge, n> &edges, Along &along) {
  if (cursor.is(LexemeKind::word) && same_word(cursor.words(cursor.at), "centred")) {
    ++cursor.at;
    along = {Anchor::centred, {}};
    return true;
  }
  if (!read_length(cursor, along.offset))
    return false;
  along.anchor = Anchor::start;
  return !cursor.word("from") || read_edge(cursor, edges, along.anchor);
}

bool begins_size(const Cursor &cursor) {
  if (cursor.is(LexemeKind::word))
    return paper_named(cursor.words(cursor.at)).has_value();
  if (!cursor.is(LexemeKind::number) || cursor.at + 1 >= cursor.lexemes.size())
    return false;
  const Lexeme &next = cursor.lexemes[cursor.at + 1];
  return next.kind == LexemeKind::times ||
         (next.kind == LexemeKind::word && cursor.words(cursor.at + 1) == "x");
}

bool read_place(Cursor &cursor, Place &place) {
  if (!begins_size(cursor)) {
    if (!read_along(cursor, edges_across, place.across))
      return false;
    if (cursor.is(LexemeKind::comma))
      ++cursor.at;
    if (!cursor.more() || begins_size(cursor))
      return cursor.wanted(Piece::down);
    if (!read_along(cursor, edges_down, place.down))
      return false;
    place.has_spot = true;
    if (!cursor.is(LexemeKind::comma)) {
      cursor.wanted(Piece::comma);
      return true;
    }
    ++cursor.at;
    if (!begins_size(cursor))
      return cursor.wanted(Piece::size_after);
  }
  place.has_size = true;
  return read_size(cursor, place.size);
}

bool read_pair(Cursor &cursor, Piece piece, int &first, int &last) {
  const auto read = [&cursor, piece](std::string_view digits, int &into) {
    const Amount amount = read_amount(digits);
    if (!amount.bare() || !amount.whole() || amount.negative)
      return cursor.wanted(piece);
    if (amount.too_big || amount.digits > most_columns)
      return cursor.wanted(Piece::too_big);
    into = static_cast<int>(amount.digits);
    return true;
  };
  if (!cursor.is(LexemeKind::span) && !cursor.is(LexemeKind::number))
    return cursor.wanted(piece);
  const std::string_view words = cursor.words(cursor.at);
  const std::size_t dash = words.find_first_not_of("0123456789");
  if (!cursor.is(LexemeKind::span)) {
    if (!read(words, first))
      return false;
    last = first;
  } else {
    const std::string_view rest = words.substr(words.find_first_of("0123456789", dash));
    if (!read(words.substr(0, dash), first) || !read(rest, last))
      return false;
  }
  ++cursor.at;
  return true;
}

bool read_cells(Cursor &cursor, Cells &cells) {
  if (!read_pair(cursor, Piece::whole, cells.first_column, cells.last_column))
    return false;
  if (!cursor.word("by"))
    return cursor.wanted(Piece::by);
  return read_pair(cursor, Piece::row, cells.first_row, cells.last_row);
}

// A number with one unit of its own: degrees and shares.
bool read_with_unit(Cursor &cursor, std::string_view unit, std::string_view sign, std::int64_t per,
                    std::int64_t most, std::int64_t &value) {
  if (!cursor.is(LexemeKind::number))
    return cursor.wanted(Piece::whole);
  const Amount amount = read_amount(cursor.words(cursor.at));
  const bool bare_zero = amount.bare() && amount.zero() && amount.whole();
  if (!bare_zero && amount.unit != unit && amount.unit != sign)
    return cursor.wanted(Piece::whole);
  const std::optional<std::int64_t> number = scaled(amount, per, most);
  if (!number)
    return cursor.wanted(Piece::too_big);
  value = *number;
  ++cursor.at;
  return true;
}

bool read_angle(Cursor &cursor, Angle &angle) {
  std::int64_t value = 0;
  if (!read_with_unit(cursor, "deg", "\u00b0", 1000, most_thousandths, value))
    return false;
  angle.thousandths = static_cast<std::int32_t>(value);
  return true;
}

} // namespace

bool read_measured(Cursor &cursor, ValueKind kind, Value &value) {
  switch (kind) {
  case ValueKind::length:
    return read_length(cursor, value.emplace<Length>());
  case ValueKind::size:
    return read_size(cursor, value.emplace<Size>());
  case ValueKind::across:
    return read_along(cursor, edges_across, value.emplace<Along>());
  case ValueKind::down:
    return read_along(cursor, edges_down, value.emplace<Along>());
  case ValueKind::place:
    return read_place(cursor, value.emplace<Place>());
  case ValueKind::cells:
    return read_cells(cursor, value.emplace<Cells>());
  case ValueKind::spot: {
    Spot &spot = value.emplace<Spot>();
    return read_length(cursor, spot.x) && read_length(cursor, spot.y);
  }
  case ValueKind::angle:
    return read_angle(cursor, value.emplace<Angle>());
  default:
    return read_with_unit(cursor, "%", "%", 10'000, most_millionths,
                          value.emplace<Share>().millionths);
  }
}

} // namespace bodkin::language
