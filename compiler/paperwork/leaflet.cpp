#include "paperwork/leaflet.hpp"

#include "problems/characters.hpp"
#include "problems/wrap.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::paperwork {
namespace {

std::string spaces(std::size_t count) { return std::string(count, ' '); }

// Terminals count characters, not bytes.
std::size_t width_of(std::string_view text) {
  return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) {
    return (static_cast<unsigned char>(c) & 0xC0) != 0x80;
  }));
}

struct Telling {
  int columns;
  std::string out{};

  void line(std::string_view text, int hanging = 0) {
    out += wrapped(harmless(text), columns, hanging);
    out += '\n';
  }
  void indented(std::string_view text, int indent) {
    out += spaces(static_cast<std::size_t>(indent));
    line(text, indent);
  }

  void operator()(const Headline &head) {
    out += '\n';
    line(head.number.empty() ? head.text : fmt::format("{}. {}", head.number, head.text));
  }
  void operator()(const Passage &passage) {
    indented(
        passage.lead.empty() ? passage.text : fmt::format("{}: {}", passage.lead, passage.text), 2);
  }
  void operator()(const Care &care) { indented("Take care: " + care.text, 2); }
  void operator()(const Table &table) {
    std::vector<std::vector<std::string>> rows = table.rows;
    if (!table.heads.empty())
      rows.insert(rows.begin(), table.heads);
    std::vector<std::size_t> widths;
    for (const auto &row : rows)
      for (std::size_t i = 0; i < row.size(); ++i) {
        widths.resize(std::max(widths.size(), i + 1));
        widths[i] = std::max(widths[i], width_of(row[i]));
      }
    for (const auto &row : rows)
      table_row(table, row, widths);
  }
  void table_row(const Table &table, const std::vector<std::string> &row,
                 const std::vector<std::size_t> &widths) {
    std::string text = "  ";
    for (std::size_t i = 0; i < row.size(); ++i) {
      const std::string gap = spaces(widths[i] - width_of(row[i]));
      const bool to_the_right = i < table.figures.size() && table.figures[i];
      text += to_the_right ? gap + row[i] : row[i] + (i + 1 < row.size() ? gap : std::string());
      text += i + 1 < row.size() ? "  " : "";
    }
    text.erase(text.find_last_not_of(' ') + 1);
    out += harmless(text) + '\n';
  }
  void operator()(const Pictures &pictures) {
    for (const Shown &shown : pictures.shown)
      if (!shown.caption.empty())
        indented(shown.caption, 4);
  }
  void operator()(const Ticks &ticks) {
    std::string text;
    for (const std::string &label : ticks.labels)
      text += fmt::format("{}[ ] {}", text.empty() ? "" : " ", label);
    indented(text, 2);
  }
  void operator()(const NewPage &) {}
};

} // namespace

std::string as_text(const Leaflet &leaflet, int columns) {
  Telling telling{columns};
  telling.line(fmt::format("{}: {}", leaflet.title, leaflet.kind));
  if (!leaflet.aside.empty())
    telling.line(leaflet.aside);
  return telling.out + blocks_as_text(leaflet, columns);
}

std::string blocks_as_text(const Leaflet &leaflet, int columns) {
  Telling telling{columns};
  for (const LeafletBlock &block : leaflet.blocks)
    std::visit([&](const auto &what) { telling(what); }, block);
  return std::move(telling.out);
}

Size home_paper(Ruler ruler) {
  return ruler == Ruler::inches ? Size{Length::inches(17, 2), Length::inches(11)}
                                : Size{Length::mm(210), Length::mm(297)};
}

} // namespace bodkin::paperwork
