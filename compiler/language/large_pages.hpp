// Memory that is about to be filled from end to end, asked of the system in large pages: one fault
// for 2 MB instead of 512. A wish only; where it is not granted nothing changes.
#pragma once

#include <cstddef>

namespace bodkin::language {

void in_large_pages(void *begin, std::size_t bytes);

} // namespace bodkin::language
