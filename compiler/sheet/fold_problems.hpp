// What is wrong with a folding that cannot be done; check `folding-cannot-be`.
#pragma once

#include "edition/folding.hpp"
#include "problems/problem.hpp"

namespace bodkin {

Problem too_many_panels(const Folding &folding);
Problem too_many_sheets(const Folding &folding);
Problem never_folded(const Folding &folding);
// `columns` by `rows` panels is how the sheet lies before the step (or after the last one).
Problem no_half(const Folding &folding, const FoldStep &step, int columns, int rows);
Problem not_folded_down(const Folding &folding, int columns, int rows);

} // namespace bodkin
