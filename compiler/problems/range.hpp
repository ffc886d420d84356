// Where something stands in the texts that were read. Offsets are bytes and have their own type;
// lines and columns are made from them in one place (Sources::where) and never the other way.
#pragma once

#include <compare>
#include <cstdint>

namespace bodkin {

enum class FileId : std::uint32_t { none = 0xffffffff };
enum class Offset : std::uint32_t {};

constexpr std::uint32_t bytes(Offset offset) { return static_cast<std::uint32_t>(offset); }

// Bytes [begin, end) of one file. `file` is FileId::none where a thing stands in no file.
struct Range {
  FileId file = FileId::none;
  Offset begin{}, end{};
  bool operator==(const Range &) const = default;
  constexpr bool somewhere() const { return file != FileId::none; }
};

struct LineColumn {
  std::uint32_t line = 0;   // from 1
  std::uint32_t column = 0; // in characters (code points), from 1
  auto operator<=>(const LineColumn &) const = default;
};

} // namespace bodkin
