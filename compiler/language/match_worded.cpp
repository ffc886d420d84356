#include "language/match.hpp"
#include "measure/limits.hpp"

namespace bodkin::language {
namespace {

constexpr std::string_view capitals = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";

bool has_capitals(std::string_view word) {
  for (const char c : word)
    if (c >= 'A' && c <= 'Z')
      return true;
  return false;
}

// Little words that begin the next part of a phrase are never names.
bool is_reserved(std::string_view word) {
  if (word.size() > 6)
    return false;
  constexpr std::array<std::string_view, 9> reserved{
      {"at", "but", "by", "called", "from", "in", "like", "of", "on"}};
  for (const std::string_view little : reserved)
    if (word == little)
      return true;
  return false;
}

bool read_name(Cursor &cursor, std::string_view &name) {
  if (!cursor.is(LexemeKind::word))
    return cursor.wanted(Piece::whole);
  const std::string_view word = cursor.words(cursor.at);
  if (is_reserved(word))
    return cursor.wanted(Piece::reserved);
  if (has_capitals(word))
    return cursor.wanted(Piece::capitals);
  name = word;
  ++cursor.at;
  return true;
}

std::string_view without_escapes(std::string_view inside, Tree &tree) {
  std::string text;
  for (std::size_t i = 0; i < inside.size(); ++i) {
    const bool escape = inside[i] == '\\' && i + 1 < inside.size() &&
                        (inside[i + 1] == '"' || inside[i + 1] == '\\');
    text += inside[escape ? ++i : i];
  }
  return tree.unescaped.emplace_back(std::move(text));
}

// A text in bent quotes is read as it was meant: what stands between the first quote and the last.
std::string_view between_bent(std::string_view words) {
  constexpr std::array<std::string_view, 9> quotes{
      {"\u201c", "\u201d", "\u201e", "\u00ab", "\u00bb", "\u2018", "\u2019", "'", "\""}};
  for (const std::string_view quote : quotes)
    if (words.starts_with(quote)) {
      words.remove_prefix(quote.size());
      break;
    }
  for (const std::string_view quote : quotes)
    if (words.ends_with(quote)) {
      words.remove_suffix(quote.size());
      break;
    }
  return words;
}

bool read_text(Cursor &cursor, Quoted &quoted) {
  if (!cursor.more())
    return cursor.wanted(Piece::whole);
  const Lexeme &lexeme = cursor.lexemes[cursor.at];
  const std::string_view words = cursor.words(cursor.at);
  switch (lexeme.kind) {
  case LexemeKind::quoted:
    quoted.text = words.substr(1, words.size() - 2);
    break;
  case LexemeKind::escaped:
    quoted.text = without_escapes(words.substr(1, words.size() - 2), cursor.tree);
    break;
  case LexemeKind::open_text:
    cursor.open_text = &lexeme;
    quoted.text = words.substr(1);
    break;
  case LexemeKind::curly:
    cursor.curly = &lexeme;
    quoted.text = between_bent(words);
    break;
  default:
    return cursor.wanted(Piece::whole);
  }
  ++cursor.at;
  return true;
}

std::optional<int> hex(std::string_view two) {
  int value = 0;
  for (const char c : two) {
    const int digit = c >= '0' && c <= '9'   ? c - '0'
                      : c >= 'a' && c <= 'f' ? c - 'a' + 10
                      : c >= 'A' && c <= 'F' ? c - 'A' + 10
                                             : -1;
    if (digit < 0)
      return std::nullopt;
    value = value * 16 + digit;
  }
  return value;
}

// `f7f1e1` is a name by its letters, and nobody's name for a paper.
bool looks_like_colour(std::string_view word) {
  return word.size() == 6 && word.find_first_of("0123456789") != std::string_view::npos &&
         word.find_first_not_of("0123456789abcdefABCDEF") == std::string_view::npos;
}

bool read_colour(Cursor &cursor, ColourName &colour) {
  if (cursor.is(LexemeKind::word)) {
    if (looks_like_colour(cursor.words(cursor.at)))
      return cursor.wanted(Piece::whole);
    return read_name(cursor, colour.name);
  }
  if (!cursor.is(LexemeKind::colour))
    return cursor.wanted(Piece::whole);
  const std::string_view digits = cursor.words(cursor.at).substr(1);
  if (digits.size() != 6)
    return cursor.wanted(Piece::whole);
  const std::optional<int> red = hex(digits.substr(0, 2));
  const std::optional<int> green = hex(digits.substr(2, 2));
  const std::optional<int> blue = hex(digits.substr(4, 2));
  if (!red || !green || !blue)
    return cursor.wanted(Piece::whole);
  colour.colour = {static_cast<std::uint8_t>(*red), static_cast<std::uint8_t>(*green),
                   static_cast<std::uint8_t>(*blue)};
  ++cursor.at;
  return true;
}

bool read_count(Cursor &cursor, Count &count) {
  if (!cursor.is(LexemeKind::number))
    return cursor.wanted(Piece::whole);
  const Amount amount = read_amount(cursor.words(cursor.at));
  if (!amount.bare() || !amount.whole() || amount.negative)
    return cursor.wanted(Piece::whole);
  if (amount.too_big)
    return cursor.wanted(Piece::too_big);
  count.value = amount.digits;
  ++cursor.at;
  return true;
}

bool read_decimal(Cursor &cursor, Decimal &decimal) {
  const std::optional<Amount> amount = read_number(cursor, false);
  const std::optional<Decimal> value = amount ? decimal_of(*amount) : std::nullopt;
  if (!amount || !amount->bare())
    return cursor.wanted(Piece::whole);
  if (!value)
    return cursor.wanted(Piece::too_big);
  decimal = *value;
  return true;
}

bool read_typesize(Cursor &cursor, TypeSize &size) {
  if (!cursor.is(LexemeKind::number))
    return cursor.wanted(Piece::whole);
  const std::string_view words = cursor.words(cursor.at);
  if (words.find_first_not_of("0123456789./") != std::string_view::npos)
    return cursor.wanted(Piece::whole);
  const std::size_t slash = words.find('/');
  const std::optional<Decimal> type = decimal_of(read_amount(words.substr(0, slash)));
  const std::optional<Decimal> leading = slash == std::string_view::npos
                                             ? Decimal{}
                                             : decimal_of(read_amount(words.substr(slash + 1)));
  // A type of a thousand points is a foot high.
  const auto too_much = [](const std::optional<Decimal> &points) {
    return !points || points->value() > 10'000;
  };
  if (too_much(type) || too_much(leading))
    return cursor.wanted(Piece::too_big);
  size = {*type, *leading};
  ++cursor.at;
  return true;
}

// Of the Gregorian calendar.
int days_of(int year, int month) {
  constexpr std::array<int, 12> days{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  const bool leap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
  return month == 2 && leap ? 29 : days[static_cast<std::size_t>(month) - 1];
}

bool read_date(Cursor &cursor, Date &date) {
  if (!cursor.is(LexemeKind::number) && !cursor.is(LexemeKind::span))
    return cursor.wanted(Piece::whole);
  std::string_view rest = cursor.words(cursor.at);
  constexpr std::array<std::size_t, 3> digits{4, 2, 2};
  std::array<int, 3> parts{};
  std::size_t n = 0;
  for (; n < 3 && !rest.empty(); ++n) {
    const std::size_t end = std::min(rest.find('-'), rest.size());
    if (end != digits[n] || rest.substr(0, end).find_first_not_of("0123456789") != rest.npos)
      return cursor.wanted(Piece::whole);
    for (const char c : rest.substr(0, end))
      parts[n] = parts[n] * 10 + (c - '0');
    rest.remove_prefix(std::min(end + 1, rest.size()));
  }
  if (!rest.empty() || (n > 1 && (parts[1] < 1 || parts[1] > 12)) ||
      (n > 2 && (parts[2] < 1 || parts[2] > days_of(parts[0], parts[1]))))
    return cursor.wanted(Piece::whole);
  date = {parts[0], parts[1], parts[2]};
  ++cursor.at;
  return true;
}

bool read_code(Cursor &cursor, std::size_t letters, Word &word) {
  if (!cursor.is(LexemeKind::word))
    return cursor.wanted(Piece::whole);
  const std::string_view code = cursor.words(cursor.at);
  if (code.size() != letters || code.find_first_not_of(capitals) != code.npos)
    return cursor.wanted(Piece::whole);
  word.text = code;
  ++cursor.at;
  return true;
}

bool read_mode(Cursor &cursor, Word &word) {
  using namespace std::string_view_literals;
  for (const std::string_view mode : {"black"sv, "colour"sv})
    if (cursor.is(LexemeKind::word) && same_word(cursor.words(cursor.at), mode)) {
      word.text = mode;
      ++cursor.at;
      return true;
    }
  return cursor.wanted(Piece::whole);
}

bool read_language(Cursor &cursor, Word &word) {
  if (!cursor.is(LexemeKind::word))
    return cursor.wanted(Piece::whole);
  word.text = cursor.words(cursor.at);
  const std::size_t first = std::min(word.text.find('-'), word.text.size());
  if (first < 2 || first > 3)
    return cursor.wanted(Piece::whole);
  ++cursor.at;
  return true;
}

} // namespace

bool read_worded(Cursor &cursor, ValueKind kind, Value &value) {
  switch (kind) {
  case ValueKind::name:
    return read_name(cursor, value.emplace<Word>().text);
  case ValueKind::text:
    return read_text(cursor, value.emplace<Quoted>());
  case ValueKind::count:
    return read_count(cursor, value.emplace<Count>());
  case ValueKind::number:
    return read_decimal(cursor, value.emplace<Decimal>());
  case ValueKind::typesize:
    return read_typesize(cursor, value.emplace<TypeSize>());
  case ValueKind::colour:
    return read_colour(cursor, value.emplace<ColourName>());
  case ValueKind::date:
    return read_date(cursor, value.emplace<Date>());
  case ValueKind::country:
    return read_code(cursor, 2, value.emplace<Word>());
  case ValueKind::currency:
    return read_code(cursor, 3, value.emplace<Word>());
  case ValueKind::mode:
    return read_mode(cursor, value.emplace<Word>());
  default:
    return read_language(cursor, value.emplace<Word>());
  }
}

bool read_value(Cursor &cursor, ValueKind kind, Value &value) {
  switch (kind) {
  case ValueKind::length:
  case ValueKind::size:
  case ValueKind::across:
  case ValueKind::down:
  case ValueKind::place:
  case ValueKind::cells:
  case ValueKind::spot:
  case ValueKind::angle:
  case ValueKind::share:
    return read_measured(cursor, kind, value);
  case ValueKind::money:
  case ValueKind::rate:
  case ValueKind::copyrate:
  case ValueKind::weight:
  case ValueKind::mass:
  case ValueKind::time:
    return read_priced(cursor, kind, value);
  case ValueKind::pages:
  case ValueKind::page:
  case ValueKind::numbers:
    return read_pages(cursor, kind, value);
  default:
    return read_worded(cursor, kind, value);
  }
}

} // namespace bodkin::language
