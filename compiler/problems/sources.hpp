// The texts that an edition was read from, by number: their names as a maker sees them and their
// bytes. Views of a text stay good as long as the Sources object lives, which nobody copies.
#pragma once

#include "problems/range.hpp"

#include <deque>
#include <string>
#include <string_view>
#include <vector>

namespace bodkin {

class Sources {
public:
  Sources() = default;
  Sources(const Sources &) = delete;
  Sources &operator=(const Sources &) = delete;

  // A line ends with \n or \r\n. A byte-order mark at the very start is no character of line 1.
  // `name` is what problems print: the path relative to the edition's folder, or
  // `stdlib/stocks/us.bodkin`.
  FileId add(std::string name, std::string text);
  bool is_shelf(FileId file) const { return name(file).starts_with("stdlib/"); }
  std::string_view name(FileId file) const;
  std::string_view text(FileId file) const;
  std::string_view text(Range range) const;
  // {0, 0} where the file is none of these; an offset past the end is the end.
  LineColumn where(FileId file, Offset offset) const;
  LineColumn begin_of(Range range) const { return where(range.file, range.begin); }
  LineColumn end_of(Range range) const { return where(range.file, range.end); }
  std::uint32_t line_number(Range range) const { return begin_of(range).line; }
  // The line's text without its end; `line` from 1.
  std::string_view line(FileId file, std::uint32_t line) const;
  std::size_t count() const { return files_.size(); }

private:
  // How many characters begin before one that is known to begin here: with one of these for each
  // few thousand bytes, a column on a line of any length is found without reading the whole line.
  struct Mark {
    std::uint32_t begin = 0;
    std::uint32_t characters = 0;
  };
  struct File {
    std::string name, text;
    mutable std::vector<std::uint32_t> line_starts;
    mutable std::vector<Mark> marks;
  };
  const File *file(FileId id) const;
  const File *counted(FileId id) const; // its lines and characters known
  static std::uint32_t characters_before(const File &file, std::uint32_t offset);

  std::deque<File> files_;
};

} // namespace bodkin
