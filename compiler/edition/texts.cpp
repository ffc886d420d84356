#include "edition/texts.hpp"

#include "edition/copy_numbers.hpp"
#include "edition/problems.hpp"
#include "edition/prose_facts.hpp"
#include "edition/values.hpp"

#include <fmt/format.h>

namespace bodkin {
namespace {

Problem no_words(FactLine line) {
  const std::string_view name = line.words("name");
  return {.check = "missing-part",
          .range = line.range(),
          .message = fmt::format("the text {} has no words", name),
          .why = "a text comes from a file, or stands below `says`",
          .type = {{fmt::format("text {} from \"words/{}.md\"", name, name), {}}}};
}

Problem words_twice(FactLine says) {
  return {.check = "same-fact-twice",
          .range = says.keyword(),
          .message = "this text comes from a file already",
          .why = "its words would be a question: those of the file, or those below",
          .type = {{{}, "take out `from` and the file, or what `says` says"}}};
}

// The range of its first number; nowhere: it has none.
Range number_in(const Prose &prose) {
  for (const Block &block : prose.blocks)
    for (const Span &span : block.spans)
      if (span.fact == "copy")
        return span.from;
  return {};
}

Problem number_in_a_text(const Text &text) {
  return {.check = "number-in-a-text",
          .range = number_in(text.prose),
          .message = fmt::format(
              "the number of a copy stands in {}, a text that runs through boxes", text.name),
          .why = "a number is longer in one copy than in another, and may move words from page to "
                 "page: every sheet would be another in every copy",
          .type = {{"words in body\n  says \"Copy [1](fact:copy)\"",
                    "in a place of its own on the page that shows it"}}};
}

Text text_of(Reader &reader, FactLine line) {
  Text text;
  text.name = line.words("name");
  text.range = line.range();
  std::optional<Prose> said = said_below(reader, line);
  if (line.has("file")) {
    text.path = line.words("file");
    if (said)
      reader.report(words_twice(line));
    else
      text.prose = words_from(reader, line, "file").value_or(Prose{});
  } else if (!said && !line.statement->broken) {
    reader.report(no_words(line));
  }
  if (said)
    text.prose = std::move(*said);
  if (bears_number(text.prose))
    reader.report(number_in_a_text(text));
  text.source = id_in<SourceId>(reader, Family::source, Facts(line).find("source"), "source");
  return text;
}

} // namespace

void take_texts(Reader &reader) {
  for (const Named &named : reader.things(Family::text).all)
    reader.edition.texts.push_back(text_of(reader, named.line));
}

} // namespace bodkin
