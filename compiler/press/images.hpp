// Raster pictures as image XObjects of the PDF being made, each made once however often it stands.
// A photograph's data are untouched where nothing is done to them; they flow from the mapped file
// when the PDF is written. No image holds what a camera wrote about itself or its place.
#pragma once

#include "art/gallery.hpp"
#include "page/transform.hpp"

#include <array>
#include <map>
#include <optional>
#include <qpdf/QPDF.hh>
#include <tuple>

namespace bodkin::press {

struct PlacedImage {
  QPDFObjectHandle xobject;
  // From PDF's unit square (y up) to the unit square of the picture as seen (y down).
  Transform to_picture;
};

class Images {
public:
  // Both kept by reference.
  Images(QPDF &pdf, art::Gallery &gallery) : pdf_(pdf), gallery_(gallery) {}
  // To be looked at, not printed from: in grey, with so many samples an inch.
  Images(QPDF &pdf, art::Gallery &gallery, double coarse_dpi)
      : pdf_(pdf), gallery_(gallery), coarse_dpi_(coarse_dpi) {}

  // `grey`: the page is printed in black. `seen` is the size at which all of the picture would
  // print: how finely a drawing is made into black and white. None where it cannot be decoded.
  std::optional<PlacedImage> place(const Picture &picture, bool grey, const Size &seen);

private:
  using Key = std::tuple<std::string, int, int, std::int64_t, std::array<std::int64_t, 4>, bool,
                         std::int64_t>;
  std::optional<PlacedImage> make(const Picture &picture, bool grey, const Size &seen);
  std::optional<PlacedImage> untouched(const Picture &picture, const art::Facts &facts);
  std::optional<PlacedImage> decoded(const Picture &picture, const art::Facts &facts, bool grey,
                                     const Size &seen);

  std::optional<PlacedImage> coarse(const Picture &picture, const art::Facts &facts,
                                    const Size &seen);

  QPDF &pdf_;
  art::Gallery &gallery_;
  std::optional<double> coarse_dpi_;
  std::map<Key, std::optional<PlacedImage>> made_;
};

} // namespace bodkin::press
