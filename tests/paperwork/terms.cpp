// Terms by the laws of the shelf, against the words of the statutes: title 17 of the United States
// Code, sections 302 to 305, Directive 2006/116/EC, articles 1 and 8, and the Berne Convention,
// article 7. The cases are worked out by hand from those; the statutes' text is from memory.
#include "paperwork/terms.hpp"

#include "edition/reading.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>
#include <initializer_list>
#include <sstream>

using namespace bodkin;
using namespace bodkin::tests;
using namespace bodkin::paperwork;

namespace {

// What the law `name` says of a source of these lines, at the end of 2026.
std::string said(std::string_view law, std::string_view facts) {
  std::string source;
  std::istringstream lines{std::string(facts)};
  for (std::string line; std::getline(lines, line, ';');)
    source += fmt::format("  {}\n", line.substr(line.find_first_not_of(' ')));
  const Read r =
      read("borrow \"laws/terms\"\n" + small_edition(fmt::format("dated 2026-11\nlaw {}\n", law),
                                                     "source card\n" + source + "page 1\n"));
  const Edition &edition = r.edition();
  const TermReckoned term =
      reckoned(edition.sources.front(), edition[*edition.judged_by.at(0)], (*edition.dated)->year);
  if (term.answer == TermAnswer::untold)
    return "untold: " + term.missing;
  return fmt::format("{} {}", term.answer == TermAnswer::ended ? "ended" : "until", term.last_year);
}

struct Case {
  const char *facts, *said;
};

void check_american(std::initializer_list<Case> cases) {
  for (const Case &term : cases) {
    CAPTURE(term.facts);
    CHECK(said("united-states", term.facts) == term.said);
  }
}

} // namespace

TEST_CASE("works published in the United States before 1978 have 95 years, to the end of the "
          "calendar year (17 U.S.C. 304 and 305)") {
  check_american({{"published 1907, US", "ended 2002"},
                  {"published 1930-12-31, US", "ended 2025"},
                  {"published 1931-01-01, US", "until 2026"},
                  {"published 1931, US", "until 2026"},
                  {"published 1977, US", "until 2072"},
                  {"published 1938, GB", "until 2033"}});
}

TEST_CASE("published before 1964 and not renewed, a work had its first 28 years alone; later ones "
          "were renewed by the law itself (17 U.S.C. 304(a))") {
  check_american({{"published 1950, US; renewed no", "ended 1978"},
                  {"published 1963, US; renewed no", "ended 1991"},
                  {"published 1964, US; renewed no", "until 2059"},
                  {"published 1950, US; renewed yes", "until 2045"},
                  {"published 1950, US", "until 2045"},
                  // Section 104A gives foreign works back what they lost.
                  {"published 1950, FR; renewed no", "until 2045"},
                  {"published 1950; renewed no", "until 2045"}});
}

TEST_CASE(
    "made before 1978 and published from then to 2002, a work is protected to the end of 2047 "
    "at the least (17 U.S.C. 303(a))") {
  check_american({{"author \"A\", died 1920; published 1985, US", "until 2047"},
                  {"author \"A\", died 1976; published 2002, US", "until 2047"},
                  {"author \"A\", died 1977; published 1990, US", "until 2047"},
                  {"author \"A\", died 1990; made 1970; published 1990, US", "until 2060"},
                  {"author \"A\", died 1920; published 2003, US", "ended 2002"},
                  {"author \"A\", died 1940; published 2003, US", "ended 2010"},
                  {"author \"A\", died 1960; published 2003, US", "until 2030"}});
}

TEST_CASE("made since 1978, a work has its author's life and 70 years; that of nobody known 95 "
          "from publication or 120 from making, whichever ends first (17 U.S.C. 302)") {
  check_american({{"author \"A\", died 1999; made 1980; published 1981, US", "until 2069"},
                  {"author unknown; made 1980; published 1981, US", "until 2076"},
                  {"author unknown; made 1980; published 2020, US", "until 2100"},
                  {"author unknown; made 1890; published 1990, US", "until 2047"},
                  {"author unknown; made 1890; published 2010, US", "ended 2010"}});
}

TEST_CASE(
    "never published, a work has its author's life and 70 years, and to the end of 2002 at the "
    "least where it was made before 1978 (17 U.S.C. 302(a), 303(a)); one of nobody known 120 "
    "years from its making (302(c))") {
  check_american({{"author \"A\", died 1940; made 1920; published never", "ended 2010"},
                  {"author \"A\", died 1955; made 1920; published never", "ended 2025"},
                  {"author \"A\", died 1956; made 1920; published never", "until 2026"},
                  {"author \"A\", died 1900; made 1890; published never", "ended 2002"},
                  {"author \"A\", died 1900; published never", "ended 2002"},
                  {"author \"A\", died 1931; made 1931; published never", "ended 2002"},
                  {"author \"A\", died 1932; published never", "ended 2002"},
                  {"author \"A\", died 1933; published never", "ended 2003"},
                  {"author \"A\", died 1990; made 1980; published never", "until 2060"},
                  {"author unknown; made 1880; published never", "ended 2002"},
                  {"author unknown; made 1905; published never", "ended 2025"},
                  {"author unknown; made 1906; published never", "until 2026"},
                  {"author unknown; made 1990; published never", "until 2110"},
                  {"author \"A\"; made 1950; published never", "untold: when its author died"}});
}

TEST_CASE("of nobody known and never published, a work is protected from its making (Directive "
          "2006/116/EC, article 1(6); TRIPS, article 12)") {
  CHECK(said("life-plus-70", "author unknown; made 1955; published never") == "ended 2025");
  CHECK(said("life-plus-70", "author unknown; made 1956; published never") == "until 2026");
  CHECK(said("life-plus-70", "author \"A\", died 1955; published never") == "ended 2025");
  CHECK(said("life-plus-70", "author unknown; made 1880; published 1950") == "ended 2020");
  CHECK(said("life-plus-70", "author unknown; made 1880; published 1951") == "ended 1950");
  CHECK(said("life-plus-70", "author unknown; made 1900; published 1990") == "ended 1970");
  CHECK(said("life-plus-70", "author unknown; made 1960; published 1990") == "until 2060");
  CHECK(said("life-plus-70", "author \"A\", died 1890; made 1880; published 1990") == "ended 1960");
  CHECK(said("life-plus-50", "author unknown; made 1900; published 1951") == "ended 1950");
  CHECK(said("life-plus-50", "author unknown; made 1975; published never") == "ended 2025");
  CHECK(said("life-plus-50", "author unknown; made 1976; published never") == "until 2026");
}

TEST_CASE("nobody outlives a work of their own by 125 years (the longest life on record: 122, from "
          "memory)") {
  CHECK(said("life-plus-70", "author \"A\"; published 1700") == "ended 1895");
  CHECK(said("life-plus-70", "author \"A\"; published 1830") == "ended 2025");
  CHECK(said("life-plus-70", "author \"A\"; published 1831") == "untold: when its author died");
  CHECK(said("life-plus-70", "author \"A\"; made 1820; published 1850") == "ended 2015");
}

TEST_CASE("life and 70 years (Directive 2006/116/EC, articles 1 and 8); life and 50 (Berne, "
          "article 7)") {
  CHECK(said("life-plus-70", "author \"A\", died 1955") == "ended 2025");
  CHECK(said("life-plus-70", "author \"A\", died 1956") == "until 2026");
  CHECK(said("life-plus-70", "author unknown; published 1955") == "ended 2025");
  CHECK(said("life-plus-70", "author unknown; published 1956") == "until 2026");
  CHECK(said("life-plus-50", "author \"A\", died 1975") == "ended 2025");
  CHECK(said("life-plus-50", "author \"A\", died 1976") == "until 2026");
  CHECK(said("life-plus-50", "author unknown; published 1975") == "ended 2025");
}

TEST_CASE("what a source does not say is asked for and never guessed") {
  CHECK(said("united-states", "author \"A\", died 1920") == "untold: when it was published");
  CHECK(said("united-states", "published 1990, US") == "untold: when it was made");
  CHECK(said("united-states", "published 1990, US; made 1990") ==
        "untold: who made it, or that nobody knows");
  CHECK(said("united-states", "author \"A\"; made 1980; published 1990, US") ==
        "untold: when its author died");
  CHECK(said("life-plus-70", "published 1880, GB") == "untold: who made it, or that nobody knows");
  CHECK(said("life-plus-70", "author unknown") == "untold: when it was published");
}

TEST_CASE("a law of one's own is told in the same lines") {
  const Read r = read(small_edition("dated 2026-11\nlaw ours\n",
                                    "law ours \"Our own\"\n"
                                    "  term 20 years from making, made before 2000\n"
                                    "  term 80 years from death, at least to 2100\n"
                                    "source early\n  made 1999\n"
                                    "source late\n  made 2001\n  author \"A\", died 2010\n"
                                    "page 1\n"));
  const Edition &edition = r.edition();
  const Law &law = edition[*edition.judged_by.at(0)];
  CHECK(reckoned(edition.sources[0], law, 2026).sum ==
        "made in 1999, and 20 years: to the end of 2019");
  CHECK(reckoned(edition.sources[1], law, 2026).sum ==
        "its author died in 2010, and 80 years: to the end of 2090, and to that of 2100 at the "
        "least");
}
