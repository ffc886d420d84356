// A folder of a benchmark's own, and programs run beside it.
#pragma once

#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <stdexcept>
#include <string>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>
#include <vector>

namespace bodkin::bench {

class Folder {
public:
  Folder() {
    std::string pattern = (std::filesystem::temp_directory_path() / "bench-XXXXXX").string();
    if (!mkdtemp(pattern.data()))
      throw std::runtime_error("no folder could be made");
    path_ = pattern;
  }
  ~Folder() {
    std::error_code error;
    std::filesystem::remove_all(path_, error);
  }
  Folder(const Folder &) = delete;
  Folder &operator=(const Folder &) = delete;
  std::string operator/(const std::string &name) const { return path_ + "/" + name; }
  void write(const std::string &name, const std::string &text) const {
    std::ofstream(path_ + "/" + name, std::ios::binary) << text;
  }

private:
  std::string path_;
};

struct Used {
  double cpu = 0; // seconds, user and system
  long kilobytes = 0;
};

// A program's cpu and greatest memory; its output goes to `output`, or nowhere.
inline Used run(std::vector<std::string> words, const std::string &output = "/dev/null") {
  const pid_t child = fork();
  if (child == 0) {
    std::vector<char *> pointers;
    for (std::string &word : words)
      pointers.push_back(word.data());
    pointers.push_back(nullptr);
    if (!std::freopen(output.c_str(), "wb", stdout) || !std::freopen("/dev/null", "wb", stderr))
      _exit(126);
    execvp(pointers[0], pointers.data());
    _exit(127);
  }
  int status = 0;
  rusage usage{};
  if (child < 0 || wait4(child, &status, 0, &usage) != child || !WIFEXITED(status) ||
      WEXITSTATUS(status) != 0)
    throw std::runtime_error(words[0] + " failed");
  const auto seconds = [](const timeval &time) {
    return static_cast<double>(time.tv_sec) + static_cast<double>(time.tv_usec) / 1e6;
  };
  return {seconds(usage.ru_utime) + seconds(usage.ru_stime), usage.ru_maxrss};
}

} // namespace bodkin::bench
