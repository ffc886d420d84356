// What is said of rights word for word stands in examples/mistakes/rights.txt; here, when nothing
// is.
#include "paperwork/rights_problems.hpp"

#include "edition/reading.hpp"

#include <algorithm>
#include <doctest/doctest.h>
#include <fmt/format.h>
#include <string>

using namespace bodkin;
using namespace bodkin::tests;
using namespace bodkin::paperwork;

namespace {

std::vector<PictureSeen> seen_of(const Edition &edition, PictureSeen seen) {
  std::vector<PictureSeen> all;
  for (const Element &element : edition.elements)
    if (std::holds_alternative<Picture>(element.what)) {
      seen.element = element.range;
      all.push_back(seen);
    }
  return all;
}

// The checks that speak of a source of these lines, shown on page 1 by a picture of these.
std::string said(std::string_view facts, std::string_view source, std::string_view picture = "",
                 PictureSeen seen = {}) {
  const Read r = read("borrow \"laws/terms\"\nborrow \"licences/open\"\n" +
                          small_edition(facts, "source card\n" + std::string(source) +
                                                   "page 1\n  picture \"art/moon.png\"\n"
                                                   "    source card\n" +
                                                   std::string(picture) +
                                                   "page 2\n  words \"Seen by A.\" in label\n"
                                                   "face book from \"EB Garamond\"\n"
                                                   "style label\n  face book 8/10\n"),
                      {{"art/moon.png", ""}, {"papers/letter.pdf", ""}});
  Problems problems;
  check_rights(r.edition(), ledger_of(r.edition(), seen_of(r.edition(), seen)), *r.sources,
               problems);
  std::string checks = r.found();
  for (const Problem &problem : problems)
    checks += problem.check + "\n";
  return checks;
}

} // namespace

TEST_CASE("nothing need be known of what is given away") {
  CHECK(said("", "  rights unknown\n").empty());
  CHECK(said("price $0 a copy", "  rights unknown\n").empty());
  CHECK(said("price $1 a copy", "  rights unknown\n") == "rights-unknown\n");
  CHECK(said("price $1 a copy", "  title \"A moon\"\n") == "rights-unknown\n");
  CHECK(said("price $1 a copy", "  rights own\n").empty());
}

TEST_CASE("a claim to the public domain is held against the years, unless it says why") {
  CHECK(said("dated 2026\nlaw united-states", "  published 1930, US\n  rights public-domain\n")
            .empty());
  CHECK(said("dated 2026\nlaw united-states", "  published 1931, US\n  rights public-domain\n") ==
        "still-in-term\n");
  CHECK(said("dated 2027\nlaw united-states", "  published 1931, US\n  rights public-domain\n")
            .empty());
  CHECK(said("dated 2026\nlaw united-states",
             "  published 1961, US\n  rights public-domain because \"of the government\"\n")
            .empty());
  CHECK(said("dated 2026\nlaw united-states", "  rights public-domain\n") == "term-untold\n");
  CHECK(said("dated 2026", "  published 1961, US\n  rights public-domain\n").empty());
}

TEST_CASE("a permission names its letter, in words or on file") {
  CHECK(said("", "  rights permission\n") == "no-letter\n");
  CHECK(said("", "  rights permission\n  permission 2026-03-02, \"letter\"\n").empty());
  CHECK(said("", "  rights permission\n  permission 2026-03-02, on file \"papers/letter.pdf\"\n")
            .empty());
  CHECK(said("", "  rights permission\n  permission 2026-03-02, on file \"papers/gone.pdf\"\n") ==
        "error almanac.bodkin:22:34 missing-file\n");
}

TEST_CASE("a date is ahead of the edition's only where what is written shows it") {
  const std::string own = "  rights own\n";
  CHECK(said("dated 2026-11", own + "  published 2026\n").empty());
  CHECK(said("dated 2026", own + "  published 2026-12\n").empty());
  CHECK(said("dated 2026-11", own + "  published 2026-12\n") == "date-ahead\n");
  CHECK(said("dated 2026-11-25", own + "  made 2026-11-26\n") == "date-ahead\n");
  CHECK(said("dated 2026-11-25", own + "  permission 2026-11, \"by telephone\"\n").empty());
  CHECK(said("dated 2026-11", own + "  author \"A\", died 2027\n") == "date-ahead\n");
}

TEST_CASE("what an open licence asks is held against the edition") {
  const std::string by = "  author \"A\"\n  rights licence ";
  CHECK(said("price $1 a copy", by + "\"CC-BY-4.0\"\n", "    tone grey\n").empty());
  CHECK(said("price $1 a copy", by + "\"CC BY-NC 4.0\"\n") == "not-for-sale\n");
  CHECK(said("", by + "\"CC BY-NC 4.0\"\n").empty());
  CHECK(said("", by + "\"CC-BY-ND-4.0\"\n").empty());
  CHECK(said("", by + "\"CC-BY-ND-4.0\"\n", "    tone line at 50%\n") == "not-to-be-changed\n");
  CHECK(said("", by + "\"CC-BY-SA-4.0\"\n").empty());
  CHECK(said("", by + "\"CC-BY-SA-4.0\"\n", "    crop 0% 0%, 50% x 50%\n") == "same-licence\n");
  CHECK(said("licence \"CC BY-SA 4.0\"", by + "\"CC-BY-SA-4.0\"\n", "    crop 0% 0%, 50% x 50%\n")
            .empty());
  CHECK(said("licence \"CC BY 4.0\"", by + "\"CC-BY-SA-4.0\"\n", "    crop 0% 0%, 50% x 50%\n") ==
        "same-licence\n");
  CHECK(said("", "  rights licence \"CC-BY-4.0\"\n") == "no-credit\n");
  CHECK(said("", "  rights licence \"CC0-1.0\"\n").empty());
  CHECK(said("", "  author \"Z\"\n  rights licence \"CC-BY-4.0\"\n") == "not-credited\n");
}

TEST_CASE("a licence that no line describes is told once for its source") {
  CHECK(said("", "  rights licence \"Museum terms\"\n") ==
        "warning almanac.bodkin:21:18 unknown-licence\n");
}

TEST_CASE("a copy is sold by its price, by that of a run, or by what a way of selling brings") {
  const std::string lent = "  author \"A\"\n  rights licence \"CC BY-NC 4.0\"\n";
  CHECK(said("sells 5 copies \"at the shop\", at $5 a copy", lent) == "not-for-sale\n");
  CHECK(said("price $0 a copy\nsells 5 copies \"at the shop\", at $5 a copy", lent) ==
        "not-for-sale\n");
  CHECK(said("sells 5 copies \"at the shop\", at $0 a copy", lent).empty());
  CHECK(said("sells 5 copies \"at the shop\", at $5 a copy", "  rights unknown\n") ==
        "rights-unknown\n");
}

TEST_CASE("a picture that its place cuts or a black page greys is changed, however that came") {
  const std::string by = "  author \"A\"\n  rights licence ";
  const std::string nd = by + "\"CC-BY-ND-4.0\"\n", sa = by + "\"CC-BY-SA-4.0\"\n";
  const PictureSeen cut{{}, true, false}, in_grey{{}, false, true};
  CHECK(said("", nd, "    fills page\n", cut) == "not-to-be-changed\n");
  CHECK(said("", nd, "", in_grey) == "not-to-be-changed\n");
  CHECK(said("", nd, "    crop 0% 0%, 50% x 50%\n", {{}, true, true}) ==
        "not-to-be-changed\nnot-to-be-changed\n");
  CHECK(said("", sa, "    fills page\n", cut) == "same-licence\n");
  CHECK(said("", by + "\"CC-BY-4.0\"\n", "    fills page\n", cut).empty());
}

TEST_CASE("dates of one source that cannot both be are told, and a late publication is not") {
  const std::string own = "  rights own\n";
  CHECK(said("", own + "  made 1950\n  published 1940, US\n") == "dates-contradict\n");
  CHECK(said("", own + "  made 1950\n  author \"A\", died 1900\n") == "dates-contradict\n");
  CHECK(said("", own + "  made 1950-06\n  published 1950\n").empty());
  CHECK(said("", own + "  made 1890\n  author \"A\", died 1900\n  published 1990\n").empty());
}

TEST_CASE("what may stand in a line that cannot be read is not asked for") {
  const std::string dated = "dated 2026\nlaw united-states\nprice $1 a copy";
  CHECK(said(dated, "  rights public-domain\n  published nowhere\n") ==
        "error almanac.bodkin:25:13 unknown-kind\n");
  CHECK(said(dated, "  title \"A moon\"\n  rights of mine\n") ==
        "error almanac.bodkin:25:10 unknown-kind\n");
}

TEST_CASE("a permission without a right is asked about, and nothing taken for granted") {
  CHECK(said("price $1 a copy", "  permission 2026-03-02, \"letter\"\n") == "right-unsaid\n");
}

TEST_CASE("a year of five digits is a slip, and no term is reckoned with it") {
  CHECK(said("dated 2026\nlaw life-plus-70",
             "  author \"A\", died 99999999999\n  rights public-domain\n") ==
        "error almanac.bodkin:23:20 number-too-big\n");
}

TEST_CASE("another version of a licence is named and not put in") {
  const Read r = read("borrow \"licences/open\"\n" +
                      small_edition("", "source card\n  rights licence \"CC-BY-9.0\"\npage 1\n"));
  const Problem *told = r.problem("unknown-licence");
  REQUIRE(told);
  CHECK(told->message == "no licence here is called CC-BY-9.0; known here are CC-BY-4.0, CC-BY-3.0 "
                         "and CC-BY-2.0");
  CHECK(told->type.front().line == "rights licence \"CC-BY-4.0\"");
  CHECK(told->edits.empty());
}

TEST_CASE("whoever lends a work is paid once or for each copy") {
  CHECK(said("", "  rights own\n  costs $5 once\n").empty());
  CHECK(said("", "  rights own\n  costs $5 an hour\n") ==
        "error almanac.bodkin:22:9 priced-by-what\n");
}

TEST_CASE("a licence by half of its name is named whole, and typing what is told loses no duty") {
  const auto told = [](std::string_view name, std::string_view more = "") {
    return read("borrow \"licences/open\"\n" +
                small_edition("price $1 a copy", fmt::format("source card\n  rights licence {}\n{}"
                                                             "page 1\n",
                                                             name, more)));
  };
  for (const std::string_view name :
       {"\"by-nc\"", "\"CC BY-NC\"", "\"CC-BY-NC-3.0\"", "\"Attribution-NonCommercial\"",
        "\"Creative Commons Attribution NonCommercial 4.0 International\""}) {
    CAPTURE(name);
    const Read r = told(name);
    const Problem *problem = r.problem("unknown-licence");
    REQUIRE(problem);
    CHECK(problem->type.front().line == "rights licence \"CC-BY-NC-4.0\"");
  }
  const Read r = told("\"Museum terms\"");
  const Problem *problem = r.problem("unknown-licence");
  REQUIRE(problem);
  const Read typed = told("\"Museum terms\"", problem->type.back().line + "\n");
  CHECK(typed.problem("unknown-licence") == nullptr);
  const auto &all = typed.edition().licences;
  const auto found = std::find_if(all.begin(), all.end(),
                                  [](const Licence &one) { return one.title == "Museum terms"; });
  REQUIRE(found != all.end());
  const Licence &licence = *found;
  CHECK((licence.asks_credit && licence.asks_changes_said && licence.asks_same_licence));
  CHECK((licence.forbids_sale && licence.forbids_changes));
}
