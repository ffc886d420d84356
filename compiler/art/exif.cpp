#include "art/exif.hpp"

#include "art/bytes.hpp"

namespace bodkin::art {

using namespace std::string_view_literals;

Orientation exif_orientation(std::string_view block) {
  constexpr auto mark = "Exif\0\0"sv;
  if (block.substr(0, mark.size()) == mark)
    block.remove_prefix(mark.size());
  ByteOrder order = ByteOrder::big;
  if (block.substr(0, 4) == "II*\0"sv)
    order = ByteOrder::little;
  else if (block.substr(0, 4) != "MM\0*"sv)
    return {};
  const std::size_t directory = number(block, 4, 4, order);
  const std::size_t entries = number(block, directory, 2, order);
  for (std::size_t i = 0; i < entries; ++i) {
    const std::size_t entry = directory + 2 + 12 * i;
    if (entry + 12 > block.size())
      break;
    constexpr std::uint64_t orientation_tag = 274, short_type = 3;
    if (number(block, entry, 2, order) == orientation_tag &&
        number(block, entry + 2, 2, order) == short_type)
      return orientation_of(static_cast<int>(number(block, entry + 8, 2, order)));
  }
  return {};
}

} // namespace bodkin::art
