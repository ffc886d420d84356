// Problems of words that have no room, and of texts whose boxes lead astray.
#pragma once

#include "page/text_run.hpp"

namespace bodkin {

// Words with a place of their own that does not hold them.
Problem left_over_alone(const Workshop &workshop, const WordsPlace &place, int page,
                        const LeftOver &left, std::int64_t words);
// A running text whose last box is full.
Problem left_over_run(const Workshop &workshop, TextId text, const std::vector<TextBox> &boxes,
                      const TextBox &last, const LeftOver &left, std::int64_t words);
// Words are all set before the last boxes: a note.
// `empty`: the boxes that the text does not come to, in its order.
Problem ends_early(const Workshop &workshop, TextId text,
                   const std::vector<const TextBox *> &empty);
Problem continues_in_a_loop(const Workshop &workshop, TextId text, const TextBox &box);
Problem continues_nowhere(const Workshop &workshop, TextId text, const TextBox &box, int page);
Problem never_reached(const Workshop &workshop, TextId text, const TextBox &box);

} // namespace bodkin
