#include "measure/limits.hpp"
#include "problems/manuscript.hpp"
#include "problems/render.hpp"

#include <doctest/doctest.h>

using namespace bodkin;

namespace {

Problem at(FileId file, std::size_t begin, Kind kind, std::string message) {
  return {kind, "unknown-word", range_at(file, begin, begin + 1), std::move(message), "", {}, {},
          {}};
}

std::string messages(const Problems &problems) {
  std::string out;
  for (const Problem &problem : problems)
    out += problem.message;
  return out;
}

Problems many(std::size_t notes, std::size_t errors) {
  Problems problems;
  for (std::size_t i = 0; i < notes; ++i)
    problems.push_back(at(FileId{0}, i, Kind::note, "n"));
  for (std::size_t i = 0; i < errors; ++i)
    problems.push_back(at(FileId{0}, notes + i, Kind::error, "e"));
  return problems;
}

} // namespace

TEST_CASE("problems come by file, then place, then kind; those without a place last") {
  Problems problems{at(FileId::none, 0, Kind::error, "f"), at(FileId{1}, 0, Kind::error, "e"),
                    at(FileId{0}, 9, Kind::error, "d"),    at(FileId{0}, 2, Kind::note, "c"),
                    at(FileId{0}, 2, Kind::error, "b"),    at(FileId{0}, 1, Kind::note, "a")};
  sort_problems(problems);
  CHECK(messages(problems) == "abcdef");
}

TEST_CASE("the same problem said twice is kept once") {
  Problems problems{at(FileId{0}, 2, Kind::error, "a"), at(FileId{0}, 2, Kind::error, "b"),
                    at(FileId{0}, 2, Kind::error, "a"), at(FileId{0}, 3, Kind::error, "a")};
  sort_problems(problems);
  CHECK(messages(problems) == "aba");
}

TEST_CASE("a warning is no error") {
  CHECK_FALSE(
      any_errors({at(FileId{0}, 0, Kind::warning, "a"), at(FileId{0}, 0, Kind::note, "b")}));
  CHECK(any_errors({at(FileId{0}, 0, Kind::note, "a"), at(FileId{0}, 0, Kind::error, "b")}));
}

TEST_CASE("problems are counted in words") {
  CHECK(written(counted({})) == "nothing wrong");
  CHECK(written(counted(many(0, 1))) == "1 error");
  CHECK(written(counted(many(2, 1))) == "1 error and 2 notes");
  CHECK(written(Tally{2, 1, 3}) == "2 errors, 1 warning and 3 notes");
}

TEST_CASE("as many problems as are shown come without a word about the rest") {
  CHECK(shown(many(0, limits::problems_shown)).size() == limits::problems_shown);
}

TEST_CASE("past the limit errors are kept before notes, and the rest is counted in a note") {
  const Problems out = shown(many(limits::problems_shown, 2));
  CHECK(counted(out) == Tally{2, 0, limits::problems_shown - 2 + 1});
  CHECK(out.back().message == "2 more problems are not shown");
  CHECK(as_text(out.back(), Sources{}, false) ==
        "bodkin: note: 2 more problems are not shown [more-problems]\n"
        "  why   one slip is often repeated: mend the ones above and most of these will go with "
        "them\n");
}

TEST_CASE("one problem past the limit is counted as one") {
  CHECK(shown(many(0, limits::problems_shown + 1)).back().message == "1 more problem is not shown");
}
