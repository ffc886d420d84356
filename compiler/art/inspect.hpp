// What a picture file says of itself, told by its content and never by its name's ending. Nothing
// is decoded: a photograph of 3 MB costs a walk over its markers. A drawing (SVG, a page of a PDF)
// says little in its head, so it is drawn once, small, in a bounded child process, and judged in
// the same go; what it says here is proved by that drawing.
#pragma once

#include "art/bounds.hpp"
#include "art/ink.hpp"
#include "art/orientation.hpp"
#include "art/outcome.hpp"
#include "edition/element.hpp"
#include "measure/box.hpp"

#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

namespace bodkin::art {

enum class Format { png, jpeg, tiff, webp, heic, svg, pdf };
std::string_view name_of(Format format); // "PNG", "JPEG", …

// Bytes [begin, end) of the file.
struct ByteSpan {
  std::size_t begin = 0, end = 0;
  bool operator==(const ByteSpan &) const = default;
};

// What art/jpeg.hpp needs to place a photograph without decoding it.
struct JpegHead {
  std::vector<ByteSpan> kept; // the file without what a camera wrote about itself and its place
  bool passes = true;         // Huffman-coded, 8 bits: PDF's DCTDecode takes the data as they are
  bool adobe = false;         // an APP14 marker: CMYK data are stored inverted
  int adobe_transform = -1;   // its colour transform: 0 none, 1 YCbCr, 2 YCCK; -1 no marker
  bool luma_first = false;    // YCbCr: component 0 alone is a grey picture
};

// A PDF page's box as seen, in the page's own units before /Rotate.
struct PageBox {
  double left = 0, bottom = 0, right = 0, top = 0;
};

struct DrawingHead {
  Size natural;     // as the file asks to be seen, /Rotate obeyed; a drawing has any size
  int pages = 1;    // of a PDF
  PageBox page_box; // of a PDF: the crop box of the page asked for
  int rotate = 0;   // of a PDF: 0, 90, 180, 270 clockwise
  bool rasterised_parts = false; // of an SVG: masks, filters or embedded pictures, drawn as samples
  bool sets_type = false;        // of an SVG: has text, so it looks as this machine's fonts are
  bool coloured = false;         // more than 1 in 10,000 of the small drawing's samples
  Hull ink;                      // rounded outwards
  LuminanceGrid luminance;
};

struct Facts {
  Format format = Format::png;
  // As seen, orientation obeyed; 0 for drawings, which have no samples.
  std::int64_t width = 0, height = 0;
  Orientation orientation; // of the stored rows; always upright for HEIC, whose decoder turns it
  int channels = 3;        // as stored, alpha included; 4 without alpha is CMYK
  int bits = 8;            // a channel
  bool alpha = false;
  bool cmyk = false;
  bool profile = false; // holds an ICC profile
  std::optional<JpegHead> jpeg;
  std::optional<DrawingHead> drawing;

  bool is_drawing() const { return drawing.has_value(); }
  // Width over height as seen.
  double aspect() const;
};

// `page` from 1, of a PDF; others have one page.
Outcome<Facts> inspect(std::string_view bytes, int page = 1, const Bounds &bounds = {});

// Samples across and down that are left of a raster picture after its crop, rounded to the nearest
// and at least 1; none of a
// drawing.
struct SampleCount {
  std::int64_t across = 0, down = 0;
  bool operator==(const SampleCount &) const = default;
};
SampleCount samples_after(const Facts &facts, const std::optional<Crop> &crop);

// The samples [left, right) by [top, bottom) of the picture as seen that a crop keeps; the whole
// picture without one. Always at least one sample.
struct SampleBox {
  int left = 0, top = 0, right = 0, bottom = 0;
  bool operator==(const SampleBox &) const = default;
};
SampleBox samples_within(int width, int height, const std::optional<Crop> &crop);

} // namespace bodkin::art
