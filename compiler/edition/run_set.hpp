// Whose copies hold a thing: those of all runs of an edition, or of some of them.
#pragma once

#include <compare>
#include <cstdint>
#include <optional>

namespace bodkin {

// No more runs than these have a bit each; own_runs.cpp takes fewer.
class RunSet {
public:
  RunSet() = default; // of all runs
  RunSet(std::uint32_t run) : bits_(std::uint32_t{1} << run) {}
  // As `only` says it: where it says nothing, all.
  RunSet(const std::optional<std::uint32_t> &run) : RunSet(run ? RunSet(*run) : RunSet()) {}

  explicit operator bool() const { return bits_ != 0; } // some of the runs alone
  bool holds(std::uint32_t run) const { return bits_ == 0 || (bits_ >> run & 1U) != 0; }
  bool several() const { return (bits_ & (bits_ - 1)) != 0; }
  RunSet with(const RunSet &more) const {
    RunSet both;
    both.bits_ = bits_ == 0 || more.bits_ == 0 ? 0 : bits_ | more.bits_;
    return both;
  }
  auto operator<=>(const RunSet &) const = default;

private:
  std::uint32_t bits_ = 0; // by run; none: all
};

} // namespace bodkin
