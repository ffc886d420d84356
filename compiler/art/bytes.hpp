// Numbers out of a file's bytes, in either byte order, never past their end.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string_view>

namespace bodkin::art {

enum class ByteOrder { big, little };

// The unsigned number of `size` bytes at `at`; 0 where the bytes end before it does.
constexpr std::uint64_t number(std::string_view bytes, std::size_t at, std::size_t size,
                               ByteOrder order) {
  if (at > bytes.size() || size > bytes.size() - at)
    return 0;
  std::uint64_t value = 0;
  for (std::size_t i = 0; i < size; ++i) {
    const std::size_t from = order == ByteOrder::big ? at + i : at + size - 1 - i;
    value = value << 8 | static_cast<std::uint8_t>(bytes[from]);
  }
  return value;
}
constexpr std::uint64_t big(std::string_view bytes, std::size_t at, std::size_t size) {
  return number(bytes, at, size, ByteOrder::big);
}
constexpr std::uint64_t little(std::string_view bytes, std::size_t at, std::size_t size) {
  return number(bytes, at, size, ByteOrder::little);
}

// The bytes from `at` on, at most `size` of them; empty past the end.
constexpr std::string_view part(std::string_view bytes, std::size_t at,
                                std::size_t size = std::string_view::npos) {
  return at > bytes.size() ? std::string_view{} : bytes.substr(at, size);
}

inline const std::uint8_t *octets(std::string_view bytes) {
  return reinterpret_cast<const std::uint8_t *>(bytes.data());
}

} // namespace bodkin::art
