// What can be wrong with a list of pages.
#pragma once

#include "edition/reader.hpp"

#include <cstdint>
#include <span>
#include <string_view>

namespace bodkin {

// `range` is the list, or the words that name the page.
Problem needs_pages_written(Range range, std::string_view word);
Problem backwards(const Reader &reader, FactLine line, Range range, std::int64_t first,
                  std::int64_t last);
Problem no_page_nought(const Reader &reader, FactLine line, Range range);
// `count` is 0 where the number of pages is not known yet.
Problem above_the_last(const Reader &reader, FactLine line, Range range, std::int64_t page,
                       int count);
Problem too_many_lists(FactLine line);
Problem unknown_page(Reader &reader, FactLine line, Range range, std::string_view name,
                     std::span<const std::string_view> page_words);

} // namespace bodkin
