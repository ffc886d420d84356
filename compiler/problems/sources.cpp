#include "problems/sources.hpp"

#include "problems/characters.hpp"

#include <algorithm>

namespace bodkin {
namespace {

constexpr std::size_t mark_every = 4096;
constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

std::vector<std::uint32_t> starts_of_lines(std::string_view text) {
  std::vector<std::uint32_t> starts{0};
  for (std::size_t end = text.find('\n'); end != std::string_view::npos;
       end = text.find('\n', end + 1))
    starts.push_back(static_cast<std::uint32_t>(end + 1));
  return starts;
}

} // namespace

FileId Sources::add(std::string name, std::string text) {
  files_.push_back({std::move(name), std::move(text), {}, {}});
  return static_cast<FileId>(files_.size() - 1);
}

// Most files have no problem, so lines are counted when a place in one is first asked for.
const Sources::File *Sources::counted(FileId id) const {
  const File *found = file(id);
  if (!found || !found->line_starts.empty())
    return found;
  found->line_starts = starts_of_lines(found->text);
  std::uint32_t characters = 0;
  std::size_t next_mark = 0;
  for (std::size_t at = 0; at < found->text.size(); ++characters) {
    if (at >= next_mark) {
      found->marks.push_back({static_cast<std::uint32_t>(at), characters});
      next_mark += mark_every;
    }
    at += character_at(found->text, at).bytes;
  }
  return found;
}

const Sources::File *Sources::file(FileId id) const {
  const auto index = static_cast<std::size_t>(id);
  return index < files_.size() ? &files_[index] : nullptr;
}

std::string_view Sources::name(FileId id) const {
  const File *found = file(id);
  return found ? std::string_view(found->name) : std::string_view{};
}

std::string_view Sources::text(FileId id) const {
  const File *found = file(id);
  return found ? std::string_view(found->text) : std::string_view{};
}

std::string_view Sources::text(Range range) const {
  const std::string_view whole = text(range.file);
  const std::size_t begin = std::min<std::size_t>(bytes(range.begin), whole.size());
  const std::size_t end = std::clamp<std::size_t>(bytes(range.end), begin, whole.size());
  return whole.substr(begin, end - begin);
}

std::uint32_t Sources::characters_before(const File &file, std::uint32_t offset) {
  const auto after =
      std::upper_bound(file.marks.begin(), file.marks.end(), offset,
                       [](std::uint32_t wanted, const Mark &mark) { return wanted < mark.begin; });
  if (after == file.marks.begin())
    return 0;
  const Mark mark = *(after - 1);
  std::uint32_t characters = mark.characters;
  for (std::size_t at = mark.begin; at < offset; ++characters)
    at += character_at(file.text, at).bytes;
  return characters;
}

LineColumn Sources::where(FileId id, Offset offset) const {
  const File *found = counted(id);
  if (!found)
    return {};
  // An offset inside a character stands where the character does.
  const auto at = static_cast<std::uint32_t>(character_start(found->text, bytes(offset)));
  const auto next = std::upper_bound(found->line_starts.begin(), found->line_starts.end(), at);
  const auto line = static_cast<std::uint32_t>(next - found->line_starts.begin());
  const std::uint32_t start = *(next - 1);
  std::uint32_t column = characters_before(*found, at) - characters_before(*found, start) + 1;
  if (line == 1 && at > 0 && found->text.starts_with(byte_order_mark))
    --column;
  return {line, column};
}

std::string_view Sources::line(FileId id, std::uint32_t line) const {
  const File *found = counted(id);
  if (!found || line == 0 || line > found->line_starts.size())
    return {};
  const std::size_t begin = found->line_starts[line - 1];
  std::string_view rest = std::string_view(found->text).substr(begin);
  if (line < found->line_starts.size())
    rest = rest.substr(0, found->line_starts[line] - begin - 1);
  if (rest.ends_with('\r'))
    rest.remove_suffix(1);
  if (begin == 0 && rest.starts_with(byte_order_mark))
    rest.remove_prefix(byte_order_mark.size());
  return rest;
}

} // namespace bodkin
