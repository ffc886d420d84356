// Prices that nobody can mean: each is told where it stands, with a line that passes once typed,
// and nothing else is told for it.
#include "money/manuscript.hpp"
#include "money/money_lines.hpp"
#include "problems/render.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

namespace bodkin::tests {
namespace {

// A line of its own in each place where a price may stand.
std::string with_line(std::string_view where, std::string_view line) {
  const auto at = [&](std::string_view place) {
    return place == where ? fmt::format("  {}\n", line) : std::string();
  };
  const std::string bid =
      where == "bid" ? std::string("bid near\n") : "bid near\n  copies 1 at $2 a copy\n";
  return fmt::format(
      "edition \"Rain\"\n  size half-letter\n  dated 2026-11\n  run 50 copies, 2 spare\n"
      "  paper plain\n  machine copier\n  currency USD\n{}"
      "stock plain\n  weight 20 lb bond\n  sheet letter, grain short\n{}"
      "machine copier\n{}{}{}{}"
      "face typed from \"Courier Prime\"\nstyle label\n  face typed 9/11\n"
      "page 1-8\n  words \"Rain\" in label\n",
      at("edition"), where == "stock" ? at("stock") : "  costs included\n",
      where == "prints" ? at("prints") : "  prints black at $0.10 a side\n", at("machine"), bid,
      at("bid"));
}

struct Told {
  std::string check, message, type;
  std::size_t problems = 0; // errors and warnings
};

Told told(const std::string &manuscript) {
  const Read it = read(manuscript);
  Told out;
  for (const Problem &problem : it.problems)
    if (problem.kind != Kind::note) {
      ++out.problems;
      if (out.check.empty())
        out = {problem.check, problem.message,
               problem.type.empty() ? std::string() : problem.type.front().line, out.problems};
    }
  return out;
}

struct Slip {
  std::string_view where, line, check, type;
};

constexpr Slip slips[] = {
    {"edition", "price -$2 a copy", "number-too-small", "price $2 a copy"},
    {"edition", "price 2.00 pounds a copy", "no-unit", "price £2.00 a copy"},
    {"edition", "price 3 dollars a copy", "no-unit", "price $3 a copy"},
    {"edition", "budget 2.00 dollars", "no-unit", "budget $2.00 a copy"},
    {"edition", "budget $2", "missing-part", "budget $2 a copy"},
    {"edition", "labour $12 a copy", "priced-by-what", "labour $12.00 an hour"},
    {"edition", "sells 5 copies \"here\", at $2 a copy, share -40%", "number-too-small",
     "sells 5 copies \"here\", at $2 a copy, share 40%"},
    {"edition", "sells 5 copies \"here\", at $2 a copy, share 0.4", "no-unit",
     "sells 5 copies \"here\", at $2 a copy, share 40%"},
    {"edition", "sells 5 copies \"here\", at $2 a copy, share 140%", "number-too-big",
     "sells 5 copies \"here\", at $2 a copy, share 40%"},
    {"edition", "gives -3 copies", "unknown-kind", "gives 3 copies"},
    {"stock", "costs $0.60", "missing-part", "costs $0.60 a sheet"},
    {"stock", "costs $14", "missing-part", "costs $14 per 500 sheets"},
    {"stock", "costs $14 per 0 sheets", "number-too-small", "costs $14.00 per 500 sheets"},
    {"stock", "costs $14 per -250 sheets", "number-too-small", "costs $14.00 per 250 sheets"},
    {"stock", "costs $14 a copy", "priced-by-what", "costs $14.00 a sheet"},
    {"prints", "prints black at -$0.10 a side", "number-too-small", "prints black at $0.10 a side"},
    {"prints", "prints black at $0.10 a copy", "priced-by-what", "prints black at $0.10 a side"},
    {"machine", "prints black at $0.20 a side", "same-fact-twice",
     "prints black at $0.20 a side, from 100 sides"},
    {"machine", "tax -8%", "number-too-small", "tax 8%"},
    {"machine", "tax 100%", "number-too-big", "tax 8%"},
    {"machine", "tax 0.2", "no-unit", "tax 20%"},
    {"machine", "least $5 a side", "priced-by-what", "least $5.00 a run"},
    {"machine", "setup -$1 a pass", "number-too-small", "setup $1 a pass"},
    {"bid", "copies 25 at -$2 a copy", "number-too-small", "copies 25 at $2 a copy"},
    {"bid", "copies -25 at $2 a copy", "unknown-kind", "copies 25 at $2 a copy"},
    {"bid", "copies 0 at $2 a copy", "number-too-small", "copies 1 at $2 a copy"},
    {"bid", "copies 25 at $2 a side", "priced-by-what", "copies 25 at $2.00 a copy"},
};

} // namespace

TEST_CASE("a price that nobody can mean is told once, and the line that is handed out passes") {
  for (const Slip &slip : slips) {
    CAPTURE(slip.line);
    const Told wrong = told(with_line(slip.where, slip.line));
    CAPTURE(wrong.message);
    CHECK(wrong.check == slip.check);
    CHECK(wrong.type == slip.type);
    CHECK(wrong.problems == 1);
    CHECK(told(with_line(slip.where, wrong.type)).problems == 0);
  }
}

TEST_CASE("what a broken line means is priced, and not told as missing") {
  for (const std::string_view line :
       {"prints black at -$0.10 a side", "prints black at $0.10 a copy"}) {
    const Read it = read(with_line("prints", line));
    CHECK(it.edition().machines.front().prints.size() == 1);
  }
  CHECK(read(with_line("bid", "copies 0 at $2 a copy")).edition().bids.front().steps.size() == 1);
  CHECK(read(with_line("stock", "costs $14 per -250 sheets"))
            .edition()
            .stocks.front()
            .costs->value.count == 250);
}

TEST_CASE("of a line with several sums the one in other money is the one to change") {
  const auto typed = [](std::string line) {
    Sources sources;
    const FileId file = sources.add("almanac.bodkin", std::move(line));
    return with_money_in(sources, {file, Offset{0}, Offset{1}}, currency_of("USD"));
  };
  CHECK(typed("sells 4 copies \"at the $ fair\", at $8 a copy, costs £2.10 a copy") ==
        "sells 4 copies \"at the $ fair\", at $8 a copy, costs $2.10 a copy");
  // No figure stands beside any of these signs.
  CHECK(typed("costs £ a sheet") == "costs £ a sheet");
  CHECK(typed("costs £, €") == "costs £, €");
  CHECK(typed("note \"£5\"") == "note \"£5\"");
  CHECK(typed("$") == "$");
}

} // namespace bodkin::tests
