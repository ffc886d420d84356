// The table's parts, by family; vocabulary.cpp strings them together.
#pragma once

#include "language/vocabulary.hpp"

namespace bodkin::language {

std::span<const Entry> file_entries();
std::span<const Entry> edition_entries();
std::span<const Entry> piece_entries();
std::span<const Entry> supply_entries();
std::span<const Entry> rights_entries();
std::span<const Entry> post_entries();
std::span<const Entry> style_entries();
std::span<const Entry> element_entries();
std::span<const Entry> finish_entries();
std::span<const Entry> folding_entries();

} // namespace bodkin::language
