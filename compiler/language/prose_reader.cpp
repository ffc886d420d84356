#include "language/prose.hpp"
#include "language/prose_bounds.hpp"
#include "language/prose_problems.hpp"
#include "language/utf8.hpp"
#include "measure/limits.hpp"

#include <algorithm>
#include <cmark.h>
#include <memory>
#include <set>
#include <string>
#include <utility>

namespace bodkin {
namespace {

struct FreeNode {
  void operator()(cmark_node *node) const { cmark_node_free(node); }
};
using Document = std::unique_ptr<cmark_node, FreeNode>;
struct FreeIterator {
  void operator()(cmark_iter *iterator) const { cmark_iter_free(iterator); }
};

std::string_view view(const char *text) {
  return text ? std::string_view(text) : std::string_view{};
}

// No prose does: a word processor's own form, a picture, an archive.
bool holds_controls(std::string_view text) {
  return std::any_of(text.begin(), text.end(), [](char c) {
    const auto byte = static_cast<unsigned char>(c);
    return byte < 0x20 && c != '\t' && c != '\n' && c != '\r' && c != '\f';
  });
}

class ProseReader {
public:
  ProseReader(Range origin, const Sources &sources, Problems &problems)
      : origin_(origin), sources_(sources), problems_(problems),
        first_line_(sources.where(origin.file, origin.begin).line) {}

  Prose run(std::string_view text) {
    const bool malformed = tell_malformed(text);
    if (malformed && holds_controls(text))
      return {};
    // One slip is told, and no face is blamed for the signs that it leaves.
    language::BoundedProse prose =
        language::bounded(malformed ? language::well_formed(text) : std::string(text));
    if (prose.deep_line != 0)
      tell(language::prose_too_deep(lines(prose.deep_line, prose.deep_line)));
    if (prose.tangled_line != 0)
      tell(language::prose_too_tangled(lines(prose.tangled_line, prose.tangled_line)));
    const Document document(
        cmark_parse_document(prose.text.data(), prose.text.size(), CMARK_OPT_VALIDATE_UTF8));
    const std::unique_ptr<cmark_iter, FreeIterator> iterator(cmark_iter_new(document.get()));
    for (cmark_event_type event = cmark_iter_next(iterator.get()); event != CMARK_EVENT_DONE;
         event = cmark_iter_next(iterator.get()))
      visit(cmark_iter_get_node(iterator.get()), event == CMARK_EVENT_ENTER);
    return std::move(prose_);
  }

private:
  struct List {
    bool ordered = false, loose = false;
    int number = 1;
  };

  void visit(cmark_node *node, bool enter) {
    switch (cmark_node_get_type(node)) {
    case CMARK_NODE_BLOCK_QUOTE:
      enter ? deeper(node) : shallower();
      quotes_ += enter ? 1 : -1;
      break;
    case CMARK_NODE_LIST:
      enter ? deeper(node) : shallower();
      list(node, enter);
      break;
    case CMARK_NODE_ITEM:
      item(enter);
      break;
    case CMARK_NODE_PARAGRAPH:
    case CMARK_NODE_HEADING:
    case CMARK_NODE_THEMATIC_BREAK:
      block(node, enter);
      break;
    case CMARK_NODE_CODE_BLOCK:
      code_block(node);
      break;
    case CMARK_NODE_HTML_BLOCK:
    case CMARK_NODE_CUSTOM_BLOCK:
      tell(language::html_in_prose(range_of(node), first_line(node)));
      break;
    default:
      inline_node(node, enter);
    }
  }

  void tell(Problem problem) {
    if (told_++ < limits::problems_kept)
      problems_.push_back(std::move(problem));
  }

  void deeper(cmark_node *node) {
    if (++depth_ > static_cast<int>(limits::prose_nesting) && !told_deep_) {
      told_deep_ = true;
      tell(language::prose_too_deep(range_of(node)));
    }
  }
  void shallower() { --depth_; }

  void list(cmark_node *node, bool enter) {
    if (!enter)
      return lists_.pop_back();
    if (!sign_.empty()) // an item that begins with a list of its own
      add_block(BlockKind::list_item, here_);
    lists_.push_back({cmark_node_get_list_type(node) == CMARK_ORDERED_LIST,
                      cmark_node_get_list_tight(node) == 0, cmark_node_get_list_start(node)});
  }
  void item(bool enter) {
    List &list = lists_.back();
    if (!enter) {
      // An item of no words still has its sign.
      if (!sign_.empty())
        add_block(BlockKind::list_item, here_);
      return;
    }
    if (!sign_.empty())
      add_block(BlockKind::list_item, here_);
    sign_ = list.ordered ? std::to_string(list.number++) + "." : "•";
  }

  Block &add_block(BlockKind kind, Range range) {
    Block &block = prose_.blocks.emplace_back();
    block.kind = kind;
    const int most = static_cast<int>(limits::prose_nesting);
    block.quote_depth = std::min(quotes_, most);
    block.list_depth = std::min(static_cast<int>(lists_.size()), most);
    block.loose = !lists_.empty() && lists_.back().loose;
    block.sign = std::exchange(sign_, {});
    block.from = range;
    return block;
  }
  BlockKind kind_of(cmark_node *node) const {
    switch (cmark_node_get_type(node)) {
    case CMARK_NODE_HEADING:
      return BlockKind::heading;
    case CMARK_NODE_THEMATIC_BREAK:
      return BlockKind::thought_break;
    default:
      return !lists_.empty() ? BlockKind::list_item
             : quotes_ > 0   ? BlockKind::quote
                             : BlockKind::paragraph;
    }
  }
  void block(cmark_node *node, bool enter) {
    here_ = range_of(node);
    searched_ = 0;
    if (enter)
      add_block(kind_of(node), here_).heading_level =
          cmark_node_get_type(node) == CMARK_NODE_HEADING ? cmark_node_get_heading_level(node) : 0;
  }
  void code_block(cmark_node *node) {
    here_ = range_of(node);
    add_block(BlockKind::code, here_);
    std::string_view literal = view(cmark_node_get_literal(node));
    if (!is_fenced(node) && literal.find('\n') + 1 < literal.size())
      tell(language::verse_set_in(here_, literal.substr(0, literal.find('\n'))));
    while (!literal.empty()) {
      const std::size_t end = std::min(literal.find('\n'), literal.size());
      span(literal.substr(0, end)).code = true;
      literal.remove_prefix(std::min(end + 1, literal.size()));
      if (!literal.empty())
        span({}).hard_break = true;
    }
  }
  // libcmark tells an indented block from a fenced one only by where it begins: past three columns
  // of its container, and a fence's first line holds the fence.
  bool is_fenced(cmark_node *node) const {
    const std::string_view line =
        source_line(static_cast<std::size_t>(cmark_node_get_start_line(node)));
    return line.find("```") != std::string_view::npos || line.find("~~~") != std::string_view::npos;
  }

  void inline_node(cmark_node *node, bool enter) {
    switch (cmark_node_get_type(node)) {
    case CMARK_NODE_TEXT:
      if (in_image_ == 0)
        plain(view(cmark_node_get_literal(node)));
      break;
    case CMARK_NODE_CODE:
      if (in_image_ == 0)
        span(view(cmark_node_get_literal(node))).code = true;
      break;
    case CMARK_NODE_SOFTBREAK:
      if (in_image_ == 0)
        plain(" ");
      break;
    case CMARK_NODE_LINEBREAK:
      if (in_image_ == 0)
        span({}).hard_break = true;
      break;
    case CMARK_NODE_EMPH:
      emphasis_ += enter ? 1 : -1;
      break;
    case CMARK_NODE_STRONG:
      strong_ += enter ? 1 : -1;
      break;
    case CMARK_NODE_LINK:
      link_ = enter ? view(cmark_node_get_url(node)) : std::string_view{};
      break;
    case CMARK_NODE_IMAGE:
      image(node, enter);
      break;
    case CMARK_NODE_HTML_INLINE:
    case CMARK_NODE_CUSTOM_INLINE:
      tag(view(cmark_node_get_literal(node)));
      break;
    default:
      break;
    }
  }
  // What closes a tag that was told needs no telling.
  void tag(std::string_view literal) {
    const Range place = within(literal);
    const bool closes = literal.starts_with("</");
    const std::size_t begin = closes ? 2 : 1;
    const std::string name(literal.substr(begin, literal.find_first_of(" />", begin) - begin));
    if (closes && tags_told_.count(name) == 1)
      return;
    tags_told_.insert(name);
    tell(language::html_in_prose(place, literal));
  }
  void image(cmark_node *node, bool enter) {
    in_image_ += enter ? 1 : -1;
    if (!enter || in_image_ > 1)
      return;
    cmark_node *const words = cmark_node_first_child(node);
    const bool plain = words && cmark_node_get_type(words) == CMARK_NODE_TEXT;
    tell(
        language::image_in_prose(within("!["), view(cmark_node_get_url(node)),
                                 plain ? view(cmark_node_get_literal(words)) : std::string_view{}));
  }
  // Words that go on as the span before them stand in it: a paragraph of many lines is one span.
  void plain(std::string_view text) {
    if (!prose_.blocks.empty() && !prose_.blocks.back().spans.empty() && !link_is_a_fact()) {
      Span &last = prose_.blocks.back().spans.back();
      if (!last.hard_break && !last.code && last.fact.empty() && last.page.empty() &&
          last.emphasis == (emphasis_ > 0) && last.strong == (strong_ > 0)) {
        last.text += text;
        return;
      }
    }
    span(text);
  }
  bool link_is_a_fact() const { return link_.starts_with("fact:") || link_.starts_with("page:"); }

  Span &span(std::string_view text) {
    if (prose_.blocks.empty())
      add_block(BlockKind::paragraph, here_);
    std::vector<Span> &spans = prose_.blocks.back().spans;
    Span next{.text = std::string(text), .emphasis = emphasis_ > 0, .strong = strong_ > 0};
    if (link_.starts_with("fact:"))
      next.fact = link_.substr(5);
    else if (link_.starts_with("page:"))
      next.page = link_.substr(5);
    next.from = link_.empty() ? here_ : link_range(text);
    return spans.emplace_back(std::move(next));
  }

  // Lines of the text, from 1, as they stand in the source.
  Range lines(std::size_t first, std::size_t last) const {
    const std::string_view whole = sources_.text(origin_.file);
    const std::string_view begin = source_line(first);
    const std::string_view end = source_line(last);
    if (begin.data() == nullptr || end.data() == nullptr)
      return origin_;
    const auto from = static_cast<std::uint32_t>(begin.data() - whole.data());
    const auto to = static_cast<std::uint32_t>(end.data() - whole.data() +
                                               static_cast<std::ptrdiff_t>(end.size()));
    const std::size_t blanks = std::min(begin.find_first_not_of(" \t"), begin.size());
    return {origin_.file,
            std::max(origin_.begin, Offset{from + static_cast<std::uint32_t>(blanks)}),
            std::min(origin_.end, Offset{std::max(to, from)})};
  }
  std::string_view source_line(std::size_t line) const {
    return sources_.line(origin_.file, static_cast<std::uint32_t>(first_line_ + line - 1));
  }
  Range range_of(cmark_node *node) const {
    const int first = std::max(cmark_node_get_start_line(node), 1);
    const int last = std::max(cmark_node_get_end_line(node), first);
    return lines(static_cast<std::size_t>(first), static_cast<std::size_t>(last));
  }
  std::string_view first_line(cmark_node *node) const {
    const std::string_view literal = view(cmark_node_get_literal(node));
    return literal.substr(0, literal.find('\n'));
  }
  // The whole link where the block holds it as written.
  Range link_range(std::string_view words) const {
    const std::string_view block = sources_.text(here_);
    const std::string link = "[" + std::string(words) + "](" + std::string(link_) + ")";
    const std::size_t at = block.find(link);
    if (at == std::string_view::npos)
      return here_;
    const auto begin = static_cast<std::uint32_t>(bytes(here_.begin) + at);
    return {here_.file, Offset{begin}, Offset{static_cast<std::uint32_t>(begin + link.size())}};
  }
  // The exact words where the block holds them, searched on from the last that were told.
  Range within(std::string_view words) {
    const std::string_view block = sources_.text(here_);
    const std::size_t at = words.empty() ? block.npos : block.find(words, searched_);
    if (at == std::string_view::npos) {
      searched_ = at;
      return here_;
    }
    std::size_t end = at + words.size();
    if (words == "![")
      end = std::min(block.find(')', at), block.size() - 1) + 1;
    searched_ = end;
    const std::uint32_t begin = bytes(here_.begin);
    return {origin_.file, Offset{begin + static_cast<std::uint32_t>(at)},
            Offset{begin + static_cast<std::uint32_t>(end)}};
  }
  // The byte itself in a file of prose; in words below `says`, which stand indented, its line.
  Range byte_of(std::string_view text, std::size_t at, std::size_t line) const {
    if (sources_.text(origin_).size() != text.size())
      return lines(line, line);
    const auto begin = static_cast<std::uint32_t>(bytes(origin_.begin) + at);
    return {origin_.file, Offset{begin}, Offset{begin + 1}};
  }
  bool tell_malformed(std::string_view text) {
    std::size_t count = 0;
    std::size_t first = 0;
    std::size_t first_line = 0;
    std::size_t at = 0;
    for (std::size_t line = 1; at < text.size(); ++line) {
      const std::size_t end = std::min(text.find('\n', at), text.size());
      const std::size_t bad = language::first_malformed(text.substr(at, end - at));
      if (bad != std::string_view::npos && count++ == 0) {
        first = at + bad;
        first_line = line;
      }
      at = end + 1;
    }
    if (count != 0)
      tell(language::prose_bytes(byte_of(text, first, first_line), first, count));
    return count != 0;
  }

  Range origin_;
  const Sources &sources_;
  Problems &problems_;
  std::size_t first_line_;
  Prose prose_;
  std::vector<List> lists_;
  std::set<std::string> tags_told_;
  std::string sign_;
  int quotes_ = 0, depth_ = 0, emphasis_ = 0, strong_ = 0, in_image_ = 0;
  bool told_deep_ = false;
  std::string_view link_;
  Range here_;
  std::size_t told_ = 0;
  std::size_t searched_ = 0; // of the block's text, for exact words
};

} // namespace

Prose read_prose(std::string_view text, Range origin, const Sources &sources, Problems &problems) {
  return ProseReader(origin, sources, problems).run(text);
}

} // namespace bodkin
