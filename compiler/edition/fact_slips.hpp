// Facts in words that would be printed otherwise than they are meant.
#pragma once

#include "edition/line.hpp"
#include "edition/reader.hpp"
#include "language/prose.hpp"

namespace bodkin {

// A fact without its brackets, and a copy's number beyond the number of copies.
void tell_fact_slips(Reader &reader, const Prose &prose);
// A link to a fact in words that stand in quotes on their line.
void tell_quoted_fact(Reader &reader, FactLine line);

} // namespace bodkin
