// Pages and spreads: how many there are, what opens each, and what stands on them.
#pragma once

#include "edition/reader.hpp"

namespace bodkin {

// The number of pages and the names that `called` gives; before anything that asks for a page.
void count_pages(Reader &reader);
// Every `page` and `spread`, with their elements.
void open_pages(Reader &reader);
void take_runnings(Reader &reader);
void take_standings(Reader &reader); // before pages, which lay them
// After all: each page's mode and machine, own or by default.
void settle_pages(Edition &edition);

} // namespace bodkin
