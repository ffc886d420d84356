// What reading an edition found, said once: a slip that is repeated, and a file that is no
// manuscript.
#pragma once

#include "problems/problem.hpp"
#include "problems/sources.hpp"

namespace bodkin {

// One name that nothing has, asked for on many lines: the first tells the others' lines and mends
// them too.
void tell_names_once(Problems &problems, const Sources &sources);

// Where `file` is not named as a manuscript and its lines begin with anything, that is the problem:
// it takes the place of all that its lines were found to lack, and true is returned.
bool tell_no_manuscript(Problems &problems, FileId file, const Sources &sources);

} // namespace bodkin
