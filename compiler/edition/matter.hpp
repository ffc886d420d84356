// Pictures and words: the two elements with the most to say.
#pragma once

#include "edition/element.hpp"
#include "edition/every.hpp"

namespace bodkin {

Picture picture_of(Reader &reader, FactLine line, const ElementFacts &facts);
// Credits or a colophon: its prose is written when the whole is known.
Words written_words_of(Reader &reader, FactLine line, const ElementFacts &facts);
Words words_of(Reader &reader, FactLine line, const ElementFacts &facts);

} // namespace bodkin
