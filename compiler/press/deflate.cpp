#include "press/deflate.hpp"

#include <new>
#include <zlib.h>

namespace bodkin::press {
namespace {

constexpr int level = 4;
constexpr std::size_t piece = 1u << 16;

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
  uLongf size = compressBound(static_cast<uLong>(bytes.size()));
  std::string out(size, '\0');
  if (compress2(reinterpret_cast<Bytef *>(out.data()), &size,
                reinterpret_cast<const Bytef *>(bytes.data()), static_cast<uLong>(bytes.size()),
                level) != Z_OK)
    throw std::bad_alloc();
  out.resize(size);
  out.shrink_to_fit();
  return out;
}

std::string deflated_rows(std::string_view bytes, std::size_t stride) {
  Deflater deflater;
  std::string row(stride + 1, '\2');
  const std::size_t rows = stride == 0 ? 0 : bytes.size() / stride;
  for (std::size_t y = 0; y < rows; ++y) {
    const char *now = bytes.data() + y * stride;
    const char *above = y == 0 ? nullptr : now - stride;
    for (std::size_t x = 0; x < stride; ++x)
      row[x + 1] = static_cast<char>(now[x] - (above ? above[x] : 0));
    deflater.add(row, false);
  }
  deflater.add({}, true);
  return deflater.take();
}

} // namespace bodkin::press
