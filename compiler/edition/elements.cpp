#include "edition/elements.hpp"
#include "edition/own_runs.hpp"

#include "edition/every.hpp"
#include "edition/matter.hpp"
#include "edition/placement.hpp"
#include "edition/problems.hpp"
#include "edition/values.hpp"
#include "edition/work.hpp"
#include "measure/limits.hpp"

#include <fmt/format.h>

namespace bodkin {
namespace {

HandKind hand_of(std::string_view word) {
  for (const HandKind kind :
       {HandKind::stamp, HandKind::sticker, HandKind::signature, HandKind::number, HandKind::spray,
        HandKind::colour, HandKind::tear, HandKind::punch, HandKind::tip_in})
    if (name_of(kind) == word)
      return kind;
  return HandKind::other;
}

Rule rule_of(Reader &reader, FactLine line) {
  Rule rule;
  if (const auto width = length_in(reader, line, "width", false))
    rule.width = width->value;
  if (const auto paint = paint_in(reader, line, "colour"))
    rule.paint = paint->value;
  if (const Spot *start = line.get<Spot>("start"))
    rule.start = *start;
  if (const Spot *end = line.get<Spot>("end"))
    rule.end = *end;
  return rule;
}

Qr qr_of(FactLine line) {
  Qr qr;
  if (const auto text = text_in(line, "text"))
    qr.text = *text;
  return qr;
}

Lay lay_of(Reader &reader, FactLine line) {
  Lay lay;
  if (const auto id = id_in<StandingId>(reader, Family::standing, line, "standing"))
    lay.standing = id->value;
  if (const auto *across = line.get<language::Along>("across"))
    lay.across = along_of(*across);
  if (const auto *down = line.get<language::Along>("down"))
    lay.down = along_of(*down);
  return lay;
}

Folio folio_of(Reader &reader, FactLine line) {
  const auto style = id_in<StyleId>(reader, Family::style, line, "style");
  return {style ? style->value : StyleId::none};
}

decltype(Element::what) matter_of(Reader &reader, FactLine line, const ElementFacts &facts) {
  const std::string_view word = line.word();
  if (word == "picture")
    return picture_of(reader, line, facts);
  if (word == "words")
    return words_of(reader, line, facts);
  if (word == "credits" || word == "colophon")
    return written_words_of(reader, line, facts);
  if (word == "rule")
    return rule_of(reader, line);
  if (word == "qr")
    return qr_of(line);
  if (word == "lay")
    return lay_of(reader, line);
  if (word == "hand")
    return Hand{hand_of(line.words("kind")), std::string(line.words("text")),
                counts_in(reader, facts.find("counts"))};
  if (word == "paste-up")
    return PasteUp{std::string(line.words("text"))};
  if (word == "folio")
    return folio_of(reader, line);
  return Patch{};
}

void take_looks(Reader &reader, const ElementFacts &facts, Element &element) {
  if (const auto turn = value_in<Angle>(facts.find("turn"), "turn"))
    element.turn = *turn;
  const FactLine outline = facts.find("outline");
  const auto width = length_in(reader, outline, "width", false);
  const auto colour = paint_in(reader, outline, "colour");
  if (width && colour)
    element.outline = known(Outline{width->value, colour->value}, outline.range());
  const FactLine fill = facts.find("fill");
  if (const auto paint = paint_in(reader, fill, "colour")) {
    const Share *share = fill.get<Share>("share");
    element.fill = known(share ? Fill{paint->value, *share} : Fill{paint->value}, fill.range());
  }
  element.describe = text_in(facts.find("describe"), "describe");
  element.source = id_in<SourceId>(reader, Family::source, facts.find("source"), "source");
}

// What is printed on a piece is for all the copies that hold it.
void settle_only(Reader &reader, FactLine only, Element &element) {
  if (!element.work.only || !reader.piece || std::holds_alternative<Hand>(element.what))
    return;
  reader.report(only_in_a_piece(reader, only));
  element.work.only.reset();
}

Element element_of(Reader &reader, FactLine line, Stands stands) {
  const ElementFacts facts(reader, line);
  Element element;
  element.range = line.range();
  element.keyword = line.keyword();
  element.what = matter_of(reader, line, facts);
  element.placement = placement_of(reader, line, facts, stands);
  take_looks(reader, facts, element);
  if (const auto turn = value_in<Angle>(line, "turn"))
    element.turn = *turn;
  if (std::holds_alternative<Hand>(element.what) || std::holds_alternative<PasteUp>(element.what))
    element.work = work_of(reader, facts.of({"takes", "costs", "caution", "only", "when", "mass"}));
  else
    element.work.only = only_in(reader, facts.find("only"));
  settle_only(reader, facts.find("only"), element);
  return element;
}

bool is_element(std::string_view word) {
  for (const std::string_view one : {"picture", "words", "credits", "colophon", "rule", "patch",
                                     "qr", "lay", "hand", "folio", "paste-up"})
    if (word == one)
      return true;
  return false;
}

} // namespace

Problem too_many_things(Range range, std::size_t most) {
  return {.check = "too-many-things",
          .range = range,
          .message =
              fmt::format("more than {} things would stand here; the rest is left out", most),
          .why = "no paper shows so many, and laying them would only make you wait",
          .type = {{{}, "draw them as one picture"}}};
}

std::vector<ElementId> take_elements(Reader &reader, FactLine parent, Stands stands) {
  std::vector<ElementId> ids;
  bool full = false;
  parent.each_child([&](FactLine line) {
    if (full || !is_element(line.word()))
      return;
    if (static_cast<std::int64_t>(ids.size()) == limits::elements_a_page) {
      full = true;
      reader.report(too_many_things(parent.range(), limits::elements_a_page));
      return;
    }
    Element element = element_of(reader, line, stands);
    ids.push_back(static_cast<ElementId>(reader.edition.elements.size()));
    reader.edition.elements.push_back(std::move(element));
  });
  return ids;
}

} // namespace bodkin
