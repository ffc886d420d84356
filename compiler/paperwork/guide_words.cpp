// The words of the trade that a guide has used, in everyday ones, for whoever never made a zine.
#include "paperwork/guide_writer.hpp"

#include <algorithm>
#include <array>
#include <string_view>

namespace bodkin::paperwork {
namespace {

struct TradeWord {
  std::string_view word, means;
  std::array<std::string_view, 2> found_as{}; // what it is looked for by, where not by itself
};

// Common practice, no source.
constexpr auto trade_words = std::to_array<TradeWord>({
    {"awl", "a pointed tool that pricks holes"},
    {"band", "a strip of paper round the closed copy", {"the band"}},
    {"bone folder", "a flat, blunt blade of bone, wood or plastic that presses folds sharp"},
    {"collate", "to gather the sheets of a copy, one from each pile, in order"},
    {"crease", "to press a line into card, so that it folds there and does not crack"},
    {"fore-edge", "the edge where a copy opens, opposite the fold"},
    {"front, back", "the two sides of a sheet, as the pictures name them", {"front up", "back up"}},
    {"grain", "how the fibres run; short: by the short edge; a sheet bends easier along them"},
    {"guillotine", "here: a cutter for stacks of paper, whose blade comes down in one piece"},
    {"gummed", "with dry glue on its back, which sticks when it is wet"},
    {"head, foot", "the upper and the lower edge of a page, of a sheet or of a copy", {"head"}},
    {"leaf", "one piece of paper of a copy, with a page on either side", {"leaf", "leaves"}},
    {"lino", "soft floor covering, which stamps are cut from"},
    {"long-arm stapler", "a stapler that reaches from the edge of a copy to its fold"},
    {"mask", "a card with a window that is laid on, so that nothing is measured twice", {"masks"}},
    {"pile", "all sheets of one number, for all copies"},
    {"PVA", "white glue for paper and wood, clear when it is dry"},
    {"spare", "a sheet more than the copies need, for one that is spoilt"},
    {"stop",
     "what an edge is pushed against, so that each copy lies alike",
     {"the stop", "stapler's stop"}},
    {"template", "a card of the size that is wanted, to lay on and cut along"},
    {"thimble", "a cap for the finger that pushes a needle"},
    {"tip in", "to glue something in by a narrow strip", {"tip in", "tipped in"}},
    {"wrap", "a cover of its own, laid round the pages", {"the wrap", "inner-wrap"}},
});

bool letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }

char small(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

std::string smalls(std::string_view text) {
  std::string out(text);
  for (char &c : out)
    c = small(c);
  return out;
}

// At the beginning of a word: "fold" is in "folds", not in "bifold".
bool speaks_of(const std::string &text, std::string_view word) {
  const std::string looked_for = smalls(word);
  for (std::size_t at = text.find(looked_for); at != std::string::npos;
       at = text.find(looked_for, at + 1))
    if (at == 0 || !letter(text[at - 1]))
      return true;
  return false;
}

bool is_used(const std::string &text, const TradeWord &word) {
  return std::any_of(word.found_as.begin(), word.found_as.end(), [&](std::string_view as) {
    const bool other = !word.found_as.front().empty();
    return other ? !as.empty() && speaks_of(text, as) : speaks_of(text, word.word);
  });
}

} // namespace

void tell_words(GuideWriter &writer) {
  constexpr int wide = 1000; // no word is parted by a line's end
  std::string text;
  for (const char c : blocks_as_text(writer.leaflet, wide))
    text += c == '\n' ? ' ' : small(c);
  Table table;
  table.plain = true;
  for (const TradeWord &word : trade_words)
    if (is_used(text, word))
      table.rows.push_back({std::string(word.word), std::string(word.means)});
  if (table.rows.empty())
    return;
  auto &blocks = writer.leaflet.blocks;
  const auto at = blocks.begin() + static_cast<std::ptrdiff_t>(writer.words_at);
  blocks.insert(blocks.insert(at, std::move(table)), Headline{"Words", 2, {}});
}

} // namespace bodkin::paperwork
