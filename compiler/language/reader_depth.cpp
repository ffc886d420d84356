#include "language/mended.hpp"
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
    if (line.indent == top.indent) {
      // Where a line taken in has its own lines, none of those that follow the next one are its.
      top.has_other = top.has_other && !top.last_taken_in;
      return true;
    }
    if (top.has_other && line.indent == top.other)
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
      settle_between(line);
      return true;
    }
    ascend();
  }
}

bool Reader::knows(const Frame &frame, std::string_view word) const {
  return frame.context != Context::none && grammar_.find(word, frame.context) != nullptr;
}

// Nearer to the left than the newest frame and further in than the one around it: the frame that
// knows its word is meant. A word that neither knows is told as such and as nothing else.
void Reader::settle_between(const Line &line) {
  Frame &top = frames_.back();
  const Frame &around = frames_[frames_.size() - 2];
  const std::string_view word = typed().words(0);
  if (!top.unjudged && !knows(top, word) && knows(around, word)) {
    const Statement &above = tree_.statements[around.last];
    if (frames_.size() == 2)
      tell(not_at_edge(typed(), above.entry->word, tree_.range(above), sources_));
    else
      tell(between_levels(typed(), around.indent, tree_.range(above), sources_));
    return ascend();
  }
  if (!top.unjudged && knows(top, word)) {
    const std::uint32_t sibling = top.last == no_statement ? top.parent : top.last;
    tell(between_levels(typed(), top.indent, tree_.range(tree_.statements[sibling]), sources_));
  }
  top.other = line.indent;
  top.has_other = true;
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
  if (frame.last != no_statement && top.grandchild_opens != Context::none) {
    frame.last_opens = top.grandchild_opens;
    frame.last_taken_in = true;
    // Where the lines of what was taken in stand as far in as they would below it in its place.
    const std::size_t step = top.indent.size() + (top.indent.starts_with('\t') ? 1 : 2);
    if (indent.size() > step) {
      frame.other = indent;
      frame.has_other = true;
      frame.indent = indent.substr(0, step);
    }
  }
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
  return adopt_under_last(word) || adopt_further_out(word) || adopt_at_edge(word);
}

bool Reader::adopt_under_last(std::string_view word) {
  Frame &top = frames_.back();
  if (top.last == no_statement || top.last_unknown || top.last_opens == Context::none)
    return false;
  const Entry *entry = grammar_.find(word, top.last_opens);
  if (!entry)
    return false;
  const Statement &above = tree_.statements[top.last];
  const std::string indent = std::string(top.indent) + (top.indent.starts_with('\t') ? "\t" : "  ");
  if (!top.last_taken_in)
    tell(not_here(typed(), stands(top), {grammar_.name(top.last_opens), tree_.range(above), indent},
                  sources_));
  Frame below;
  below.parent = top.last;
  below.last = top.newest_grandchild;
  below.context = top.last_opens;
  statement(*entry, below, 1, Trust::taken_in);
  frames_.back().newest_grandchild = below.last;
  frames_.back().grandchild_opens = below.last_opens;
  return true;
}

bool Reader::adopt_further_out(std::string_view word) {
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

// Whether something stands under the line being read.
bool Reader::deeper_follows() const {
  for (std::size_t at = at_; at < text_.size();) {
    const std::size_t end = std::min(text_.find('\n', at), text_.size());
    const std::string_view line = text_.substr(at, end - at);
    const std::size_t in = std::min(line.find_first_not_of(" \t"), line.size());
    if (in < line.size() && line[in] != '\r')
      return in > indent_.size();
    at = end + 1;
  }
  return false;
}

// A page that stands as far in as what is on the page before it. Many a word of the file's level is
// somebody's slip for a fact, so that only what opens a block, or a page, is taken for itself.
bool Reader::adopt_at_edge(std::string_view word) {
  const Entry *entry = grammar_.find(word, Context::file);
  if (frames_.size() < 2 || !entry || !can_be_read(own_words(typed()), *entry))
    return false;
  if (word != "page" && word != "spread" && !deeper_follows())
    return false;
  const Statement &above = tree_.statements[frames_.front().last];
  tell(not_at_edge(typed(), above.entry->word, tree_.range(above), sources_));
  while (frames_.size() > 1)
    ascend();
  statement(*entry, frames_.back(), 1, Trust::taken_in);
  return true;
}

} // namespace bodkin::language
