#include "edition/prose_facts.hpp"

#include "edition/copy_numbers.hpp"
#include "edition/fact_slips.hpp"
#include "edition/named_file.hpp"
#include "edition/page_list.hpp"
#include "edition/price_words.hpp"
#include "edition/problems.hpp"
#include "edition/values.hpp"
#include "measure/limits.hpp"

#include <algorithm>
#include <array>
#include <fmt/format.h>

namespace bodkin {
namespace {

// The edition's line that a fact in prose stands for, and the part of its phrase.
struct FactName {
  std::string_view name, line, part;
};
constexpr std::array<FactName, 8> fact_names{{{"subtitle", "subtitle", "subtitle"},
                                              {"number", "number", "number"},
                                              {"dated", "dated", "date"},
                                              {"maker", "maker", "maker"},
                                              {"series", "series", "series"},
                                              {"copies", "run", "copies"},
                                              {"price", "price", "price"},
                                              {"pages", "pages", "count"}}};

// What a maker may call a fact that has another name here.
struct OtherName {
  std::string_view said, fact;
};
constexpr std::array<OtherName, 12> other_names{{{"total", "copies"},
                                                 {"run", "copies"},
                                                 {"edition", "title"},
                                                 {"name", "title"},
                                                 {"author", "maker"},
                                                 {"by", "maker"},
                                                 {"date", "dated"},
                                                 {"year", "dated"},
                                                 {"cost", "price"},
                                                 {"issue", "number"},
                                                 {"sheets", "pages"},
                                                 {"numbered", "copy"}}};

// Of the first run that has one; each run's own is put into its copies' words later.
std::optional<std::string> any_price(const Reader &reader) {
  const auto runs =
      static_cast<std::uint32_t>(std::max<std::size_t>(reader.edition.runs.size(), 1));
  for (std::uint32_t run = 0; run < runs; ++run)
    if (auto price = price_in_words(reader, run))
      return price;
  return std::nullopt;
}

std::optional<std::string> figure(const Reader &reader, std::string_view name) {
  const FactLine edition = reader.piece ? reader.whole.line : reader.edition_line;
  const Facts &facts = reader.piece ? reader.whole.facts : reader.edition_facts;
  if (name == "title" && edition)
    return std::string(edition.words("title"));
  if (name == "pages")
    return std::to_string(reader.piece ? reader.whole.pages : *reader.edition.page_count);
  if (name == "copy")
    return number_of(reader.edition, 0);
  if (name == "copies" && !reader.edition.runs.empty())
    return std::to_string(reader.edition.run->copies);
  if (name == "price")
    return any_price(reader);
  for (const FactName &fact : fact_names) {
    if (fact.name != name)
      continue;
    const FactLine line = facts.find(fact.line);
    if (!line || !line.has(fact.part))
      return std::nullopt;
    if (const auto *text = line.get<language::Quoted>(fact.part))
      return std::string(text->text);
    return std::string(reader.sources.text(line.range(fact.part)));
  }
  return std::nullopt;
}

std::string example_of(std::string_view name) {
  const std::string_view word = name == "copies" ? "run" : name;
  const language::Entry *entry = language::entry_of(word, "edition");
  return entry ? std::string(entry->example) : std::string{};
}

std::optional<std::string_view> meant_fact(Reader &reader, std::string_view said,
                                           const std::vector<std::string_view> &names) {
  for (const OtherName &other : other_names)
    if (other.said == said)
      return other.fact;
  return reader.near(said, names);
}

Problem unknown_fact(Reader &reader, const Span &span) {
  std::vector<std::string_view> names{"title"};
  for (const FactName &fact : fact_names)
    names.push_back(fact.name);
  names.emplace_back("copy");
  if (is_fact(span.fact))
    return {.check = "unknown-fact",
            .range = span.from,
            .message = fmt::format("this edition does not say its {}", span.fact),
            .why = "a fact in prose is filled in from the line of the edition that states it",
            .type = {{example_of(span.fact), "under edition, with your own"}}};
  Problem problem{.check = "unknown-fact",
                  .range = span.from,
                  .message = fmt::format("no fact is called {}", span.fact),
                  .why = fmt::format("facts in prose are {}", list_of(names))};
  const auto near = meant_fact(reader, span.fact, names);
  const std::string link =
      fmt::format("[{}](fact:{})", span.text, near ? *near : std::string_view("title"));
  if (near)
    problem.message += fmt::format("; did you mean {}?", *near);
  if (near && reader.sources.text(span.from).starts_with('['))
    problem.edits.push_back({span.from, link});
  problem.type.push_back({link, {}});
  return problem;
}

Problem unknown_page_name(Reader &reader, const Span &span) {
  Problem problem{.check = "unknown-page",
                  .range = span.from,
                  .message = fmt::format("no page is called {}", span.page)};
  problem.why = called_list(reader);
  if (const auto near = reader.near(span.page, called_names(reader))) {
    problem.message += fmt::format("; did you mean {}?", *near);
    problem.type.push_back({fmt::format("[{}](page:{})", span.text, *near), {}});
  } else {
    problem.type.push_back(
        {fmt::format("page 12 called {}", span.page), "on the line that opens it"});
  }
  return problem;
}

Problem too_many_numbers(Reader &reader, const Span &span) {
  return {.check = "number-too-big",
          .range = span.from,
          .message = fmt::format("{} copies are more than get a printed number of their own; {} is "
                                 "the most",
                                 reader.edition.run->copies, limits::numbered_copies),
          .why = "the sheets of each copy are pages of their own in the file for the machine",
          .type = {{"hand number \"with a numbering stamp\"", "in place of a printed number"}}};
}

void fill_in_span(Reader &reader, Span &span) {
  if (span.fact == "copy" && reader.edition.run->copies > limits::numbered_copies) {
    reader.report(too_many_numbers(reader, span));
    span.fact.clear();
  }
  if (!span.fact.empty()) {
    if (auto text = figure(reader, span.fact))
      span.text = std::move(*text);
    else if (reader.keeps_problems())
      reader.report(unknown_fact(reader, span));
  }
  if (!span.page.empty()) {
    if (const int page = page_named(reader, span.page); page > 0)
      span.text = std::to_string(page);
    else if (reader.keeps_problems())
      reader.report(unknown_page_name(reader, span));
  }
}

Problem too_much_prose(Range range) {
  return {.check = "too-long-file",
          .range = range,
          .message = "with these words the edition holds more prose than any booklet",
          .why = fmt::format("all prose together may have {} MB and {} lines; from here on it is "
                             "left out",
                             limits::all_prose_bytes >> 20, limits::all_prose_lines),
          .type = {{{}, "make it several editions"}}};
}

Problem too_long_a_text(Range range) {
  return {.check = "too-long-file",
          .range = range,
          .message = "these words are more than any booklet holds in one text",
          .why = fmt::format("one text may have {} MB and {} lines, three long novels; this one is "
                             "left out",
                             limits::prose_bytes >> 20, limits::prose_lines),
          .type = {{{}, "part it into several texts"}}};
}

std::optional<Prose> read_bounded(Reader &reader, std::string_view text, Range origin) {
  const auto lines = static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n'));
  if (text.size() > limits::prose_bytes || lines > limits::prose_lines) {
    reader.report(too_long_a_text(origin));
    return std::nullopt;
  }
  const auto full = [&] {
    return reader.prose_read > limits::all_prose_bytes ||
           reader.prose_lines > limits::all_prose_lines;
  };
  const bool was_full = full();
  reader.prose_read += text.size();
  reader.prose_lines += lines;
  if (full()) {
    if (!was_full)
      reader.report(too_much_prose(origin));
    return std::nullopt;
  }
  Problems found;
  Prose prose = read_prose(text, origin, reader.sources, found);
  for (Problem &problem : found)
    reader.report(std::move(problem));
  tell_fact_slips(reader, prose);
  fill_in(reader, prose);
  return prose;
}

// `says` stands on a line of its own below `words` or `text`.
FactLine says_of(FactLine line) {
  if (line.statement->has_prose)
    return line;
  return Facts(line).find("says");
}

} // namespace

bool is_fact(std::string_view name) {
  if (name == "title" || name == "copy")
    return true;
  for (const FactName &fact : fact_names)
    if (fact.name == name)
      return true;
  return false;
}

void fill_in(Reader &reader, Prose &prose) {
  for (Block &block : prose.blocks)
    for (Span &span : block.spans)
      fill_in_span(reader, span);
}

std::optional<Prose> said_below(Reader &reader, FactLine line) {
  const FactLine says = says_of(line);
  if (!says)
    return std::nullopt;
  if (says.statement->has_prose) {
    const language::Tree &tree = says.in->tree;
    const Range block{tree.file, says.statement->prose_begin, says.statement->prose_end};
    return read_bounded(reader, language::prose_text(tree, *says.statement, reader.sources), block)
        .value_or(Prose{});
  }
  if (!says.has("text"))
    return Prose{};
  return read_bounded(reader, says.words("text"), says.range("text")).value_or(Prose{});
}

static Problem empty_words(FactLine line, std::string_view part) {
  return {.check = "empty-words",
          .range = line.range(part),
          .message = fmt::format("{} holds no words", line.words(part)),
          .why = "the places that ask for them would come out of the machine empty, and be paid",
          .type = {{{}, "write the words into it, or take out what asks for them"}}};
}

std::optional<Prose> words_from(Reader &reader, FactLine line, std::string_view part) {
  const FileId file = take_words(reader, line, part);
  if (file == FileId::none)
    return std::nullopt;
  const std::string_view text = reader.sources.text(file);
  if (text.find_first_not_of(" \t\r\n\f") == std::string_view::npos)
    reader.report(empty_words(line, part));
  const Range whole{file, Offset{0}, Offset{static_cast<std::uint32_t>(text.size())}};
  return read_bounded(reader, text, whole);
}

Prose plain_prose(std::string_view text, Range range) {
  Block block;
  block.spans.push_back({.text = std::string(text), .from = range});
  block.from = range;
  Prose prose;
  if (!text.empty())
    prose.blocks.push_back(std::move(block));
  return prose;
}

} // namespace bodkin
