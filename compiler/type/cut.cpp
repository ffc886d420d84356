#include "type/cut.hpp"

#include "measure/limits.hpp"

#include <cmath>
#include <fmt/format.h>
#include <ft2build.h>
#include FT_FREETYPE_H
#include FT_OUTLINE_H
#include FT_BBOX_H
#include <hb.h>

namespace bodkin {
namespace {

constexpr FT_Int32 as_drawn = FT_LOAD_NO_SCALE | FT_LOAD_NO_HINTING | FT_LOAD_NO_BITMAP;

// The four bytes that an OpenType file or collection begins with (OpenType 1.9, "otff").
bool begins_like_a_face(std::string_view bytes) {
  using namespace std::string_view_literals;
  const std::string_view tag = bytes.substr(0, 4);
  return tag == "\0\1\0\0"sv || tag == "OTTO"sv || tag == "true"sv || tag == "ttcf"sv;
}

HbFont shaped_by(std::string_view bytes, int index) {
  hb_blob_t *blob = hb_blob_create(bytes.data(), static_cast<unsigned>(bytes.size()),
                                   HB_MEMORY_MODE_READONLY, nullptr, nullptr);
  hb_face_t *face = hb_face_create(blob, static_cast<unsigned>(index));
  HbFont font(hb_font_create(face));
  hb_face_destroy(face);
  hb_blob_destroy(blob);
  return font;
}

} // namespace

std::variant<std::unique_ptr<FaceCut>, std::string> FaceCut::open(const FaceLibrary &library,
                                                                  FileBytes bytes, std::string file,
                                                                  bool system, int index) {
  if (bytes.view.size() > limits::face_file_bytes)
    return fmt::format("it is larger than {} MB", limits::face_file_bytes >> 20);
  if (!begins_like_a_face(bytes.view))
    return "it is not an OpenType file (.otf, .ttf, .otc or .ttc)";

  std::unique_ptr<FaceCut> cut(new FaceCut);
  cut->bytes_ = std::move(bytes);
  cut->file_ = std::move(file);
  cut->system_ = system;
  FT_Face face = nullptr;
  const std::string_view view = cut->bytes_.view;
  if (FT_New_Memory_Face(library.get(), reinterpret_cast<const FT_Byte *>(view.data()),
                         static_cast<FT_Long>(view.size()), index, &face) != 0)
    return "its tables are damaged or cut short";
  cut->ft_.reset(face);
  if (!FT_IS_SCALABLE(face))
    return "it holds pictures of letters at one size, no outlines";

  cut->hb_ = shaped_by(view, index);
  hb_face_t *tables = hb_font_get_face(cut->hb_.get());
  cut->upem_ = static_cast<int>(hb_face_get_upem(tables));
  if (cut->upem_ != static_cast<int>(face->units_per_EM) || hb_face_get_glyph_count(tables) == 0 ||
      FT_Load_Glyph(face, 0, as_drawn) != 0)
    return "its tables contradict each other";
  cut->family_ = face->family_name != nullptr ? face->family_name : "";
  cut->read_line_metrics();
  const auto glyphs = static_cast<std::size_t>(face->num_glyphs);
  cut->inks_.resize(glyphs);
  cut->met_.resize(glyphs, Met::not_yet);
  return cut;
}

void FaceCut::read_line_metrics() {
  hb_font_extents_t extents{};
  if (hb_font_get_h_extents(hb_.get(), &extents) == 0 || extents.ascender <= extents.descender) {
    ascender_ = upem_ * 4 / 5;
    descender_ = upem_ - ascender_;
    return;
  }
  ascender_ = extents.ascender;
  descender_ = -extents.descender;
}

Length FaceCut::scaled(std::int64_t units, Length size) const {
  return Length::units(
      std::llround(static_cast<double>(units) * static_cast<double>(size.units()) / upem_));
}

bool FaceCut::fixed_width() const { return FT_IS_FIXED_WIDTH(ft_.get()); }

bool FaceCut::sets_fractions() const {
  constexpr std::string_view half = "1\u20442";
  const HbBuffer buffer(hb_buffer_create());
  hb_buffer_add_utf8(buffer.get(), half.data(), static_cast<int>(half.size()), 0, -1);
  hb_buffer_set_direction(buffer.get(), HB_DIRECTION_LTR);
  hb_buffer_set_script(buffer.get(), HB_SCRIPT_LATIN);
  hb_shape(hb_.get(), buffer.get(), nullptr, 0);
  unsigned count = 0;
  const hb_glyph_info_t *infos = hb_buffer_get_glyph_infos(buffer.get(), &count);
  hb_codepoint_t two = 0;
  return count > 0 && count <= 3 && hb_font_get_nominal_glyph(hb_.get(), '2', &two) != 0 &&
         infos[count - 1].codepoint != 0 && infos[count - 1].codepoint != two;
}

void FaceCut::meet(std::uint32_t glyph) const {
  const FT_Face face = ft_.get();
  if (FT_Load_Glyph(face, glyph, as_drawn) != 0 || face->glyph->format != FT_GLYPH_FORMAT_OUTLINE) {
    met_[glyph] = Met::broken;
    return;
  }
  met_[glyph] = Met::drawn;
  FT_BBox box{};
  if (face->glyph->outline.n_points > 0 && FT_Outline_Get_BBox(&face->glyph->outline, &box) == 0)
    inks_[glyph] = {static_cast<std::int32_t>(box.xMin), static_cast<std::int32_t>(box.yMin),
                    static_cast<std::int32_t>(box.xMax), static_cast<std::int32_t>(box.yMax)};
}

InkUnits FaceCut::ink(std::uint32_t glyph) const {
  return draws(glyph) ? inks_[glyph] : InkUnits{};
}

} // namespace bodkin
