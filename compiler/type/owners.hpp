// Owners of what FreeType and HarfBuzz hand out.
#pragma once

#include <memory>

struct FT_LibraryRec_;
struct FT_FaceRec_;
struct hb_font_t;
struct hb_buffer_t;

namespace bodkin {

struct FtLibraryGone {
  void operator()(FT_LibraryRec_ *library) const;
};
struct FtFaceGone {
  void operator()(FT_FaceRec_ *face) const;
};
struct HbFontGone {
  void operator()(hb_font_t *font) const;
};
struct HbBufferGone {
  void operator()(hb_buffer_t *buffer) const;
};
using FtFace = std::unique_ptr<FT_FaceRec_, FtFaceGone>;
using HbFont = std::unique_ptr<hb_font_t, HbFontGone>;
using HbBuffer = std::unique_ptr<hb_buffer_t, HbBufferGone>;

// What FreeType opens faces from; it must outlive them.
class FaceLibrary {
public:
  FaceLibrary();
  FT_LibraryRec_ *get() const { return library_.get(); }

private:
  std::unique_ptr<FT_LibraryRec_, FtLibraryGone> library_;
};

} // namespace bodkin
