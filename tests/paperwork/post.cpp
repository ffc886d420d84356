// Sizes of the classes are those of the Domestic Mail Manual as trade.md gives them (from memory).
#include "paperwork/post.hpp"

#include "asked.hpp"
#include "edition/reading.hpp"
#include "sheet/copy_weight.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>
#include <string>

using namespace bodkin;
using namespace bodkin::tests;
using namespace bodkin::paperwork;

namespace {

constexpr const char *priced = "borrow \"mail/us\"\n"
                               "mail letter \"Letter\" like us-letter\n"
                               "  step 2 oz at $1.10 each\n"
                               "  step 1 oz at $0.80 each\n"
                               "  step 3 oz at $1.40 each\n"
                               "  step 3.5 oz at $1.70 each\n"
                               "mail flat \"Large envelope\" like us-large-envelope\n"
                               "  step 4 oz at $2.50 each\n"
                               "  step 13 oz at $4.80 each\n"
                               "envelope kraft \"a brown envelope\"\n"
                               "  size 9in x 6in\n"
                               "  mass 10 g\n"
                               "  costs $0.12 each\n";

struct Posted {
  Read read;
  std::vector<CopyPart> parts;
  std::vector<Mailing> mailings;
  std::string checks, why, where;

  std::string text() const { return post_as_text(read.edition(), parts, mailings, *read.sources); }
};

// `pages` pages of 20 lb bond, half-letter.
Posted posted(std::string_view posts, int pages = 8, const std::string &classes = priced) {
  Posted it{
      read(classes + small_edition(posts, fmt::format("page 1-{}\n", pages))), {}, {}, {}, {}, {}};
  Problems problems;
  it.parts = impose_parts(it.read.edition(), *it.read.sources, problems);
  problems.clear();
  it.mailings = mailings_of(it.read.edition(), it.parts);
  check_post(it.read.edition(), it.mailings, *it.read.sources, problems);
  for (const Problem &problem : it.read.problems)
    if (problem.kind == Kind::error)
      it.checks += problem.message + "\n";
  for (const Problem &problem : problems) {
    it.checks += problem.check + "\n";
    it.where = it.read.sources->text(problem.range);
    it.why += problem.message + ": " + problem.why + "\n";
  }
  return it;
}

} // namespace

TEST_CASE("a piece weighs its copies and its envelope (GNU units)") {
  const Posted it = posted("posts 30 copies in kraft");
  REQUIRE(it.mailings.size() == 1);
  const MailPiece &piece = it.mailings[0].pieces.at(0).piece;
  // Two letter sheets of 20 lb bond: 500 sheets of 17 by 22 inches weigh 20 lb.
  const double sheets = std::stod(
      asked("units -t -d 12 '2 * 8.5 inch * 11 inch * 20 lb / (500 * 17 inch * 22 inch)' g"));
  CHECK(piece.mass->grams() == doctest::Approx(sheets + 10).epsilon(1e-5));
  CHECK(std::stod(asked("units -t -d 12 '1 oz' g")) == doctest::Approx(28.349523125));
}

TEST_CASE("the cheapest class and step that takes a piece is chosen, and the whole is added up") {
  const Posted it = posted("posts 30 copies in kraft");
  CHECK(it.checks.empty());
  const MailedPiece &mailed = it.mailings[0].pieces.at(0);
  REQUIRE(mailed.chosen);
  CHECK(mailed.chosen->mail->name == "letter");
  CHECK(written(mailed.chosen->step->price) == "$0.80");
  CHECK(it.mailings[0].postage == Exact(24));
  CHECK(it.mailings[0].envelopes == Exact::ratio(360, 100));
}

TEST_CASE("copies sent together make full pieces and one with what is left over") {
  const Posted it = posted("posts 25 copies, 10 together in kraft");
  const std::vector<MailedPiece> &pieces = it.mailings.at(0).pieces;
  REQUIRE(pieces.size() == 2);
  CHECK(pieces[0].piece.count == 2);
  CHECK(pieces[0].piece.copies == 10);
  CHECK(pieces[1].piece.count == 1);
  CHECK(pieces[1].piece.copies == 5);
  // Ten copies of about 9 g are 3.5 oz and more: the large envelope's first step.
  // 100.7 g are 3.55 oz, more than a letter may have; 55.4 g are 1.95 oz.
  CHECK(it.mailings[0].postage == Exact::ratio(2 * 250 + 110, 100));
}

TEST_CASE("what is told of a mailing: what it weighs, how it goes, what is missed, what it costs") {
  CHECK(posted("posts 30 copies in kraft", 24).text() == R"(Test
By post: a copy is 5 1/2in x 8 1/2in, 0.05in thick and weighs 27.2 g (0.96 oz).

  30 copies, in a brown envelope (almanac.bodkin:19)
    pieces      30, each with 1 copy: 9in x 6in, 0.05in thick, 37.2 g (1.31 oz)
    goes as     Letter, up to 56.7 g (2.00 oz), at $1.10
    to spare    19.5 g, room for 4 sheets more in each copy
    missed      the step up to 28.3 g (1.00 oz), at $0.80, by 8.9 g: 2 sheets in
                each copy
                Large envelope would take it at $2.50
    in all      postage $33.00, envelopes $3.60, together $36.60; $1.22 a copy

Classes, steps and prices are those of the manuscript; the counter weighs again.
)");
}

TEST_CASE("a class refuses what is too heavy, and says by how much") {
  const Posted it = posted("posts 30 copies by letter", 120);
  CHECK(it.checks == "mail-refuses\n");
  CHECK(it.why == "Letter does not take a copy: Letter: 36.9 g too heavy\n");
}

TEST_CASE("without classes, or with an envelope too small, posting is a warning") {
  CHECK(posted("posts 1 copy", 4, "").checks == "no-mail\n");
  CHECK(
      posted("posts 1 copy in small", 4, std::string(priced) + "envelope small\n  size 6in x 4in\n")
          .checks == "envelope-too-small\n");
  CHECK(posted("posts 1 copy by letter", 4, "mail letter\n  step 9 oz at €0.80 each\n").checks ==
        "two-currencies\n");
}

TEST_CASE("an envelope in other money is told where it is written, once for all mailings") {
  const std::string classes = "mail letter\n  step 9 oz at $0.80 each\n"
                              "envelope kraft\n  size 9in x 6in\n  costs €0.12 each\n";
  const Posted it = posted("posts 1 copy in kraft\nposts 3 copies in kraft", 4, classes);
  CHECK(it.checks == "two-currencies\n");
  CHECK(it.where == "€0.12 each");
}

TEST_CASE("with a rate of exchange, postage and envelopes are counted in the edition's money") {
  const Posted it = posted("exchange €1 is $1.50\nposts 4 copies in kraft", 4,
                           "mail letter\n  step 9 oz at €0.80 each\n"
                           "mail parcel\n  step 9 oz at $1.10 each\n"
                           "envelope kraft\n  size 9in x 6in\n  costs €0.10 each\n");
  CHECK(it.checks.empty());
  // €0.80 is $1.20, more than the parcel.
  CHECK(it.mailings[0].postage == Exact::ratio(440, 100));
  CHECK(it.mailings[0].envelopes == Exact::ratio(60, 100));
}

TEST_CASE("a mailing as JSON: what weighs, how it goes, what is missed, what it costs") {
  const Posted it = posted("posts 30 copies in kraft", 24);
  CHECK(post_as_json(it.read.edition(), it.mailings) == R"([
    {"copies": 30, "together": 1, "envelope": "kraft", "pieces": [{"pieces": 30, "copies": 1, "width": 648, "height": 432, "thickness": 3.2832, "grams": "37.216", "class": "letter", "up_to": "56.699", "price": "1.10", "room": "19.483", "room_sheets": 4, "missed": {"up_to": "28.35", "price": "0.80", "by": "8.866", "by_sheets": 2}, "classes": [{"class": "letter", "price": "1.10", "refused": []}, {"class": "flat", "price": "2.50", "refused": []}, {"class": "us-letter", "price": null, "refused": []}, {"class": "us-large-envelope", "price": null, "refused": []}]}], "postage": "33.00", "envelopes": "3.60", "total": "36.60", "per_copy": "1.22"}
  ])");
}

TEST_CASE("nothing is sent, weighed or stepped below nothing") {
  CHECK(posted("posts 0 copies", 4).checks == "0 is too few; the least is 1\n");
  CHECK(posted("posts 1 copy", 4, "mail letter\n  step 0 g at $1 each\n  step 1 oz at -$1 each\n")
            .checks == "this weighs nothing, and everything weighs something\n"
                       "-$1 each is less than nothing\n");
}
