// Manuscripts for these tests, and ranges found in them by the words that they hold.
#pragma once

#include "problems/problem.hpp"
#include "problems/sources.hpp"

#include <string>
#include <string_view>

inline bodkin::Range range_at(bodkin::FileId file, std::size_t begin, std::size_t end) {
  return {file, static_cast<bodkin::Offset>(begin), static_cast<bodkin::Offset>(end)};
}

// The words must stand in the file; the first place counts.
inline bodkin::Range range_of(const bodkin::Sources &sources, bodkin::FileId file,
                              std::string_view words) {
  const std::size_t begin = sources.text(file).find(words);
  return range_at(file, begin, begin + words.size());
}
