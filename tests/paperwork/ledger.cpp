#include "paperwork/ledger.hpp"

#include "edition/reading.hpp"

#include <doctest/doctest.h>

using namespace bodkin;
using namespace bodkin::tests;
using namespace bodkin::paperwork;

namespace {

constexpr const char *face_and_style = "face book from \"EB Garamond\"\n"
                                       "style body\n  face book 10/12\n";

Read with_a_card() {
  return read("borrow \"laws/terms\"\n" +
                  small_edition("dated 2026-11\nlaw united-states\nlaw life-plus-70",
                                std::string(face_and_style) +
                                    "source card\n"
                                    "  title     \"Harbour, \\\"at night\\\"\"\n"
                                    "  author    \"A. Ferrier\"\n"
                                    "  published 1907, US\n"
                                    "  rights    public-domain\n"
                                    "text diary from \"words/diary.md\"\n"
                                    "  source card\n"
                                    "page 1\n"
                                    "  picture \"art/harbour.png\"\n"
                                    "    crop 0% 0%, 50% x 50%\n"
                                    "    tone grey\n"
                                    "    source card\n"
                                    "  words of diary in body\n"
                                    "    at 1in 1in, 2in x 2in\n"
                                    "page 2\n"
                                    "  words of diary in body\n"
                                    "    at 1in 1in, 2in x 2in\n"
                                    "page 4\n"
                                    "  picture \"art/harbour.png\"\n"
                                    "    source card\n"
                                    "  picture \"art/moon.png\"\n"
                                    "  words \"Good night\" in body\n"
                                    "    at 1in 1in, 2in x 2in\n"),
              {{"art/harbour.png", ""}, {"art/moon.png", ""}, {"words/diary.md", "Rain."}});
}

} // namespace

TEST_CASE("the ledger as a table has a line for each work and two quotes for one (RFC 4180)") {
  const Read r = with_a_card();
  CHECK(r.found().empty());
  CHECK(
      ledger_as_csv(r.edition(), ledger_of(r.edition())) ==
      "kind,what,pages,changed,source,title,author,author_died,made,published,country,kept_by,"
      "rights,permission_date,permission,credit,costs,link,united-states_answer,"
      "united-states_last_year,united-states_sum,life-plus-70_answer,life-plus-70_last_year,"
      "life-plus-70_sum\r\n"
      "picture,art/harbour.png,\"1, 4\",\"cropped, put in grey\",card,\"Harbour, \"\"at "
      "night\"\"\","
      "A. Ferrier,,,1907,US,,public domain,,,,,,ended,2002,\"published in 1907, and 95 years: to "
      "the end of 2002\",untold,,not said: when its author died\r\n"
      "text,diary,\"1, 2\",,card,\"Harbour, \"\"at night\"\"\",A. Ferrier,,,1907,US,,public "
      "domain,,,,,,ended,2002,\"published in 1907, and 95 years: to the end of 2002\",untold,,not "
      "said: when its author died\r\n"
      "picture,art/moon.png,4,,,,,,,,,,,,,,,,,,,,,\r\n"
      "face,EB Garamond,,,,,,,,,,,licence OFL 1.1,,,,,,,,,,,\r\n");
}

TEST_CASE("the ledger to read names each source once, with what comes from it") {
  const Read r = with_a_card();
  CHECK(ledger_as_text(r.edition(), ledger_of(r.edition())) ==
        R"(Test
Rights: where everything comes from, and by what right it is here.
Terms are reckoned at 2026, by the law United States; Life and 70 years.

  Harbour, "at night"
    by          A. Ferrier
    published   1907, US
    right       public domain
    term        United States: ended; published in 1907, and 95 years: to the
                end of 2002
                Life and 70 years: cannot be told; the source does not say when
                its author died
    picture     art/harbour.png, on pages 1 and 4, cropped, put in grey
    text        diary, on pages 1 and 2

  These name no source:
    picture art/moon.png, on page 4
  1 place of words is written in the manuscript itself.

  Faces of type:
    EB Garamond: licence OFL 1.1

Not legal advice; the law of your country decides.
)");
}

TEST_CASE("pages are listed by the piece that they belong to") {
  Piece map, wrap;
  map.name = "map";
  wrap.name = "wrap";
  wrap.goes = {Goes::round_the_book, {}};
  const Piece *none = nullptr;
  CHECK(written({{none, 3}, {none, 5}, {none, 6}, {none, 7}, {none, 9}, {none, 10}}) ==
        "3, 5-7, 9, 10");
  CHECK(written({{none, 2}, {&wrap, 1}, {&wrap, 4}, {&map, 1}}) ==
        "2; wrap front-cover, back-cover; map 1");
}
