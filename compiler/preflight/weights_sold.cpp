#include "preflight/weights_sold.hpp"

#include <array>
#include <cstdlib>
#include <span>

namespace bodkin {
namespace {

constexpr std::array<int, 6> bond{16, 18, 20, 24, 28, 32};
constexpr std::array<int, 5> text{50, 60, 70, 80, 100};
constexpr std::array<int, 5> cover{65, 80, 100, 110, 120};
constexpr std::array<int, 2> bristol{57, 67};
constexpr std::array<int, 3> index_card{90, 110, 140};
constexpr std::array<int, 3> tag{100, 125, 150};
constexpr std::array<int, 16> gsm{60,  70,  75,  80,  90,  100, 120, 130,
                                  150, 160, 170, 190, 200, 220, 250, 300};

std::span<const int> sold(const std::optional<BasicSize> &kind) {
  if (!kind)
    return gsm;
  switch (*kind) {
  case BasicSize::bond:
    return bond;
  case BasicSize::text:
    return text;
  case BasicSize::cover:
    return cover;
  case BasicSize::bristol:
    return bristol;
  case BasicSize::index:
    return index_card;
  case BasicSize::tag:
    return tag;
  }
  return {};
}

Weight of_kind(int amount, const std::optional<BasicSize> &kind) {
  const Decimal written{amount, 0};
  return {written, kind,
          kind ? grammage(written, *kind) : Grammage{static_cast<std::int64_t>(amount) * 1000}};
}

} // namespace

bool feeds(const Machine &machine, Grammage grammage) {
  return (!machine.lightest || (*machine.lightest)->grammage <= grammage) &&
         (!machine.heaviest || grammage <= (*machine.heaviest)->grammage);
}

std::optional<Weight> nearest_sold(const Weight &weight, const Machine &machine) {
  const auto far = [&](const Weight &other) {
    return std::abs(other.grammage.mg_per_m2 - weight.grammage.mg_per_m2);
  };
  std::optional<Weight> nearest;
  for (const int amount : sold(weight.pounds)) {
    const Weight other = of_kind(amount, weight.pounds);
    if (feeds(machine, other.grammage) && (!nearest || far(other) < far(*nearest)))
      nearest = other;
  }
  return nearest;
}

} // namespace bodkin
