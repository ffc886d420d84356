// The block of prose below a line, whose own grammar begins where this one ends.
#include "language/reader.hpp"

#include <algorithm>
#include <utility>

namespace bodkin::language {

void Reader::take_prose(Statement &statement, std::string_view indent) {
  std::size_t end = at_;
  std::size_t last = at_; // the end of the last line that is not blank
  bool any = false;
  while (end < text_.size()) {
    const std::size_t stop = std::min(text_.find('\n', end), text_.size());
    const std::string_view line = text_.substr(end, stop - end);
    const std::size_t in = blanks(line);
    const bool blank = in == line.size() || line.substr(in) == "\r";
    if (!blank && in <= indent.size())
      break;
    if (!blank && !std::exchange(any, true))
      statement.prose_indent = static_cast<std::uint32_t>(in);
    end = std::min(stop + 1, text_.size());
    if (!blank)
      last = end;
  }
  if (!any)
    return tell(says_nothing(typed()));
  statement.has_prose = true;
  statement.prose_begin = Offset{static_cast<std::uint32_t>(at_)};
  statement.prose_end = Offset{static_cast<std::uint32_t>(last)};
  at_ = last;
}

std::string prose_text(const Tree &tree, const Statement &statement, const Sources &sources) {
  std::string_view block =
      sources.text(Range{tree.file, statement.prose_begin, statement.prose_end});
  std::string text;
  text.reserve(block.size());
  while (!block.empty()) {
    const std::size_t end = std::min(block.find('\n'), block.size() - 1) + 1;
    const std::string_view line = block.substr(0, end);
    text += line.substr(std::min<std::size_t>(blanks(line), statement.prose_indent));
    block.remove_prefix(end);
  }
  return text;
}

} // namespace bodkin::language
