// Prose of an edition: read once, its links to facts and pages filled in.
#pragma once

#include "edition/reader.hpp"

#include <optional>

namespace bodkin {

// `[7](fact:number)` and `[12](page:lost)` get the edition's own figures.
void fill_in(Reader &reader, Prose &prose);
// Whether `[x](fact:NAME)` is known here.
bool is_fact(std::string_view name);
// The words below `says`, or its short form; none where there is no `says`.
std::optional<Prose> said_below(Reader &reader, FactLine line);
// The words of a file that `part` names; none where it is not there, which is reported.
std::optional<Prose> words_from(Reader &reader, FactLine line, std::string_view part);
// A text in quotes, as it is.
Prose plain_prose(std::string_view text, Range range);

} // namespace bodkin
