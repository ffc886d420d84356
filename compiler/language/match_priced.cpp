#include "language/match.hpp"
#include "measure/limits.hpp"

namespace bodkin::language {
namespace {

struct Sign {
  std::string_view sign, code;
};
constexpr std::array<Sign, 3> signs{{{"$", "USD"}, {"\u00a3", "GBP"}, {"\u20ac", "EUR"}}};

constexpr std::int64_t most_milliseconds = 1000LL * 3600 * 24 * 365;
constexpr std::int64_t most_micrograms = 1'000'000LL * 1'000'000; // a tonne
constexpr std::int64_t most_pack = 1'000'000'000;
// International pound of 1959: an ounce is 28.349523125 g.
constexpr std::int64_t ounce_micrograms = 28'349'523;

bool read_sum(Cursor &cursor, std::string_view words, std::string_view code, Price &price) {
  const std::optional<Decimal> amount = decimal_of(read_amount(words));
  if (!amount)
    return cursor.wanted(Piece::too_big);
  price = {*amount, currency_of(code)};
  return true;
}

bool is_currency(std::string_view word) {
  return word.size() == 3 && word.find_first_not_of("ABCDEFGHIJKLMNOPQRSTUVWXYZ") == word.npos;
}

bool read_money(Cursor &cursor, Price &price) {
  if (cursor.is(LexemeKind::money)) {
    const std::string_view words = cursor.words(cursor.at);
    for (const Sign &sign : signs) {
      const std::size_t at = words.find(sign.sign);
      if (at == std::string_view::npos)
        continue;
      if (!read_sum(cursor, words.substr(at + sign.sign.size()), sign.code, price))
        return false;
      if (at != 0)
        price.amount.digits = -price.amount.digits;
      ++cursor.at;
      return true;
    }
  }
  if (!cursor.is(LexemeKind::number) || cursor.at + 1 >= cursor.lexemes.size())
    return cursor.wanted(Piece::money);
  const std::string_view code = cursor.words(cursor.at + 1);
  if (!read_amount(cursor.words(cursor.at)).bare() || !is_currency(code))
    return cursor.wanted(Piece::money);
  if (!read_sum(cursor, cursor.words(cursor.at), code, price))
    return false;
  cursor.at += 2;
  return true;
}

struct PerWord {
  std::string_view word;
  Per per;
};
constexpr std::array<PerWord, 7> per_words{{{"side", Per::side},
                                            {"sheet", Per::sheet},
                                            {"copy", Per::copy},
                                            {"plate", Per::plate},
                                            {"pass", Per::pass},
                                            {"run", Per::run},
                                            {"hour", Per::hour}}};

bool read_pack(Cursor &cursor, Rate &rate) {
  const std::optional<Amount> count = read_number(cursor, false);
  if (!count || !count->bare() || !count->whole())
    return cursor.wanted(Piece::pack);
  if (count->too_big || count->digits > most_pack) {
    --cursor.at;
    return cursor.wanted(Piece::too_big);
  }
  rate.count = count->negative ? -count->digits : count->digits;
  rate.per = Per::sheets;
  if (cursor.word("sheets"))
    return true;
  rate.per = Per::sides;
  return cursor.word("sides") || cursor.wanted(Piece::pack);
}

bool read_per(Cursor &cursor, Rate &rate) {
  if (cursor.word("each")) {
    rate.per = Per::each;
    return true;
  }
  if (cursor.word("once")) {
    rate.per = Per::once;
    return true;
  }
  if (cursor.word("per"))
    return read_pack(cursor, rate);
  if (!cursor.word("a") && !cursor.word("an"))
    return cursor.wanted(Piece::per);
  for (const PerWord &per : per_words)
    if (cursor.word(per.word)) {
      rate.per = per.per;
      return true;
    }
  return cursor.wanted(Piece::per_what);
}

bool read_rate(Cursor &cursor, bool copy_unsaid, Rate &rate) {
  if (!read_money(cursor, rate.price))
    return false;
  if (copy_unsaid && (!cursor.more() || cursor.is(LexemeKind::comma))) {
    rate.per = Per::copy;
    return true;
  }
  return read_per(cursor, rate);
}

// The number and what should be its unit were passed: the unit, or a bare number, is at fault.
bool unit_wanted(Cursor &cursor) {
  --cursor.at;
  return cursor.wanted(Piece::unit);
}
bool too_big(Cursor &cursor, std::uint32_t number) {
  cursor.at = number;
  return cursor.wanted(Piece::too_big);
}

bool read_weight(Cursor &cursor, Weight &weight) {
  const std::uint32_t start = cursor.at;
  const std::optional<Amount> amount = read_number(cursor, true);
  if (!amount)
    return cursor.wanted(Piece::whole);
  const std::optional<Decimal> decimal = decimal_of(*amount);
  // Ten kilograms a square metre is a plank.
  const std::optional<std::int64_t> milligrams = scaled(*amount, 1000, 10'000'000);
  if (amount->unit != "gsm" && amount->unit != "lb")
    return unit_wanted(cursor);
  if (!decimal || !milligrams || amount->negative)
    return too_big(cursor, start);
  weight.amount = *decimal;
  weight.grammage = {*milligrams};
  if (amount->unit == "gsm")
    return true;
  if (cursor.is(LexemeKind::word))
    weight.pounds = basic_size_named(cursor.words(cursor.at));
  if (!weight.pounds)
    return cursor.wanted(Piece::pounds);
  ++cursor.at;
  weight.grammage = grammage(weight.amount, *weight.pounds);
  return true;
}

bool read_mass(Cursor &cursor, Mass &mass) {
  const std::uint32_t start = cursor.at;
  const std::optional<Amount> amount = read_number(cursor, true);
  if (!amount)
    return cursor.wanted(Piece::whole);
  const std::int64_t per = amount->unit == "g"    ? 1'000'000
                           : amount->unit == "kg" ? 1'000'000'000
                           : amount->unit == "oz" ? ounce_micrograms
                                                  : 0;
  if (per == 0)
    return unit_wanted(cursor);
  const std::optional<std::int64_t> micrograms = scaled(*amount, per, most_micrograms);
  if (!micrograms)
    return too_big(cursor, start);
  mass.micrograms = *micrograms;
  return true;
}

bool read_time(Cursor &cursor, Time &time) {
  const std::uint32_t start = cursor.at;
  const std::optional<Amount> amount = read_number(cursor, true);
  if (!amount)
    return cursor.wanted(Piece::whole);
  const std::int64_t per = amount->unit == "s"     ? 1000
                           : amount->unit == "min" ? 60'000
                           : amount->unit == "h"   ? 3'600'000
                                                   : 0;
  if (per == 0)
    return unit_wanted(cursor);
  const std::optional<std::int64_t> milliseconds = scaled(*amount, per, most_milliseconds);
  if (!milliseconds)
    return too_big(cursor, start);
  time.duration = {*milliseconds};
  time.per_written = cursor.more();
  if (!cursor.more())
    return true;
  if (cursor.word("once")) {
    time.per = TimePer::once;
    return true;
  }
  if (!cursor.word("a"))
    return cursor.wanted(Piece::per);
  time.per = cursor.is(LexemeKind::word) && cursor.words(cursor.at) == "sheet" ? TimePer::sheet
                                                                               : TimePer::copy;
  return cursor.word("copy") || cursor.word("sheet") || cursor.wanted(Piece::per_what);
}

} // namespace

std::optional<Amount> read_number(Cursor &cursor, bool apart_too) {
  if (!cursor.is(LexemeKind::number))
    return std::nullopt;
  Amount amount = read_amount(cursor.words(cursor.at));
  if (amount.denominator == 0)
    return std::nullopt;
  ++cursor.at;
  if (apart_too && amount.bare() && cursor.is(LexemeKind::word))
    amount.unit = cursor.words(cursor.at++);
  return amount;
}

bool read_priced(Cursor &cursor, ValueKind kind, Value &value) {
  switch (kind) {
  case ValueKind::money:
    return read_money(cursor, value.emplace<Price>());
  case ValueKind::rate:
    return read_rate(cursor, false, value.emplace<Rate>());
  case ValueKind::copyrate:
    return read_rate(cursor, true, value.emplace<Rate>());
  case ValueKind::weight:
    return read_weight(cursor, value.emplace<Weight>());
  case ValueKind::mass:
    return read_mass(cursor, value.emplace<Mass>());
  default:
    return read_time(cursor, value.emplace<Time>());
  }
}

} // namespace bodkin::language
