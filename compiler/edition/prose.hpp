// Running text after CommonMark: blocks of spans, facts filled in. No images and no raw HTML.
#pragma once

#include "problems/range.hpp"

#include <cstdint>
#include <string>
#include <vector>

namespace bodkin {

struct Span {
  std::string text; // UTF-8; a soft line end is one space
  bool emphasis = false, strong = false, code = false;
  bool hard_break = false; // the line ends here; `text` is empty
  Range from;              // the block's lines in the manuscript or file, as near as it is known
};

enum class BlockKind { paragraph, heading, list_item, quote, code, thought_break };

// Lists and quotes are laid flat: `depth` says how deep, `sign` what hangs before an item's first
// paragraph ("•", "3."), empty for its further paragraphs.
struct Block {
  BlockKind kind = BlockKind::paragraph;
  int heading_level = 0;
  int quote_depth = 0, list_depth = 0;
  std::string sign;
  std::vector<Span> spans;
  Range from;
};

struct Prose {
  std::vector<Block> blocks;
};

// Words as people count them: runs of letters and digits between white space.
std::int64_t word_count(const Prose &prose);
std::string plain_text(const Prose &prose);

} // namespace bodkin
