#include "type/shape.hpp"

#include "type/points.hpp"
#include "type/words.hpp"

#include <hb.h>
#include <new>

namespace bodkin {
namespace {

bool leftwards(std::uint8_t level) { return level % 2 != 0; }

// OpenType's feature for a kind of figures, as its registry of features names them.
hb_feature_t feature_of(Figures figures) {
  return {figures == Figures::lining ? HB_TAG('l', 'n', 'u', 'm') : HB_TAG('o', 'n', 'u', 'm'), 1,
          HB_FEATURE_GLOBAL_START, HB_FEATURE_GLOBAL_END};
}

// Bytes from a cluster's start to the next one's.
std::uint32_t cluster_end(const TextRun &run, const hb_glyph_info_t *infos, unsigned count,
                          unsigned i) {
  const std::uint32_t begin = infos[i].cluster;
  if (leftwards(run.level)) {
    for (unsigned k = i; k-- > 0;)
      if (infos[k].cluster > begin)
        return infos[k].cluster;
  } else {
    for (unsigned k = i + 1; k < count; ++k)
      if (infos[k].cluster > begin)
        return infos[k].cluster;
  }
  return run.end;
}

// Tells the characters of a cluster that came out without a glyph.
void report(const Paragraph &paragraph, const TypedSpan &span, std::uint32_t begin,
            std::uint32_t end, Findings &findings) {
  const std::string_view text = paragraph.text;
  bool told = false;
  for (std::uint32_t at = begin; at < end;) {
    const CodePoint c = code_point_at(text, at);
    hb_codepoint_t glyph = 0;
    if (hb_font_get_nominal_glyph(span.cut->harfbuzz(), c.value, &glyph) == 0) {
      findings.missing_glyph({span.face, span.asked, std::string(text.substr(at, c.bytes))},
                             span.from, text, at);
      told = true;
    }
    at += c.bytes;
  }
  if (!told)
    findings.missing_glyph(
        {span.face, span.asked, std::string(text.substr(begin, code_point_at(text, begin).bytes))},
        span.from, text, begin);
}

} // namespace

Shaper::Shaper(const std::string &language)
    : language_(hb_language_from_string(language.data(), static_cast<int>(language.size()))),
      breaker_(language), buffer_(hb_buffer_create()) {}

void Shaper::fill_buffer(const Paragraph &paragraph, const TextRun &run) {
  hb_buffer_t *buffer = buffer_.get();
  hb_buffer_reset(buffer);
  // Everything that could be guessed is said: a guess would ask the machine's locale.
  hb_buffer_set_direction(buffer, leftwards(run.level) ? HB_DIRECTION_RTL : HB_DIRECTION_LTR);
  hb_buffer_set_script(buffer, static_cast<hb_script_t>(run.script));
  hb_buffer_set_language(buffer, language_);
  hb_buffer_add_utf8(buffer, paragraph.text.data(), static_cast<int>(paragraph.text.size()),
                     run.begin, static_cast<int>(run.end - run.begin));
  const TypedSpan &span = paragraph.spans[run.span];
  const hb_feature_t figures = feature_of(span.figures);
  hb_shape(span.cut->harfbuzz(), buffer, &figures, span.figures == Figures::of_face ? 0 : 1);
  if (hb_buffer_allocation_successful(buffer) == 0)
    throw std::bad_alloc();
}

void Shaper::shape_run(const Paragraph &paragraph, const TextRun &run, Findings *findings,
                       std::vector<ShapedGlyph> &glyphs) {
  fill_buffer(paragraph, run);
  const TypedSpan &span = paragraph.spans[run.span];
  unsigned count = 0;
  const hb_glyph_info_t *infos = hb_buffer_get_glyph_infos(buffer_.get(), &count);
  const hb_glyph_position_t *places = hb_buffer_get_glyph_positions(buffer_.get(), &count);
  glyphs.reserve(glyphs.size() + count);
  for (unsigned i = 0; i < count; ++i) {
    const bool there = infos[i].codepoint != 0 && span.cut->draws(infos[i].codepoint);
    if (!there && findings != nullptr)
      report(paragraph, span, infos[i].cluster, cluster_end(run, infos, count, i), *findings);
    const bool joined =
        (hb_glyph_info_get_glyph_flags(&infos[i]) & HB_GLYPH_FLAG_UNSAFE_TO_BREAK) != 0;
    glyphs.push_back({there ? infos[i].codepoint : 0, infos[i].cluster, places[i].x_advance,
                      places[i].x_offset, places[i].y_offset, joined});
  }
}

void Shaper::shape_part(const Paragraph &paragraph, const TextRun &part,
                        std::vector<ShapedGlyph> &glyphs) {
  shape_run(paragraph, part, nullptr, glyphs);
}

Shaped Shaper::shape(const Paragraph &paragraph, Findings &findings) {
  Shaped shaped;
  const Directions directions = directions_of(paragraph.text);
  shaped.base_level = directions.base;
  shaped.glyphs.reserve(paragraph.text.size());
  for (const TextRun &run : runs_of(paragraph, directions)) {
    const auto first = static_cast<std::uint32_t>(shaped.glyphs.size());
    shape_run(paragraph, run, &findings, shaped.glyphs);
    shaped.runs.push_back({run, first, static_cast<std::uint32_t>(shaped.glyphs.size()) - first});
  }
  breaker_.lines(paragraph.text, breaks_);
  shaped.points = points_of(paragraph, shaped, breaks_);
  return shaped;
}

void Shaper::add_letter_points(const Paragraph &paragraph, Shaped &shaped, Length measure) {
  std::vector<BreakPoint> points;
  Stick stick(paragraph, shaped);
  const std::vector<BreakPoint> &old = shaped.points;
  for (std::size_t i = 0; i + 1 < old.size(); ++i) {
    points.push_back(old[i]);
    if (old[i + 1].end_x - old[i].next_x <= measure)
      continue;
    const std::uint32_t begin = old[i].next;
    breaker_.letters(std::string_view(paragraph.text).substr(begin, old[i + 1].end - begin),
                     letters_);
    for (std::uint32_t &letter : letters_)
      letter += begin;
    add_points_between(stick, shaped, letters_, i, points);
  }
  points.push_back(old.back());
  shaped.points = std::move(points);
}

} // namespace bodkin
