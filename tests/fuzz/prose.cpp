// Contract: any bytes are running text. Reading ends with blocks within the bounds of depth whose
// ranges lie inside the text, and its problems can be printed.
#include "language/prose.hpp"
#include "measure/limits.hpp"
#include "problems/render.hpp"

#include <cstdint>
#include <cstdlib>

namespace {

using namespace bodkin;

void demand(bool kept) {
  if (!kept)
    std::abort();
}

void demand_inside(Range range, std::size_t size) {
  demand(range.begin <= range.end && bytes(range.end) <= size);
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *bytes, std::size_t size) {
  Sources sources;
  const std::string text(reinterpret_cast<const char *>(bytes), size);
  const FileId file = sources.add("a.md", text);
  const Range whole{file, {}, Offset{static_cast<std::uint32_t>(size)}};
  Problems problems;
  const Prose prose = read_prose(text, whole, sources, problems);
  for (const Block &block : prose.blocks) {
    demand_inside(block.from, size);
    demand(block.list_depth <= static_cast<int>(limits::prose_nesting));
    demand(block.quote_depth <= static_cast<int>(limits::prose_nesting));
    demand(block.heading_level >= 0 && block.heading_level <= 6);
    for (const Span &span : block.spans)
      demand_inside(span.from, size);
  }
  for (const Problem &problem : problems)
    demand_inside(problem.range, size);
  demand(word_count(prose) <= static_cast<std::int64_t>(size) + 1);
  plain_text(prose);
  as_text(shown(problems), sources, false);
  return 0;
}
