#include "type/owners.hpp"

#include <ft2build.h>
#include FT_FREETYPE_H
#include <hb.h>
#include <new>

namespace bodkin {

void FtLibraryGone::operator()(FT_LibraryRec_ *library) const { FT_Done_FreeType(library); }
void FtFaceGone::operator()(FT_FaceRec_ *face) const { FT_Done_Face(face); }
void HbFontGone::operator()(hb_font_t *font) const { hb_font_destroy(font); }
void HbBufferGone::operator()(hb_buffer_t *buffer) const { hb_buffer_destroy(buffer); }

FaceLibrary::FaceLibrary() {
  FT_Library library = nullptr;
  if (FT_Init_FreeType(&library) != 0)
    throw std::bad_alloc();
  library_.reset(library);
}

} // namespace bodkin
