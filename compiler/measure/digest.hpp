// SHA-256 (FIPS 180-4) of bytes: what `made-from.json` lists of every file read, and what a picture
// that is used twice is known by.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

namespace bodkin {

using Digest = std::array<std::uint8_t, 32>;

// In pieces, for bytes that are never in memory at once.
class Sha256 {
public:
  void take(std::string_view bytes);
  Digest finish(); // nothing may be taken afterwards

private:
  std::array<std::uint32_t, 8> state_{0x6a09e667, 0xbb67ae85, 0x3c6ef372, 0xa54ff53a,
                                      0x510e527f, 0x9b05688c, 0x1f83d9ab, 0x5be0cd19};
  std::array<std::uint8_t, 64> rest_{};
  std::size_t rest_bytes_ = 0;
  std::uint64_t bytes_ = 0;
};

Digest sha256(std::string_view bytes);
std::string written(const Digest &digest); // 64 hexadecimal digits

} // namespace bodkin
