#include "edition/renumbered.hpp"

#include "language/tree.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <set>
#include <span>
#include <string_view>

namespace bodkin {
namespace {

using language::Capture;
using language::PageItem;
using language::Pages;
using language::Statement;
using language::Tree;

// "3, 5, 9-11", with one of them first where it gives the page its name.
std::string as_list(std::set<int> pages, int first = 0) {
  std::vector<std::string> parts;
  if (first > 0 && *pages.begin() != first) {
    parts.push_back(std::to_string(first));
    pages.erase(first);
  }
  for (auto page = pages.begin(); page != pages.end();) {
    const int begin = *page;
    int last = begin;
    while (++page != pages.end() && *page == last + 1)
      ++last;
    parts.push_back(begin == last ? std::to_string(begin) : fmt::format("{}-{}", begin, last));
  }
  std::string text;
  for (const std::string &part : parts)
    text += (text.empty() ? "" : ", ") + part;
  return text;
}

class Renumbering {
public:
  Renumbering(const Edition &edition, const Tree &tree, const std::vector<int> &order)
      : edition_(edition), tree_(tree), becomes_(order.size()) {
    for (std::size_t place = 1; place < order.size(); ++place)
      becomes_[static_cast<std::size_t>(order[place])] = static_cast<int>(place);
    for (std::size_t page = 1; page < edition.pages.size(); ++page)
      if (edition.pages[page].opened.somewhere())
        opened_[bytes(edition.pages[page].opened.begin)].push_back(static_cast<int>(page));
  }

  std::vector<Edit> edits() {
    tree_.each_top([&](const Statement &statement) { top(statement); });
    std::ranges::stable_sort(edits_, {}, [](const Edit &edit) { return bytes(edit.range.begin); });
    return std::move(edits_);
  }

private:
  void top(const Statement &statement) {
    const std::string_view word = statement.entry->word;
    if (word == "page" || word == "spread")
      open(statement);
    if (word == "page" || word == "spread" || word == "standing" || word == "running")
      return below(statement);
    // Pages of a piece are numbered by themselves; where it goes is a page of the book.
    tree_.each_child(statement, [&](const Statement &child) {
      if (child.entry->word == "goes")
        numbers(child);
    });
  }

  void below(const Statement &statement) {
    tree_.each_child(statement, [&](const Statement &child) {
      const std::string_view word = child.entry->word;
      if (word == "continues" || word == "stays" ||
          (word == "pages" && statement.entry->word == "running"))
        numbers(child);
      below(child);
    });
  }

  void open(const Statement &statement) {
    const auto pages = opened_.find(bytes(statement.begin));
    const Capture *list = tree_.find(statement, "pages");
    if (pages == opened_.end() || !list)
      return;
    const std::set<int> was(pages->second.begin(), pages->second.end());
    std::set<int> is;
    int named = 0;
    for (const int page : was) {
      is.insert(become(page));
      if (!edition_.pages[static_cast<std::size_t>(page)].called.empty())
        named = become(page);
    }
    const bool relative =
        std::ranges::any_of(items(*list), [](const PageItem &item) { return item.word == "next"; });
    const bool still_next = is.size() == 1 && *is.begin() == next_;
    if (relative ? !still_next : is != was)
      edits_.push_back({tree_.range(*list), as_list(is, named)});
    next_ = *is.rbegin() + 1;
  }

  // Numbers of a list become others; its words stay.
  void numbers(const Statement &statement) {
    for (const Capture &capture : tree_.captured(statement)) {
      if (!std::holds_alternative<Pages>(capture.value))
        continue;
      std::string text = half(capture, false);
      if (const std::string left_out = half(capture, true); !left_out.empty())
        text.append(" but ").append(left_out);
      if (changed_)
        edits_.push_back({tree_.range(capture), std::move(text)});
      changed_ = false;
    }
  }

  std::string half(const Capture &capture, bool but) {
    std::string words;
    std::set<int> was, is;
    for (const PageItem &item : items(capture)) {
      if (item.but != but)
        continue;
      if (!item.word.empty())
        words += (words.empty() ? "" : ", ") + std::string(item.word);
      for (std::int64_t page = item.first; item.word.empty() && page <= item.last; ++page) {
        was.insert(static_cast<int>(page));
        is.insert(become(static_cast<int>(page)));
      }
    }
    changed_ = changed_ || was != is;
    const std::string list = is.empty() ? "" : as_list(is);
    return words.empty() || list.empty() ? words + list : words + ", " + list;
  }

  std::span<const PageItem> items(const Capture &capture) const {
    const auto &pages = std::get<Pages>(capture.value);
    return std::span(tree_.page_items).subspan(pages.first, pages.count);
  }

  int become(int page) const {
    return page > 0 && static_cast<std::size_t>(page) < becomes_.size()
               ? becomes_[static_cast<std::size_t>(page)]
               : page;
  }

  const Edition &edition_;
  const Tree &tree_;
  std::vector<int> becomes_;                       // by page as written
  std::map<std::size_t, std::vector<int>> opened_; // by where the line begins
  std::vector<Edit> edits_;
  int next_ = 1;
  bool changed_ = false;
};

bool one_page(std::string_view pages) {
  return pages.find_first_of(",- ") == std::string_view::npos;
}

std::vector<Edit> renumbering(const Edition &edition, FileId file, const Sources &sources,
                              const std::vector<int> &order) {
  Problems told_before;
  const Tree tree = language::read(file, sources, told_before);
  return Renumbering(edition, tree, order).edits();
}

std::string with_edits(std::string_view text, const std::vector<Edit> &edits, std::size_t begin) {
  std::string out;
  std::size_t at = 0;
  for (const Edit &edit : edits) {
    out += text.substr(at, bytes(edit.range.begin) - begin - at);
    out += edit.text;
    at = bytes(edit.range.end) - begin;
  }
  return out.append(text.substr(at));
}

Problem borrowed_numbers(const Edit &edit, const Sources &sources) {
  const std::string_view file = sources.name(edit.range.file);
  const std::string_view line = sources.line(edit.range.file, sources.line_number(edit.range));
  const auto begin = static_cast<std::size_t>(line.data() - sources.text(edit.range.file).data());
  std::string typed = with_edits(line, {edit}, begin);
  typed.erase(0, typed.find_first_not_of(" \t"));
  return {.kind = Kind::warning,
          .check = "borrowed-numbers",
          .range = edit.range,
          .message = fmt::format("{} is borrowed and keeps these numbers: page{} {}, in this order "
                                 "{}",
                                 file, one_page(sources.text(edit.range)) ? "" : "s",
                                 sources.text(edit.range), edit.text),
          .why = "`arrange` writes the edition's own file alone, since others may borrow this one; "
                 "left so, what stands there comes on other pages than before",
          .type = {{typed, fmt::format("in {}, once the new order is taken", file)}}};
}

} // namespace

std::string renumbered(const Edition &edition, FileId manuscript, const Sources &sources,
                       const std::vector<int> &order) {
  return with_edits(sources.text(manuscript), renumbering(edition, manuscript, sources, order), 0);
}

Problems borrowed_numbers(const Edition &edition, const std::vector<FileRead> &files,
                          const Sources &sources, const std::vector<int> &order) {
  Problems problems;
  for (std::size_t i = 0; i < sources.count(); ++i) {
    const auto file = static_cast<FileId>(i);
    const bool borrowed = std::ranges::any_of(files, [&](const FileRead &read) {
      return (read.role == FileRole::borrowed || read.role == FileRole::shelf) &&
             read.path == sources.name(file);
    });
    if (borrowed)
      for (const Edit &edit : renumbering(edition, file, sources, order))
        problems.push_back(borrowed_numbers(edit, sources));
  }
  return problems;
}

} // namespace bodkin
