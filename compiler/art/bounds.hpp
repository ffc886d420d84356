// How much one picture may ask. The program uses the figures of limits.hpp; tests and the fuzzer
// hand in smaller ones.
#pragma once

#include "measure/limits.hpp"

#include <cstddef>
#include <cstdint>

namespace bodkin::art {

struct Bounds {
  std::int64_t samples = limits::picture_samples;
  std::int64_t held_samples = limits::held_samples;
  std::int64_t edge = limits::picture_edge;
  std::size_t picture_bytes = limits::picture_file_bytes;
  std::size_t drawing_bytes = limits::drawing_file_bytes;
  int drawing_seconds = limits::drawing_seconds;
  std::size_t drawing_memory = limits::drawing_memory;
  // Drawings are first drawn by a child process under these bounds. The child is made by fork():
  // call from a process that has no other threads running. Off, they are drawn in this process with
  // no bound on time; only the fuzzer does that.
  bool in_child = true;
};

} // namespace bodkin::art
