#include "language/look.hpp"
#include "language/mended.hpp"
#include "language/order.hpp"

#include <fmt/format.h>

namespace bodkin::language {
namespace {

// "of page it is called, in, on and by"
std::string order_of_parts(const Entry &entry) {
  const std::vector<std::string_view> words = own_words_of_phrase(entry);
  const std::string order =
      words.size() > 1
          ? fmt::format("of {} it is {}", entry.word, listed({words.begin(), words.end()}, "and"))
          : fmt::format("as in `{}`", entry.example);
  return fmt::format("the parts of a line have one order, so that each is found at a glance: {}",
                     order);
}

} // namespace

// `page 6 on plain in colour`
Slip parts_exchanged(const Look &look) {
  const std::string own = own_words(look.line);
  if (own.empty())
    return {};
  for (const Reordered &other : reorderings(Trial(own, look.entry), look.entry)) {
    if (!can_be_read(other.line, look.entry))
      continue;
    Problem problem =
        slip(look, "unknown-kind",
             fmt::format("{} stands before {}", look.line.found(other.second, other.end - 1),
                         look.line.found(other.first, other.first_end - 1)),
             order_of_parts(look.entry));
    problem.range = {look.line.file, look.line.range(other.first).begin,
                     look.line.range(other.end - 1).end};
    const std::uint32_t before = look.line.lexemes.front().begin;
    const std::size_t tail = own.size() - (look.line.lexemes[other.end - 1].end - before);
    const std::size_t begin = look.line.lexemes[other.first].begin - before;
    problem.edits.push_back(
        {problem.range, other.line.substr(begin, other.line.size() - tail - begin)});
    problem.type.push_back({other.line, {}});
    return problem;
  }
  return {};
}

// `cover on card, in colour`
Slip needless_comma(const Look &look) {
  if (look.kind() != LexemeKind::comma || look.at + 1U >= look.line.lexemes.size())
    return {};
  const std::string without = look.line.with(look.at, "");
  if (!can_be_read(without, look.entry))
    return {};
  const LexemeKind next = look.line.lexemes[look.at + 1U].kind;
  return instead(
      slip(look, "unknown-kind",
           fmt::format("no comma stands before {}{}", next == LexemeKind::word ? "the word " : "",
                       look.line.found(look.at + 1U)),
           fmt::format("commas part the pieces of a list; {} is written like this: {}",
                       look.entry.word, look.entry.example)),
      look, look.at, look.at, "");
}

} // namespace bodkin::language
