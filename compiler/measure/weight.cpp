#include "measure/weight.hpp"

#include <array>
#include <cmath>
#include <fmt/format.h>

namespace bodkin {
namespace {

struct Basis {
  std::string_view name;
  double square_inches; // of one sheet of the basic size
};
// Basic sizes as in paper merchants' conversion tables: 17x22, 25x38, 20x26, 22 1/2x28 1/2,
// 25 1/2x30 1/2, 24x36 in.
constexpr std::array<Basis, 6> bases{{{"bond", 17 * 22},
                                      {"text", 25 * 38},
                                      {"cover", 20 * 26},
                                      {"bristol", 22.5 * 28.5},
                                      {"index", 25.5 * 30.5},
                                      {"tag", 24 * 36}}};
constexpr double grams_per_pound = 453.59237;
constexpr double m2_per_square_inch = 0.0254 * 0.0254;
constexpr double bulk_cm3_per_g = 1.35;

} // namespace

std::optional<BasicSize> basic_size_named(std::string_view name) {
  for (std::size_t i = 0; i < bases.size(); ++i)
    if (bases[i].name == name)
      return static_cast<BasicSize>(i);
  return std::nullopt;
}

std::string_view name_of(BasicSize kind) { return bases[static_cast<std::size_t>(kind)].name; }

Grammage grammage(const Decimal &pounds, BasicSize kind) {
  const double area =
      500 * bases[static_cast<std::size_t>(kind)].square_inches * m2_per_square_inch;
  return {std::llround(pounds.value() * grams_per_pound / area * 1000)};
}

std::string written(const Weight &weight) {
  if (weight.pounds)
    return fmt::format("{} lb {}", written(weight.amount), name_of(*weight.pounds));
  return written(weight.amount) + " gsm";
}

Length estimated_caliper(const Weight &weight) {
  if (weight.pounds == BasicSize::bond && weight.amount.places == 0) {
    switch (weight.amount.digits) {
    case 20:
      return Length::inches(38, 10'000);
    case 24:
      return Length::inches(48, 10'000);
    case 28:
      return Length::inches(58, 10'000);
    default:
      break;
    }
  }
  const double mm = weight.grammage.gsm() * bulk_cm3_per_g / 1000;
  return Length::units(std::llround(mm * static_cast<double>(Length::per_mm)));
}

} // namespace bodkin
