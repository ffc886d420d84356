// Problems of matter at the edges of its page.
#pragma once

#include "preflight/reach.hpp"

namespace bodkin {

Problem off_the_page(const Inspection &inspection, int page, const Item &item, const Past &past);
// unsafe-art or unsafe-words
Problem unsafe_matter(const Inspection &inspection, int page, const Item &item,
                      const LiveArea &live, const Past &past);
// None where the words stand well inside.
std::optional<Problem> near_the_knife(const Inspection &inspection, int page, const Item &item,
                                      const LiveArea &live, const Extent &extent);
Problem cannot_fill_page(const Inspection &inspection, int page, const Item &item,
                         const LiveArea &live);

} // namespace bodkin
