// What is said of rights word for word stands in examples/mistakes/rights.txt; here, when nothing
// is.
#include "paperwork/rights_problems.hpp"

#include "edition/reading.hpp"

#include <doctest/doctest.h>
#include <string>

using namespace bodkin;
using namespace bodkin::tests;
using namespace bodkin::paperwork;

namespace {

// The checks that speak of a source of these lines, shown on page 1 by a picture of these.
std::string said(std::string_view facts, std::string_view source, std::string_view picture = "") {
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
  check_rights(r.edition(), ledger_of(r.edition()), *r.sources, problems);
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
