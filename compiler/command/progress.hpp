// Tells how far a long job is, on a terminal only, and only once a second has gone by.
#pragma once

#include <chrono>
#include <string_view>

namespace bodkin {

class Progress {
public:
  explicit Progress(bool on_terminal);
  ~Progress() { clear(); }
  Progress(const Progress &) = delete;
  Progress &operator=(const Progress &) = delete;

  void say(std::string_view what);
  void say(std::string_view what, int done, int of);
  void clear(); // before anything else is printed

private:
  bool due();
  bool on_terminal_, shown_ = false;
  std::chrono::steady_clock::time_point began_, last_;
};

} // namespace bodkin
