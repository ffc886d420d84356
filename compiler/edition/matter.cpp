#include "edition/matter.hpp"
#include "edition/fact_slips.hpp"

#include "edition/named_file.hpp"
#include "edition/page_list.hpp"
#include "edition/problems.hpp"
#include "edition/prose_facts.hpp"
#include "edition/values.hpp"
#include "measure/limits.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace bodkin {
namespace {

constexpr Length usual_gap = Length::inches(1, 4);

Problem crop_is_empty(FactLine line) {
  return {
      .check = "number-too-small",
      .range = line.range(),
      .message = "this crop leaves nothing of the picture",
      .why = "shares count from the picture's top left: 0% to 100% across and down, then the width "
             "and height of the part to use",
      .type = {{"crop     10% 0%, 80% x 60%", "with the shares of yours"}}};
}

std::optional<Known<Crop>> crop_of(Reader &reader, FactLine line) {
  if (!line)
    return std::nullopt;
  constexpr std::int64_t whole = 1'000'000;
  const Share *x = line.get<Share>("x"), *y = line.get<Share>("y");
  const Share *width = line.get<Share>("width"), *height = line.get<Share>("height");
  if (!x || !y || !width || !height)
    return std::nullopt;
  const auto within = [](Share from, Share extent) {
    return from.millionths >= 0 && extent.millionths > 0 &&
           from.millionths + extent.millionths <= whole;
  };
  if (!within(*x, *width) || !within(*y, *height)) {
    reader.report(crop_is_empty(line));
    return std::nullopt;
  }
  return known(Crop{*x, *y, *width, *height}, line.range());
}

std::optional<Known<Tone>> tone_of(FactLine line) {
  if (!line || !line.has("tone"))
    return std::nullopt;
  Tone tone;
  const std::string_view word = line.words("tone");
  tone.kind = word == "grey" ? ToneKind::grey : word == "line" ? ToneKind::line : ToneKind::as_is;
  if (const Share *threshold = line.get<Share>("threshold"))
    tone.threshold = *threshold;
  return known(tone, line.range());
}

Problem no_words(const Reader &reader, FactLine line) {
  const std::string_view written = reader.sources.text(line.range());
  return {
      .check = "missing-part",
      .range = line.range(),
      .message = "these words say nothing",
      .why = "words are a text in quotes, a file, a text that runs on, or what stands below `says`",
      .type = {{fmt::format("{}\n  says \"One line.\"", written), {}},
               {fmt::format("{} from \"words/page.md\"", written), "or, from a file, this"}}};
}

Problem words_twice(FactLine line) {
  return {.check = "same-fact-twice",
          .range = line.range(),
          .message = "these words are given twice: on this line, and below it by says",
          .why = "a place has one run of words, and which of the two is meant is a question",
          .type = {{{}, "take out what this line names, or the says"}}};
}

Prose prose_of(Reader &reader, FactLine line) {
  std::optional<Prose> said = said_below(reader, line);
  const bool named = line.has("file") || line.has("text");
  if (said && named)
    reader.report(words_twice(line));
  if (said)
    return std::move(*said);
  if (line.has("text"))
    tell_quoted_fact(reader, line);
  if (line.has("text"))
    return plain_prose(line.words("text"), line.range("text"));
  if (line.has("file"))
    return words_from(reader, line, "file").value_or(Prose{});
  if (!line.statement->broken)
    reader.report(no_words(reader, line));
  return {};
}

void take_columns(Reader &reader, FactLine line, Words &words) {
  // More columns than this are narrower than a letter.
  constexpr std::int64_t most_columns = 100;
  words.gap = usual_gap;
  if (const auto count = count_in(reader, line, "count", 1, "words need a column to run down"))
    words.columns = static_cast<int>(std::min(count->value, most_columns));
  if (const auto gap = length_in(reader, line, "gap", true))
    words.gap = gap->value;
}

} // namespace

Picture picture_of(Reader &reader, FactLine line, const ElementFacts &facts) {
  Picture picture;
  picture.path.from = line.range("path");
  if (line.has("path")) {
    if (auto path = find_file(reader, line, "path", limits::picture_file_bytes, FileRole::picture))
      picture.path.value = std::move(*path);
    picture.written = line.words("path");
  }
  if (const auto page = count_in(reader, line, "page", 1, "a PDF's pages count from 1"))
    picture.pdf_page = static_cast<int>(std::min<std::int64_t>(page->value, limits::pages));
  picture.crop = crop_of(reader, facts.find("crop"));
  if (const FactLine focus = facts.find("focus"); focus && focus.has("x") && focus.has("y"))
    picture.focus = known(Focus{*focus.get<Share>("x"), *focus.get<Share>("y")}, focus.range());
  if (const auto tone = tone_of(facts.find("tone")))
    picture.tone = *tone;
  return picture;
}

Words written_words_of(Reader &reader, FactLine line, const ElementFacts &facts) {
  Words words;
  words.by = line.word() == "credits" ? WrittenBy::credits : WrittenBy::colophon;
  if (const auto style = id_in<StyleId>(reader, Family::style, line, "style"))
    words.style = *style;
  take_columns(reader, facts.find("columns"), words);
  return words;
}

Words words_of(Reader &reader, FactLine line, const ElementFacts &facts) {
  Words words;
  if (const auto style = id_in<StyleId>(reader, Family::style, line, "style"))
    words.style = *style;
  if (line.has("of")) {
    const auto text = id_in<TextId>(reader, Family::text, line, "of");
    if (text)
      words.words = text->value;
    if (said_below(reader, line))
      reader.report(words_twice(line));
  } else {
    words.words = prose_of(reader, line);
    words.file = line.words("file");
  }
  take_columns(reader, facts.find("columns"), words);
  words.continues = page_in(reader, facts.find("continues"), "page");
  return words;
}

} // namespace bodkin
