#include "language/reading.hpp"
#include "language/tree.hpp"
#include "measure/paper.hpp"

#include <deque>
#include <doctest/doctest.h>

using namespace bodkin;
using namespace bodkin::language;

namespace {

// Words of a value point into what was read, which lives as long as the tests.
const Reading &kept(const std::string &text) {
  static std::deque<Reading> all;
  return all.emplace_back(text);
}

// The value that a line captures under a name; a line with a problem fails the test.
template <typename T>
T value(std::string_view parent, const std::string &line, std::string_view name) {
  const Reading &reading = kept(under(parent, line));
  CHECK_MESSAGE(reading.told() == "", line);
  const std::string_view word = std::string_view(line).substr(0, line.find(' '));
  const T *found = reading.tree.get<T>(reading.tree.statements.back(), name);
  REQUIRE_MESSAGE(found != nullptr, line << word);
  return *found;
}
Length length(const std::string &words) {
  return value<Length>("style", "indent " + words, "indent");
}
std::string told(std::string_view parent, const std::string &line) {
  return Reading(under(parent, line)).told();
}
std::string message(std::string_view parent, const std::string &line) {
  const Reading reading(under(parent, line));
  REQUIRE(reading.problems.size() == 1);
  return reading.problems[0].message;
}

} // namespace

// The inch is 25.4 mm and 72 pt (international inch of 1959; PostScript's point), a pica 12 pt.
TEST_CASE("a length is exact in every unit and form") {
  CHECK(length("1/4in") == Length::inches(1, 4));
  CHECK(length("5 1/2in") == Length::inches(11, 2));
  CHECK(length("½in") == Length::inches(1, 2));
  CHECK(length("5½in") == Length::inches(11, 2));
  CHECK(length("5 ½in") == Length::inches(11, 2));
  CHECK(length("⅜in") == Length::inches(3, 8));
  CHECK(length("8.5in") == Length::inches(17, 2));
  CHECK(length(".5in") == Length::inches(1, 2));
  CHECK(length("140mm") == Length::mm(140));
  CHECK(length("1.2cm") == Length::mm(12));
  CHECK(length("254mm") == Length::inches(10));
  CHECK(length("12pt") == Length::inches(1, 6));
  CHECK(length("3pc") == Length::inches(1, 2));
  CHECK(length("0") == Length{});
  CHECK(length("-3mm") == Length::mm(-3));
  CHECK(length("\u22123mm") == Length::mm(-3));
  CHECK(length("0.0058in") == Length::inches(58, 10'000));
  CHECK(length("1/3in") == Length::inches(1, 3));
  CHECK(length("4000in") == Length::inches(4000));
}

TEST_CASE("a length past its bounds is too big") {
  for (const char *words : {"4001in", "99999999999999999999in", "1.12345678mm", "1/99999999999in",
                            "9999999 1/2in", "4000 1/2in"})
    CHECK(told("style", std::string("indent ") + words).find("[number-too-big]") !=
          std::string::npos);
}

TEST_CASE("a size is two lengths or a paper by name") {
  const Size half{Length::inches(11, 2), Length::inches(17, 2)};
  CHECK(value<Size>("edition", "size 5.5in x 8.5in", "size") == half);
  CHECK(value<Size>("edition", "size 5 1/2in × 8 1/2in", "size") == half);
  for (const NamedPaper &paper : named_papers())
    CHECK(value<Size>("edition", "size " + std::string(paper.name), "size") == paper.size);
  const Reading sizes(under("machine", "sizes letter, 8in x 10in, a4"));
  CHECK(sizes.told() == "");
  CHECK(sizes.tree.statements.back().capture_count == 3);
}

TEST_CASE("a place is across and down, then a size, from any edge") {
  const auto place = [](const std::string &words) {
    return value<Place>("picture", "at " + words, "place");
  };
  const Place plain = place("0.5in 1in, 4in x 3in");
  CHECK(plain.has_spot);
  CHECK(plain.has_size);
  CHECK(plain.across.offset == Length::inches(1, 2));
  CHECK(plain.down.offset == Length::inches(1));
  CHECK(plain.size == Size{Length::inches(4), Length::inches(3)});
  CHECK(plain.across.anchor == Anchor::start);

  const Place edges = place("1/2in from outer, 1/4in from foot, 2in x 0.2in");
  CHECK(edges.across.anchor == Anchor::outer);
  CHECK(edges.down.anchor == Anchor::end);
  CHECK(edges.down.offset == Length::inches(1, 4));

  const Place mid = place("centred, 1in from head, 4in x 3in");
  CHECK(mid.across.anchor == Anchor::centred);
  CHECK(mid.down.anchor == Anchor::start);
  CHECK(place("1in centered, 4in x 3in").down.anchor == Anchor::centred);
  CHECK(place("1in from right 0, a6").across.anchor == Anchor::end);
  CHECK(place("1in from inner 0, a6").across.anchor == Anchor::inner);
  CHECK(place("-1/4in -0.5in, a6").down.offset == Length::inches(-1, 2));
  CHECK(place("0 1/2in, a6").down.offset == Length::inches(1, 2));
  CHECK_FALSE(place("1in 1in").has_size);
  CHECK_FALSE(place("4in x 3in").has_spot);
}

TEST_CASE("cells, angles and shares") {
  const Cells cells = value<Cells>("picture", "cells 1-4 by 2-6", "cells");
  CHECK(cells.first_column == 1);
  CHECK(cells.last_column == 4);
  CHECK(cells.first_row == 2);
  CHECK(cells.last_row == 6);
  CHECK(value<Cells>("picture", "cells 3 by 2", "cells").last_column == 3);
  CHECK(value<Angle>("picture", "turn -4deg", "turn").thousandths == -4000);
  CHECK(value<Angle>("picture", "turn 1.5°", "turn").thousandths == 1500);
  CHECK(value<Share>("machine", "tax 8.875%", "tax").millionths == 88'750);
  CHECK(value<Share>("picture", "focus 30% 60%", "y").millionths == 600'000);
  CHECK(value<Share>("picture", "crop 10% 0%, 80% × 60%", "height").millionths == 600'000);
}

TEST_CASE("a price is a sum and what it is for") {
  const auto rate = [](const std::string &words) {
    return value<Rate>("source", "costs " + words, "costs");
  };
  CHECK(written(rate("$0.14 a side")) == "$0.14 a side");
  CHECK(written(rate("£2.10 a sheet")) == "£2.10 a sheet");
  CHECK(written(rate("€3 a copy")) == "€3.00 a copy");
  CHECK(written(rate("12.50 CAD a plate")) == "12.50 CAD a plate");
  CHECK(written(rate("$1 a pass")) == "$1.00 a pass");
  CHECK(written(rate("$1 a run")) == "$1.00 a run");
  CHECK(written(rate("$1 each")) == "$1.00 each");
  CHECK(written(rate("$18.50 per 500 sheets")) == "$18.50 per 500 sheets");
  CHECK(written(rate("$12 an hour")) == "$12.00 an hour");
  CHECK(written(rate("$6.50 once")) == "$6.50 once");
  CHECK(written(rate("-$6.50 once")) == "-$6.50 once");
  CHECK(value<Rate>("edition", "price $5", "price").per == Per::copy);
  CHECK(value<Rate>("edition", "price $5 a run", "price").per == Per::run);
}

TEST_CASE("weights, masses and times") {
  const auto weight = [](const std::string &words) {
    return value<Weight>("stock", "weight " + words, "weight");
  };
  CHECK(written(weight("90 gsm")) == "90 gsm");
  CHECK(weight("90 gsm").grammage.mg_per_m2 == 90'000);
  CHECK(written(weight("90gsm")) == "90 gsm");
  CHECK(written(weight("28 lb bond")) == "28 lb bond");
  CHECK(weight("28lb bond").grammage == grammage({28, 0}, BasicSize::bond));
  for (const char *kind : {"bond", "text", "cover", "bristol", "index", "tag"})
    CHECK(written(weight(std::string("80 lb ") + kind)) == std::string("80 lb ") + kind);
  const auto mass = [](const std::string &words) {
    return value<Mass>("hand", "mass " + words, "mass").micrograms;
  };
  CHECK(mass("12 g") == 12'000'000);
  CHECK(mass("1/2 g") == 500'000);
  CHECK(mass("1 oz") == 28'349'523); // international avoirdupois ounce, 28.349523125 g
  const auto time = [](const std::string &words) {
    return value<Time>("hand", "takes " + words, "takes");
  };
  CHECK(time("40 s a copy").duration.milliseconds == 40'000);
  CHECK(time("40s a copy").per == TimePer::copy);
  CHECK(time("2 min a sheet").per == TimePer::sheet);
  CHECK(time("1 1/2 h once").duration.milliseconds == 5'400'000);
  CHECK(time("1 1/2 h once").per == TimePer::once);
  CHECK_FALSE(time("40 s").per_written);
}

TEST_CASE("a colour is six digits or a name") {
  const auto tint = [](const std::string &words) {
    return value<ColourName>("stock", "tint " + words, "tint");
  };
  CHECK(tint("#f6A5b8").colour == Colour{0xf6, 0xa5, 0xb8});
  CHECK(tint("#f6a5b8").name == "");
  CHECK(tint("cream").name == "cream");
  CHECK(tint("facade").name == "facade");
}

TEST_CASE("pages are numbers, runs, words and names, and what is taken away") {
  const Reading reading("page 5, 8-11, left, lost but 9, 10\n");
  CHECK(reading.told() == "");
  const auto &items = reading.tree.page_items;
  REQUIRE(items.size() == 6);
  CHECK(items[0].first == 5);
  CHECK(items[1].last == 11);
  CHECK(items[2].word == "left");
  CHECK(items[3].word == "lost");
  CHECK_FALSE(items[3].but);
  CHECK(items[4].but);
  CHECK(items[5].last == 10);
  CHECK(Reading("page 2–3\n").tree.page_items[0].last == 3);
  CHECK(Reading("page center\n").tree.page_items[0].word == "centre");
  CHECK(value<Pages>("words", "continues 9", "page").count == 1);
}

TEST_CASE("a page's paper, ink, machine and name stand in their order") {
  const Reading reading("page 5, 6 called lost in color on rose by corner-copier\n");
  CHECK(reading.told() == "");
  const Statement &page = reading.tree.statements[0];
  CHECK(reading.tree.get<Word>(page, "called")->text == "lost");
  CHECK(reading.tree.get<Word>(page, "mode")->text == "colour");
  CHECK(reading.tree.get<Word>(page, "stock")->text == "rose");
  CHECK(reading.tree.get<Word>(page, "machine")->text == "corner-copier");
}

TEST_CASE("dates, languages, countries and currencies") {
  CHECK(value<Date>("edition", "dated 2026", "date") == Date{2026, 0, 0});
  CHECK(value<Date>("edition", "dated 2026-11", "date") == Date{2026, 11, 0});
  CHECK(value<Date>("edition", "dated 2026-11-25", "date") == Date{2026, 11, 25});
  for (const char *wrong : {"26", "2026-1"})
    CHECK(message("edition", std::string("dated ") + wrong).find("a date") != std::string::npos);
  CHECK(value<Word>("edition", "language en-GB, fr", "language").text == "en-GB");
  CHECK(value<Word>("source", "published 1907, US", "country").text == "US");
  CHECK(value<Word>("edition", "currency CAD", "currency").text == "CAD");
}

TEST_CASE("texts keep what their escapes stand for") {
  const auto maker = [](const std::string &words) {
    const Reading reading(under("edition", "maker " + words));
    CHECK(reading.told() == "");
    return std::string(reading.tree.get<Quoted>(reading.tree.statements.back(), "maker")->text);
  };
  CHECK(maker(R"("Wet Umbrella Press")") == "Wet Umbrella Press");
  CHECK(maker(R"("say \"moon\"")") == R"(say "moon")");
  CHECK(maker(R"("back\\slash")") == R"(back\slash)");
  CHECK(maker(R"("a # b")") == "a # b");
  CHECK(maker(R"("")") == "");
  CHECK(maker("\"“curly” inside\"") == "“curly” inside");
}

TEST_CASE("type sizes are points, with or without leading") {
  const auto size = [](const std::string &words) {
    return value<TypeSize>("style", "face book " + words, "size");
  };
  CHECK(size("10.5/13").size == Decimal{105, 1});
  CHECK(size("10.5/13").leading == Decimal{13, 0});
  CHECK(size("64/58").leading == Decimal{58, 0});
  CHECK(size("10/12.5").leading == Decimal{125, 1});
  CHECK(size("10.5").leading == Decimal{});
}

TEST_CASE("a choice in either spelling is the table's own word") {
  CHECK(value<Word>("picture", "tone gray", "tone").text == "grey");
  CHECK(value<Word>("style", "lines centered", "lines").text == "centred");
  CHECK(value<Word>("edition", "printing color", "mode").text == "colour");
  CHECK(value<Word>("page", "hand color \"rain\"", "kind").text == "colour");
}
