// The problems of this room, one small function each.
#pragma once

#include "edition/reader.hpp"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace bodkin {

// `line` with one of its parts replaced: the line to type.
std::string typed(const Reader &reader, Range line, Range part, std::string_view instead);
// "cream, rose and board"; long lists end in "and 12 more". `total` where there are more than
// these.
std::string list_of(const std::vector<std::string_view> &names, std::size_t total = 0);
// The names that `called` gives to pages, as many as are ever searched or shown.
std::vector<std::string_view> called_names(const Reader &reader);
std::string called_list(const Reader &reader);
// "line 43", or "line 7 of stdlib/stocks/us.bodkin" where that is another file than `seen_from`.
std::string place_words(const Reader &reader, Range range, FileId seen_from);
std::string_view spoken(Family family); // "paper", "machine", "style" …

// The nearest of some names, or one that this is a part of.
std::optional<std::string_view> name_meant(Reader &reader, std::string_view name,
                                           const std::vector<std::string_view> &names);
Problem unknown_name(Reader &reader, Family family, FactLine line, std::string_view part);
Problem duplicate_name(const Reader &reader, Family family, FactLine first, FactLine second);
Problem own_beats_shelf(const Reader &reader, Family family, FactLine winner, FactLine loser);
Problem later_borrow(const Reader &reader, Family family, FactLine winner, FactLine loser);
Problem unused_thing(Family family, const Named &thing);

// A fact that must be written, under `thing`; `line` is the line to type.
Problem missing_fact(Range thing, std::string message, std::string why, std::string line);
// A fact that is there and cannot be: a price below nothing, no copies.
Problem too_many_lines(FactLine last, std::size_t most);
Problem too_small(Range range, std::string message, std::string why, std::string line);

} // namespace bodkin
