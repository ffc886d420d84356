// What another program says: the reference that a test is held against.
#pragma once

#include <cstdio>
#include <memory>
#include <stdexcept>
#include <string>

// The standard output of a shell command. A test fails where the program is missing or complains.
inline std::string asked(const std::string &command) {
  FILE *pipe = popen(command.c_str(), "r"); // NOLINT(cert-env33-c)
  if (pipe == nullptr)
    throw std::runtime_error("cannot run: " + command);
  std::string out;
  char buffer[4096];
  for (std::size_t n = 0; (n = std::fread(buffer, 1, sizeof buffer, pipe)) > 0;)
    out.append(buffer, n);
  if (pclose(pipe) != 0)
    throw std::runtime_error("failed: " + command);
  return out;
}
