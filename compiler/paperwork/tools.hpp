// What lies ready on the table before the work begins.
#pragma once

#include "paperwork/making.hpp"

#include <string>
#include <vector>

namespace bodkin::paperwork {

// A phrase each, once: told by the steps of finish and the kinds of work on pages.
std::vector<std::string> tools_words(const Making &making);

Length thread_for(const Making &making, const FinishStep &step); // for one copy
// The usual care with work on pages, as a whole sentence; empty where it needs none.
std::string_view usual_caution(HandKind kind);

} // namespace bodkin::paperwork
