#include "edition/fact_slips.hpp"

#include "edition/prose_facts.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {
namespace {

constexpr std::string_view sign = "fact:";

struct BareFact {
  std::string_view name;
  std::size_t at = 0; // in the text, of `fact:`
};

// `fact:copy` as a word of a text.
std::optional<BareFact> bare_fact(std::string_view text) {
  for (std::size_t at = text.find(sign); at != text.npos; at = text.find(sign, at + 1)) {
    std::string_view name = text.substr(at + sign.size());
    name = name.substr(0, name.find_first_not_of("abcdefghijklmnopqrstuvwxyz"));
    const bool apart = at == 0 || std::string_view(" ([/").find(text[at - 1]) != text.npos;
    if (apart && is_fact(name))
      return BareFact{name, at};
  }
  return std::nullopt;
}

// The place of the word itself, where the lines that it stands in hold it once.
Range exactly(const Reader &reader, Range lines, const std::string &word) {
  const std::string_view text = reader.sources.text(lines);
  const std::size_t at = text.find(word);
  if (at == text.npos || text.find(word, at + 1) != text.npos)
    return lines;
  const auto begin = static_cast<std::uint32_t>(bytes(lines.begin) + at);
  return {lines.file, Offset{begin}, Offset{static_cast<std::uint32_t>(begin + word.size())}};
}

Problem stands_bare(const Reader &reader, Range lines, const BareFact &fact) {
  const std::string word = fmt::format("{}{}", sign, fact.name);
  const std::string link = fmt::format("[1]({})", word);
  Problem problem{.kind = Kind::warning,
                  .check = "unknown-fact",
                  .range = exactly(reader, lines, word),
                  .message = fmt::format("{} is printed as it stands here", word),
                  .why = "a fact is a link: in brackets what stands there till it is filled in, "
                         "behind them the fact",
                  .type = {{link, {}}}};
  if (problem.range != lines)
    problem.edits.push_back({problem.range, link});
  return problem;
}

Problem quoted_fact(FactLine line) {
  return {
      .kind = Kind::warning,
      .check = "unknown-fact",
      .range = line.range("text"),
      .message = "words in quotes are printed as they are, and no fact is filled in",
      .why = "facts are links of running text, which stands under says or behind it",
      .type = {{fmt::format("words in {}\n  says \"{}\"", line.words("style"), line.words("text")),
                {}}}};
}

const Span *fact_in(const Block &block, std::string_view name) {
  const auto found = std::find_if(block.spans.begin(), block.spans.end(),
                                  [name](const Span &span) { return span.fact == name; });
  return found == block.spans.end() ? nullptr : &*found;
}

// "Copy 21 of 20"
Problem beyond_the_copies(const Reader &reader, const Span &copies) {
  const Counts &counts = **reader.edition.counts;
  const std::int64_t made = reader.edition.run->copies;
  return {.kind = Kind::warning,
          .check = "counts-differ",
          .range = copies.from,
          .message = fmt::format("these words count up to copy {} of {}", counts.last, made),
          .why = fmt::format("the numbers go from {} to {}, and fact:copies is what this printing "
                             "makes",
                             counts.first, counts.last),
          .type = {{"Copy [1](fact:copy)",
                    fmt::format("or `of {}` in words of your own, without a fact", counts.last)}},
          .related = {{reader.edition.counts->from, "the numbers"}}};
}

} // namespace

void tell_fact_slips(Reader &reader, const Prose &prose) {
  for (const Block &block : prose.blocks) {
    for (const Span &span : block.spans)
      if (!span.code && span.fact.empty())
        if (const auto fact = bare_fact(span.text))
          reader.report(stands_bare(reader, span.from, *fact));
    const Span *copies = fact_in(block, "copies");
    if (copies && fact_in(block, "copy") && reader.edition.counts &&
        (*reader.edition.counts)->first > 1 &&
        (*reader.edition.counts)->last > reader.edition.run->copies)
      reader.report(beyond_the_copies(reader, *copies));
  }
}

void tell_quoted_fact(Reader &reader, FactLine line) {
  if (line.has("style") && bare_fact(std::string(line.words("text"))))
    reader.report(quoted_fact(line));
}

} // namespace bodkin
