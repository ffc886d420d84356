// The line that was meant. Where a line stopped fitting its phrase, small changes are tried one by
// one, and each is judged by reading the line again: what is handed out to be typed can be read.
#pragma once

#include "language/slips.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace bodkin::language {

// Whether a line, from its first word, can be read as the entry's.
bool can_be_read(std::string_view typed, const Entry &entry);

// `typed` with the fewest small changes that make it readable; none where no few of them do. The
// whole file tells which unit and which money its maker is used to.
std::optional<std::string> mended(std::string_view typed, const Entry &entry,
                                  std::string_view file);

// The unit of length that most numbers of a file carry; inches where it has none.
std::string_view unit_of_habit(std::string_view file);
// The first sign of money in a file; a dollar's where it has none.
std::string_view money_of_habit(std::string_view file);
// The sign of money that is called by its name, "pounds", or stands behind its sum; empty of any
// other word.
std::string_view sign_of_money(std::string_view word);

} // namespace bodkin::language
