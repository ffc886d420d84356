#include "measure/weight.hpp"

#include "asked.hpp"

#include <doctest/doctest.h>
#include <string>

using namespace bodkin;

namespace {

struct Pounds {
  std::int64_t pounds;
  BasicSize kind;
  const char *sheet; // the basic size, for GNU units
  double gsm;        // grams a square metre, to a tenth
};

// Derived: pounds × 453.59237 g ÷ (500 × basic size).
constexpr Pounds table[] = {
    {20, BasicSize::bond, "17 inch * 22 inch", 75.2},
    {24, BasicSize::bond, "17 inch * 22 inch", 90.2},
    {28, BasicSize::bond, "17 inch * 22 inch", 105.3},
    {60, BasicSize::text, "25 inch * 38 inch", 88.8},
    {80, BasicSize::text, "25 inch * 38 inch", 118.4},
    {65, BasicSize::cover, "20 inch * 26 inch", 175.8},
    {80, BasicSize::cover, "20 inch * 26 inch", 216.3},
    {110, BasicSize::index, "25.5 inch * 30.5 inch", 198.9},
};

Weight pounds(std::int64_t amount, BasicSize kind) {
  return {{amount, 0}, kind, grammage({amount, 0}, kind)};
}
Weight grams(std::int64_t amount) { return {{amount, 0}, std::nullopt, {amount * 1000}}; }

} // namespace

TEST_CASE("pounds of each basic size come to the grams a square metre that they are sold as") {
  for (const Pounds &row : table) {
    CAPTURE(row.pounds);
    CAPTURE(row.sheet);
    CHECK(std::abs(grammage({row.pounds, 0}, row.kind).gsm() - row.gsm) <= 0.1);
  }
}

TEST_CASE("pounds to grams agree with GNU units to the milligram") {
  for (const Pounds &row : table) {
    const std::string command = "units -t -d 12 '" + std::to_string(row.pounds) + " lb / (500 * " +
                                row.sheet + ")' 'g/m^2'";
    CAPTURE(command);
    CHECK(std::abs(std::stod(asked(command)) - grammage({row.pounds, 0}, row.kind).gsm()) <=
          0.0005);
  }
  const std::string bristol =
      asked("units -t -d 12 '67 lb / (500 * 22.5 inch * 28.5 inch)' 'g/m^2'");
  CHECK(std::abs(std::stod(bristol) - grammage({67, 0}, BasicSize::bristol).gsm()) <= 0.0005);
  const std::string tag = asked("units -t -d 12 '100 lb / (500 * 24 inch * 36 inch)' 'g/m^2'");
  CHECK(std::abs(std::stod(tag) - grammage({100, 0}, BasicSize::tag).gsm()) <= 0.0005);
}

TEST_CASE("a weight with decimals counts them") {
  CHECK(grammage({285, 1}, BasicSize::bond).mg_per_m2 == 107'152);
}

TEST_CASE("the six kinds of pounds are known by name, and no other") {
  for (const char *name : {"bond", "text", "cover", "bristol", "index", "tag"}) {
    const auto kind = basic_size_named(name);
    REQUIRE(kind.has_value());
    CHECK(name_of(*kind) == name);
  }
  CHECK_FALSE(basic_size_named("card").has_value());
}

TEST_CASE("weights are written as they were typed") {
  CHECK(written(pounds(28, BasicSize::bond)) == "28 lb bond");
  CHECK(written(Weight{{1055, 1}, std::nullopt, {105'500}}) == "105.5 gsm");
  CHECK(written(grams(90)) == "90 gsm");
}

// A paper merchant's equivalent-weight table.
TEST_CASE("bond of 20, 24 and 28 pounds has the caliper of the merchants' table") {
  CHECK(estimated_caliper(pounds(20, BasicSize::bond)) == Length::inches(38, 10'000));
  CHECK(estimated_caliper(pounds(24, BasicSize::bond)) == Length::inches(48, 10'000));
  CHECK(estimated_caliper(pounds(28, BasicSize::bond)) == Length::inches(58, 10'000));
}

// Common practice, no source: 1.35 cm³ a gram for uncoated stock.
TEST_CASE("any other paper is as thick as its grams at 1.35 cm³ each") {
  CHECK(estimated_caliper(grams(100)) == Length::mm(135) / 1000);
  CHECK(estimated_caliper(grams(200)) == Length::mm(270) / 1000);
  CHECK(estimated_caliper(pounds(65, BasicSize::cover)).in_mm() ==
        doctest::Approx(0.23734).epsilon(0.0001));
}
