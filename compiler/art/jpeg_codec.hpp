// libjpeg held so that it can be left safely. It leaves its calls by longjmp: each call stands in a
// small function of its own that has nothing to destroy and begins with `if (setjmp(…)) return
// false`.
#pragma once

#include <cstddef>
#include <cstdio>

#include <csetjmp>
#include <jpeglib.h>

namespace bodkin::art {

struct JpegErrors {
  jpeg_error_mgr base{}; // first: libjpeg hands back its address
  std::jmp_buf back{};
  bool ended_early = false;
};

// Strict: a warning that image data are missing or wrong counts as an error, for libjpeg would fill
// in grey and go on.
void be_strict(JpegErrors &errors);

struct JpegReader {
  JpegErrors errors;
  jpeg_decompress_struct info{};
  jpeg_progress_mgr progress{};

  JpegReader();
  JpegReader(const JpegReader &) = delete;
  JpegReader &operator=(const JpegReader &) = delete;
  ~JpegReader() { jpeg_destroy_decompress(&info); }
};

struct JpegWriter {
  JpegErrors errors;
  jpeg_compress_struct info{};
  unsigned char *out = nullptr; // malloc'd by libjpeg
  unsigned long size = 0;

  JpegWriter();
  JpegWriter(const JpegWriter &) = delete;
  JpegWriter &operator=(const JpegWriter &) = delete;
  ~JpegWriter();
};

} // namespace bodkin::art
