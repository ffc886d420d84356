// Hand work: the time, money and care that a line of `hand` or of `finish` holds.
#pragma once

#include "edition/element.hpp"
#include "edition/finish.hpp"
#include "edition/reader.hpp"

namespace bodkin {

Takes takes_of(const language::Time &time);
Work work_of(Reader &reader, const Facts &facts);
std::vector<FinishStep> finish_steps(Reader &reader, FactLine finish);
void take_finish(Reader &reader);

} // namespace bodkin
