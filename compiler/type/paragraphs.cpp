#include "type/paragraphs.hpp"

#include "measure/limits.hpp"
#include "type/typed_text.hpp"

#include <algorithm>

namespace bodkin {
namespace {

// Of headings that have no style of their own, in hundredths of the text's size.
constexpr std::array<std::int64_t, 6> heading_size = {150, 125, 110, 100, 100, 100};

Length em_share(Length size, std::int64_t halves) { return size * halves / 2; }

struct Setting {
  const Edition &edition;
  const OpenFaces &faces;
  Findings *findings;

  // A span of nothing yet, in a style's face.
  TypedSpan typed(StyleId id, Cut cut, Range from) const {
    const Style &style = edition[id];
    TypedSpan span;
    span.face = *style.face;
    span.size = *style.size;
    span.paint = *style.ink;
    span.figures = *style.figures;
    span.from = from;
    choose(span, cut);
    return span;
  }
  void choose(TypedSpan &span, Cut cut) const {
    const OpenFace &face = faces[span.face];
    span.asked = cut;
    span.cut = face.nearest(cut);
    if (face.usable() && face[cut] == nullptr && findings != nullptr)
      findings->missing_cut(span.face, cut, span.from);
  }
};

Cut cut_of(bool bold, bool italic) {
  if (bold)
    return italic ? Cut::bold_italic : Cut::bold;
  return italic ? Cut::italic : Cut::regular;
}

// The style that a block is set in; plain where that style has none of its own for its kind.
struct BlockStyle {
  StyleId style = StyleId::none;
  bool plain_heading = false, plain_code = false;
};

BlockStyle style_of(const Block &block, StyleId base, const Edition &edition) {
  StyleId id = base;
  if (block.quote_depth > 0 && edition[id].quote)
    id = **edition[id].quote;
  if (block.list_depth > 0 && edition[id].list)
    id = **edition[id].list;
  const Style &style = edition[id];
  if (block.kind == BlockKind::code)
    return {style.code ? **style.code : id, false, !style.code};
  if (block.kind != BlockKind::heading)
    return {id};
  const auto &own = style.headings[static_cast<std::size_t>(block.heading_level - 1)];
  return {own ? **own : id, !own};
}

// The first paragraph of a run stands flush: the eye needs no mark where something else came
// before.
bool goes_in(const Block *before, const Block &block) {
  if (block.kind != BlockKind::paragraph && block.kind != BlockKind::quote)
    return false;
  return before != nullptr && before->kind == block.kind &&
         before->quote_depth == block.quote_depth && before->list_depth == block.list_depth;
}

// Items of a list written with empty lines between them stand apart on paper too, by a whole line
// so that lines stay level.
bool stands_apart(const Block *before, const Block &block) {
  return before != nullptr && before->kind == BlockKind::list_item && before->loose &&
         block.kind == BlockKind::list_item && block.loose;
}

void add_span(Paragraph &paragraph, TypedSpan span, std::string_view typed, White white) {
  span.begin = static_cast<std::uint32_t>(paragraph.text.size());
  append_typed(paragraph.text, typed, white);
  span.end = static_cast<std::uint32_t>(paragraph.text.size());
  if (span.end > span.begin)
    paragraph.spans.push_back(span);
}

void add_hard_break(Paragraph &paragraph, const Span &span) {
  TypedSpan typed = paragraph.typed;
  typed.from = span.from;
  add_span(paragraph, typed, "\n", White::kept);
}

void set_spans(Paragraph &paragraph, const Block &block, const BlockStyle &chosen,
               const Setting &setting) {
  const Style &style = setting.edition[chosen.style];
  const bool code_block = block.kind == BlockKind::code;
  const bool bold = paragraph.typed.asked == Cut::bold;
  for (const Span &span : block.spans) {
    if (span.hard_break) {
      add_hard_break(paragraph, span);
      continue;
    }
    TypedSpan typed = paragraph.typed;
    typed.from = span.from;
    if (span.code && !code_block) {
      if (style.code)
        typed = setting.typed(**style.code, Cut::regular, span.from);
      else if (setting.findings != nullptr)
        setting.findings->code_unstyled(chosen.style, span.from);
    }
    setting.choose(typed, cut_of(bold || span.strong, span.emphasis));
    if (typed.cut == nullptr) // code in a face that could not be opened, which was said
      typed = paragraph.typed;
    add_span(paragraph, typed, span.text, span.code || code_block ? White::kept : White::one_space);
  }
}

Paragraph begun(const BlockStyle &chosen, const Setting &setting, Range from) {
  const Style &style = setting.edition[chosen.style];
  Paragraph paragraph;
  paragraph.typed = setting.typed(chosen.style, Cut::regular, from);
  paragraph.leading = *style.leading;
  paragraph.lines = *style.lines;
  paragraph.ranged_by_default = style.lines.by_default();
  paragraph.above = *style.space_before;
  paragraph.below = *style.space_after;
  return paragraph;
}

void make_plain_heading(Paragraph &paragraph, int level, const Setting &setting) {
  const std::int64_t grown = heading_size[static_cast<std::size_t>(level - 1)];
  paragraph.above = paragraph.leading;
  paragraph.leading = paragraph.leading * grown / 100;
  paragraph.typed.size = paragraph.typed.size * grown / 100;
  setting.choose(paragraph.typed, Cut::bold);
  if (paragraph.lines == Lines::justified)
    paragraph.lines = Lines::left;
}

Paragraph paragraph_for(const Block &block, StyleId base, const Setting &setting) {
  const BlockStyle chosen = style_of(block, base, setting.edition);
  Paragraph paragraph = begun(chosen, setting, block.from);
  const Length size = paragraph.typed.size;
  paragraph.inset_left = em_share(size, 2 * block.quote_depth + 3 * block.list_depth);
  paragraph.inset_right = em_share(size, 2 * block.quote_depth);
  paragraph.sign = block.sign;
  paragraph.hang = em_share(size, 3);
  if (chosen.plain_heading)
    make_plain_heading(paragraph, block.heading_level, setting);
  if (block.kind == BlockKind::code && paragraph.lines == Lines::justified)
    paragraph.lines = Lines::left;
  if (chosen.plain_code && setting.findings != nullptr)
    setting.findings->code_unstyled(chosen.style, block.from);
  set_spans(paragraph, block, chosen, setting);
  return paragraph;
}

// Where to part a text that is too long: after a space, or in a word without end after a character.
std::uint32_t bounded_part(std::string_view text) {
  const std::size_t space = text.rfind(' ', limits::paragraph_bytes - 1);
  if (space != std::string_view::npos && space != 0)
    return static_cast<std::uint32_t>(space + 1);
  std::size_t at = limits::paragraph_bytes;
  while (at > 1 && (static_cast<unsigned char>(text[at]) & 0xc0) == 0x80)
    --at;
  return static_cast<std::uint32_t>(at);
}

// A paragraph too long to shape at once goes on as one more, with nothing to show where.
void add_bounded(Paragraph paragraph, std::vector<Paragraph> &all) {
  while (paragraph.text.size() > limits::paragraph_bytes) {
    const std::uint32_t cut = bounded_part(paragraph.text);
    Paragraph rest = paragraph;
    rest.text.erase(0, cut);
    rest.sign.clear();
    rest.indent = rest.above = Length{};
    std::erase_if(rest.spans, [&](const TypedSpan &span) { return span.end <= cut; });
    for (TypedSpan &span : rest.spans) {
      span.begin = std::max(span.begin, cut) - cut;
      span.end -= cut;
    }
    paragraph.text.resize(cut);
    paragraph.below = Length{};
    std::erase_if(paragraph.spans, [&](const TypedSpan &span) { return span.begin >= cut; });
    paragraph.spans.back().end = std::min(paragraph.spans.back().end, cut);
    all.push_back(std::move(paragraph));
    paragraph = std::move(rest);
  }
  all.push_back(std::move(paragraph));
}

bool says_nothing(const Paragraph &paragraph) {
  return paragraph.sign.empty() && paragraph.text.find_first_not_of(" \n") == std::string::npos;
}

} // namespace

Length Paragraph::baseline() const {
  if (typed.cut == nullptr)
    return leading;
  const Length up = typed.cut->scaled(typed.cut->ascender(), typed.size);
  const Length down = typed.cut->scaled(typed.cut->descender(), typed.size);
  return (leading - up - down) / 2 + up;
}

std::vector<Paragraph> paragraphs_of(const Prose &prose, StyleId style, const Edition &edition,
                                     const OpenFaces &faces, Findings &findings) {
  const Setting setting{edition, faces, &findings};
  std::vector<Paragraph> all;
  const Block *before = nullptr;
  Length empty_lines;
  for (const Block &block : prose.blocks) {
    if (block.kind == BlockKind::thought_break) {
      empty_lines += *edition[style].leading;
    } else {
      Paragraph paragraph = paragraph_for(block, style, setting);
      if (says_nothing(paragraph))
        continue;
      if (goes_in(before, block))
        paragraph.indent = *edition[style_of(block, style, edition).style].indent;
      if (stands_apart(before, block))
        empty_lines += paragraph.leading;
      paragraph.above += empty_lines;
      empty_lines = Length{};
      add_bounded(std::move(paragraph), all);
    }
    before = &block;
  }
  return all;
}

Paragraph paragraph_of(std::string_view words, StyleId style, const Edition &edition,
                       const OpenFaces &faces, Range from) {
  Paragraph paragraph = begun({style}, {edition, faces, nullptr}, from);
  add_span(paragraph, paragraph.typed, words, White::one_space);
  return paragraph;
}

} // namespace bodkin
