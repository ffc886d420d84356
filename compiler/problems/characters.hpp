// Texts as characters (code points of UTF-8) and as columns on a terminal. What came from a file
// may hold anything: malformed bytes read as U+FFFD, one a byte, so no text is ever refused here.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace bodkin {

struct Character {
  char32_t code = 0;
  std::size_t bytes = 0; // 1 to 4
  bool well_formed = true;
};

// The character that begins at `at`, which must be inside the text.
Character character_at(std::string_view text, std::size_t at);
// Where the character begins that the byte at `at` belongs to; the text's size where `at` is past
// it.
std::size_t character_start(std::string_view text, std::size_t at);
void append_utf8(std::string &text, char32_t code);

// Columns that a terminal gives a character: 2 for East Asian wide and full-width ones (Unicode
// UAX #11, ambiguous ones count 1), 0 for marks that stand on the one before and for joiners.
int columns_of(char32_t code);
int columns_of(std::string_view text);

// Nothing in it moves a cursor, changes a colour or turns the reading direction: C0 controls become
// their pictures (␛), other controls and marks of direction become U+FFFD.
std::string harmless(std::string_view text);
char32_t harmless(char32_t code);

// As text or an attribute's value of an XML file; controls, which none may hold, become blanks.
std::string as_xml(std::string_view text);

} // namespace bodkin
