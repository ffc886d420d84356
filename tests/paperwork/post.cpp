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

std::string in_copies(std::string manuscript, int copies) {
  constexpr std::string_view run = "run 10 copies";
  return manuscript.replace(manuscript.find(run), run.size(), fmt::format("run {} copies", copies));
}

// `pages` pages of 20 lb bond, half-letter, a hundred copies.
Posted posted(std::string_view posts, int pages = 8, const std::string &classes = priced,
              int copies = 100) {
  Posted it{
      read(in_copies(classes + small_edition(posts, fmt::format("page 1-{}\n", pages)), copies)),
      {},
      {},
      {},
      {},
      {}};
  Problems problems;
  it.parts = impose_parts(it.read.edition(), *it.read.sources, problems);
  problems.clear();
  it.mailings = mailings_of(it.read.edition(), it.parts);
  check_post(it.read.edition(), it.parts, it.mailings, *it.read.sources, problems);
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
    to spare    19.5 g and 0.20in, room for 4 sheets more in each copy, by mass
    missed      Letter, up to 28.3 g (1.00 oz), at $0.80, by 8.9 g: 2 sheets in
                each copy
                Large envelope would take it at $2.50
    in all      postage $33.00, envelopes $3.60, together $36.60; $1.22 a copy

Classes, steps and prices are those of the manuscript; the counter weighs again.
)");
}

TEST_CASE("a class refuses what is too heavy, and says by how much") {
  const Posted it = posted("posts 30 copies by letter", 120);
  CHECK(it.checks == "mail-refuses\n");
  CHECK(it.why ==
        "Letter does not take a copy: Letter: 36.9 g too heavy (9 sheets in each copy)\n");
}

TEST_CASE("without classes, or with an envelope too small, posting is a warning") {
  CHECK(posted("posts 1 copy", 4, "").checks == "no-mail\n");
  CHECK(posted("posts 1 copy in small", 4,
               std::string(priced) +
                   "envelope small\n  size 6in x 4in\n  mass 4 g\n  costs $0 each\n")
            .checks == "envelope-too-small\n");
  CHECK(posted("posts 1 copy by letter", 4, "mail letter\n  step 9 oz at €0.80 each\n").checks ==
        "two-currencies\n");
}

TEST_CASE("an envelope in other money is told where it is written, once for all mailings") {
  const std::string classes = "mail letter\n  step 9 oz at $0.80 each\n"
                              "envelope kraft\n  size 9in x 6in\n  mass 9 g\n  costs €0.12 each\n";
  const Posted it = posted("posts 1 copy in kraft\nposts 3 copies in kraft", 4, classes);
  CHECK(it.checks == "two-currencies\n");
  CHECK(it.where == "€0.12 each");
}

TEST_CASE("with a rate of exchange, postage and envelopes are counted in the edition's money") {
  const Posted it = posted("exchange €1 is $1.50\nposts 4 copies in kraft", 4,
                           "mail letter\n  step 9 oz at €0.80 each\n"
                           "mail parcel\n  step 9 oz at $1.10 each\n"
                           "envelope kraft\n  size 9in x 6in\n  mass 9 g\n  costs €0.10 each\n");
  CHECK(it.checks.empty());
  // €0.80 is $1.20, more than the parcel.
  CHECK(it.mailings[0].postage == Exact::ratio(440, 100));
  CHECK(it.mailings[0].envelopes == Exact::ratio(60, 100));
}

TEST_CASE("a mailing as JSON: what weighs, how it goes, what is missed, what it costs") {
  const Posted it = posted("posts 30 copies in kraft", 24);
  CHECK(post_as_json(it.read.edition(), it.mailings) == R"([
    {"copies": 30, "together": 1, "envelope": "kraft", "pieces": [{"pieces": 30, "copies": 1, "width": 648, "height": 432, "thickness": 3.2832, "grams": "37.216", "class": "letter", "up_to": "56.699", "price": "1.10", "room": "19.483", "room_thickness": 14.7168, "room_sheets": 4, "missed": [{"class": "letter", "up_to": "28.35", "price": "0.80", "by": "8.866", "by_thickness": 0, "by_sheets": 2}], "classes": [{"class": "letter", "price": "1.10", "refused": [], "by_sheets": null}, {"class": "flat", "price": "2.50", "refused": [], "by_sheets": null}, {"class": "us-letter", "price": null, "refused": [], "by_sheets": null}, {"class": "us-large-envelope", "price": null, "refused": [], "by_sheets": null}]}], "postage": "33.00", "envelopes": "3.60", "total": "36.60", "per_copy": "1.22"}
  ])");
}

TEST_CASE("nothing is sent, weighed or stepped below nothing") {
  CHECK(posted("posts 0 copies", 4).checks == "0 is too few; the least is 1\n");
  CHECK(posted("posts 1 copy", 4, "mail letter\n  step 0 g at $1 each\n  step 1 oz at -$1 each\n")
            .checks == "this weighs nothing, and everything weighs something\n"
                       "-$1 each is less than nothing\n");
}

// Two thicknesses of 20 lb bond, 0.0038in each (trade.md), a sheet.
constexpr double folded_sheet = 2 * 0.0038;

TEST_CASE("room for further sheets ends where the class takes nothing so thick") {
  const Posted it = posted("posts 1 copy", 8,
                           "mail letter \"Letter\"\n"
                           "  largest 12in x 9in, 0.1in thick\n"
                           "  step 40 oz at $1 each\n");
  const MailRoom room = room_of(it.mailings.at(0).pieces.at(0));
  CHECK(room.thickness_binds);
  CHECK(*room.sheets == static_cast<int>((0.1 - 2 * folded_sheet) / folded_sheet));
  CHECK(it.text().find("more in each copy, by\n                thickness\n") != std::string::npos);
}

TEST_CASE("of several copies together every one gets the further sheet") {
  const Posted it = posted("posts 20 copies, 10 together", 8,
                           "mail parcel\n  largest 12in x 9in, 0.5in thick\n"
                           "  step 400 oz at $1 each\n");
  CHECK(*room_of(it.mailings.at(0).pieces.at(0)).sheets ==
        static_cast<int>((0.5 - 20 * folded_sheet) / (10 * folded_sheet)));
}

TEST_CASE("the next class is missed by so many sheets, by mass or by thickness") {
  const std::string classes = "mail letter \"Letter\"\n"
                              "  largest 12in x 9in, 0.04in thick\n"
                              "  step 20 g at $1 each\n"
                              "mail large \"Large\"\n"
                              "  largest 15in x 12in, 1in thick\n"
                              "  step 20 g at $2 each\n"
                              "  step 100 g at $3 each\n";
  // Six sheets: 27.2 g and 0.0456in. The letter takes 20 g, which two sheets less are, and 0.04in,
  // which one less is: it is as near as the large class's own first step, and cheaper.
  const Posted it = posted("posts 1 copy", 24, classes);
  const std::vector<MailMiss> &misses = it.mailings.at(0).pieces.at(0).misses;
  REQUIRE(misses.size() == 1);
  CHECK(misses[0].mail->name == "letter");
  CHECK(misses[0].sheets == 2);
  CHECK_FALSE(misses[0].thickness_binds);
  CHECK(it.text().find("    missed      Letter, up to 20 g (0.71 oz), at $1.00, by 7.2 g and "
                       "0.0056in: 2\n                sheets in each copy, by mass\n") !=
        std::string::npos);
}

TEST_CASE("a class that is missed in thickness alone says so in sheets") {
  const Posted it = posted("posts 1 copy", 24,
                           "mail letter\n  largest 12in x 9in, 0.03in thick\n"
                           "  step 90 g at $1 each\n"
                           "mail large\n  step 100 g at $3 each\n");
  const std::vector<MailMiss> &misses = it.mailings.at(0).pieces.at(0).misses;
  REQUIRE(misses.size() == 1);
  CHECK(misses[0].by == Mass{});
  CHECK(misses[0].thickness_binds);
  // 0.0456in of six sheets; three are 0.0228in.
  CHECK(misses[0].sheets == 3);
}

TEST_CASE("what no fewer sheets let in is not told in sheets") {
  const Posted it = posted("posts 1 copy in kraft", 4,
                           std::string(priced) + "envelope heavy\n  size 9in x 6in\n"
                                                 "  mass 30 g\n  costs $0 each\n");
  CHECK(it.mailings.at(0).pieces.at(0).misses.empty());
  const Posted heavy = posted("posts 1 copy in heavy", 4,
                              std::string(priced) + "envelope heavy\n  size 9in x 6in\n"
                                                    "  mass 30 g\n  costs $0 each\n");
  const std::vector<MailMiss> &misses = heavy.mailings.at(0).pieces.at(0).misses;
  REQUIRE(misses.size() == 1);
  CHECK_FALSE(misses[0].sheets);
}

TEST_CASE("a copy that is not cut is as large as its folded sheet, and boards stand out round it") {
  // ISO 216: a4 is 210mm x 297mm, and half of 297mm is more than a5's 148mm.
  const Read a5 = read("edition \"Test\"\n  size a5\n  run 10 copies\n  paper plain\n"
                       "  machine copier\n"
                       "stock plain\n  weight 80 gsm\n  sheet a4, grain long\n"
                       "machine copier\n  prints black at $0.1 a side\n  bare 5mm\n"
                       "page 1-4\n");
  Problems told;
  const Size size = size_of_copy(impose_parts(a5.edition(), *a5.sources, told));
  CHECK(size.width == Length::mm(297) / 2);
  CHECK(size.height == Length::mm(210));
  const Read boards = read(small_edition("", "stock grey\n  weight 1200 gsm\n  caliper 2mm\n"
                                             "  sheet letter, grain long\n"
                                             "boards on grey\n  squares 1/8in\npage 1-4\n"));
  const Size out = size_of_copy(impose_parts(boards.edition(), *boards.sources, told));
  CHECK(out.width >= Length::inches(45, 8));
  CHECK(out.height == Length::inches(35, 4));
}

TEST_CASE("an envelope that does not say its size, mass or price is told once") {
  const Posted it = posted("posts 3 copies in c5\nposts 1 copy in c5", 4,
                           std::string(priced) + "borrow \"mail/envelopes\"\n");
  CHECK(it.checks == "envelope-untold\n");
  CHECK(it.why == "the envelope c5 does not say what it weighs and what it costs: post is reckoned "
                  "as if it weighed nothing and cost nothing, and may come out too low\n");
  CHECK(it.text().find("without the envelope's own") != std::string::npos);
  CHECK(it.text().find("envelopes not priced") != std::string::npos);
}

TEST_CASE("more copies posted than made are told at the line that goes beyond the run") {
  const Posted it = posted("posts 8 copies\nposts 4 copies", 4, priced, 10);
  CHECK(it.checks == "more-than-made\n");
  CHECK(it.where == "posts 4 copies");
  CHECK(it.why == "12 copies are posted, and 10 are made: a copy goes to one reader; spares are "
                  "those that go wrong\n");
  CHECK(posted("posts 8 copies\nposts 2 copies", 4, priced, 10).checks.empty());
}

TEST_CASE("a price of mail or of an envelope counts each, and nothing else") {
  CHECK(posted("posts 3 copies in kraft", 4,
               "mail letter\n  step 90 g at $1 once\n"
               "envelope kraft\n  size 9in x 6in\n  mass 9 g\n  costs $4 per 50 sheets\n")
            .checks == "$1 once, and a step is the price of one piece\n"
                       "$4 per 50 sheets, and what an envelope costs is the price of one\n");
}

TEST_CASE("what no piece of mail can be is told") {
  CHECK(posted("posts 3 copies, 5 together", 4).checks ==
        "5 are to lie together, and only 3 are posted\n");
  CHECK(posted("posts 1 copy in flat-one", 4,
               std::string(priced) + "envelope flat-one\n  size 0in x 0in\n  mass 9 g\n"
                                     "  costs $0 each\n")
            .checks == "this has no room in it\n");
  const auto classes = [](std::string_view lines) {
    return posted("posts 1 copy", 4,
                  fmt::format("mail letter\n{}  step 1 oz at $1 each\n"
                              "  step 2 oz at $2 each\n",
                              lines))
        .read.found();
  };
  CHECK(classes("  largest 9in x 6in\n  smallest 10in x 5in\n") ==
        "warning almanac.bodkin:3:12 class-contradicts\n");
  CHECK(classes("  heaviest 1 oz\n") == "warning almanac.bodkin:4:3 class-contradicts\n");
  CHECK(classes("  heaviest 1.5 oz\n  largest 9in x 6in\n  smallest 5in x 3 1/2in\n").empty());
}

TEST_CASE("of a copy whose paper does not say its weight no class is said to refuse it") {
  std::string manuscript = priced + small_edition("posts 1 copy by letter", "page 1-4\n");
  constexpr std::string_view weight = "  weight 20 lb bond\n";
  manuscript.erase(manuscript.find(weight), weight.size());
  const Read r = read(manuscript);
  Problems told, ignored;
  const auto parts = impose_parts(r.edition(), *r.sources, ignored);
  check_post(r.edition(), parts, mailings_of(r.edition(), parts), *r.sources, told);
  CHECK(told.empty());
  REQUIRE(r.problem("missing-fact"));
  CHECK(r.problem("missing-fact")->message == "plain does not say its weight");
}

TEST_CASE("the estimate is told what mailings come to, which it does not count") {
  const Posted it = posted("posts 30 copies in kraft\nposts 1 copy by us-letter", 24);
  CHECK(post_in_brief(it.read.edition(), it.mailings) ==
        "\n  Post is not among these figures; post.txt tells more:\n"
        "      30 copies for $36.60, $1.22 a copy\n"
        "      1 copy by no class with a price\n");
  CHECK(post_in_brief(it.read.edition(), {}).empty());
}
