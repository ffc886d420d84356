#include "art/trial.hpp"

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <exception>
#include <fcntl.h>
#include <fmt/format.h>
#include <new>
#include <string>
#include <sys/mman.h>
#include <sys/prctl.h>
#include <sys/resource.h>
#include <sys/time.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>

#if !defined(__has_feature)
#define __has_feature(name) 0 // NOLINT(bugprone-reserved-identifier)
#endif

namespace bodkin::art {
namespace {

// The address sanitizer maps terabytes at once, so no bound on them can hold.
#if defined(__SANITIZE_ADDRESS__) || __has_feature(address_sanitizer)
constexpr bool bounds_hold = false;
#else
constexpr bool bounds_hold = true;
#endif

constexpr std::size_t head_bytes = (sizeof(TrialHead) + 63) / 64 * 64;

Refusal too_long(const Bounds &bounds) {
  return {Trouble::too_hard,
          fmt::format("takes more than {} s to draw; simplify it, or place it as a "
                      "PNG made by the program that drew it",
                      bounds.drawing_seconds)};
}

Refusal too_much(const Bounds &bounds) {
  return {Trouble::too_hard,
          fmt::format("takes more than {} MB of memory to draw, or brings the drawing to a stop; "
                      "simplify it, or place it as a PNG made by the program that drew it",
                      bounds.drawing_memory >> 20)};
}

void limit(__rlimit_resource resource, rlim_t value) {
  const rlimit both{value, value};
  setrlimit(resource, &both);
}

// What this process has mapped already counts against the bound on its address space.
std::size_t mapped_bytes() {
  std::size_t pages = 0;
  if (std::FILE *file = std::fopen("/proc/self/statm", "r")) {
    if (std::fscanf(file, "%zu", &pages) != 1)
      pages = 0;
    std::fclose(file);
  }
  return pages * static_cast<std::size_t>(sysconf(_SC_PAGESIZE));
}

void *mapped(std::size_t bytes) {
  void *memory = mmap(nullptr, bytes, PROT_READ | PROT_WRITE,
                      MAP_SHARED | MAP_ANONYMOUS | MAP_NORESERVE, -1, 0);
  if (memory == MAP_FAILED) // NOLINT(performance-no-int-to-ptr)
    throw std::bad_alloc();
  return memory;
}

void bind(const Bounds &bounds) {
  prctl(PR_SET_PDEATHSIG, SIGKILL);
  for (const int signal : {SIGINT, SIGTERM, SIGHUP, SIGALRM, SIGXCPU, SIGABRT, SIGSEGV, SIGBUS})
    std::signal(signal, SIG_DFL);
  limit(RLIMIT_CORE, 0);
  limit(RLIMIT_CPU, static_cast<rlim_t>(bounds.drawing_seconds));
  if (bounds_hold)
    limit(RLIMIT_AS, mapped_bytes() + bounds.drawing_memory);
  // Processor time does not pass while it waits; ten times as much on the clock stops that too, and
  // still leaves a busy machine its time.
  alarm(static_cast<unsigned>(bounds.drawing_seconds) * 10);
  const int nowhere = open("/dev/null", O_RDWR | O_CLOEXEC);
  if (nowhere >= 0)
    for (const int stream : {STDIN_FILENO, STDOUT_FILENO, STDERR_FILENO})
      dup2(nowhere, stream);
}

void work_within(const Bounds &bounds, const TrialWork &work, const Trial &trial) {
  try {
    work(trial);
  } catch (const std::bad_alloc &) {
    refuse(trial.head(), too_much(bounds));
  } catch (const std::exception &) {
    refuse(trial.head(), {Trouble::unreadable, "is damaged and cannot be drawn; save it anew"});
  }
  trial.head().finished = true;
}

[[noreturn]] void be_child(const Bounds &bounds, const TrialWork &work, const Trial &trial) {
  bind(bounds);
  work_within(bounds, work, trial);
  _exit(0); // nothing of the parent's is flushed or closed here
}

int wait_for(pid_t child) {
  int status = 0;
  while (waitpid(child, &status, 0) < 0 && errno == EINTR) {
  }
  return status;
}

} // namespace

void refuse(TrialHead &head, const Refusal &refusal) {
  head.refused = true;
  head.trouble = refusal.trouble;
  head.reason.fill(0);
  std::copy_n(refusal.reason.begin(), std::min(refusal.reason.size(), head.reason.size() - 1),
              head.reason.begin());
}

Trial::Trial(std::size_t sample_bytes)
    : sample_bytes_(sample_bytes),
      memory_(new (mapped(head_bytes + sample_bytes)) TrialHead, Unmap{head_bytes + sample_bytes}) {
}

std::span<std::uint8_t> Trial::samples() const {
  return {static_cast<std::uint8_t *>(memory_.get()) + head_bytes, sample_bytes_};
}

void Trial::Unmap::operator()(void *memory) const { munmap(memory, bytes); }

Outcome<Trial> try_out(const Bounds &bounds, std::size_t sample_bytes, const TrialWork &work) {
  Trial trial(sample_bytes);
  int status = 0;
  if (bounds.in_child) {
    std::fflush(nullptr);
    const pid_t child = fork();
    if (child < 0)
      throw std::bad_alloc();
    if (child == 0)
      be_child(bounds, work, trial);
    status = wait_for(child);
  } else {
    work_within(bounds, work, trial);
  }
  if (WIFSIGNALED(status)) {
    const int signal = WTERMSIG(status);
    const bool slow = signal == SIGXCPU || signal == SIGALRM || signal == SIGKILL;
    return slow ? too_long(bounds) : too_much(bounds);
  }
  const TrialHead &head = trial.head();
  if (!head.finished) // a library left by exit()
    return too_much(bounds);
  if (head.refused)
    return Refusal{
        head.trouble,
        std::string(head.reason.begin(), std::find(head.reason.begin(), head.reason.end(), '\0'))};
  return Outcome<Trial>(std::move(trial));
}

} // namespace bodkin::art
