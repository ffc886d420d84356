#include "art/jpeg_codec.hpp"

#include <cstdlib>
#include <jerror.h>

namespace bodkin::art {
namespace {

[[noreturn]] void leave(j_common_ptr info) {
  auto &errors = *reinterpret_cast<JpegErrors *>(info->err);
  const int code = errors.base.msg_code;
  errors.ended_early = errors.ended_early || code == JERR_INPUT_EOF || code == JERR_INPUT_EMPTY;
  std::longjmp(errors.back, 1);
}

void weigh(j_common_ptr info, int level) {
  if (level >= 0)
    return;
  auto &errors = *reinterpret_cast<JpegErrors *>(info->err);
  switch (errors.base.msg_code) {
  case JWRN_JPEG_EOF:
  case JWRN_HIT_MARKER:
    errors.ended_early = true;
    leave(info);
  case JWRN_HUFF_BAD_CODE:
  case JWRN_ARITH_BAD_CODE:
  case JWRN_MUST_RESYNC:
  case JWRN_NOT_SEQUENTIAL:
    leave(info);
  default:
    break; // oddities that cost no samples
  }
}

void be_silent(j_common_ptr) {}

// A progressive file may hold as many scans as it has bytes, each a walk over the whole picture.
// Encoders write about ten.
void count_scans(j_common_ptr info) {
  constexpr int most_scans = 200;
  if (info->is_decompressor &&
      reinterpret_cast<j_decompress_ptr>(info)->input_scan_number > most_scans)
    leave(info);
}

} // namespace

void be_strict(JpegErrors &errors) {
  jpeg_std_error(&errors.base);
  errors.base.error_exit = leave;
  errors.base.emit_message = weigh;
  errors.base.output_message = be_silent;
}

JpegReader::JpegReader() {
  be_strict(errors);
  info.err = &errors.base;
  jpeg_create_decompress(&info);
  progress.progress_monitor = count_scans;
  info.progress = &progress;
}

JpegWriter::JpegWriter() {
  be_strict(errors);
  info.err = &errors.base;
  jpeg_create_compress(&info);
}

JpegWriter::~JpegWriter() {
  jpeg_destroy_compress(&info);
  std::free(out);
}

} // namespace bodkin::art
