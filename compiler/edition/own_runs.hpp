// The run, or the several of an edition whose copies differ.
#pragma once

#include "edition/reader.hpp"

namespace bodkin {

void take_runs(Reader &reader);

// The run that an `only` names, by number; none where it names none.
std::optional<Known<std::uint32_t>> only_in(Reader &reader, FactLine line);

} // namespace bodkin
