// The words, numbers, texts and signs that a line falls into, before anybody asks what they mean.
#pragma once

#include <cstdint>
#include <string_view>
#include <vector>

namespace bodkin::language {

enum class LexemeKind : std::uint8_t {
  word,      // as-is, en-GB, sra3
  number,    // 5 1/2in, -4deg, 10.5/13, 60%, 5.5" with its inch mark
  span,      // 8-11, 2026-11-25
  money,     // $0.14
  colour,    // #f6a5b8
  quoted,    // "a text"
  escaped,   // "a \"text\""
  open_text, // "a text that nobody closes
  curly,     // a text in quotes of another shape
  comma,
  times, // ×
  colon,
  other, // a run of characters that begin nothing
};

// Bytes [begin, end) of the file.
struct Lexeme {
  LexemeKind kind = LexemeKind::other;
  std::uint32_t begin = 0, end = 0;
};

// Cuts one line, without its end and without its indentation, into lexemes; a comment is left out.
// `begin` is where the line begins in the file. The vector is emptied first and keeps its room.
void cut(std::string_view line, std::uint32_t begin, std::vector<Lexeme> &lexemes);

// Whether the grammar of a line is free of rules that could go round without consuming: the number
// of such rules, as the parser library's own analysis counts them.
std::size_t grammar_faults();

} // namespace bodkin::language
