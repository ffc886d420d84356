#include "language/large_pages.hpp"

#include <cstdint>
#include <sys/mman.h>

namespace bodkin::language {

void in_large_pages(void *begin, std::size_t bytes) {
  constexpr std::uintptr_t small_page = 4096;
  constexpr std::size_t worth_it = 8u << 20;
  if (bytes < worth_it)
    return;
  const auto address = reinterpret_cast<std::uintptr_t>(begin);
  const std::uintptr_t first = (address + small_page - 1) / small_page * small_page;
  const std::uintptr_t last = (address + bytes) / small_page * small_page;
  madvise(static_cast<char *>(begin) + (first - address), last - first, MADV_HUGEPAGE);
}

} // namespace bodkin::language
