// Dates held against that of the edition: no clock is ever asked.
#pragma once

#include "edition/reader.hpp"

namespace bodkin {

// What is published or allowed only after the edition comes out is told.
void judge_dates(Reader &reader);

} // namespace bodkin
