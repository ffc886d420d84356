// Inserts and wraps in the model.
#include "edition/piece.hpp"
#include "edition/reading.hpp"

#include <doctest/doctest.h>

using namespace bodkin;
using bodkin::tests::read;
using bodkin::tests::small_edition;

namespace {

constexpr std::string_view words = "\nface book from \"EB Garamond\"\nstyle body\n  face book 11\n";

tests::Read with(const std::string &pieces) {
  return read(small_edition("", std::string(words) + "page 1-4\n  words \"x\" in body\n" + pieces));
}

} // namespace

TEST_CASE(
    "an insert has a size, pages and a folding of its own, and the book's paper and machine") {
  const tests::Read made = with("insert map \"The routes\"\n  size letter\n  goes centre\n"
                                "  page 1\n    words \"y\" in body\n");
  CHECK(made.found() == "");
  REQUIRE(made.edition().pieces.size() == 1);
  const Piece &map = *made.edition().pieces.front();
  CHECK(map.name == "map");
  CHECK(map.title == "The routes");
  CHECK(*map.goes == Goes::centre);
  CHECK(*map.edition.page_count == 2); // a sheet has a back, named or not
  CHECK(map.edition.folding->name == "flat");
  CHECK(*map.edition.paper == *made.edition().paper);
  CHECK(*map.edition.machine == *made.edition().machine);
  CHECK(*made.edition().page_count == 4);
}

TEST_CASE("ids of elements run through the book and its pieces") {
  const tests::Read made = with("insert map\n  size letter\n  page 1\n    words \"y\" in body\n"
                                "    patch\n      at 1in 1in, 1in x 1in\n");
  const Piece &map = *made.edition().pieces.front();
  REQUIRE(map.edition.pages[1].elements.size() == 2);
  const ElementId patch = map.edition.pages[1].elements[1];
  CHECK(std::holds_alternative<Patch>(map.edition[patch].what));
  CHECK(std::holds_alternative<Patch>(made.edition()[patch].what));
}

TEST_CASE("a wrap has four pages by name, on its own paper, and comes first") {
  const tests::Read made = with("insert slip\n  size quarter-letter\n  page 1\n    blank\n"
                                "wrap on plain in colour\n  page front-cover\n    blank\n"
                                "  page back-cover\n    blank\n");
  CHECK(made.found() == "");
  REQUIRE(made.edition().pieces.size() == 2);
  const Piece &wrap = *made.edition().pieces.front();
  CHECK(wrap.is_wrap());
  CHECK(*wrap.edition.page_count == 4);
  CHECK(wrap.edition.pages[1].opened.somewhere());
  CHECK(wrap.edition.pages[4].opened.somewhere());
  CHECK_FALSE(wrap.edition.pages[2].opened.somewhere());
  CHECK(*wrap.edition.pages[1].mode == Mode::colour);
  CHECK(wrap.edition.folding->name == "single-fold");
}

TEST_CASE("gathering and stapling are the book's; the knife cuts what lies in the pile") {
  const tests::Read made =
      with("insert map\n  size letter\n  goes centre\n  page 1\n    blank\n"
           "insert slip\n  size quarter-letter\n  page 1\n    blank\n"
           "finish\n  collate\n  fold all\n  staple 2, leg 1/4in, 2in from head and foot\n"
           "  trim fore-edge 1/8in\n");
  CHECK(made.found() == "");
  const auto steps = [&](std::size_t piece) {
    std::string text;
    for (const FinishStep &step : made.edition().pieces[piece]->edition.finish)
      text += std::string(name_of(step.kind)) + " ";
    return text;
  };
  CHECK(steps(0) == "fold trim ");
  CHECK(steps(1) == "fold ");
}

TEST_CASE("a borrowed file holds no insert") {
  const tests::Read made =
      read(small_edition("", std::string(words) + "page 1-4\n  words \"x\" in body\n") +
               "\nborrow \"more.bodkin\"\n",
           {{"more.bodkin", "insert map\n  size letter\n"}});
  CHECK(made.found().find("not-borrowed") != std::string::npos);
}

namespace {

// An a7 edition with a knife at its fore-edge and one further piece.
tests::Read metric_with(const std::string &piece) {
  std::string text = small_edition("", "finish\n  trim fore-edge 3mm\npage 1\n  blank\n" + piece);
  text.replace(text.find("half-letter"), 11, "a7");
  return read(text);
}

} // namespace

TEST_CASE("a band without a height is handed one in the units of the book") {
  const tests::Read metric = metric_with("insert band\n  goes round\n  page 1\n    blank\n");
  REQUIRE(metric.problem("missing-fact"));
  CHECK(metric.problem("missing-fact")->message == "this insert does not say its height");
  CHECK(metric.problem("missing-fact")->type[0].line == "height     50mm");
  CHECK(with("insert band\n  goes round\n  page 1\n    blank\n")
            .problem("missing-fact")
            ->type[0]
            .line == "height     2in");
}

TEST_CASE("a card without a size is handed the largest that goes into the copy") {
  const tests::Read card = metric_with("insert card\n  page 1\n    blank\n");
  REQUIRE(card.problem("missing-fact"));
  CHECK(card.problem("missing-fact")->message == "this insert does not say its size");
  CHECK(card.problem("missing-fact")->type[0].line == "size       71mm x 105mm");
  CHECK(with("insert card\n  page 1\n    blank\n").problem("missing-fact")->type[0].line ==
        "size       half-letter");
}

TEST_CASE("where a piece goes is read as it was meant") {
  const tests::Read band = with("insert band\n  goes around\n  height 2in\n  page 1\n    blank\n");
  CHECK(band.found() == "error almanac.bodkin:25:8 unknown-kind\n");
  CHECK(band.problems[0].message ==
        "loose, centre or round, after, on or in is wanted here, not around; did you mean round?");
  CHECK(band.problems[0].type[0].line == "goes round");
  CHECK(band.edition().pieces.front()->is_band());
}
