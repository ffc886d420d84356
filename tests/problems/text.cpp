#include "problems/manuscript.hpp"
#include "problems/render.hpp"

#include <doctest/doctest.h>

using namespace bodkin;

namespace {

struct Case {
  Sources sources;
  FileId file{};
  Problem problem;
};

// Page 6 on line 210, as it would stand in an almanac of 20 pages.
void put_mixed_stock(Case &c) {
  c.file = c.sources.add("almanac.bodkin", std::string(209, '\n') + "page 6 on cream\n  blank\n");
  c.problem = {Kind::error,
               "mixed-stock",
               range_of(c.sources, c.file, "cream"),
               "page 6 is asked on cream, but page 5 (line 200) puts the same sheet on rose",
               "sheet 3 of 5 is one piece of paper: pages 16 and 5 on its front, 6 and 15 on its "
               "back; cream pages near by are 3, 4, 17 and 18, on sheet 2",
               {{"page 6 on rose", "or move its words to page 4"}},
               {},
               {}};
}

std::string text_of_line(std::string text, std::string_view words) {
  Sources sources;
  const FileId file = sources.add("a.bodkin", std::move(text));
  const Problem problem{
      Kind::note, "no-description", range_of(sources, file, words), "look", "", {}, {}, {}};
  return as_text(problem, sources, false);
}

} // namespace

TEST_CASE("a problem says place, words, reason and the line to type") {
  Case c;
  put_mixed_stock(c);
  CHECK(as_text(c.problem, c.sources, false) ==
        "almanac.bodkin:210:11: error: page 6 is asked on cream, but page 5 (line 200) puts the "
        "same sheet on rose [mixed-stock]\n"
        "  page 6 on cream\n"
        "            ~~~~~\n"
        "  why   sheet 3 of 5 is one piece of paper: pages 16 and 5 on its front, 6 and 15 on its "
        "back; cream\n"
        "        pages near by are 3, 4, 17 and 18, on sheet 2\n"
        "  type  page 6 on rose      (or move its words to page 4)\n");
}

TEST_CASE("colour comes only when asked for, and changes no word") {
  Case c;
  put_mixed_stock(c);
  c.problem.why = "one piece of paper";
  CHECK(as_text(c.problem, c.sources, true) ==
        "\x1b[1malmanac.bodkin:210:11:\x1b[0m \x1b[1;31merror:\x1b[0m page 6 is asked on cream, "
        "but page 5 (line 200) puts the same sheet on rose [mixed-stock]\n"
        "  page 6 on cream\n"
        "            \x1b[1;31m~~~~~\x1b[0m\n"
        "  \x1b[1mwhy\x1b[0m   one piece of paper\n"
        "  \x1b[1mtype\x1b[0m  page 6 on rose      (or move its words to page 4)\n");
}

TEST_CASE("related places follow as notes") {
  Case c;
  put_mixed_stock(c);
  c.problem.why.clear();
  c.problem.type.clear();
  c.problem.related = {{range_of(c.sources, c.file, "blank"), "page 6 is blank here"}};
  CHECK(as_text(c.problem, c.sources, false) ==
        "almanac.bodkin:210:11: error: page 6 is asked on cream, but page 5 (line 200) puts the "
        "same sheet on rose [mixed-stock]\n"
        "  page 6 on cream\n"
        "            ~~~~~\n"
        "almanac.bodkin:211:3: note: page 6 is blank here\n");
}

TEST_CASE("several ways out stand one below another") {
  Sources sources;
  const FileId file = sources.add("a.bodkin", "page 21\n");
  const Problem problem{Kind::error,
                        "does-not-fold",
                        range_of(sources, file, "21"),
                        "21 pages do not fold; this folding takes 20 or 24",
                        "",
                        {{"pages      24", ""}, {"pages      20", "and take page 21 out"}},
                        {},
                        {}};
  CHECK(as_text(problem, sources, false) ==
        "a.bodkin:1:6: error: 21 pages do not fold; this folding takes 20 or 24 [does-not-fold]\n"
        "  page 21\n"
        "       ~~\n"
        "  type  pages      24\n"
        "        pages      20      (and take page 21 out)\n");
}

TEST_CASE("a way out of several lines keeps their indentation") {
  const Sources sources;
  const Problem problem{Kind::error, "left-over-text",
                        {},          "11 lines of mender have no box left",
                        "",          {{"page 19\n  words of mender in body", "page 19 is blank"}},
                        {},          {}};
  CHECK(as_text(problem, sources, false) ==
        "bodkin: error: 11 lines of mender have no box left [left-over-text]\n"
        "  type  page 19\n"
        "          words of mender in body      (page 19 is blank)\n");
}

TEST_CASE("a way out without a line is said in words") {
  const Sources sources;
  const Problem problem{Kind::warning,
                        "coarse-picture",
                        {},
                        "60 samples an inch at this size",
                        "",
                        {{"", "ask for the camera's own file"}},
                        {},
                        {}};
  CHECK(as_text(problem, sources, false) ==
        "bodkin: warning: 60 samples an inch at this size [coarse-picture]\n"
        "  type  ask for the camera's own file\n");
}

TEST_CASE("a line to type is never broken, and a remark too long for it goes below") {
  const Sources sources;
  const std::string line = "describe \"" + std::string(80, 'x') + "\"";
  const Problem problem{
      Kind::note, "no-description", {}, "no words", "", {{line, "or some other words"}}, {}, {}};
  CHECK(as_text(problem, sources, false) == "bodkin: note: no words [no-description]\n"
                                            "  type  " +
                                                line +
                                                "\n"
                                                "        (or some other words)\n");
}

TEST_CASE("several problems are parted by an empty line") {
  const Sources sources;
  const Problem problem{Kind::note, "no-description", {}, "nothing says it", "", {}, {}, {}};
  CHECK(as_text(Problems{problem, problem}, sources, false) ==
        "bodkin: note: nothing says it [no-description]\n"
        "\n"
        "bodkin: note: nothing says it [no-description]\n");
  CHECK(as_text(Problems{}, sources, false).empty());
}

TEST_CASE("a manuscript cannot write on the terminal through a problem") {
  Sources sources;
  const FileId file = sources.add("a\x1b[2J.bodkin", "page \x1b[2J1\n");
  const Problem problem{Kind::error,
                        "unknown-name",
                        range_of(sources, file, "page"),
                        "no \x1b[31m here",
                        "a\x07",
                        {{"\x1b[0m", "\x9b"}},
                        {},
                        {}};
  CHECK(as_text(problem, sources, false) ==
        "a␛[2J.bodkin:1:1: error: no ␛[31m here [unknown-name]\n"
        "  page ␛[2J1\n"
        "  ~~~~\n"
        "  why   a␇\n"
        "  type  ␛[0m      (\uFFFD)\n");
}

TEST_CASE("indentation is taken off the line that is shown") {
  CHECK(text_of_line("    at 1in 1in\n", "1in 1in") == "a.bodkin:1:8: note: look [no-description]\n"
                                                       "  at 1in 1in\n"
                                                       "     ~~~~~~~\n");
}
