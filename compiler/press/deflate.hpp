// Bytes deflated for a PDF's FlateDecode.
#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <string_view>

namespace bodkin::press {

// By libdeflate, in a third of the time that zlib takes for as many bytes.
std::string deflated(std::string_view bytes);
// Nothing where the bytes are damaged or would become more than `most`.
std::optional<std::string> inflated(std::string_view bytes, std::size_t most);

// Rows of samples with PNG's Up filter before each (PDF predictor 12): photographs and drawings
// alike come out smaller by far.
// Rows are asked for one after another, so that no second copy of a large picture is made.
using RowOf = std::function<void(std::size_t y, char *row)>;
std::string deflated_rows(std::size_t rows, std::size_t stride, const RowOf &row_of);

} // namespace bodkin::press
