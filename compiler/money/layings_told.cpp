#include "edition/piece.hpp"
#include "measure/paper.hpp"
#include "money/layings.hpp"
#include "sheet/speech.hpp"

#include <fmt/format.h>
#include <set>

namespace bodkin {

std::string named(const Edition &edition, const Laying &laying) {
  const std::string what = laying.piece ? edition.pieces[*laying.piece]->name : "the book";
  const std::string up =
      laying.way.up == 1 ? what + " one" : fmt::format("{} {} up", what, laying.way.up);
  if (laying.papers.empty())
    return up + (laying.way.up == 1 ? " on a sheet" : " on each sheet");
  const std::string sheet = written(laying.sheet, edition.ruler);
  const std::string &paper = edition[laying.papers.front().to].name;
  return fmt::format("{} on each {}sheet of {}", up, sheet == paper ? "" : sheet + " ", paper);
}

std::string on_condition(const Edition &edition, const Laying &laying) {
  std::string text;
  if (laying.keeps_off > Length{})
    text = fmt::format("if nothing on it comes nearer than {} to its edges",
                       written(laying.keeps_off, edition.ruler));
  if (laying.turns_grain)
    text += fmt::format("{}folded across the grain", text.empty() ? "" : ", ");
  return text;
}

namespace {

// Where a new line stands.
std::string heading_of(const Edition &before, const Laying &laying) {
  if (!laying.piece)
    return "edition";
  const Piece &piece = *before.pieces[*laying.piece];
  return piece.is_boards() ? piece.name : "insert " + piece.name;
}

void type_up(const Edition &before, const Laying &laying, const Sources &sources,
             ChangedLines &lines) {
  const Range from = laying.piece ? before.pieces[*laying.piece]->up.from : before.up.from;
  const std::int64_t now = laying.piece ? *before.pieces[*laying.piece]->up : *before.up;
  if (now == laying.way.up)
    return;
  const std::string number = std::to_string(laying.way.up);
  if (!from.somewhere())
    lines.new_line(heading_of(before, laying), spoken::fact("up", number));
  else if (bare_line(sources, line_of(sources, from)).ends_with("most"))
    lines.rename(line_of(sources, from), "most", number);
  else
    lines.first_number(line_of(sources, from), laying.way.up);
}

void type_paper(const Edition &before, const Laying &laying, const PaperSwap &swap,
                const Sources &sources, ChangedLines &lines) {
  const Edition &part = laying.piece ? before.pieces[*laying.piece]->edition : before;
  const auto rename = [&](const std::optional<Known<StockId>> &asked) {
    if (asked && **asked == swap.from && asked->from.somewhere())
      lines.rename(line_of(sources, asked->from), before[swap.from].name, before[swap.to].name);
  };
  // A piece that names no paper has the book's.
  if (laying.piece && *part.paper == swap.from && part.paper.from == before.paper.from)
    lines.new_line(heading_of(before, laying), spoken::fact("paper", before[swap.to].name));
  else
    rename(part.paper);
  rename(part.cover_stock);
  std::set<LineKey> done;
  for (const Page &page : part.pages)
    if (page.asked.stock && done.insert(line_of(sources, page.asked.stock->from)).second)
      rename(page.asked.stock);
}

} // namespace

void type_lines(const Edition &before, const Laying &laying, const Sources &sources,
                ChangedLines &lines) {
  type_up(before, laying, sources, lines);
  for (const PaperSwap &swap : laying.papers)
    type_paper(before, laying, swap, sources, lines);
}

} // namespace bodkin
