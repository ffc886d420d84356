#include "press/image_object.hpp"

#include "press/deflate.hpp"

#include <algorithm>
#include <memory>
#include <qpdf/Pipeline.hh>

namespace bodkin::press {
namespace {

QPDFObjectHandle name(const char *text) { return QPDFObjectHandle::newName(text); }
QPDFObjectHandle number(long long value) { return QPDFObjectHandle::newInteger(value); }

QPDFObjectHandle new_image(QPDF &pdf, long long width, long long height,
                           const QPDFObjectHandle &space, int bits) {
  QPDFObjectHandle stream = pdf.newStream();
  QPDFObjectHandle dict = stream.getDict();
  dict.replaceKey("/Type", name("/XObject"));
  dict.replaceKey("/Subtype", name("/Image"));
  dict.replaceKey("/Width", number(width));
  dict.replaceKey("/Height", number(height));
  dict.replaceKey("/ColorSpace", space);
  dict.replaceKey("/BitsPerComponent", number(bits));
  // Stored as it comes: the writer would try to pack it better, and fetch every byte twice.
  stream.setFilterOnWrite(false);
  return stream;
}

QPDFObjectHandle space_of(int components) {
  return name(components == 1 ? "/DeviceGray" : components == 4 ? "/DeviceCMYK" : "/DeviceRGB");
}

// Some channels of interleaved samples.
QPDFObjectHandle samples(QPDF &pdf, const art::Pixels &pixels, int first, int count) {
  const auto width = static_cast<std::size_t>(pixels.width);
  const auto step = static_cast<std::size_t>(pixels.channels);
  const auto kept = static_cast<std::size_t>(count);
  const auto row_of = [&](std::size_t y, char *row) {
    const std::uint8_t *from = pixels.row(static_cast<int>(y)) + first;
    for (std::size_t x = 0; x < width; ++x, from += step)
      row = std::copy_n(from, kept, row);
  };
  QPDFObjectHandle image = new_image(pdf, pixels.width, pixels.height, space_of(count), 8);
  QPDFObjectHandle parms = QPDFObjectHandle::newDictionary();
  parms.replaceKey("/Predictor", number(12));
  parms.replaceKey("/Columns", number(pixels.width));
  parms.replaceKey("/Colors", number(count));
  image.replaceStreamData(
      deflated_rows(static_cast<std::size_t>(pixels.height), width * kept, row_of),
      name("/FlateDecode"), parms);
  return image;
}

class Spans : public QPDFObjectHandle::StreamDataProvider {
public:
  explicit Spans(std::vector<std::string_view> pieces) : pieces_(std::move(pieces)) {}
  void provideStreamData(QPDFObjGen const &, Pipeline *pipeline) override {
    for (const std::string_view piece : pieces_)
      pipeline->write(reinterpret_cast<const unsigned char *>(piece.data()), piece.size());
    pipeline->finish();
  }

private:
  std::vector<std::string_view> pieces_;
};

QPDFObjectHandle profiled(QPDF &pdf, const std::string &profile, int components) {
  QPDFObjectHandle stream = pdf.newStream(profile);
  stream.getDict().replaceKey("/N", number(components));
  stream.getDict().replaceKey("/Alternate", space_of(components));
  QPDFObjectHandle space = QPDFObjectHandle::newArray();
  space.appendItem(name("/ICCBased"));
  space.appendItem(stream);
  return space;
}

} // namespace

QPDFObjectHandle image_of(QPDF &pdf, const art::Pixels &pixels) {
  const int colours = pixels.coloured_channels() ? 3 : 1;
  QPDFObjectHandle image = samples(pdf, pixels, 0, colours);
  if (pixels.has_alpha())
    image.getDict().replaceKey("/SMask", samples(pdf, pixels, colours, 1));
  return image;
}

QPDFObjectHandle image_of(QPDF &pdf, const art::Bits &bits) {
  QPDFObjectHandle image = new_image(pdf, bits.width, bits.height, space_of(1), 1);
  image.getDict().replaceKey("/Decode", QPDFObjectHandle::parse("[1 0]")); // 1 is ink
  image.replaceStreamData(
      deflated({reinterpret_cast<const char *>(bits.rows.data()), bits.rows.size()}),
      name("/FlateDecode"), QPDFObjectHandle::newNull());
  return image;
}

QPDFObjectHandle image_of_jpeg(QPDF &pdf, const std::string &data, int width, int height,
                               int components) {
  QPDFObjectHandle image = new_image(pdf, width, height, space_of(components), 8);
  image.replaceStreamData(data, name("/DCTDecode"), QPDFObjectHandle::newNull());
  return image;
}

QPDFObjectHandle image_of_jpeg(QPDF &pdf, const art::PlacedJpeg &jpeg, const std::string &profile) {
  QPDFObjectHandle space =
      profile.empty() ? space_of(jpeg.components) : profiled(pdf, profile, jpeg.components);
  QPDFObjectHandle image = new_image(pdf, jpeg.width, jpeg.height, space, 8);
  if (jpeg.inverted)
    image.getDict().replaceKey("/Decode", QPDFObjectHandle::parse("[1 0 1 0 1 0 1 0]"));
  image.replaceStreamData(std::make_shared<Spans>(jpeg.pieces), name("/DCTDecode"),
                          QPDFObjectHandle::newNull());
  return image;
}

} // namespace bodkin::press
