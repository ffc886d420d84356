// Weights of paper. A grammage is the mass of one square metre (ISO 536). A pound weight is the
// mass of 500 sheets of a basic size that depends on the kind of paper, so "28 lb" alone says
// nothing.
#pragma once

#include "measure/box.hpp"
#include "measure/decimal.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace bodkin {

struct Grammage {
  std::int64_t mg_per_m2 = 0;
  constexpr double gsm() const { return static_cast<double>(mg_per_m2) / 1000; }
  auto operator<=>(const Grammage &) const = default;
};

enum class BasicSize { bond, text, cover, bristol, index, tag };

std::optional<BasicSize> basic_size_named(std::string_view name);
std::string_view name_of(BasicSize kind);

// lb × 453.59237 g ÷ (500 × basic size in m²), to the nearest milligram.
Grammage grammage(const Decimal &pounds, BasicSize kind);

// A weight as a maker wrote it, and what it comes to.
struct Weight {
  Decimal amount;
  std::optional<BasicSize> pounds; // none: the amount is grams per square metre
  Grammage grammage;
  bool operator==(const Weight &) const = default;
};
std::string written(const Weight &weight); // "28 lb bond", "90 gsm"

// The caliper of an uncoated sheet that does not state one: an equivalent-weight table's figures
// for 20, 24 and 28 lb bond, else grammage × 1.35 cm³/g (common practice). Always reported as
// estimated.
Length estimated_caliper(const Weight &weight);

struct Mass {
  std::int64_t micrograms = 0;
  constexpr double grams() const { return static_cast<double>(micrograms) / 1e6; }
  auto operator<=>(const Mass &) const = default;
};

} // namespace bodkin
