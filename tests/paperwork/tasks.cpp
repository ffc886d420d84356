// The order of work by hand among steps of finish, what has to dry, and how many copies have it.
#include "paperwork/tasks.hpp"

#include "edition/reading.hpp"
#include "paperwork/evening.hpp"

#include <doctest/doctest.h>
#include <string>

using namespace bodkin;
using namespace bodkin::tests;
using namespace bodkin::paperwork;

namespace {

std::string with_run(std::string manuscript, std::string_view run) {
  const std::size_t at = manuscript.find("run ");
  return manuscript.replace(at, manuscript.find('\n', at) - at, run);
}

// Not moved: its parts refer to one another.
struct Planned {
  Read read;
  Problems problems;
  std::vector<CopyPart> parts;
  Imposition imposition;
  std::vector<SheetModes> modes{};
  std::vector<Pass> passes{};
  ChargedSides sides{};
  Estimate estimate{};

  explicit Planned(const std::string &rest, std::string_view run = "run 10 copies")
      : read(tests::read(with_run(small_edition("", rest), run))),
        parts(impose_parts(read.edition(), *read.sources, problems)), imposition(joined(parts)) {
    REQUIRE(read.found() == "");
  }
  Making making() const {
    return {read.edition(), parts, imposition, modes, passes, sides, estimate, {}};
  }
  // "fold, stamp moon (ink), dry"
  std::string order() const {
    const Making making = this->making();
    const std::vector<MakingTask> tasks = tasks_in_order(making);
    std::string text;
    for (const MakingTask &task : tasks) {
      const Drying drying = drying_after(making, tasks, task);
      text += (text.empty() ? "" : ", ") + task_name(making, task);
      text += drying == Drying::ink     ? " (ink)"
              : drying == Drying::gum   ? " (gum)"
              : drying == Drying::label ? " (label)"
                                        : "";
    }
    return text;
  }
};

const std::string stamped = "page 1\n  hand stamp \"moon\"\n    at 1in 1in, 1in x 1in\n"
                            "    takes 20 s a copy\n";

} // namespace

TEST_CASE("a step that dries, with nothing of its own to dry, is there for ink") {
  CHECK(Planned(stamped + "finish\n  fold all\n  dry 20 min\n  pack \"a bag\"\n").order() ==
        "fold, stamp moon, dry, pack");
}

TEST_CASE("a step that dries glue does not wait for ink, which is given time of its own") {
  CHECK(Planned(stamped + "finish\n  fold all\n  glue spine\n  dry 20 min\n").order() ==
        "fold, glue spine, dry, stamp moon (ink)");
}

TEST_CASE("glue that nothing waits for dries as long as its label says, pencil not at all") {
  CHECK(Planned("page 1\n  hand number \"in pencil\"\n    at 1in 1in, 1in x 1in\n"
                "page 2\n  hand tip-in \"a leaf\"\n    at 1in 1in, 1in x 1in\n"
                "finish\n  fold all\n  glue spine\n")
            .order() == "fold, glue spine (label), tip in a leaf (label), number in pencil");
}

TEST_CASE("the ink of a stamp is waited for in the plan") {
  const Planned planned(stamped + "finish\n  fold all\n");
  const std::vector<WorkOfTask> all = works(planned.making());
  REQUIRE(all.size() == 2);
  CHECK(all[1].waits == 10 * 60'000);
  const Evening evening = plan_evening(all, 1);
  CHECK(evening.hands_free == 10 * 20'000);
  CHECK(evening.ends == evening.hands_free + all[1].waits);
}

TEST_CASE("flat sheets are worked on with their spares, from gathering on the copies alone") {
  const Planned planned("page 1\n  hand stamp \"moon\"\n    at 1in 1in, 1in x 1in\n    when flat\n"
                        "finish\n  crease cover\n  collate\n  crease all\n  fold all\n",
                        "run 10 copies, 2 spare");
  std::vector<std::int64_t> copies;
  for (const WorkOfTask &work : works(planned.making()))
    copies.push_back(work.copies);
  CHECK(copies == std::vector<std::int64_t>{12, 12, 10, 10, 10});
}

TEST_CASE("what only one run has is done to its copies, and printed for them") {
  const Planned planned("page 1\n  hand stamp \"moon\"\n    at 1in 1in, 1in x 1in\n"
                        "    takes 20 s a copy\n    only fine\n"
                        "insert card\n  size 4in x 5in\n  up 2\n  only fine\n"
                        "  page 1\n    blank\n"
                        "finish\n  fold all\n",
                        "run 8 copies called plain\n  run 2 copies, 1 spare called fine");
  const std::vector<WorkOfTask> all = works(planned.making());
  REQUIRE(all.size() == 2);
  CHECK(all[1].name == "stamp moon, fine alone");
  CHECK(all[1].copies == 2); // the spare's sheets stay loose
  CHECK(copies_words(planned.making().edition, 1) == "the 2 copies fine");
  CHECK(copies_words(planned.making().edition, {}) == "all 10 copies");
  const std::vector<Pile> laid = piles(planned.making());
  REQUIRE(laid.size() == 2);
  CHECK(laid[0].sheets == 11); // ten copies and a spare
  // Three cards, two to a sheet.
  CHECK(laid[1].sheets == 2);
  CHECK(laid[1].spare == 1);
}

TEST_CASE("a pen's ink and wetted gum have time to dry, a sticker of its own glue none") {
  CHECK(Planned("page 1\n  hand number \"in ink\"\n    at 1in 1in, 1in x 1in\n"
                "page 2\n  hand sticker \"a gummed star\"\n    at 1in 1in, 1in x 1in\n"
                "page 3\n  hand sticker \"a label\"\n    at 1in 1in, 1in x 1in\n"
                "finish\n  fold all\n  press 2 h\n")
            .order() ==
        "fold, stick a gummed star (gum), stick a label, number in ink (ink), press");
}

// What its label says is not known: half an hour, common practice, no source.
TEST_CASE("what is sprayed is dry before it is coloured") {
  const Planned planned("page 1\n  hand spray \"silver\"\n    at 1in 1in, 1in x 1in\n"
                        "    when flat\n    takes 30 s a copy\n"
                        "  hand colour \"a line\"\n    at 3in 1in, 1in x 1in\n"
                        "    takes 20 s a copy\nfinish\n  fold all\n");
  const Evening evening = plan_evening(works(planned.making()), 2);
  REQUIRE(evening.stretches.size() > 1);
  std::int64_t coloured = 0;
  for (auto stretch = evening.stretches.rbegin(); stretch != evening.stretches.rend(); ++stretch)
    coloured = stretch->task == 2 ? stretch->begin : coloured;
  // The first of four batches of three.
  CHECK(coloured == 3 * 30'000 + label_dries.milliseconds);
}

// Derived: half of an a4 sheet's 297mm; a5 is 148mm wide (ISO 216).
TEST_CASE("paper beyond the page is there until the knife takes it") {
  Read read = tests::read("borrow \"stocks/metric\"\nedition \"Test\"\n  size a5\n  pages 4\n"
                          "  run 10 copies\n  paper paper-80\n"
                          "page 1-4\n  blank\n");
  Problems problems;
  const std::vector<CopyPart> parts = impose_parts(read.edition(), *read.sources, problems);
  const Imposition imposition = joined(parts);
  const Estimate money;
  const Making making{read.edition(), parts, imposition, {}, {}, {}, money, {}};
  CHECK(left_of_page(making, 1, {}).width == Length::mm(297) / 2);
  CHECK(left_of_page(making, 2, {}).x == Length{} - Length::mm(1) / 2);
  const CutBefore cut{Length::mm(3), Length{}, Length{}};
  CHECK(left_of_page(making, 1, cut).width == Length::mm(145));
  CHECK(left_of_page(making, 1, cut).height == Length::mm(210));
}
