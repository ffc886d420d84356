// Running text after CommonMark: blocks of spans, facts and page numbers still to be filled in. No
// images and no raw HTML.
#pragma once

#include "problems/problem.hpp"
#include "problems/range.hpp"
#include "problems/sources.hpp"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace bodkin {

struct Span {
  std::string text; // UTF-8; a soft line end is one space
  bool emphasis = false, strong = false, code = false;
  bool hard_break = false; // the line ends here; `text` is empty
  // Of `[7](fact:number)` and `[12](page:lost)`: the fact's or the page's name, for the edition to
  // put its own figure in place of `text`; else empty.
  std::string fact{}, page{};
  Range from{}; // the block's lines in the manuscript or file, as near as it is known
};

enum class BlockKind { paragraph, heading, list_item, quote, code, thought_break };

// Lists and quotes are laid flat: `depth` says how deep, `sign` what hangs before an item's first
// paragraph ("•", "3."), empty for its further paragraphs. A paragraph in both a list and a quote
// is a list_item and has both depths. Lines of a code block are parted by hard breaks.
struct Block {
  BlockKind kind = BlockKind::paragraph;
  int heading_level = 0;
  int quote_depth = 0, list_depth = 0;
  bool loose = false; // of a list whose items stand apart, with room between them
  std::string sign;
  std::vector<Span> spans;
  Range from;
};

struct Prose {
  std::vector<Block> blocks;
};

// Reads CommonMark by libcmark. Line n of `text` is line n of `origin`: a whole file, a `says`
// block (prose_text of tree.hpp), or the quoted text of its short form. Images, raw HTML, malformed
// bytes, too much nesting and verse set in by four spaces are problems; the rest is read.
Prose read_prose(std::string_view text, Range origin, const Sources &sources, Problems &problems);

// Words as people count them: runs of letters and digits between white space.
std::int64_t word_count(const Prose &prose);
// Blocks parted by an empty line, hard breaks as line ends, signs left out.
std::string plain_text(const Prose &prose);

} // namespace bodkin
