// `like`: the facts of a thing, those of another of its kind copied in.
#pragma once

#include "edition/reader.hpp"

namespace bodkin {

// All facts of each thing of a family, in the order of Things::all. A written line replaces every
// copied line of its keyword, but `prints` only those of its ink and `heading` only those of its
// level; a written `weight` drops a copied `caliper`. Loops are problems.
std::vector<Facts> facts_of_all(Reader &reader, Family family);

} // namespace bodkin
