// Words that tell what a copy costs, where its price hangs on the run that it is of.
#pragma once

#include "edition/edition.hpp"

#include <optional>
#include <string>
#include <vector>

namespace bodkin {

class Reader;

// "$14", as the manuscript writes it; none where the run's copies have no price.
std::optional<std::string> price_in_words(const Reader &reader, std::uint32_t run);

// A link to the price in an element's own words, or in the text that it shows; null: none.
const Span *told_price(const Edition &edition, const Element &element);
bool tells_a_price(const Edition &edition); // on some page

// By run; empty where a run has none.
using Prices = std::vector<std::string>;
Prices prices_by_run(const Reader &reader);
bool differ(const Prices &prices);

// Each run's copies tell their own price; a run that has none, and a piece that goes into copies of
// several prices, are problems.
void price_book(Reader &reader, Edition &book, std::uint32_t run, const Prices &prices);
void price_pieces(Reader &reader, const Prices &prices);

} // namespace bodkin
