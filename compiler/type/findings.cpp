#include "type/findings.hpp"

#include "measure/limits.hpp"
#include "type/face_problems.hpp"
#include "type/words.hpp"

#include <algorithm>
#include <hb.h>

namespace bodkin {
namespace {

bool has(const FaceCut *cut, char32_t code) {
  hb_codepoint_t glyph = 0;
  return cut != nullptr && hb_font_get_nominal_glyph(cut->harfbuzz(), code, &glyph) != 0;
}

// A family of the edition whose regular cut has the character.
std::string_view family_with(char32_t code, const Edition &edition, const OpenFaces &faces) {
  for (std::size_t i = 0; i < edition.faces.size(); ++i)
    if (has(faces[static_cast<FaceId>(i)][Cut::regular], code))
      return edition.faces[i].family;
  return {};
}

std::string_view typewriter_style(const Edition &edition, const OpenFaces &faces) {
  for (const Style &style : edition.styles) {
    const FaceCut *cut = faces[*style.face][Cut::regular];
    if (cut != nullptr && cut->fixed_width())
      return style.name;
  }
  return {};
}

// The first of some words in a block's lines, where they stand there as they are set: not so of
// what is written as an entity.
Range first_in(Range block, const Sources *sources, std::string_view words) {
  const std::string_view text = sources == nullptr ? std::string_view{} : sources->text(block);
  const std::size_t at = text.find(words);
  if (at == std::string_view::npos)
    return block;
  const auto begin = bytes(block.begin) + static_cast<std::uint32_t>(at);
  return {block.file, Offset{begin}, Offset{begin + static_cast<std::uint32_t>(words.size())}};
}

// From the first backtick to the one that closes it.
Range first_code_in(Range block, const Sources *sources) {
  const std::string_view text = sources == nullptr ? std::string_view{} : sources->text(block);
  const std::size_t open = std::min(text.find('`'), text.size());
  const std::size_t inside = std::min(text.find_first_not_of('`', open), text.size());
  const std::string_view sign = text.substr(open, inside - open);
  const std::size_t close = text.find(sign, inside);
  return sign.empty() || close == std::string_view::npos
             ? block
             : first_in(block, sources, text.substr(open, close + sign.size() - open));
}

Cut cut_instead(const OpenFace &face, Cut wanted) {
  const auto found = std::find(face.cuts.begin(), face.cuts.end(), face.nearest(wanted));
  return static_cast<Cut>(found - face.cuts.begin());
}

void add_missing_glyphs(const Findings &findings, const Edition &edition, const OpenFaces &faces,
                        const Sources *sources, Problems &problems) {
  std::map<std::pair<FaceId, Cut>, std::size_t> met;
  std::map<std::pair<FaceId, Cut>, Range> first_untold;
  for (const auto &[character, where] : findings.glyphs) {
    const auto &[face, cut, utf8] = character;
    const Range from = first_in(where.from, sources, utf8);
    if (++met[{face, cut}] <= limits::missing_glyphs_told)
      problems.push_back(missing_glyph(edition[face], cut, utf8, {from, where.words, where.times},
                                       family_with(code_point_at(utf8, 0).value, edition, faces)));
    else
      first_untold.try_emplace({face, cut}, from);
  }
  for (const auto &[of, from] : first_untold)
    problems.push_back(more_missing_glyphs(edition[of.first], of.second,
                                           met[of] - limits::missing_glyphs_told, from));
}

} // namespace

void Findings::missing_glyph(const Character &character, Range from, std::string_view text,
                             std::size_t at) {
  MissingGlyph &met = glyphs[character];
  if (met.times++ == 0) {
    met.from = from;
    met.words = words_around(text, at);
  }
}

Problems problems_of(const Findings &findings, const Edition &edition, const OpenFaces &faces,
                     const Sources *sources) {
  Problems problems;
  add_missing_glyphs(findings, edition, faces, sources, problems);
  for (const auto &[asked, from] : findings.cuts) {
    const auto &[face, cut] = asked;
    problems.push_back(missing_cut(edition[face], cut, cut_instead(faces[face], cut), from));
  }
  for (const auto &[style, from] : findings.code)
    problems.push_back(code_unstyled(edition[style], first_code_in(from, sources),
                                     typewriter_style(edition, faces)));
  return problems;
}

} // namespace bodkin
