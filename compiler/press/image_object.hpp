// Image XObjects from samples, bits and JPEG data.
#pragma once

#include "art/jpeg.hpp"
#include "art/pixels.hpp"

#include <qpdf/QPDF.hh>
#include <string>
#include <string_view>

namespace bodkin::press {

QPDFObjectHandle image_of(QPDF &pdf, const art::Pixels &pixels); // alpha becomes a soft mask
QPDFObjectHandle image_of(QPDF &pdf, const art::Bits &bits);
// JPEG data in memory, grey or RGB.
QPDFObjectHandle image_of_jpeg(QPDF &pdf, const std::string &data, int width, int height,
                               int components);
// Data that stay in the mapped file till the PDF is written; the file must stay mapped until then.
QPDFObjectHandle image_of_jpeg(QPDF &pdf, const art::PlacedJpeg &jpeg, const std::string &profile);

} // namespace bodkin::press
