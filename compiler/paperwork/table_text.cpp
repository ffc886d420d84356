// A table for a terminal: columns as wide as their words, the widest broken into lines where the
// whole is wider than there is room for.
#include "paperwork/table_text.hpp"

#include "problems/characters.hpp"
#include "problems/wrap.hpp"

#include <algorithm>
#include <cstddef>
#include <numeric>
#include <string_view>
#include <vector>

namespace bodkin::paperwork {
namespace {

constexpr int gap = 2;

using Cells = std::vector<std::string>;

std::vector<std::string_view> parted(std::string_view text, char at) {
  std::vector<std::string_view> parts;
  for (std::size_t end = text.find(at); end != std::string_view::npos; end = text.find(at)) {
    parts.push_back(text.substr(0, end));
    text.remove_prefix(end + 1);
  }
  parts.push_back(text);
  return parts;
}

int longest_word(std::string_view text) {
  int longest = 0;
  for (const std::string_view word : parted(text, ' '))
    longest = std::max(longest, columns_of(word));
  return longest;
}

struct Widths {
  std::vector<int> wanted, least; // by column
  int all() const {
    return std::accumulate(wanted.begin(), wanted.end(), 0) +
           gap * (static_cast<int>(wanted.size()) - 1);
  }
};

// A figure of two parts, "1 + 52", reads badly on two lines.
int least_of(const std::string &cell, bool figure) {
  constexpr int short_figure = 9;
  const int all = columns_of(cell);
  return figure && all <= short_figure ? all : longest_word(cell);
}

Widths widths_of(const std::vector<Cells> &rows, const Table &table) {
  Widths widths;
  for (const Cells &row : rows)
    for (std::size_t i = 0; i < row.size(); ++i) {
      const bool figure = i < table.figures.size() && table.figures[i] &&
                          (&row != &rows.front() || table.heads.empty());
      widths.wanted.resize(std::max(widths.wanted.size(), i + 1));
      widths.least.resize(widths.wanted.size());
      widths.wanted[i] = std::max(widths.wanted[i], columns_of(row[i]));
      widths.least[i] = std::max(widths.least[i], least_of(row[i], figure));
    }
  return widths;
}

// The widest columns give way, as long as no word has to be broken.
std::vector<int> fitted(Widths widths, int room) {
  while (widths.all() > room) {
    std::size_t widest = widths.wanted.size();
    for (std::size_t i = 0; i < widths.wanted.size(); ++i)
      if (widths.wanted[i] > widths.least[i] &&
          (widest == widths.wanted.size() || widths.wanted[i] > widths.wanted[widest]))
        widest = i;
    if (widest == widths.wanted.size())
      break;
    --widths.wanted[widest];
  }
  return std::move(widths.wanted);
}

class TableRow {
public:
  TableRow(const Table &table, const Cells &row, const std::vector<int> &widths)
      : table_(table), widths_(widths) {
    broken_.reserve(row.size());
    for (std::size_t i = 0; i < row.size(); ++i) {
      broken_.push_back(wrapped(row[i], widths[i], 0));
      lines_.push_back(parted(broken_.back(), '\n'));
      high_ = std::max(high_, lines_.back().size());
    }
  }

  std::string text(int indent) const {
    std::string out;
    for (std::size_t line = 0; line < high_; ++line) {
      std::string text(static_cast<std::size_t>(indent), ' ');
      for (std::size_t i = 0; i < lines_.size(); ++i)
        text += cell(i, line) + std::string(gap, ' ');
      text.erase(text.find_last_not_of(' ') + 1);
      out += text + '\n';
    }
    return out;
  }

private:
  std::string cell(std::size_t i, std::size_t line) const {
    const std::string_view words = line < lines_[i].size() ? lines_[i][line] : "";
    const std::string blanks(static_cast<std::size_t>(std::max(widths_[i] - columns_of(words), 0)),
                             ' ');
    const bool to_the_right = i < table_.figures.size() && table_.figures[i];
    return to_the_right ? blanks + std::string(words) : std::string(words) + blanks;
  }

  const Table &table_;
  const std::vector<int> &widths_;
  std::vector<std::string> broken_;
  std::vector<std::vector<std::string_view>> lines_; // of `broken_`
  std::size_t high_ = 1;
};

} // namespace

std::string table_as_text(const Table &table, int columns, int indent) {
  std::vector<Cells> rows;
  if (!table.heads.empty())
    rows.push_back(table.heads);
  rows.insert(rows.end(), table.rows.begin(), table.rows.end());
  for (Cells &row : rows)
    for (std::string &cell : row)
      cell = harmless(cell);
  const std::vector<int> widths = fitted(widths_of(rows, table), columns - indent);
  std::string out;
  for (const Cells &row : rows)
    out += TableRow(table, row, widths).text(indent);
  return out;
}

} // namespace bodkin::paperwork
