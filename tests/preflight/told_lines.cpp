// Lines that later rooms hand out: once typed, nothing is said of the matter any more.
#include "preflight/inspecting.hpp"

#include "money/ups.hpp"
#include "problems/render.hpp"
#include "sheet/parts.hpp"

#include <algorithm>
#include <doctest/doctest.h>
#include <fmt/format.h>

using namespace bodkin;
using namespace bodkin::tests;

namespace {

// An edition of a few blank pages on one paper.
std::string of_size(std::string_view size, std::string_view folding, std::string_view sheet,
                    int pages) {
  return fmt::format("edition \"Test\"\n  size {}\n  folding {}\n  pages {}\n  run 10 copies\n"
                     "  paper plain\n  machine copier\n\nstock plain\n  weight 80 gsm\n"
                     "  sheet {}, grain long\n  costs $10 per 500 sheets\n\nmachine copier\n"
                     "  prints black at $0.10 a side\n  bare 5mm\n\npage 1-{}\n  blank\n",
                     size, folding, pages, sheet, pages);
}

const Problem *wrong_size(const Inspected &it) {
  for (const Problem &problem : it.before)
    if (problem.check == "wrong-size")
      return &problem;
  return nullptr;
}

std::string told(const Inspected &it, const Problem &problem) {
  return as_text(problem, *it.read.sources, false);
}

} // namespace

TEST_CASE("a size in millimetres is answered in millimetres, and by a figure that fits") {
  const Inspected it = walked(of_size("71.08mm x 210mm", "accordion", "a4", 8));
  const Problem *problem = wrong_size(it);
  REQUIRE(problem);
  // (297mm - 1/2in of tab) / 4 = 71.075mm, worked out by hand.
  CHECK(told(it, *problem) ==
        "almanac.bodkin:2:8: error: a4 folded back and forth gives 71.075mm x 210mm, not 71.08mm x "
        "210mm [wrong-size]\n"
        "  size 71.08mm x 210mm\n"
        "       ~~~~~~~~~~~~~~~\n"
        "  why   every stock here is cut a4\n"
        "  type  size       71.075mm x 210mm\n"
        "almanac.bodkin:11:9: note: plain is cut here\n");
  CHECK_FALSE(wrong_size(walked(of_size("71.075mm x 210mm", "accordion", "a4", 8))));
}

TEST_CASE("a third of a sheet is told a little short, so that it fits") {
  const Inspected it = walked(of_size("3.6667in x 8.5in", "z-fold", "letter", 6));
  const Problem *problem = wrong_size(it);
  REQUIRE(problem);
  CHECK(problem->message ==
        "letter folded back and forth gives 3.666in x 8 1/2in, not 3.6667in x 8 1/2in");
  CHECK(problem->type[0].line == "size       3.666in x 8 1/2in");
  CHECK_FALSE(wrong_size(walked(of_size("3.666in x 8.5in", "z-fold", "letter", 6))));
}

TEST_CASE("whatever the folding and the paper, the size that is handed out fits at once") {
  for (const std::string_view folding :
       {"accordion", "letter-fold", "single-gate", "double-gate", "sixteen-page-meander",
        "section-16", "section-32", "z-fold", "eight-page-mini", "french-fold", "single-fold"})
    for (const std::string_view sheet : {"a4", "letter", "a3"})
      for (const std::string_view size : {"10mm x 10mm", "10in x 10in"}) {
        CAPTURE(folding);
        CAPTURE(sheet);
        CAPTURE(size);
        const Inspected it = walked(of_size(size, folding, sheet, 4));
        const Problem *problem = wrong_size(it);
        REQUIRE(problem);
        REQUIRE_FALSE(problem->type.empty()); // a number of them `up` may be the other way out
        const std::string line = problem->type[0].line;
        CHECK_FALSE(wrong_size(walked(of_size(line.substr(11), folding, sheet, 4))));
      }
}

TEST_CASE("what follows from a size that nobody could read is not told") {
  const Inspected it = walked(of_size("huge", "single-fold", "a4", 4));
  CHECK(wrong_size(it) == nullptr);
}

TEST_CASE("where pages do not lie on their sheets as they should, no edge is judged") {
  std::string text = of_size("85mm x 55mm", "flat-across", "a4", 2);
  text.replace(text.find("  blank\n"), 8, "  patch\n    at 0mm 0mm, 20mm x 10mm\n    fill black\n");
  const Inspected it = walked(text);
  CHECK(wrong_size(it) != nullptr);
  CHECK(it.found() == "");
}

TEST_CASE("a card smaller than its sheet is cut out of it") {
  const auto with_card = [](std::string_view up) {
    return of_size("a5", "single-fold", "a4", 4) +
           fmt::format("insert card\n  size 85mm x 55mm\n{}  page 1\n    words \"Mine\" in body\n"
                       "      at 5mm 5mm, 75mm x 10mm\n"
                       "face book from \"EB Garamond\"\nstyle body\n  face book 11\n",
                       up);
  };
  const Read read_card = read(with_card(""));
  Problems problems;
  impose_parts(read_card.edition(), *read_card.sources, problems);
  REQUIRE(problems.size() == 1);
  CHECK(as_text(problems[0], *read_card.sources, false) ==
        "almanac.bodkin:21:8: error: a4 gives 297mm x 210mm, not 85mm x 55mm [wrong-size]\n"
        "  size 85mm x 55mm\n"
        "       ~~~~~~~~~~~\n"
        "  why   every stock here is cut a4\n"
        "  type  up         most      (under card, to cut it out of the sheet; or `size       "
        "297mm x 210mm`)\n"
        "almanac.bodkin:11:9: note: plain is cut here\n");
  const Read read_several = read(with_card("  up most\n"));
  Edition several = read_several.edition();
  problems.clear();
  choose_ups(several, *read_several.sources);
  impose_parts(several, *read_several.sources, problems);
  CHECK_FALSE(any_errors(problems));
}

TEST_CASE("a picture off its page is brought in by one line") {
  const auto booklet_with = [](std::string_view at) {
    return booklet("pages 12", fmt::format("page 6\n  picture \"art/grey.png\"\n    {}\n"
                                           "    fills place\n    describe \"a grey square\"\n"
                                           "page 1-5, 7-12\n  blank\n",
                                           at));
  };
  const std::string grey = grey_picture(1700, 1700);
  const Inspected it =
      inspected(booklet_with("at 1/2in 1/2in, 5.5in x 3in"), {{"art/grey.png", grey}});
  CHECK(it.told("off-the-page") ==
        "almanac.bodkin:28:5: error: this picture passes the right edge of page 6 by 1/2in "
        "[off-the-page]\n"
        "  at 1/2in 1/2in, 5.5in x 3in\n"
        "  ~~~~~~~~~~~~~~~~~~~~~~~~~~~\n"
        "  why   page 6 is the left half of sheet 3, back: past the fold lies another page; only a "
        "spread\n"
        "        crosses it\n"
        "  type  at       1/4in 1/2in, 5 1/4in x 3in      (smaller, as there is "
        "no room to move it)\n");
  CHECK(inspected(booklet_with("at       1/4in 1/2in, 5 1/4in x 3in"), {{"art/grey.png", grey}})
            .found() == "");
}

TEST_CASE("a place larger than its page is brought in whole, without figures below nothing") {
  const auto mini = [](std::string_view picture, std::string_view words) {
    std::string text = metric_booklet(
        "pages 8\nfolding eight-page-mini\nmargins 8mm",
        fmt::format("page 2\n  picture \"art/grey.png\"\n    {}\n    fills place\n"
                    "    describe \"a grey square\"\npage 3\n  words in body\n    says\n"
                    "      A line that is as wide as its place, and a few more words.\n    {}\n"
                    "page 1, 4-8\n  blank\n",
                    picture, words));
    return text.replace(text.find("size a5"), 7, "size a7");
  };
  const std::string grey = grey_picture(1700, 1700);
  const Inspected it = walked(mini("at 1/2in 1/2in, 4.5in x 6in", "at 1/2in 1/2in, 4.5in x 7in"),
                              {{"art/grey.png", grey}});
  REQUIRE(it.found() == "off-the-page 30, off-the-page 37");
  CHECK(it.problems[0].type[0].line == "at       5mm 0, 69mm x 100mm");
  CHECK(it.problems[1].type[0].line == "at       8mm 8mm, 58mm x 89mm");
  CHECK(walked(mini(it.problems[0].type[0].line, it.problems[1].type[0].line),
               {{"art/grey.png", grey}})
            .found() == "");
}

TEST_CASE("a text that ends early leaves the pages that it does not fill") {
  const auto with = [](std::string_view pages) {
    return booklet("pages 8", fmt::format("text year\n  says \"One line.\"\n{}", pages));
  };
  const Inspected it = walked(with("page 1-2\n  blank\npage 3-8 on plain\n  words of year in body\n"
                                   "    at 1in 1in, 3in x 3in\n"));
  const auto note = std::find_if(it.before.begin(), it.before.end(), [](const Problem &problem) {
    return problem.check == "text-ends-early";
  });
  REQUIRE(note != it.before.end());
  CHECK(
      told(it, *note) ==
      "almanac.bodkin:31:3: note: year is all set before pages 4-8; its places there stay empty "
      "[text-ends-early]\n"
      "  words of year in body\n"
      "  ~~~~~~~~~~~~~~~~~~~~~\n"
      "  why   the boxes before it hold every word\n"
      "  type  page 3 on plain      (and a `page 4-8` of its own, with other words, or `blank`)\n");
  CHECK(inspected(with("page 1-2, 4-8\n  blank\npage 3 on plain\n  words of year in body\n"
                       "    at 1in 1in, 3in x 3in\n"))
            .found() == "");
}

TEST_CASE("where the face of a text is missing, its places are not said to stay empty") {
  std::string text = booklet("pages 4", "text year\n  says \"One line.\"\npage 1-4\n"
                                        "  words of year in body\n    at 1in 1in, 3in x 3in\n");
  text.replace(text.find("face book 11/14"), 15, "face bok 11/14");
  const Inspected it = walked(text);
  for (const Problem &problem : it.before)
    CHECK(problem.check != "text-ends-early");
}

TEST_CASE("a page guessed from a misspelt word is spoken of by its own") {
  const Inspected it = walked(booklet("pages 4", "pge 2\n  picture \"art/red.png\"\n"
                                                 "    at 1/2in 1/2in, 3in x 3in\n"
                                                 "    describe \"red\"\npage 1, 3-4\n  blank\n"),
                              {{"art/red.png", red_picture(1700, 1700)}});
  CHECK(it.told("colour-on-black").find("  type  page 2 in colour      (or `tone grey` under it") !=
        std::string::npos);
}

TEST_CASE("nothing is made of a place that could not be read") {
  const Inspected it = walked(booklet("pages 4", "page 2\n  picture \"art/grey.png\"\n"
                                                 "    at somewhere nice\n"
                                                 "    describe \"grey\"\npage 1, 3-4\n  blank\n"),
                              {{"art/grey.png", grey_picture(100, 100)}});
  CHECK(it.found() == "");
}
