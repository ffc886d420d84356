#include "language/reader.hpp"
#include "measure/limits.hpp"

#include <algorithm>

namespace bodkin::language {
namespace {

bool begins_as(std::string_view indent, std::string_view frame) {
  return indent.size() >= frame.size() && indent.starts_with(frame);
}

} // namespace

// Finds the frame that the line stands in and makes it the newest; false where it stands too deep.
bool Reader::settle(const Line &line) {
  while (true) {
    Frame &top = frames_.back();
    if (line.indent == top.indent || (top.has_other && line.indent == top.other))
      return true;
    if (begins_as(line.indent, top.indent) ||
        (top.has_other && begins_as(line.indent, top.other))) {
      if (frames_.size() == 1 && top.last == no_statement && !top.last_unknown) {
        tell(first_line_indented(typed()));
        top.other = line.indent;
        top.has_other = true;
        return true;
      }
      if (frames_.size() > limits::nesting) {
        too_deep_from_ = line.indent.size();
        tell(too_deep(typed()));
        return false;
      }
      descend(line.indent);
      return true;
    }
    if (!begins_as(top.indent, line.indent)) {
      if (!top.unjudged)
        settle_mixed(line);
      return true;
    }
    // Further left than this frame and not as far as the one around it.
    const Frame &around = frames_[frames_.size() - 2];
    const std::size_t reach = around.has_other ? std::max(around.indent.size(), around.other.size())
                                               : around.indent.size();
    if (line.indent.size() > reach) {
      if (!top.unjudged) {
        const std::uint32_t sibling = top.last == no_statement ? top.parent : top.last;
        tell(between_levels(typed(), top.indent, tree_.range(tree_.statements[sibling]), sources_));
      }
      top.other = line.indent;
      top.has_other = true;
      return true;
    }
    ascend();
  }
}

void Reader::descend(std::string_view indent) {
  Frame frame;
  const Frame &top = frames_.back();
  frame.indent = indent;
  frame.parent = top.last;
  // A line that stood too far out may part the lines of one thing; they are one list all the same.
  frame.last = top.newest_grandchild;
  frame.context = top.last_opens;
  frame.unjudged = top.unjudged || top.last_unknown;
  frames_.push_back(frame);
}

void Reader::ascend() {
  const std::uint32_t newest = frames_.back().last;
  frames_.pop_back();
  frames_.back().newest_grandchild = newest;
}

// Tabs where the block has spaces, or the other way: nobody can count how far in the line stands,
// so it goes to the deepest frame that knows its word.
void Reader::settle_mixed(const Line &line) {
  std::size_t to = frames_.size() - 1;
  while (to > 1 && !begins_as(line.indent, frames_[to - 1].indent) &&
         !(frames_[to].context != Context::none &&
           grammar_.find(typed().words(0), frames_[to].context)))
    --to;
  tell(mixed_indent(typed(), line.indent, frames_[to].indent));
  while (frames_.size() - 1 > to)
    ascend();
  frames_.back().other = line.indent;
  frames_.back().has_other = true;
}

// A word that does not fit where it stands, but under the line above it, or beside a line further
// out, is read there.
bool Reader::adopt(std::string_view word) {
  Frame &top = frames_.back();
  if (top.last != no_statement && !top.last_unknown && top.last_opens != Context::none) {
    if (const Entry *entry = grammar_.find(word, top.last_opens)) {
      const Statement &above = tree_.statements[top.last];
      const std::string indent =
          std::string(top.indent) + (top.indent.starts_with('\t') ? "\t" : "  ");
      tell(not_here(typed(), stands(top),
                    {grammar_.name(top.last_opens), tree_.range(above), indent}, sources_));
      Frame below;
      below.parent = top.last;
      below.last = top.newest_grandchild;
      below.context = top.last_opens;
      statement(*entry, below, 1, Trust::taken_in);
      frames_.back().newest_grandchild = below.last;
      return true;
    }
  }
  for (std::size_t i = frames_.size() - 1; i-- > 1;) {
    const Context context = frames_[i].context;
    const Entry *entry = context == Context::none ? nullptr : grammar_.find(word, context);
    if (!entry)
      continue;
    const Frame &inner = frames_.back();
    const bool closed = inner.context == Context::none;
    const std::string_view under =
        closed ? tree_.statements[inner.parent].entry->word : grammar_.name(inner.context);
    const Statement &owner = tree_.statements[frames_[i].parent];
    tell(not_here(typed(), {under, closed},
                  {grammar_.name(context), tree_.range(owner), std::string(frames_[i].indent)},
                  sources_));
    while (frames_.size() - 1 > i)
      ascend();
    frames_.back().other = indent_;
    frames_.back().has_other = true;
    statement(*entry, frames_.back(), 1, Trust::taken_in);
    return true;
  }
  return false;
}

} // namespace bodkin::language
