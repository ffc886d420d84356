#include "edition/page_list.hpp"

#include "edition/problems.hpp"
#include "edition/values.hpp"
#include "measure/limits.hpp"

#include <algorithm>
#include <array>
#include <fmt/format.h>
#include <span>

namespace bodkin {
namespace {

constexpr std::array<std::string_view, 10> page_words{
    "left",        "right",        "all",         "cover",      "centre",
    "front-cover", "inside-front", "inside-back", "back-cover", "next"};

bool is_page_word(std::string_view word) {
  return std::find(page_words.begin(), page_words.end(), word) != page_words.end();
}

// These say something only where the number of pages is known.
bool needs_count(std::string_view word) {
  return is_page_word(word) && word != "next" && word != "front-cover" && word != "inside-front";
}

struct PageSpan {
  std::int64_t first = 1, last = 0, step = 1;
};

// The pages that a word stands for: at most two runs.
std::array<PageSpan, 2> spans_of_word(std::string_view word, int count) {
  const std::int64_t last = count;
  if (word == "left")
    return {PageSpan{2, last, 2}, PageSpan{}};
  if (word == "right")
    return {PageSpan{1, last, 2}, PageSpan{}};
  if (word == "all")
    return {PageSpan{1, last}, PageSpan{}};
  if (word == "cover")
    return {PageSpan{1, std::min<std::int64_t>(2, last)},
            PageSpan{std::max<std::int64_t>(last - 1, 1), last}};
  if (word == "centre")
    return {PageSpan{last / 2, last / 2 + 1}, PageSpan{}};
  if (word == "front-cover")
    return {PageSpan{1, 1}, PageSpan{}};
  if (word == "inside-front")
    return {PageSpan{2, 2}, PageSpan{}};
  if (word == "inside-back")
    return {PageSpan{last - 1, last - 1}, PageSpan{}};
  return {PageSpan{last, last}, PageSpan{}};
}

class Listing {
public:
  Listing(const Reader &reader, Line line, std::string_view part, const PageScope &scope)
      : reader_(reader), line_(line), range_(line.range(part)), scope_(scope) {}

  PageList run(const language::Pages &written, Problems *problems) {
    const auto items = std::span(line_.in->tree.page_items).subspan(written.first, written.count);
    if (const std::optional<int> page = single(items))
      return {.pages = {*page}, .first = *page};
    for (const language::PageItem &item : items)
      add(item, problems);
    PageList list;
    list.sound = sound_;
    for (std::size_t page = 1; page < wanted_.size(); ++page)
      if (wanted_[page] == State::in)
        list.pages.push_back(static_cast<int>(page));
    for (const int page : firsts_)
      if (list.first == 0 && wanted_[static_cast<std::size_t>(page)] == State::in)
        list.first = page;
    if (list.first == 0 && !list.pages.empty())
      list.first = list.pages.front();
    return list;
  }

private:
  enum class State : std::uint8_t { never, in, out };

  // Nearly every list is one number, and an edition has thousands of them.
  std::optional<int> single(std::span<const language::PageItem> items) const {
    const std::int64_t most = scope_.count > 0 ? scope_.count : limits::pages;
    if (items.size() != 1 || !items[0].word.empty() || items[0].first != items[0].last ||
        items[0].first < 1 || items[0].first > most)
      return std::nullopt;
    return static_cast<int>(items[0].first);
  }

  void add(const language::PageItem &item, Problems *problems) {
    if (item.word.empty())
      mark({item.first, item.last}, item.but, problems);
    else if (item.word == "next")
      mark({scope_.next, scope_.next}, item.but, problems);
    else if (!is_page_word(item.word))
      add_name(item, problems);
    else if (needs_count(item.word) && !scope_.count_written)
      refuse([&] { return needs_pages_written(item.word); }, problems);
    else
      for (const PageSpan &span : spans_of_word(item.word, scope_.count))
        mark(span, item.but, problems);
  }

  void add_name(const language::PageItem &item, Problems *problems) {
    const auto found = reader_.called.find(item.word);
    if (found == reader_.called.end())
      refuse([&] { return unknown_page(reader_, line_, range_, item.word); }, problems);
    else
      mark({found->second, found->second}, item.but, problems);
  }

  void mark(PageSpan span, bool but, Problems *problems) {
    if (span.step == 1 && span.first > span.last && span.first > 0 && span.last > 0)
      refuse([&] { return backwards(span); }, problems);
    if (span.first == 0 && span.last >= 0 && span.step == 1)
      refuse([&] { return no_page_nought(); }, problems);
    const std::int64_t most = scope_.count > 0 ? scope_.count : limits::pages;
    if (span.last > most && !but)
      refuse([&] { return above_the_last(span, most); }, problems);
    const std::int64_t last = std::min(span.last, most);
    if (last >= static_cast<std::int64_t>(wanted_.size()))
      wanted_.resize(static_cast<std::size_t>(last) + 1, State::never);
    for (std::int64_t page = std::max<std::int64_t>(span.first, 1); page <= last;
         page += span.step) {
      State &state = wanted_[static_cast<std::size_t>(page)];
      if (but)
        state = State::out;
      else if (state == State::never)
        state = State::in;
    }
    if (!but && span.first >= 1 && span.first <= last)
      firsts_.push_back(static_cast<int>(span.first));
  }

  // Only the first thing wrong with a list is said, and only where somebody listens.
  template <typename Make>
  void refuse(Make make, Problems *problems) {
    sound_ = false;
    if (problems && problems->empty())
      problems->push_back(make());
  }

  Problem needs_pages_written(std::string_view word) const {
    return {.check = "missing-fact",
            .range = range_,
            .message = fmt::format("{} is only known where `pages` is written", word),
            .why = "without it the edition has as many pages as its highest page number, which the "
                   "next page put in would change",
            .type = {{"pages      24", "under edition, with the number of yours"}}};
  }

  Problem backwards(PageSpan span) const {
    return {.check = "unknown-page",
            .range = range_,
            .message = fmt::format("{}-{} runs backwards", span.first, span.last),
            .why = "pages stand in a list from the lower to the higher",
            .type = {
                {typed(reader_, line_.range(), range_, fmt::format("{}-{}", span.last, span.first)),
                 {}}}};
  }

  Problem no_page_nought() const {
    return {.check = "unknown-page",
            .range = range_,
            .message = "there is no page 0",
            .why = "pages count from 1, which is the front cover",
            .type = {{typed(reader_, line_.range(), range_, "1"), {}}}};
  }

  Problem above_the_last(PageSpan span, std::int64_t most) const {
    if (scope_.count == 0)
      return {.check = "too-many-pages",
              .range = range_,
              .message = fmt::format("page {} is more than any booklet has; {} is the most",
                                     span.last, limits::pages),
              .why = "a number so high is a slip of the finger",
              .type = {{{}, "take a number out of it"}}};
    return {.check = "unknown-page",
            .range = range_,
            .message = fmt::format("page {} comes after the last; the edition has {} pages",
                                   span.last, most),
            .why = "pages are never added silently: each asks for paper",
            .type = {{fmt::format("pages      {}", span.last), "under edition"},
                     {typed(reader_, line_.range(), range_, std::to_string(most)),
                      "or, if the last was meant, this"}}};
  }

  const Reader &reader_;
  Line line_;
  Range range_;
  const PageScope &scope_;
  std::vector<State> wanted_;
  std::vector<int> firsts_;
  bool sound_ = true;
};

Problem too_many_lists(Line line) {
  return {.check = "too-many-things",
          .range = line.range(),
          .message = "the page lists of this edition name more pages than a library holds",
          .why = fmt::format("from here on lists are left out; {} pages may be named in all",
                             limits::pages_listed),
          .type = {{{}, "make it several editions"}}};
}

} // namespace

Problem unknown_page(const Reader &reader, Line line, Range range, std::string_view name) {
  std::vector<std::string_view> names;
  for (const auto &[called, page] : reader.called)
    names.push_back(called);
  std::sort(names.begin(), names.end());
  constexpr std::size_t most_searched = 5'000;
  names.resize(std::min(names.size(), most_searched));
  Problem problem{.check = "unknown-page",
                  .range = range,
                  .message = fmt::format("no page is called {}", name)};
  problem.why = names.empty() ? "pages get names by `called`, as in `page 12 called timetable`"
                              : fmt::format("the pages called by name are {}", list_of(names));
  names.insert(names.end(), page_words.begin(), page_words.end());
  if (const auto near = language::nearest(name, names)) {
    problem.message += fmt::format("; did you mean {}?", *near);
    const std::string_view whole = reader.sources.text(line.range());
    if (const std::size_t at = whole.find(name); at != std::string_view::npos)
      problem.type.push_back(
          {fmt::format("{}{}{}", whole.substr(0, at), *near, whole.substr(at + name.size())), {}});
  } else {
    problem.type.push_back({fmt::format("page 12 called {}", name), "on the line that opens it"});
  }
  return problem;
}

PageList pages_of(Reader &reader, Line line, std::string_view part, const PageScope &scope) {
  const auto *written = line.get<language::Pages>(part);
  if (!written)
    return {.sound = false};
  if (reader.pages_listed > limits::pages_listed)
    return {.sound = false};
  Problems problems;
  PageList list = Listing(reader, line, part, scope).run(*written, &problems);
  reader.pages_listed += list.pages.size();
  if (reader.pages_listed > limits::pages_listed)
    problems = {too_many_lists(line)};
  if (!problems.empty())
    reader.report(std::move(problems.front()));
  return list;
}

PageList pages_foreseen(const Reader &reader, Line line, std::string_view part,
                        const PageScope &scope) {
  const auto *written = line.get<language::Pages>(part);
  return written ? Listing(reader, line, part, scope).run(*written, nullptr)
                 : PageList{.sound = false};
}

std::optional<Known<int>> page_in(Reader &reader, Line line, std::string_view part) {
  if (!line || !line.has(part))
    return std::nullopt;
  const PageScope scope{.count = *reader.edition.page_count, .next = 0, .count_written = true};
  const PageList list = pages_of(reader, line, part, scope);
  if (!list.sound || list.pages.empty())
    return std::nullopt;
  return known(list.first, line.range(part));
}

} // namespace bodkin
