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

  // `name` is what problems print: the path relative to the edition's folder, or
  // `stdlib/stocks/us.bodkin`.
  FileId add(std::string name, std::string text);
  bool is_shelf(FileId file) const { return name(file).starts_with("stdlib/"); }
  std::string_view name(FileId file) const;
  std::string_view text(FileId file) const;
  std::string_view text(Range range) const;
  LineColumn where(FileId file, Offset offset) const;
  LineColumn begin_of(Range range) const { return where(range.file, range.begin); }
  LineColumn end_of(Range range) const { return where(range.file, range.end); }
  std::uint32_t line_number(Range range) const { return begin_of(range).line; }
  // The line's text without its end; `line` from 1.
  std::string_view line(FileId file, std::uint32_t line) const;
  std::size_t count() const { return files_.size(); }

private:
  struct File {
    std::string name, text;
    std::vector<std::uint32_t> line_starts;
  };
  std::deque<File> files_;
};

} // namespace bodkin
