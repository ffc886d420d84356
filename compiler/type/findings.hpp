// What is met while words are set and must be told once an edition, however often it is met.
#pragma once

#include "edition/edition.hpp"
#include "problems/problem.hpp"

#include <cstdint>
#include <map>
#include <string>
#include <string_view>
#include <tuple>

namespace bodkin {

struct MissingGlyph {
  Range from;
  std::string words; // around the first one
  std::int64_t times = 0;
};

struct Findings {
  using Character = std::tuple<FaceId, Cut, std::string>; // the cut asked for; UTF-8
  std::map<Character, MissingGlyph> glyphs;
  std::map<std::pair<FaceId, Cut>, Range> cuts; // asked for and not there, where first
  std::map<StyleId, Range> code;                // set in a style that names none for code

  // `text` holds the character at byte `at`.
  void missing_glyph(const Character &character, Range from, std::string_view text, std::size_t at);
  void missing_cut(FaceId face, Cut cut, Range from) { cuts.try_emplace({face, cut}, from); }
  void code_unstyled(StyleId style, Range from) { code.try_emplace(style, from); }
};

} // namespace bodkin
