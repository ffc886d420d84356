#include "paperwork/duties.hpp"
#include "paperwork/own_words.hpp"
#include "sheet/speech.hpp"

#include <algorithm>
#include <array>
#include <fmt/format.h>
#include <utility>

namespace bodkin::paperwork {
namespace {

// A credit's sentence, span by span.
class Sentence {
public:
  explicit Sentence(std::string beginning) { add(std::move(beginning)); }
  void add(std::string text, bool emphasis = false) {
    Span span;
    span.text = std::move(text);
    span.emphasis = emphasis;
    block_.spans.push_back(std::move(span));
  }
  // After what stands already, a comma between.
  void also(std::string text, bool emphasis = false) {
    if (begun_)
      add(", ");
    begun_ = true;
    add(std::move(text), emphasis);
  }
  Block end() {
    const std::string &last = block_.spans.back().text;
    if (last.empty() || std::string_view(".!?").find(last.back()) == std::string_view::npos)
      add(".");
    return std::move(block_);
  }

private:
  Block block_;
  bool begun_ = false;
};

std::string capital(std::string text) {
  if (!text.empty() && text[0] >= 'a' && text[0] <= 'z')
    text[0] = static_cast<char>(text[0] - 'a' + 'A');
  return text;
}

std::string right_words(const ArtSource &source, const Edition &edition) {
  switch (source.rights ? **source.rights : Rights::unknown) {
  case Rights::public_domain:
    return "in the public domain";
  case Rights::permission:
    return "by permission";
  case Rights::licence: {
    if (!source.licence_id)
      return "under " + source.licence;
    const Licence &licence = edition[*source.licence_id];
    const std::string &name = licence.called.empty() ? licence.title : licence.called;
    return licence.link.empty() ? "under " + name
                                : fmt::format("under {} ({})", name, licence.link);
  }
  case Rights::own:
  case Rights::unknown:
    break;
  }
  return {};
}

void say_who(const ArtSource &source, Sentence &sentence) {
  if (source.title)
    sentence.also(**source.title, true);
  if (source.author)
    sentence.also((source.title ? "by " : "") + **source.author);
  else if (source.author_unknown)
    sentence.also("by nobody known");
  if (source.published)
    sentence.also(fmt::format("published in {}", (**source.published).year));
  if (source.kept_by)
    sentence.also("kept by " + **source.kept_by);
}

bool says_changes(const ArtSource &source, const Edition &edition) {
  return source.licence_id && edition[*source.licence_id].asks_changes_said;
}

void say_changes(const UsedSource &used, Sentence &sentence) {
  std::vector<std::string> all;
  for (const LedgerWork *work : used.works)
    for (const Change &change : work->changes)
      if (std::find(all.begin(), all.end(), change.words) == all.end())
        all.push_back(change.words);
  if (!all.empty())
    sentence.also(in_a_row(all) + " here");
}

// What is the maker's own is named only in the words that they wrote for it.
bool wants_naming(const ArtSource &source) {
  if (source.credit)
    return true;
  if (source.rights && **source.rights == Rights::own)
    return false;
  return source.title || source.author;
}

// Where more of the sentence follows.
std::string without_stop(std::string words) {
  while (!words.empty() && words.back() == '.')
    words.pop_back();
  return words;
}

// "front cover", "map, page 2"; of the book's own pages none, they are told together.
std::string piece_words(const PageSeen &seen) {
  constexpr std::array<const char *, 4> of_wrap{"front cover", "inside of the front cover",
                                                "inside of the back cover", "back cover"};
  const Piece &piece = *seen.piece;
  if (piece.is_wrap() && seen.page >= 1 && seen.page <= 4)
    return of_wrap[static_cast<std::size_t>(seen.page) - 1];
  if (piece.is_reverse())
    return "reverse";
  const std::string &name = piece.title.empty() ? piece.name : piece.title;
  return *piece.edition.page_count > 1 ? fmt::format("{}, page {}", name, seen.page) : name;
}

// As a reader comes to them: a wrap goes round the book, other pieces are told last.
int order_of(const PageSeen &seen) {
  if (!seen.piece)
    return 1;
  return !seen.piece->is_wrap() ? 3 : seen.page <= 2 ? 0 : 2;
}

// "front cover; pages 1 and 3 to 5; The routes, page 2"
std::string in_words(std::vector<PageSeen> pages) {
  std::stable_sort(pages.begin(), pages.end(),
                   [](const PageSeen &a, const PageSeen &b) { return order_of(a) < order_of(b); });
  std::vector<int> numbers;
  std::string text;
  const auto add = [&text](const std::string &words) {
    text += (text.empty() ? "" : "; ") + words;
  };
  for (std::size_t i = 0; i < pages.size(); ++i) {
    if (pages[i].piece) {
      add(piece_words(pages[i]));
      continue;
    }
    numbers.push_back(pages[i].page);
    if (i + 1 == pages.size() || pages[i + 1].piece)
      add(spoken::pages_listed(std::exchange(numbers, {})));
  }
  return text;
}

Block credit(const UsedSource &used, const Edition &edition) {
  const ArtSource &source = *used.source;
  Sentence sentence(capital(in_words(pages_of(used))) + ": ");
  if (source.credit)
    sentence.also(source.licence_id ? without_stop(**source.credit) : **source.credit);
  else
    say_who(source, sentence);
  if (source.licence_id && source.link && edition[*source.licence_id].asks_credit)
    sentence.also(**source.link);
  if (const std::string right = right_words(source, edition);
      !right.empty() && (!source.credit || source.licence_id))
    sentence.also(right);
  if (says_changes(source, edition))
    say_changes(used, sentence);
  return sentence.end();
}

} // namespace

Prose credits(const Edition &edition, const RightsLedger &ledger) {
  Prose prose;
  for (const UsedSource &used : used_sources(ledger))
    if (wants_naming(*used.source))
      prose.blocks.push_back(credit(used, edition));
  return prose;
}

} // namespace bodkin::paperwork
