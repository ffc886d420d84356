#include "money/bids.hpp"
#include "money/shop.hpp"

#include <doctest/doctest.h>

namespace bodkin::tests {
namespace {

Bid offer(std::vector<BidStep> steps) {
  Bid bid;
  bid.name = "printer";
  bid.prints = {{Mode::colour, {}}};
  bid.steps = std::move(steps);
  return bid;
}

} // namespace

TEST_CASE("a bid's price step holds for every copy of the run") {
  Shop shop(1, 24);
  shop.edition.bids = {offer({{1, rate("3", Per::copy), {}}, {25, rate("2", Per::copy), {}}})};
  CHECK(*shop.priced().bids[0].run_total == Exact(72));
  shop.edition.run.value.copies = 25;
  CHECK(*shop.priced().bids[0].run_total == Exact(50));
}

TEST_CASE("a bid offers nothing below its least run") {
  Shop shop(1, 24);
  shop.edition.bids = {offer({{25, rate("2", Per::copy), {}}})};
  const Estimate estimate = shop.priced();
  CHECK_FALSE(estimate.bids[0].run_total);
  CHECK_FALSE(estimate.bids[0].per_copy);
  CHECK_FALSE(estimate.bids[0].like_for_like);
}

TEST_CASE("a bid for all copies needs no spares, and what stays the maker's counts good copies") {
  Shop shop(1, 10);
  shop.edition.run.value.spare = 5;
  Element &sticker = shop.on_page(1, hand(HandKind::sticker, "moon"));
  sticker.work.costs = {{rate("0.10", Per::copy), {}}};
  FinishStep fold;
  fold.work.costs = {{rate("1", Per::copy), {}}};
  shop.edition.finish = {fold};
  shop.edition.bids = {offer({{1, rate("2", Per::copy), {}}})};
  const Estimate estimate = shop.priced();
  CHECK(*estimate.bids[0].run_total == Exact(20));
  CHECK(*estimate.bids[0].like_for_like == Exact(21));
  CHECK(estimate.bids[0].still_yours == std::vector<std::string>{"sticker moon: $1.00"});
}

TEST_CASE("collating, creasing, folding, stapling and trimming come with a bid, other steps stay") {
  Shop shop(1, 10);
  shop.edition.bids = {offer({{1, rate("2", Per::copy), {}}})};
  for (const StepKind kind : {StepKind::collate, StepKind::crease, StepKind::fold, StepKind::staple,
                              StepKind::trim, StepKind::sew, StepKind::punch, StepKind::cut,
                              StepKind::glue, StepKind::round, StepKind::tie}) {
    FinishStep step;
    step.kind = kind;
    step.work.costs = {{rate("0.10", Per::copy), {}}};
    shop.edition.finish.push_back(step);
  }
  const Estimate estimate = shop.priced();
  CHECK(estimate.bids[0].still_yours == std::vector<std::string>{"sew: $1.00", "punch: $1.00",
                                                                 "cut: $1.00", "glue: $1.00",
                                                                 "round: $1.00", "tie: $1.00"});
  CHECK(*estimate.bids[0].like_for_like == Exact(26));
}

TEST_CASE("a bid in black only is listed for a colour edition and crosses nothing") {
  Shop shop(1, 10);
  shop.colour(1, 0);
  shop.edition.bids = {offer({{1, rate("0.01", Per::copy), {}}})};
  shop.edition.bids[0].prints = {{Mode::black, {}}};
  const Estimate estimate = shop.priced();
  CHECK(estimate.bids[0].cannot == std::vector<std::string>{"colour: it prints black only"});
  CHECK(estimate.bids[0].run_total->rounded(2) == "0.10");
  CHECK(estimate.crossings.empty());
  CHECK(estimate.cheapest_at_one_copy == "own");
}

TEST_CASE("a printer of colour prints a black edition too") {
  Shop shop(1, 10);
  shop.edition.bids = {offer({{1, rate("0.01", Per::copy), {}}})};
  CHECK(shop.priced().bids[0].cannot.empty());
  CHECK(shop.priced().cheapest_at_one_copy == "printer");
}

TEST_CASE("white and cream are house stock and rose is not") {
  Shop shop(1, 10);
  shop.edition.bids = {offer({{1, rate("1", Per::copy), {}}})};
  for (const Colour tint : {Colour{255, 255, 255}, Colour{0xf7, 0xf1, 0xe1}}) {
    shop.paper().tint.value = tint;
    CHECK(shop.priced().bids[0].cannot.empty());
  }
  shop.paper().tint.value = {0xf3, 0xb3, 0xc0};
  CHECK(shop.priced().bids[0].cannot ==
        std::vector<std::string>{"coloured stock, as far as it says: plain"});
}

TEST_CASE("nothing is compared while something of one's own has no price") {
  Shop shop(1, 10);
  shop.paper().included = false;
  shop.edition.bids = {offer({{1, rate("0.01", Per::copy), {}}})};
  const Estimate estimate = shop.priced();
  CHECK(estimate.crossings.empty());
  CHECK(estimate.cheapest_at_one_copy.empty());
}

} // namespace bodkin::tests
