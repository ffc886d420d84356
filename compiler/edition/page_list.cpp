#include "edition/page_list.hpp"

#include "edition/page_list_problems.hpp"
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
  bool but = false;
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
  Listing(Reader &reader, FactLine line, std::string_view part, const PageScope &scope)
      : reader_(reader), line_(line), range_(line.range(part)), scope_(scope) {}

  // The runs that the list is made of, each within 1 and the last page.
  void resolve(const language::Pages &written, Problems *problems) {
    for (const language::PageItem &item :
         std::span(line_.in->tree.page_items).subspan(written.first, written.count))
      add(item, problems);
  }

  // How many steps sifted() takes.
  std::size_t work() const {
    std::int64_t steps = high_ >= low_ ? high_ - low_ + 1 : 0;
    for (const PageSpan &span : spans_)
      steps += (span.last - span.first) / span.step + 1;
    return static_cast<std::size_t>(steps);
  }

  PageList sifted() const {
    PageList list;
    list.sound = sound_;
    if (spans_.size() == 1 && !spans_[0].but)
      take_run(spans_[0], list);
    else if (!spans_.empty())
      sift(list);
    return list;
  }

private:
  enum class State : std::uint8_t { never, in, out };

  // Nearly every list is one run, and an edition has thousands of them.
  static void take_run(const PageSpan &span, PageList &list) {
    for (std::int64_t page = span.first; page <= span.last; page += span.step)
      list.pages.push_back(static_cast<int>(page));
    list.first = list.pages.front();
  }

  void sift(PageList &list) const {
    std::vector<State> wanted(static_cast<std::size_t>(high_ - low_) + 1, State::never);
    const auto state = [&](std::int64_t page) -> State & {
      return wanted[static_cast<std::size_t>(page - low_)];
    };
    for (const PageSpan &span : spans_)
      for (std::int64_t page = span.first; page <= span.last; page += span.step)
        if (span.but || state(page) == State::never)
          state(page) = span.but ? State::out : State::in;
    for (std::int64_t page = low_; page <= high_; ++page)
      if (state(page) == State::in)
        list.pages.push_back(static_cast<int>(page));
    for (const PageSpan &span : spans_)
      if (list.first == 0 && !span.but && state(span.first) == State::in)
        list.first = static_cast<int>(span.first);
    if (list.first == 0 && !list.pages.empty())
      list.first = list.pages.front();
  }

  void add(const language::PageItem &item, Problems *problems) {
    if (item.word.empty())
      add_span({item.first, item.last, 1, item.but}, problems);
    else if (item.word == "next")
      add_span({scope_.next, scope_.next, 1, item.but}, problems);
    else if (!is_page_word(item.word))
      add_name(item, problems);
    else if (needs_count(item.word) && !scope_.count_written)
      refuse([&] { return needs_pages_written(range_, item.word); }, problems);
    else
      for (PageSpan span : spans_of_word(item.word, scope_.count)) {
        span.but = item.but;
        if (span.first <= span.last)
          add_span(span, problems);
      }
  }

  void add_name(const language::PageItem &item, Problems *problems) {
    const auto found = reader_.called.find(item.word);
    if (found == reader_.called.end())
      refuse([&] { return unknown_page(reader_, line_, range_, item.word, page_words); }, problems);
    else
      add_span({found->second, found->second, 1, item.but}, problems);
  }

  void add_span(PageSpan span, Problems *problems) {
    const std::int64_t most = scope_.count > 0 ? scope_.count : limits::pages;
    if (span.first > span.last)
      refuse([&] { return backwards(reader_, line_, range_, span.first, span.last); }, problems);
    else if (span.first < 1)
      refuse([&] { return no_page_nought(reader_, line_, range_); }, problems);
    else if (span.last > most && !span.but)
      refuse([&] { return above_the_last(reader_, line_, range_, span.last, scope_.count); },
             problems);
    span.first = std::max<std::int64_t>(span.first, 1);
    span.last = std::min(span.last, most);
    if (span.first > span.last)
      return;
    low_ = spans_.empty() ? span.first : std::min(low_, span.first);
    high_ = spans_.empty() ? span.last : std::max(high_, span.last);
    spans_.push_back(span);
  }

  // Only the first thing wrong with a list is said, and only where somebody listens.
  template <typename Make>
  void refuse(Make make, Problems *problems) {
    sound_ = false;
    if (problems && problems->empty() && reader_.keeps_problems())
      problems->push_back(make());
  }

  Reader &reader_;
  FactLine line_;
  Range range_;
  const PageScope &scope_;
  std::vector<PageSpan> spans_;
  std::int64_t low_ = 1, high_ = 0;
  bool sound_ = true;
};

// False past the bound on what all lists together may name.
bool within_bounds(Reader &reader, FactLine line, std::size_t work) {
  const bool was_within = reader.pages_listed <= limits::pages_listed;
  reader.pages_listed += work;
  if (reader.pages_listed <= limits::pages_listed)
    return true;
  if (was_within)
    reader.report(too_many_lists(line));
  return false;
}

PageList listed(Reader &reader, FactLine line, std::string_view part, const PageScope &scope,
                Problems *problems) {
  const auto *written = line.get<language::Pages>(part);
  if (!written)
    return {.sound = false};
  Listing listing(reader, line, part, scope);
  listing.resolve(*written, problems);
  return within_bounds(reader, line, listing.work()) ? listing.sifted() : PageList{.sound = false};
}

} // namespace

int page_named(const Reader &reader, std::string_view name) {
  const auto found = reader.called.find(name);
  if (found != reader.called.end())
    return found->second;
  for (const std::string_view word : {"front-cover", "inside-front", "inside-back", "back-cover"})
    if (name == word)
      return static_cast<int>(spans_of_word(word, *reader.edition.page_count)[0].first);
  return 0;
}

PageList pages_of(Reader &reader, FactLine line, std::string_view part, const PageScope &scope) {
  Problems problems;
  PageList list = listed(reader, line, part, scope, &problems);
  if (!problems.empty())
    reader.report(std::move(problems.front()));
  return list;
}

PageList pages_foreseen(Reader &reader, FactLine line, std::string_view part,
                        const PageScope &scope) {
  return listed(reader, line, part, scope, nullptr);
}

std::optional<Known<int>> page_in(Reader &reader, FactLine line, std::string_view part) {
  if (!line || !line.has(part))
    return std::nullopt;
  const PageScope scope{.count = *reader.edition.page_count, .next = 0, .count_written = true};
  const PageList list = pages_of(reader, line, part, scope);
  if (!list.sound || list.pages.empty())
    return std::nullopt;
  return known(list.first, line.range(part));
}

} // namespace bodkin
