#include "command/progress.hpp"

#include <cstdio>
#include <fmt/format.h>

namespace bodkin {
namespace {

using namespace std::chrono_literals;
constexpr auto quiet_time = 1s;
constexpr auto between = 100ms;

} // namespace

Progress::Progress(bool on_terminal)
    : on_terminal_(on_terminal), began_(std::chrono::steady_clock::now()), last_(began_) {}

bool Progress::due() {
  if (!on_terminal_)
    return false;
  const auto now = std::chrono::steady_clock::now();
  if (now - began_ < quiet_time || (shown_ && now - last_ < between))
    return false;
  last_ = now;
  return true;
}

void Progress::say(std::string_view what) {
  if (!due())
    return;
  fmt::print(stderr, "\r\033[K{} …", what);
  std::fflush(stderr);
  shown_ = true;
}

void Progress::say(std::string_view what, int done, int of) {
  if (!due())
    return;
  fmt::print(stderr, "\r\033[K{} {} of {}", what, done, of);
  std::fflush(stderr);
  shown_ = true;
}

void Progress::clear() {
  if (shown_)
    fmt::print(stderr, "\r\033[K");
  shown_ = false;
}

} // namespace bodkin
