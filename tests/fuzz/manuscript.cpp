// Contract: any bytes are a manuscript. Reading ends with a tree whose statements stand in the
// order of their lines, whose links lead forwards, and whose ranges lie inside the text; problems
// are kept within their bound and each can be printed.
#include "language/recognise.hpp"
#include "language/tree.hpp"
#include "measure/limits.hpp"
#include "problems/render.hpp"

#include <cstdint>
#include <cstdlib>

namespace {

using namespace bodkin;
using namespace bodkin::language;

void demand(bool kept) {
  if (!kept)
    std::abort();
}

void demand_inside(Range range, std::size_t size) {
  demand(range.begin <= range.end);
  demand(bytes(range.end) <= size);
}

void demand_tree(const Tree &tree, const Sources &sources) {
  const std::size_t size = sources.text(tree.file).size();
  for (std::uint32_t i = 0; i < tree.statements.size(); ++i) {
    const Statement &statement = tree.statements[i];
    demand(statement.entry != nullptr);
    demand_inside(tree.range(statement), size);
    demand_inside(tree.keyword(statement), size);
    demand(statement.next == no_statement || statement.next > i);
    demand(statement.first_child == no_statement || statement.first_child > i);
    demand(statement.parent == no_statement || statement.parent < i);
    demand(statement.first_capture + statement.capture_count <= tree.captures.size());
    if (statement.has_prose)
      demand(prose_text(tree, statement, sources).size() <= size);
  }
  for (const Capture &capture : tree.captures) {
    demand_inside(tree.range(capture), size);
    if (const auto *pages = std::get_if<Pages>(&capture.value))
      demand(pages->first + pages->count <= tree.page_items.size());
  }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *bytes, std::size_t size) {
  Sources sources;
  const FileId file = sources.add("a.bodkin", {reinterpret_cast<const char *>(bytes), size});
  Problems problems;
  const Tree tree = read(file, sources, problems);
  demand_tree(tree, sources);
  demand(problems.size() <= limits::problems_kept + 1);
  for (const Problem &problem : problems) {
    demand(!problem.check.empty() && !problem.message.empty());
    demand_inside(problem.range, size);
  }
  as_text(shown(problems), sources, false);
  recognise(sources.text(file));
  return 0;
}
