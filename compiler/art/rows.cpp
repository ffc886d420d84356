#include "art/rows.hpp"

#include <cstdlib>

namespace bodkin::art {

MaybeRefusal rows_of(std::string_view bytes, const Facts &facts, std::int64_t about,
                     const Bounds &bounds, const RowSink &sink) {
  switch (facts.format) {
  case Format::png:
    return png_rows(bytes, facts, bounds, sink);
  case Format::jpeg:
    return jpeg_rows(bytes, facts, about, sink);
  case Format::tiff:
    return tiff_rows(bytes, facts, sink);
  case Format::webp:
    return webp_rows(bytes, facts, sink);
  case Format::heic:
    return heic_rows(bytes, facts, bounds, sink);
  case Format::svg:
  case Format::pdf:
    break;
  }
  return Refusal{Trouble::unreadable, "is a drawing, which has no rows of samples"};
}

} // namespace bodkin::art
