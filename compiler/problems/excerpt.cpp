#include "problems/excerpt.hpp"

#include "problems/characters.hpp"

#include <algorithm>
#include <vector>

namespace bodkin {
namespace {

struct Cell {
  std::string glyph;
  int columns = 1;
  bool marked = false;
};

// A line with the bytes [begin, end) of it meant, one at least.
struct Marked {
  std::string_view line;
  std::size_t begin, end;
  bool cut_left = false, cut_right = false;
};

Marked line_of(Range range, const Sources &sources) {
  const std::string_view line = sources.line(range.file, sources.line_number(range));
  const std::size_t text_size = sources.text(range.file).size();
  const auto start = static_cast<std::size_t>(line.data() - sources.text(range.file).data());
  const auto within = [&](Offset offset) {
    const std::size_t at = std::min<std::size_t>(bytes(offset), text_size);
    return at < start ? 0 : std::min(at - start, line.size());
  };
  const std::size_t begin = within(range.begin);
  return {line, begin, std::max(begin + 1, within(range.end))};
}

// Bytes that no window on a terminal could show are never looked at.
Marked near_the_mark(Marked marked, int columns) {
  const std::size_t reach = 8 * static_cast<std::size_t>(columns);
  const std::size_t right = character_start(marked.line, marked.begin + reach);
  if (right < marked.line.size()) {
    marked.line = marked.line.substr(0, right);
    marked.end = std::min(marked.end, right);
    marked.cut_right = true;
  }
  if (marked.begin > reach) {
    const std::size_t left = character_start(marked.line, marked.begin - reach);
    marked.line.remove_prefix(left);
    marked.begin -= left;
    marked.end -= left;
    marked.cut_left = true;
  }
  return marked;
}

std::vector<Cell> cells_of(const Marked &marked) {
  const std::size_t first = std::min(marked.line.find_first_not_of(" \t"), marked.line.size());
  const bool indentation_matters = marked.begin < first;
  std::vector<Cell> cells;
  int column = 0;
  for (std::size_t at = 0; at < marked.line.size();) {
    const Character character = character_at(marked.line, at);
    Cell cell;
    if (character.code == '\t') {
      cell.columns = 8 - column % 8;
      cell.glyph.assign(static_cast<std::size_t>(cell.columns), ' ');
    } else {
      const char32_t code = harmless(character.code);
      append_utf8(cell.glyph, code);
      cell.columns = columns_of(code);
    }
    cell.marked = at >= marked.begin && at < marked.end;
    column += cell.columns;
    if (indentation_matters || at >= first)
      cells.push_back(std::move(cell));
    at += character.bytes;
  }
  // The place right behind the last character can be meant as well.
  if (marked.begin >= marked.line.size())
    cells.push_back({"", 1, true});
  return cells;
}

struct Window {
  std::size_t first, last; // cells [first, last)
};

Window window_on(const std::vector<Cell> &cells, int columns, bool cut_left) {
  const auto mark = static_cast<std::size_t>(
      std::find_if(cells.begin(), cells.end(), [](const Cell &cell) { return cell.marked; }) -
      cells.begin());
  int total = 0, mark_end = 0;
  for (std::size_t i = 0; i < cells.size(); ++i) {
    total += cells[i].columns;
    if (cells[i].marked)
      mark_end = total;
  }
  std::size_t first = 0;
  if (cut_left || (total > columns && mark_end >= columns)) {
    int before = 0;
    for (first = mark; first > 0 && before + cells[first - 1].columns <= columns / 4; --first)
      before += cells[first - 1].columns;
  }
  int used = first > 0 || cut_left ? 1 : 0;
  std::size_t last = first;
  while (last < cells.size() && used + cells[last].columns <= columns)
    used += cells[last++].columns;
  if (last < cells.size() && used == columns)
    --last;
  return {first, last};
}

} // namespace

Excerpt excerpt_of(Range range, const Sources &sources, int columns) {
  const Marked marked = near_the_mark(line_of(range, sources), columns);
  const std::vector<Cell> cells = cells_of(marked);
  const Window window = window_on(cells, columns, marked.cut_left);
  const bool cut = window.first > 0 || marked.cut_left;
  Excerpt out{cut ? "…" : "", cut ? " " : ""};
  std::size_t under = out.underline.size();
  for (std::size_t i = window.first; i < window.last; ++i) {
    const Cell &cell = cells[i];
    out.line += cell.glyph;
    const auto wide = static_cast<std::size_t>(cell.columns);
    if (cell.marked)
      out.underline.append(under - out.underline.size(), ' ').append(wide, '~');
    under += wide;
  }
  if (window.last < cells.size() || marked.cut_right)
    out.line += "…";
  if (out.underline.find('~') == std::string::npos)
    out.underline.append(1, '~');
  return out;
}

} // namespace bodkin
