#include "language/vocabulary_table.hpp"

#include <array>

namespace bodkin::language {
namespace {

constexpr std::array entries{
    // law
    Entry{.word = "law",
          .under = "file",
          .phrase = "name:name [title:text] [like like:name]",
          .meaning = "How long rights last somewhere, as a table: of its terms, in the order of "
                     "their lines, the first that fits a source counts.",
          .example = "law united-states \"United States\"",
          .many = true},
    Entry{.word = "term",
          .under = "law",
          .phrase =
              "years:count years from from:publication|death|making [or other:count years from "
              "start:publication|death|making] [, published [never:never [within within:count "
              "years]] [since since:count] "
              "[before "
              "before:count] [in country:country]] [, made before made:count] [, author "
              "author:known|unknown] [, renewed renewed:yes|no] [, at least to least:count]",
          .meaning = "Years of protection, to the end of the calendar year, and which works have "
                     "them; of two spans the one that ends first.",
          .example = "term 95 years from publication, published before 1978",
          .many = true},
    Entry{.word = "law",
          .under = "edition",
          .phrase = "law:name",
          .meaning = "A law by whose terms the rights ledger reckons, at the year in which the "
                     "edition is dated; `borrow \"laws/terms\"` brings some.",
          .example = "law united-states",
          .many = true},
    // licence
    Entry{.word = "licence",
          .under = "file",
          .phrase = "name:name [title:text] [like like:name]",
          .meaning = "A licence under which works are lent to everybody, and what it asks; its "
                     "text is what `rights licence` says.",
          .example = "licence by-sa-4 \"CC-BY-SA-4.0\"",
          .many = true},
    Entry{.word = "called",
          .under = "licence",
          .phrase = "called:text",
          .meaning = "What it is called in full, and in credits.",
          .example = "called \"Attribution, share alike, 4.0\""},
    Entry{.word = "asks",
          .under = "licence",
          .phrase = "{ duty:credit|changes|same-licence }",
          .meaning = "What it asks of whoever uses the work: that its maker is named, that changes "
                     "are said, that what is made of it goes out under the same licence.",
          .example = "asks credit, changes, same-licence"},
    Entry{.word = "forbids",
          .under = "licence",
          .phrase = "{ use:sale|changes }",
          .meaning = "What it does not allow: selling what holds the work, or changing the work.",
          .example = "forbids sale"},
    Entry{.word = "link",
          .under = "licence",
          .phrase = "link:text",
          .meaning = "Where it can be read.",
          .example = "link \"https://creativecommons.org/licenses/by-sa/4.0/\""},
    Entry{.word = "licence",
          .under = "edition",
          .phrase = "licence:text",
          .meaning = "The licence that the edition itself is given out under.",
          .example = "licence \"CC-BY-SA-4.0\""},
    // more of a source
    Entry{.word = "made",
          .under = "source",
          .phrase = "date:date",
          .meaning = "When the work was made, where that is not when it was published.",
          .example = "made 1899"},
    Entry{.word = "renewed",
          .under = "source",
          .phrase = "renewed:yes|no",
          .meaning = "Whether its rights were renewed in time, where a law once asked for that.",
          .example = "renewed no"},
    Entry{.word = "source",
          .under = "text",
          .phrase = "source:name",
          .meaning = "Where the text comes from.",
          .example = "source harbour-card"},
};

} // namespace

std::span<const Entry> rights_entries() { return entries; }

} // namespace bodkin::language
