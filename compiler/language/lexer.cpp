#include "language/lexeme.hpp"
#include "language/line_grammar.hpp"
#include "language/recognise.hpp"

#include <cstring>
#include <tao/pegtl/contrib/analyze.hpp>

namespace bodkin::language {
namespace {

namespace p = tao::pegtl;

struct Cutting {
  const char *base; // of the line
  std::uint32_t begin;
  std::vector<Lexeme> &lexemes;
};

template <LexemeKind kind>
struct keep {
  template <typename Input>
  static void apply(const Input &in, Cutting &cutting) {
    cutting.lexemes.push_back(
        {kind, cutting.begin + static_cast<std::uint32_t>(in.begin() - cutting.base),
         cutting.begin + static_cast<std::uint32_t>(in.end() - cutting.base)});
  }
};

template <typename Rule>
struct kept : p::nothing<Rule> {};
template <>
struct kept<line::word> : keep<LexemeKind::word> {};
template <>
struct kept<line::number> : keep<LexemeKind::number> {};
template <>
struct kept<line::span> : keep<LexemeKind::span> {};
template <>
struct kept<line::money> : keep<LexemeKind::money> {};
template <>
struct kept<line::colour> : keep<LexemeKind::colour> {};
template <>
struct kept<line::quoted> : keep<LexemeKind::quoted> {};
template <>
struct kept<line::escaped> : keep<LexemeKind::escaped> {};
template <>
struct kept<line::open_text> : keep<LexemeKind::open_text> {};
template <>
struct kept<line::curly> : keep<LexemeKind::curly> {};
template <>
struct kept<line::comma> : keep<LexemeKind::comma> {};
template <>
struct kept<line::times> : keep<LexemeKind::times> {};
template <>
struct kept<line::colon> : keep<LexemeKind::colon> {};
template <>
struct kept<line::odd> : keep<LexemeKind::other> {};

using LineInput = p::memory_input<p::tracking_mode::lazy, p::eol::lf_crlf, const char *>;

} // namespace

void cut(std::string_view text, std::uint32_t begin, std::vector<Lexeme> &lexemes) {
  lexemes.clear();
  LineInput in(text.data(), text.data() + text.size(), "");
  Cutting cutting{text.data(), begin, lexemes};
  p::parse<line::line, kept>(in, cutting);
}

std::size_t grammar_faults() { return p::analyze<line::line>(-1); }

std::size_t recognise(std::string_view text) {
  std::size_t lines = 0;
  const char *at = text.data();
  const char *const end = at + text.size();
  while (at != end) {
    const auto *stop =
        static_cast<const char *>(std::memchr(at, '\n', static_cast<std::size_t>(end - at)));
    const char *const line_end = stop ? stop : end;
    LineInput in(at, line_end, "");
    p::parse<line::line>(in);
    ++lines;
    at = stop ? stop + 1 : end;
  }
  return lines;
}

} // namespace bodkin::language
