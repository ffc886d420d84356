// Lines of a manuscript as they would stand after a change: whole, without their comments, ready to
// be typed instead.
#pragma once

#include "problems/problem.hpp"
#include "problems/sources.hpp"

#include <cstdint>
#include <map>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace bodkin {

struct LineKey {
  FileId file = FileId::none;
  std::uint32_t number = 0; // from 1; 0: written nowhere
  auto operator<=>(const LineKey &) const = default;
};
LineKey line_of(const Sources &sources, Range range);

// The same for many ranges in turn, of which neighbours are often the same one.
class LinesOf {
public:
  explicit LinesOf(const Sources &sources) : sources_(sources) {}
  LineKey operator()(Range range);

private:
  const Sources &sources_;
  Range last_{};
  LineKey key_{};
};

// The line without its indentation and its comment.
std::string bare_line(const Sources &sources, LineKey key);

class ChangedLines {
public:
  explicit ChangedLines(const Sources &sources) : sources_(sources) {}

  // `in colour` goes out, or becomes `in black` where something else would fill it in as colour;
  // `printing colour` becomes `printing black`.
  void colour_out(LineKey key, bool colour_is_default);
  // A line that opens pages says `in black`: before its paper and its machine.
  void in_black(LineKey key);
  // The last time that the name stands in the line it becomes the other.
  void rename(LineKey key, std::string_view name, std::string_view other);
  // The first number of the line becomes another.
  void first_number(LineKey key, std::int64_t number);

  // A line that is not there yet, under a heading: `edition`, `insert card`.
  void new_line(std::string_view under, std::string_view text);

  // New lines, then all changed ones in their order, one below the other.
  std::string text() const;
  // "up and paper new under `insert card`"; empty where no line is new.
  std::string news() const;
  // "in place of line 20", "`cover` in place of lines 19 and 20": of those lines that begin as
  // others do, so that only the number says which is meant; empty where every line says it by
  // itself.
  std::string places() const;
  std::size_t count() const { return lines_.size() + new_.size(); }
  // The same where the lines stand; none where a line is new, or stands on the shelf.
  std::vector<Edit> edits() const;

private:
  std::string &line(LineKey key);
  bool begins_as_another(LineKey key, std::string_view changed) const;
  const Sources &sources_;
  std::map<LineKey, std::string> lines_;
  std::vector<std::pair<std::string, std::string>> new_; // heading and line
};

} // namespace bodkin
