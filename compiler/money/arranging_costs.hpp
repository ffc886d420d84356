// What the sides and sheets of an edition's book cost at the least, for each run that is printed
// otherwise, and what no order of its pages changes.
#pragma once

#include "money/arranging_asked.hpp"
#include "money/arranging_task.hpp"

namespace bodkin::arranging {

// Once its places are known.
void take_costs(const Question &question, Task &task);

} // namespace bodkin::arranging
