// Units as people write them elsewhere.
#include "language/changes.hpp"
#include "language/look.hpp"
#include "language/mended.hpp"

#include <algorithm>
#include <array>
#include <fmt/format.h>

namespace bodkin::language {
namespace {

constexpr std::array<std::string_view, 9> grams_by_other_names{
    {"g", "gr", "gm", "gms", "gram", "grams", "gramme", "grammes", "gsm"}};

// `g/m²`, `g per square metre`: up to where the unit ends.
std::size_t end_of_unit(const Look &look, std::size_t last) {
  while (last + 1 < look.line.lexemes.size()) {
    const std::string_view next = look.line.words(last + 1);
    const bool of_it = look.line.touches(last) || next == "per" || next == "square" ||
                       next == "metre" || next == "meter" || next == "m2" || next == "m²";
    if (!of_it || next == ",")
      break;
    ++last;
  }
  return last;
}

} // namespace

// `weight 90g`, `weight 90 g/m²`
Slip grams(const Look &look) {
  if (!look.wants(Piece::unit) || !look.wanted({ValueKind::weight}))
    return {};
  const bool touching = look.kind() == LexemeKind::number;
  const std::size_t number = touching ? look.at : look.at - 1U;
  const Amount amount = read_amount(look.line.words(number));
  const std::string unit = small_letters(touching ? amount.unit : look.line.words(look.at));
  if (std::find(grams_by_other_names.begin(), grams_by_other_names.end(), unit) ==
      grams_by_other_names.end())
    return {};
  std::string_view figure = look.line.words(number);
  figure.remove_suffix(amount.unit.size());
  const std::string weight = fmt::format("{} gsm", figure);
  return instead(slip(look, "no-unit", fmt::format("paper is weighed in gsm: {}", weight),
                      "gsm is grams a square metre; g alone is the mass of a thing"),
                 look, number, end_of_unit(look, look.at), weight);
}

// `85x55mm`, `85mmx55mm`
Slip sides_touch(const Look &look) {
  const std::size_t next = look.at + 1U;
  if (!look.wants_length() || look.kind() != LexemeKind::number ||
      next >= look.line.lexemes.size() || look.line.lexemes[next].kind != LexemeKind::number)
    return {};
  const std::string_view words = look.line.words(look.at), other = look.line.words(next);
  const std::string_view unit = read_amount(words).unit;
  const auto own = before_the_x(unit);
  if (!own)
    return {};
  const std::string_view after = read_amount(other).unit;
  const std::string_view habit = unit_of_habit(look.line.text);
  const auto with_unit = [&](std::string_view figure, std::string_view have, std::string_view has) {
    return fmt::format("{}{}", figure, !have.empty() ? "" : !has.empty() ? has : habit);
  };
  const std::string size =
      fmt::format("{} x {}", with_unit(words.substr(0, words.size() - 1), *own, after),
                  with_unit(other, after, *own));
  return instead(slip(look, "no-unit",
                      fmt::format("x stands between two lengths, each with its unit: {}", size),
                      "in, mm, cm, pt and pc fit here; the unit touches the number, and a space "
                      "parts it from the x"),
                 look, look.at, next, size);
}

// `run 40 copies, 10% spare`
Slip spare_in_hundredths(const Look &look) {
  if (look.entry.word != "run" || look.at < 2 || look.kind() != LexemeKind::number)
    return {};
  const Amount share = read_amount(look.line.words(look.at));
  const Amount copies = read_amount(look.line.words(1));
  constexpr std::int64_t most = 1'000'000;
  if (share.unit != "%" || !share.whole() || !copies.bare() || !copies.whole() ||
      share.digits > 100 || copies.digits > most)
    return {};
  const std::int64_t spare = (copies.digits * share.digits + 99) / 100;
  return instead(slip(look, "unknown-kind",
                      fmt::format("spare copies are counted; {} of {} are {}",
                                  look.line.words(look.at), copies.digits, spare),
                      "a stack is counted out when it goes to the machine, and paid by the sheet"),
                 look, look.at, look.at, std::to_string(spare));
}

} // namespace bodkin::language
