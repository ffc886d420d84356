#include "language/phrase.hpp"

#include <array>

namespace bodkin::language {
namespace {

constexpr std::array<KindWords, value_kinds> kinds{{
    {"name", "a name", "`corner-copier`: small letters, digits and hyphens"},
    {"text", "a text in straight quotes", "`\"Night Bus\"`, with `\\\"` and `\\\\` inside"},
    {"count", "a whole number", "`4`, `500`"},
    {"number", "a number", "`4`, `0.5`"},
    {"length", "a length",
     "`1/4in`, `5 1/2in`, `½in`, `8.5in`, `140mm`, `1.2cm`, `12pt`, `3pc`, `0`"},
    {"size", "a size",
     "`5.5in x 8.5in`, or a paper by name: `letter`, `legal`, `tabloid`, `half-letter`, "
     "`quarter-letter`, `half-legal`, `a3` to `a8`, `sra3`"},
    {"typesize", "a type size", "`10.5/13`: size and leading in points; `10.5`"},
    {"across", "how far across the page",
     "`1in`, from the left; `1in from right`, `1/2in from outer`, `1in from inner`; `centred`"},
    {"down", "how far down the page", "`1in`, from the head; `1/4in from foot`; `centred`"},
    {"place", "a place",
     "`0.5in 1in, 4in x 3in`: across and down from the page's top left, then the size; `1/2in from "
     "outer, 1/4in from foot, 2in x 0.2in`; `centred` for either"},
    {"cells", "columns by rows", "`1-4 by 2-6`"},
    {"spot", "a point of the page", "`1/2in 2in`: across and down from its top left"},
    {"angle", "an angle", "`-4deg`: clockwise is positive"},
    {"share", "a share", "`60%`"},
    {"money", "a sum of money", "`$0.14`, `£2.10`, `€3`, `12.50 CAD`"},
    {"rate", "a price",
     "`$0.14 a side`; also `a sheet`, `a copy`, `a plate`, `a pass`, `a run`, `each`, `per 500 "
     "sheets`, `an hour`, `once`"},
    {"copyrate", "a price", "`$5 a copy`; `$5` alone means the same"},
    {"weight", "a weight of paper",
     "`90 gsm`, `28 lb bond`, `80 lb text`, `65 lb cover`, `110 lb index`, `67 lb bristol`, `100 "
     "lb tag`"},
    {"mass", "a mass", "`12 g`, `3.5 oz`"},
    {"time", "a time", "`40 s a copy`, `2 min a sheet`, `1 1/2 h once`"},
    {"colour", "a colour", "`#f6a5b8`, `black`, `white`, or the name of a stock"},
    {"pages", "pages",
     "`4`, `2-3`, `5, 8-11`, `left`, `right`, `all`, `all but 12-13`, `cover`, `centre`, "
     "`front-cover`, `inside-front`, `inside-back`, `back-cover`, `next`, or a page's name"},
    {"page", "a page", "`9`, or a page's name"},
    {"numbers", "numbers from and to", "`1-50`; `7` alone"},
    {"date", "a date", "`2026`, `2026-11`, `2026-11-25`"},
    {"language", "a language", "`en-GB`, `fr`"},
    {"country", "a country", "`US`, `GB`: its two capitals"},
    {"currency", "a currency", "`USD`, `CAD`: its three capitals"},
    {"mode", "what it is printed in", "`black`, `colour`"},
}};

} // namespace

const KindWords &words_of(ValueKind kind) { return kinds[static_cast<std::size_t>(kind)]; }

} // namespace bodkin::language
