// Paired runs: ours and the floor in turn, so that a machine whose speed drifts drifts for both.
#pragma once

#include <algorithm>
#include <cstdio>
#include <ctime>
#include <vector>

namespace bodkin::bench {

// Seconds of this process's cpu, user and system.
inline double cpu_now() {
  timespec now{};
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
  return static_cast<double>(now.tv_sec) + static_cast<double>(now.tv_nsec) / 1e9;
}

template <typename Work>
double cpu_of(Work work) {
  const double begin = cpu_now();
  work();
  return cpu_now() - begin;
}

inline double median(std::vector<double> values) {
  std::sort(values.begin(), values.end());
  return values[values.size() / 2];
}

// Prints `NAME ratio R floor F`: R is the median of ours over the floor pair by pair, F the floor's
// own median in seconds. One pair more is run first and not counted.
template <typename Ours, typename Floor>
void compare(const char *name, int pairs, Ours ours, Floor floor) {
  std::vector<double> ratios, floors;
  for (int i = 0; i <= pairs; ++i) {
    const double f = cpu_of(floor), o = cpu_of(ours);
    if (i == 0)
      continue;
    ratios.push_back(o / f);
    floors.push_back(f);
  }
  std::printf("%s ratio %.3f floor %.6f\n", name, median(ratios), median(floors));
}

} // namespace bodkin::bench
