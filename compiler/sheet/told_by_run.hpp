// What is wrong with the books of runs that differ, told once.
#pragma once

#include "edition/run_set.hpp"
#include "problems/problem.hpp"
#include "sheet/parts.hpp"

#include <vector>

namespace bodkin {

// `found` by part. A trouble that the books of several runs have alike is told of the first of
// them; one that not all have says in whose copies it is.
void tell_by_run(std::span<const CopyPart> parts, std::vector<Problems> found, Problems &problems);

} // namespace bodkin
