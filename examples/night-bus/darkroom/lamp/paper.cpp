#include "lamp/paper.hpp"

#include <cmath>
#include <cstdio>
#include <memory>
#include <stdexcept>
#include <vector>

#include <jpeglib.h>

namespace {

constexpr int kQuality = 88;
constexpr int kSamplesAnInch = 300;

// Straight in the shadows, and never quite reaching white.
double shoulder(double light) { return 1 - std::exp(-light * 1.25); }

JSAMPLE tone(double light) {
  const double v = light <= 0.0031308 ? 12.92 * light : 1.055 * std::pow(light, 1 / 2.4) - 0.055;
  return static_cast<JSAMPLE>(std::lround(255 * (v < 0 ? 0 : v > 1 ? 1 : v)));
}

void fill_row(const Film &film, int y, Toning toning, double exposure, std::vector<JSAMPLE> &row) {
  row.clear();
  for (int x = 0; x < film.width(); ++x) {
    const Light light = film.at(x, y) * exposure;
    if (toning == Toning::grey) {
      row.push_back(tone(shoulder(0.2126 * light.r + 0.7152 * light.g + 0.0722 * light.b)));
    } else {
      row.push_back(tone(shoulder(light.r)));
      row.push_back(tone(shoulder(light.g)));
      row.push_back(tone(shoulder(light.b)));
    }
  }
}

} // namespace

void print(const Film &film, Toning toning, double exposure, const std::filesystem::path &file) {
  const std::unique_ptr<std::FILE, int (*)(std::FILE *)> out(std::fopen(file.c_str(), "wb"),
                                                             &std::fclose);
  if (!out)
    throw std::runtime_error("cannot write " + file.string());

  // libjpeg's own error handler is kept: it says what is wrong and ends the program.
  jpeg_error_mgr errors{};
  jpeg_compress_struct jpeg{};
  jpeg.err = jpeg_std_error(&errors);
  jpeg_create_compress(&jpeg);
  jpeg_stdio_dest(&jpeg, out.get());
  jpeg.image_width = static_cast<JDIMENSION>(film.width());
  jpeg.image_height = static_cast<JDIMENSION>(film.height());
  jpeg.input_components = toning == Toning::grey ? 1 : 3;
  jpeg.in_color_space = toning == Toning::grey ? JCS_GRAYSCALE : JCS_RGB;
  jpeg_set_defaults(&jpeg);
  jpeg_set_quality(&jpeg, kQuality, TRUE);
  jpeg.density_unit = 1;
  jpeg.X_density = kSamplesAnInch;
  jpeg.Y_density = kSamplesAnInch;
  jpeg_start_compress(&jpeg, TRUE);
  std::vector<JSAMPLE> row;
  for (int y = 0; y < film.height(); ++y) {
    fill_row(film, y, toning, exposure, row);
    JSAMPROW rows[1] = {row.data()};
    jpeg_write_scanlines(&jpeg, rows, 1);
  }
  jpeg_finish_compress(&jpeg);
  jpeg_destroy_compress(&jpeg);
}
