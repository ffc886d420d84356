#include "art/jpeg.hpp"

#include "art/bytes.hpp"
#include "art/checks.hpp"
#include "art/jpeg_codec.hpp"

#include <algorithm>

namespace bodkin::art {
namespace {

// Leaves the grey JPEG in the writer. The table number is what setting the colour space forgets.
bool transcode(JpegReader &reader, JpegWriter &writer, std::string_view bytes) {
  if (setjmp(reader.errors.back) != 0 || setjmp(writer.errors.back) != 0)
    return false;
  jpeg_mem_src(&reader.info, octets(bytes), bytes.size());
  jpeg_read_header(&reader.info, TRUE);
  jvirt_barray_ptr *coefficients = jpeg_read_coefficients(&reader.info);
  jpeg_copy_critical_parameters(&reader.info, &writer.info);
  const int table = writer.info.comp_info[0].quant_tbl_no;
  jpeg_set_colorspace(&writer.info, JCS_GRAYSCALE);
  writer.info.comp_info[0].quant_tbl_no = table;
  writer.info.optimize_coding = TRUE;
  jpeg_mem_dest(&writer.info, &writer.out, &writer.size);
  jpeg_write_coefficients(&writer.info, coefficients);
  jpeg_finish_compress(&writer.info);
  jpeg_finish_decompress(&reader.info);
  return true;
}

// libjpeg cuts the first component out whole only where no other has more samples.
bool luma_is_finest(JpegReader &reader, std::string_view bytes) {
  if (setjmp(reader.errors.back) != 0)
    return false;
  jpeg_mem_src(&reader.info, octets(bytes), bytes.size());
  jpeg_read_header(&reader.info, TRUE);
  const jpeg_component_info &luma = reader.info.comp_info[0];
  const bool finest = luma.h_samp_factor == reader.info.max_h_samp_factor &&
                      luma.v_samp_factor == reader.info.max_v_samp_factor;
  jpeg_abort_decompress(&reader.info);
  return finest;
}

bool encode(JpegWriter &writer, const Pixels &pixels, int quality) {
  if (setjmp(writer.errors.back) != 0)
    return false;
  jpeg_mem_dest(&writer.info, &writer.out, &writer.size);
  writer.info.image_width = static_cast<JDIMENSION>(pixels.width);
  writer.info.image_height = static_cast<JDIMENSION>(pixels.height);
  writer.info.input_components = pixels.channels;
  writer.info.in_color_space = pixels.channels == 1 ? JCS_GRAYSCALE : JCS_RGB;
  jpeg_set_defaults(&writer.info);
  jpeg_set_quality(&writer.info, quality, TRUE);
  for (int c = 0; c < pixels.channels; ++c)
    writer.info.comp_info[c].h_samp_factor = writer.info.comp_info[c].v_samp_factor = 1;
  writer.info.optimize_coding = TRUE;
  jpeg_start_compress(&writer.info, TRUE);
  while (writer.info.next_scanline < writer.info.image_height) {
    // libjpeg only reads from it, but its row type is older than const.
    auto *row = const_cast<std::uint8_t *>(pixels.row(static_cast<int>(writer.info.next_scanline)));
    jpeg_write_scanlines(&writer.info, &row, 1);
  }
  jpeg_finish_compress(&writer.info);
  return true;
}

std::string written(const JpegWriter &writer) {
  return {reinterpret_cast<const char *>(writer.out), writer.size};
}

} // namespace

bool can_be_placed(const Facts &facts) { return facts.jpeg && facts.jpeg->passes; }

PlacedJpeg placed_jpeg(std::string_view bytes, const Facts &facts) {
  PlacedJpeg placed;
  for (const ByteSpan &span : facts.jpeg->kept) {
    placed.pieces.push_back(bytes.substr(span.begin, span.end - span.begin));
    placed.bytes += span.end - span.begin;
  }
  placed.width = facts.width;
  placed.height = facts.height;
  if (facts.orientation.swaps_edges())
    std::swap(placed.width, placed.height);
  placed.components = facts.channels;
  placed.inverted = facts.cmyk && facts.jpeg->adobe;
  return placed;
}

Outcome<std::string> grey_jpeg(std::string_view bytes, const Facts &facts) {
  if (!facts.jpeg || (facts.channels != 1 && !facts.jpeg->luma_first))
    return Refusal{Trouble::unreadable, "keeps no grey of its own beside its colours"};
  JpegReader reader;
  if (!luma_is_finest(reader, bytes))
    return Refusal{Trouble::unreadable, "keeps its grey coarser than its colours"};
  JpegWriter writer;
  if (!transcode(reader, writer, bytes))
    return reader.errors.ended_early ? cut_off(Format::jpeg) : damaged(Format::jpeg);
  return written(writer);
}

std::string to_jpeg(const Pixels &pixels, int quality) {
  JpegWriter writer;
  return encode(writer, pixels, std::clamp(quality, 1, 100)) ? written(writer) : std::string();
}

} // namespace bodkin::art
