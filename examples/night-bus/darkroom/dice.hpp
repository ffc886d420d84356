#pragma once

#include <cstdint>

// Seeded chance, so that the same picture falls out of every run (splitmix64, Steele, Lea and
// Flood 2014). There is no other source of chance in the darkroom.
class Dice {
public:
  explicit Dice(std::uint64_t seed) : state_(seed) {}

  std::uint64_t roll() {
    state_ += 0x9e3779b97f4a7c15ULL;
    std::uint64_t z = state_;
    z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9ULL;
    z = (z ^ (z >> 27)) * 0x94d049bb133111ebULL;
    return z ^ (z >> 31);
  }

  // From 0 up to, never reaching, 1.
  double share() { return static_cast<double>(roll() >> 11) * 0x1.0p-53; }

  double between(double low, double high) { return low + (high - low) * share(); }

  int pick(int count) { return static_cast<int>(roll() % static_cast<std::uint64_t>(count)); }

private:
  std::uint64_t state_;
};
