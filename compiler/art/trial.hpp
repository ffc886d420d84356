// Work on a hostile file, done by a child process under bounds of time and memory, so that a
// drawing that never ends or a decoder that falls over costs its own picture and nothing else.
#pragma once

#include "art/bounds.hpp"
#include "art/outcome.hpp"

#include <array>
#include <cstddef>
#include <cstdint>
#include <functional>
#include <memory>
#include <span>

namespace bodkin::art {

// What the child hands back; it lies in memory that both see, so it holds no pointers.
struct TrialHead {
  bool finished = false;
  bool refused = false;
  Trouble trouble = Trouble::unreadable;
  std::array<char, 400> reason{};
  int width = 0, height = 0;                    // of the samples
  double natural_width = 0, natural_height = 0; // points
  std::array<double, 4> page_box{};             // left, bottom, right, top
  int pages = 1, rotate = 0;
  bool rasterised_parts = false;
};

void refuse(TrialHead &head, const Refusal &refusal);

class Trial {
public:
  explicit Trial(std::size_t sample_bytes);
  TrialHead &head() const { return *static_cast<TrialHead *>(memory_.get()); }
  std::span<std::uint8_t> samples() const;

private:
  struct Unmap {
    std::size_t bytes = 0;
    void operator()(void *memory) const;
  };
  std::size_t sample_bytes_;
  std::unique_ptr<void, Unmap> memory_;
};

using TrialWork = std::function<void(const Trial &)>;
// The trial's head and samples as `work` left them, or its refusal, or one for what it did not
// survive.
Outcome<Trial> try_out(const Bounds &bounds, std::size_t sample_bytes, const TrialWork &work);

} // namespace bodkin::art
