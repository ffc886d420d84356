#include "paperwork/leaflet.hpp"

#include "paperwork/table_text.hpp"
#include "problems/characters.hpp"
#include "problems/wrap.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin::paperwork {
namespace {

struct Telling {
  int columns;
  std::string out{};

  void line(std::string_view text, int hanging = 0) {
    out += wrapped(harmless(text), columns, hanging);
    out += '\n';
  }
  void indented(std::string_view text, int indent) {
    out.append(static_cast<std::size_t>(indent), ' ');
    line(text, indent);
  }

  void operator()(const Headline &head) {
    out += '\n';
    line(head.number.empty() ? head.text : fmt::format("{}. {}", head.number, head.text));
    if (!head.count.empty())
      indented("For " + head.count + ".", 2);
  }
  void operator()(const Passage &passage) {
    if (passage.only_seen)
      return;
    indented(
        passage.lead.empty() ? passage.text : fmt::format("{}: {}", passage.lead, passage.text), 2);
  }
  void operator()(const Care &care) { indented("Take care: " + care.text, 2); }
  void operator()(const Table &table) { out += table_as_text(table, columns, 2); }
  void operator()(const Pictures &pictures) {
    for (const Shown &shown : pictures.shown)
      if (!shown.caption.empty() && !shown.only_seen)
        indented(shown.caption, 4);
  }
  void operator()(const Ticks &ticks) {
    int wide = 0;
    for (const std::string &label : ticks.labels)
      wide = std::max(wide, columns_of(label));
    const int room = std::max((columns - 2) / (wide + 6), 1); // "[ ] 12  "
    std::string text;
    for (std::size_t i = 0; i < ticks.labels.size(); ++i) {
      if (i > 0 && i % static_cast<std::size_t>(room) == 0)
        text.erase(text.find_last_not_of(' ') + 1) += '\n';
      text += fmt::format("  [ ] {:<{}}", ticks.labels[i], wide);
    }
    text.erase(text.find_last_not_of(' ') + 1);
    out += text + '\n';
  }
  void operator()(const Checklist &list) {
    for (const std::string &item : list.items) {
      out += "  [ ] ";
      line(item, 6);
    }
  }
  void operator()(const NewPage &) {}
};

} // namespace

std::string as_text(const Leaflet &leaflet, int columns) {
  Telling telling{columns};
  telling.line(fmt::format("{}: {}", leaflet.title, leaflet.kind));
  if (!leaflet.aside.empty())
    telling.line(leaflet.aside);
  if (!leaflet.in_text.empty())
    telling.line(leaflet.in_text);
  return telling.out + blocks_as_text(leaflet, columns);
}

std::string blocks_as_text(const Leaflet &leaflet, int columns) {
  Telling telling{columns};
  for (const LeafletBlock &block : leaflet.blocks)
    std::visit([&](const auto &what) { telling(what); }, block);
  return std::move(telling.out);
}

Table without_empty_columns(Table table) {
  table.figures.resize(table.heads.size());
  for (std::size_t column = table.heads.size(); column-- > 0;) {
    if (!std::all_of(table.rows.begin(), table.rows.end(),
                     [&](const auto &row) { return row[column].empty(); }))
      continue;
    const auto at = static_cast<std::ptrdiff_t>(column);
    table.heads.erase(table.heads.begin() + at);
    table.figures.erase(table.figures.begin() + at);
    for (auto &row : table.rows)
      row.erase(row.begin() + at);
  }
  return table;
}

Size home_paper(Ruler ruler) {
  return ruler == Ruler::inches ? Size{Length::inches(17, 2), Length::inches(11)}
                                : Size{Length::mm(210), Length::mm(297)};
}

} // namespace bodkin::paperwork
