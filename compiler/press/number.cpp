#include "press/number.hpp"

#include <array>
#include <cmath>
#include <cstdint>

namespace bodkin::press {

void append_number(std::string &out, double value) {
  constexpr std::int64_t scale = 100'000;
  std::int64_t scaled = std::llround(value * static_cast<double>(scale));
  if (scaled < 0) {
    out += '-';
    scaled = -scaled;
  }
  out += std::to_string(scaled / scale);
  std::int64_t rest = scaled % scale;
  if (rest == 0)
    return;
  std::array<char, 5> digits{};
  for (std::size_t i = digits.size(); i-- > 0; rest /= 10)
    digits[i] = static_cast<char>('0' + rest % 10);
  std::size_t kept = digits.size();
  while (digits[kept - 1] == '0')
    --kept;
  out += '.';
  out.append(digits.data(), kept);
}

void append_matrix(std::string &out, const Transform &map) {
  for (const double value : {map.xx, map.yx, map.xy, map.yy, map.x0, map.y0}) {
    append_number(out, value);
    out += ' ';
  }
  out += "cm\n";
}

void append_clip(std::string &out, const Polygon &corners) {
  const char *step = " m ";
  for (const Point &corner : corners) {
    append_number(out, corner.x);
    out += ' ';
    append_number(out, corner.y);
    out += step;
    step = " l ";
  }
  out += "h W n\n";
}

} // namespace bodkin::press
