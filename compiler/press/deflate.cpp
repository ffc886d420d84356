#include "press/deflate.hpp"

#include <algorithm>
#include <libdeflate.h>
#include <memory>
#include <new>
#include <utility>
#include <zlib.h>

namespace bodkin::press {
namespace {

constexpr int level = 4;       // zlib's, of rows as they come
constexpr int whole_level = 1; // libdeflate's
constexpr std::size_t piece = 1u << 16;

struct Free {
  void operator()(libdeflate_compressor *compressor) const {
    libdeflate_free_compressor(compressor);
  }
  void operator()(libdeflate_decompressor *decompressor) const {
    libdeflate_free_decompressor(decompressor);
  }
};
using Compressor = std::unique_ptr<libdeflate_compressor, Free>;
using Decompressor = std::unique_ptr<libdeflate_decompressor, Free>;

class Deflater {
public:
  Deflater() {
    if (deflateInit(&stream_, level) != Z_OK)
      throw std::bad_alloc();
  }
  ~Deflater() { deflateEnd(&stream_); }
  Deflater(const Deflater &) = delete;
  Deflater &operator=(const Deflater &) = delete;

  void add(std::string_view bytes, bool last) {
    stream_.next_in = reinterpret_cast<Bytef *>(const_cast<char *>(bytes.data()));
    stream_.avail_in = static_cast<uInt>(bytes.size());
    do {
      const std::size_t before = out_.size();
      out_.resize(before + piece);
      stream_.next_out = reinterpret_cast<Bytef *>(out_.data() + before);
      stream_.avail_out = piece;
      deflate(&stream_, last ? Z_FINISH : Z_NO_FLUSH);
      out_.resize(before + piece - stream_.avail_out);
    } while (stream_.avail_out == 0);
  }
  std::string take() { return std::move(out_); }

private:
  z_stream stream_{};
  std::string out_;
};

} // namespace

std::string deflated(std::string_view bytes) {
  const Compressor compressor(libdeflate_alloc_compressor(whole_level));
  if (!compressor)
    throw std::bad_alloc();
  std::string out(libdeflate_zlib_compress_bound(compressor.get(), bytes.size()), '\0');
  const std::size_t size = libdeflate_zlib_compress(compressor.get(), bytes.data(), bytes.size(),
                                                    out.data(), out.size());
  if (size == 0)
    throw std::bad_alloc();
  return out.substr(0, size);
}

std::optional<std::string> inflated(std::string_view bytes, std::size_t most) {
  const Decompressor decompressor(libdeflate_alloc_decompressor());
  if (!decompressor)
    throw std::bad_alloc();
  constexpr std::size_t usual_growth = 6;
  for (std::size_t room = std::max<std::size_t>(bytes.size() * usual_growth, 1024);; room *= 2) {
    std::string out(std::min(room, most), '\0');
    std::size_t size = 0;
    switch (libdeflate_zlib_decompress(decompressor.get(), bytes.data(), bytes.size(), out.data(),
                                       out.size(), &size)) {
    case LIBDEFLATE_SUCCESS:
      out.resize(size);
      return out;
    case LIBDEFLATE_INSUFFICIENT_SPACE:
      if (room < most)
        continue;
      return std::nullopt;
    default:
      return std::nullopt;
    }
  }
}

std::string deflated_rows(std::size_t rows, std::size_t stride, const RowOf &row_of) {
  Deflater deflater;
  std::string above(stride, '\0'), now(stride, '\0'), filtered(stride + 1, '\2');
  for (std::size_t y = 0; y < rows; ++y) {
    row_of(y, now.data());
    for (std::size_t x = 0; x < stride; ++x)
      filtered[x + 1] = static_cast<char>(now[x] - above[x]);
    deflater.add(filtered, false);
    std::swap(above, now);
  }
  deflater.add({}, true);
  return deflater.take();
}

} // namespace bodkin::press
