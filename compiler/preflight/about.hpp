// What several checks say alike.
#pragma once

#include "preflight/preflight.hpp"

#include <string>
#include <utility>
#include <vector>

namespace bodkin {

// One thing, on however many pages: what laid it, and itself.
using ItemKey = std::pair<ElementId, ElementId>;
ItemKey key_of(const Item &item);

// The line that speaks of an item: its own, or the `lay` that brought it.
const Element &element_of(const Inspection &inspection, const Item &item);
Range place_range(const Inspection &inspection, const Item &item);
// "picture", "words", … of what is seen.
std::string name_of(const Inspection &inspection, const Item &item);

const Side &side_of(const Inspection &inspection, int page);
// "pages 4 and 6"; "page 1 of card" where they are a piece's
std::string pages_in_words(const Inspection &inspection, const std::vector<int> &pages);
// Its number among all sheets of the copy.
int number_of(const Inspection &inspection, const Sheet &sheet);
// "page 4 is the left half of sheet 2, back"
std::string where_on_sheet(const Inspection &inspection, int page);

// In a sentence: "0.023in".
std::string length(const Inspection &inspection, Length length);
// Rounded away from nothing to a length that a ruler shows: 1/16in, or half a millimetre.
Length ruled(const Inspection &inspection, Length length);

bool may_edit(const Sources &sources, Range range);

// A way out typed instead of what stands at a range: the line that a maker types, and the edit with
// which an editor does it. Nobody edits the shelf: there the line stands alone.
void retype(const Inspection &inspection, Problem &problem, Range range, std::string line,
            std::string remark = {});
// The same where the words at the range are but a part of the line.
void retype_part(const Inspection &inspection, Problem &problem, Range range, std::string part,
                 std::string line, std::string remark = {});
// A further line before the one at a range, as far in.
void type_before(const Inspection &inspection, Problem &problem, Range range, std::string line,
                 std::string remark);

// Its place was said and is wrong, which was told: where it stands now is nobody's wish.
bool place_is_broken(const Inspection &inspection, const Item &item);

bool is_words(const Item &item); // words, folios and codes: what must be read

} // namespace bodkin
