#include "edition/like.hpp"
#include "edition/problems.hpp"
#include "edition/supplies.hpp"
#include "edition/values.hpp"

#include <fmt/format.h>

namespace bodkin {
namespace {

Length points(const Decimal &decimal) { return Length::nearest_points(decimal.value()); }

Problem no_face(FactLine thing, const Reader &reader) {
  const std::vector<std::string_view> faces = reader.things(Family::face).names();
  return missing_fact(thing.range("name"),
                      fmt::format("the style {} does not say its face", thing.words("name")),
                      "no face is taken for granted: what stands on paper has been chosen",
                      fmt::format("face       {} 10/13", faces.empty() ? "book" : faces.front()));
}

Problem no_size(FactLine face, const language::TypeSize &size, Range where) {
  return too_small(where, "letters of no size cannot be set",
                   "sizes and leadings are in points, 72 to the inch; running text has 9 to 12",
                   fmt::format("face       {} {}/13", face.words("face"),
                               size.size.digits > 0 ? written(size.size) : "10"));
}

void take_face(Reader &reader, FactLine thing, const Facts &facts, Style &style) {
  const FactLine face = facts.find("face");
  if (!face) {
    if (facts.whole())
      reader.report(no_face(thing, reader));
    return;
  }
  if (const auto id = id_in<FaceId>(reader, Family::face, face, "face"))
    style.face = *id;
  const auto size = value_in<language::TypeSize>(face, "size");
  if (!size)
    return;
  if (size->value.size.digits <= 0 || size->value.leading.digits < 0) {
    reader.report(no_size(face, size->value, size->from));
    return;
  }
  style.size = known(points(size->value.size), size->from);
  style.leading = size->value.leading.digits > 0 ? known(points(size->value.leading), size->from)
                                                 : known(style.size.value * 12 / 10, Range{});
}

Lines lines_of(std::string_view word) {
  if (word == "right")
    return Lines::right;
  if (word == "centred")
    return Lines::centred;
  return word == "justified" ? Lines::justified : Lines::left;
}

void take_paragraphs(Reader &reader, const Facts &facts, Style &style) {
  if (const auto lines = text_in(facts.find("lines"), "lines"))
    style.lines = known(lines_of(lines->value), lines->from);
  if (const auto ink = paint_in(reader, facts.find("ink"), "ink"))
    style.ink = *ink;
  if (const auto figures = text_in(facts.find("figures"), "figures"))
    style.figures =
        known(figures->value == "lining" ? Figures::lining : Figures::old_style, figures->from);
  const FactLine space = facts.find("space");
  if (const auto before = length_in(reader, space, "before", true))
    style.space_before = *before;
  if (const auto after = length_in(reader, space, "after", true))
    style.space_after = *after;
  if (const auto indent = value_in<Length>(facts.find("indent"), "indent")) {
    style.indent = *indent;
    return;
  }
  // Paragraphs are parted by an indent or by room between them, not by both.
  const bool ranged_off = *style.lines == Lines::centred || *style.lines == Lines::right;
  style.indent.value = space || ranged_off ? Length{} : style.size.value;
}

void take_heading(Reader &reader, FactLine line, Style &style) {
  const auto level = count_in(reader, line, "level", 1, "headings have the levels 1 to 6");
  if (!level)
    return;
  const auto id = id_in<StyleId>(reader, Family::style, line, "style");
  if (level->value > 6) {
    reader.report({.check = "unknown-kind",
                   .range = level->from,
                   .message = "headings have the levels 1 to 6",
                   .why = "in prose, as many # as the level stand before a heading, at most six",
                   .type = {{typed(reader, line.range(), level->from, "6"), {}}}});
    return;
  }
  std::optional<Known<StyleId>> &place = style.headings[static_cast<std::size_t>(level->value - 1)];
  if (place)
    reader.report(
        {.check = "same-fact-twice",
         .range = line.range(),
         .message = fmt::format("headings of level {} have their style from {} already",
                                level->value, place_words(reader, place->from, line.range().file)),
         .why = "one fact is written once, so that there is never a question which counts",
         .type = {{{}, "keep the line that is right and take the other out"}},
         .related = {{place->from, "the first of them"}}});
  else
    place = id;
}

Style style_of(Reader &reader, const Named &named, const Facts &facts) {
  Style style;
  style.name = named.name;
  style.title = named.line.words("title");
  style.range = named.line.range();
  take_face(reader, named.line, facts, style);
  take_paragraphs(reader, facts, style);
  facts.each("heading", [&](FactLine line) { take_heading(reader, line, style); });
  style.quote = id_in<StyleId>(reader, Family::style, facts.find("quote"), "style");
  style.list = id_in<StyleId>(reader, Family::style, facts.find("list"), "style");
  style.code = id_in<StyleId>(reader, Family::style, facts.find("code"), "style");
  return style;
}

} // namespace

void take_styles(Reader &reader) {
  const std::vector<Facts> facts = facts_of_all(reader, Family::style);
  const Things &things = reader.things(Family::style);
  for (std::size_t i = 0; i < things.all.size(); ++i)
    reader.edition.styles.push_back(style_of(reader, things.all[i], facts[i]));
}

} // namespace bodkin
