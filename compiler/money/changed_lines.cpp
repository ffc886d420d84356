#include "money/changed_lines.hpp"

#include "money/bid_fit.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <vector>

namespace bodkin {
namespace {

constexpr bool is_blank(char c) { return c == ' ' || c == '\t' || c == '\r'; }

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && is_blank(text.front()))
    text.remove_prefix(1);
  while (!text.empty() && is_blank(text.back()))
    text.remove_suffix(1);
  return text;
}

struct Word {
  std::size_t begin = 0, end = 0;
};

// Words between blanks and commas; quoted text is one word.
std::vector<Word> words_of(std::string_view line) {
  std::vector<Word> words;
  for (std::size_t i = 0; i < line.size();) {
    if (is_blank(line[i]) || line[i] == ',') {
      ++i;
      continue;
    }
    const std::size_t begin = i;
    if (line[i] == '"') {
      for (++i; i < line.size() && line[i] != '"'; ++i)
        if (line[i] == '\\')
          ++i;
      i = std::min(i + 1, line.size());
    } else {
      while (i < line.size() && !is_blank(line[i]) && line[i] != ',')
        ++i;
    }
    words.push_back({begin, i});
  }
  return words;
}

std::string_view word(std::string_view line, const Word &at) {
  return line.substr(at.begin, at.end - at.begin);
}

// A # starts a comment at the start or after a blank, when a blank or the line's end follows.
std::string_view without_comment(std::string_view line) {
  for (const Word &at : words_of(line))
    if (word(line, at) == "#" && (at.begin == 0 || is_blank(line[at.begin - 1])))
      return line.substr(0, at.begin);
  return line;
}

bool is_colour(std::string_view text) { return text == "colour" || text == "color"; }

} // namespace

LineKey line_of(const Sources &sources, Range range) {
  if (!range.somewhere())
    return {};
  return {range.file, sources.begin_of(range).line};
}

LineKey LinesOf::operator()(Range range) {
  if (range != last_) {
    last_ = range;
    key_ = line_of(sources_, range);
  }
  return key_;
}

std::string bare_line(const Sources &sources, LineKey key) {
  if (key.number == 0)
    return {};
  return std::string(trimmed(without_comment(sources.line(key.file, key.number))));
}

std::string &ChangedLines::line(LineKey key) {
  const auto [entry, is_new] = lines_.try_emplace(key);
  if (is_new)
    entry->second = bare_line(sources_, key);
  return entry->second;
}

void ChangedLines::colour_out(LineKey key, bool colour_is_default) {
  std::string &text = line(key);
  const std::vector<Word> words = words_of(text);
  for (std::size_t i = words.size(); i-- > 1;) {
    if (!is_colour(word(text, words[i])))
      continue;
    const bool after_in = word(text, words[i - 1]) == "in" && i > 1;
    if (after_in && !colour_is_default)
      text.erase(words[i - 2].end, words[i].end - words[i - 2].end);
    else
      text.replace(words[i].begin, words[i].end - words[i].begin, "black");
    return;
  }
}

void ChangedLines::in_black(LineKey key) {
  std::string &text = line(key);
  const std::vector<Word> words = words_of(text);
  for (std::size_t i = 1; i < words.size(); ++i) {
    const std::string_view at = word(text, words[i]);
    if ((is_colour(at) || at == "black") && word(text, words[i - 1]) == "in") {
      text.replace(words[i].begin, words[i].end - words[i].begin, "black");
      return;
    }
    if (at == "on" || at == "by") {
      text.insert(words[i].begin, "in black ");
      return;
    }
  }
  text += " in black";
}

void ChangedLines::rename(LineKey key, std::string_view name, std::string_view other) {
  std::string &text = line(key);
  const std::vector<Word> words = words_of(text);
  for (std::size_t i = words.size(); i-- > 1;)
    if (word(text, words[i]) == name) {
      text.replace(words[i].begin, words[i].end - words[i].begin, other);
      return;
    }
}

void ChangedLines::first_number(LineKey key, std::int64_t number) {
  std::string &text = line(key);
  const std::size_t begin = text.find_first_of("0123456789");
  if (begin == std::string::npos)
    return;
  const std::size_t end = text.find_first_not_of("0123456789", begin);
  text.replace(begin, (end == std::string::npos ? text.size() : end) - begin,
               std::to_string(number));
}

void ChangedLines::new_line(std::string_view under, std::string_view text) {
  new_.emplace_back(under, text);
}

std::string ChangedLines::text() const {
  std::string text;
  for (const auto &[under, line] : new_)
    text += (text.empty() ? "" : "\n") + line;
  for (const auto &[key, line] : lines_)
    text += (text.empty() ? "" : "\n") + line;
  return text;
}

std::string ChangedLines::news() const {
  std::string text;
  for (std::size_t i = 0; i < new_.size(); ++i) {
    const auto &[under, line] = new_[i];
    const std::string word = line.substr(0, line.find(' '));
    const bool same = i + 1 < new_.size() && new_[i + 1].first == under;
    text += fmt::format("{}`{}`{}", text.empty() ? "" : " and ", word,
                        same ? "" : fmt::format(" new under `{}`", under));
  }
  return text;
}

namespace {

// As many words as both lines begin with, and the blanks before the first.
std::string beginning(std::string_view line, std::string_view other) {
  std::string begins;
  const std::vector<Word> words = words_of(line), others = words_of(other);
  for (std::size_t i = 0; i < std::min(words.size(), others.size()); ++i) {
    if (word(line, words[i]) != word(other, others[i]))
      break;
    begins.append(word(line, words[i])).append(" ");
  }
  return begins;
}

std::size_t indent_of(std::string_view line) {
  return std::min(line.find_first_not_of(" \t"), line.size());
}

} // namespace

bool ChangedLines::begins_as_another(LineKey key, std::string_view changed) const {
  const std::string_view line = sources_.line(key.file, key.number);
  const std::string begins = beginning(trimmed(line), changed);
  const auto ends = std::ranges::count(sources_.text(key.file), '\n');
  for (std::uint32_t number = 1; number <= static_cast<std::uint32_t>(ends); ++number) {
    const std::string_view other = sources_.line(key.file, number);
    if (number != key.number && indent_of(other) == indent_of(line) &&
        beginning(trimmed(other), begins) == begins)
      return true;
  }
  return false;
}

std::string ChangedLines::places() const {
  std::map<std::string, std::vector<std::string>> numbers;
  for (const auto &[key, changed] : lines_)
    if (key.number > 0 && begins_as_another(key, changed))
      numbers[changed.substr(0, changed.find(' '))].push_back(std::to_string(key.number));
  std::string text;
  for (auto &[first, lines] : numbers) {
    const bool one = lines.size() == 1;
    text += fmt::format("{}{}in place of {} {}", text.empty() ? "" : " and ",
                        count() > lines.size() ? fmt::format("`{}` ", first) : "",
                        one ? "line" : "lines", listed(lines));
  }
  return text;
}

std::vector<Edit> ChangedLines::edits() const {
  std::vector<Edit> edits;
  for (const auto &[key, changed] : lines_) {
    if (!new_.empty() || sources_.is_shelf(key.file))
      return {};
    const std::string_view line = sources_.line(key.file, key.number);
    const std::string_view bare = trimmed(without_comment(line));
    const auto begin = static_cast<std::uint32_t>(bare.data() - sources_.text(key.file).data());
    const auto end = begin + static_cast<std::uint32_t>(bare.size());
    edits.push_back({{key.file, Offset{begin}, Offset{end}}, changed});
  }
  return edits;
}

} // namespace bodkin
