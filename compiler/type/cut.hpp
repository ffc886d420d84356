// One file of type, open: a cut of a family (its regular, its italic …). The file's bytes are
// shared by FreeType, which press draws with, and HarfBuzz, which shapes; both stand open as long
// as this lives, so one cairo face can be made of it. A face's permission bits (fsType) are not
// asked.
//
// Only scalable OpenType files are taken (glyf or CFF outlines, first face of a collection or the
// one asked for). Not for two threads at once: FreeType faces are not, and glyph boxes are kept as
// found.
#pragma once

#include "edition/files.hpp"
#include "measure/length.hpp"
#include "type/owners.hpp"

#include <cstdint>
#include <memory>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

struct FT_FaceRec_;
struct hb_font_t;

namespace bodkin {

// A glyph's ink in font units, y upwards; empty (all 0) where it leaves no ink.
struct InkUnits {
  std::int32_t left = 0, bottom = 0, right = 0, top = 0;
  constexpr bool empty() const { return left >= right || bottom >= top; }
};

class FaceCut {
public:
  // `file` names it in problems and in the list of files read: a path in the edition's folder, or a
  // system file's whole path.
  static std::variant<std::unique_ptr<FaceCut>, std::string> // else why it cannot be used, in words
  open(const FaceLibrary &library, FileBytes bytes, std::string file, bool system, int index);

  const std::string &file() const { return file_; }
  bool system() const { return system_; } // not a file of the edition
  std::string_view bytes() const { return bytes_.view; }
  std::string_view family() const { return family_; } // as the file calls itself

  int upem() const { return upem_; }
  // Of the line as the file states it, in font units, both positive.
  int ascender() const { return ascender_; }
  int descender() const { return descender_; }
  Length scaled(std::int64_t units, Length size) const; // font units at a type size

  FT_FaceRec_ *freetype() const { return ft_.get(); } // for cairo_ft_font_face_create_for_ft_face
  hb_font_t *harfbuzz() const { return hb_.get(); }   // its scale is upem
  // False where the file's outline of the glyph is damaged, so that it must not be drawn.
  bool draws(std::uint32_t glyph) const {
    if (glyph >= met_.size())
      return false;
    if (met_[glyph] == Met::not_yet)
      meet(glyph);
    return met_[glyph] == Met::drawn;
  }
  InkUnits ink(std::uint32_t glyph) const; // exact bounds of the outline
  bool fixed_width() const;                // as a typewriter's
  // Makes one sign of figures round a fraction slash (U+2044): OpenType's feature frac.
  bool sets_fractions() const;

private:
  enum class Met : std::uint8_t { not_yet, drawn, broken };

  FaceCut() = default;
  void read_line_metrics();
  void meet(std::uint32_t glyph) const;

  FileBytes bytes_; // before the faces that read it, so that it goes after them
  std::string file_, family_;
  bool system_ = false;
  int upem_ = 1000, ascender_ = 0, descender_ = 0;
  FtFace ft_;
  HbFont hb_;
  mutable std::vector<InkUnits> inks_; // by glyph, as they are met
  mutable std::vector<Met> met_;
};

} // namespace bodkin
