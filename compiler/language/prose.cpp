#include "language/prose.hpp"

#include "problems/characters.hpp"

namespace bodkin {
namespace {

bool is_white(char c) { return c == ' ' || c == '\t' || c == '\n'; }

// Letters and digits of any script, told from signs by what the blocks of Unicode's first plane
// hold: general punctuation to miscellaneous symbols are signs.
bool counts(char32_t code) {
  if (code < 0x80)
    return (code >= '0' && code <= '9') || (code >= 'a' && code <= 'z') ||
           (code >= 'A' && code <= 'Z');
  return code >= 0xC0 && code != 0xD7 && code != 0xF7 && !(code >= 0x2000 && code < 0x2C00) &&
         !(code >= 0x3000 && code < 0x3005);
}

} // namespace

std::int64_t word_count(const Prose &prose) {
  std::int64_t words = 0;
  for (const Block &block : prose.blocks) {
    bool counted = false; // the run of characters between white space
    for (const Span &span : block.spans) {
      if (span.hard_break)
        counted = false;
      for (std::size_t at = 0; at < span.text.size();) {
        const Character character = character_at(span.text, at);
        if (is_white(span.text[at]))
          counted = false;
        else if (!counted && counts(character.code)) {
          counted = true;
          ++words;
        }
        at += character.bytes;
      }
    }
  }
  return words;
}

std::string plain_text(const Prose &prose) {
  std::string text;
  for (const Block &block : prose.blocks) {
    if (!text.empty())
      text += "\n\n";
    for (const Span &span : block.spans)
      text += span.hard_break ? "\n" : span.text;
  }
  return text;
}

} // namespace bodkin
