#include "money/zip.hpp"

#include <cstdint>

namespace bodkin {
namespace {

// CRC-32 of ISO 3309.
std::uint32_t checksum(std::string_view bytes) {
  std::uint32_t crc = 0xffffffff;
  for (const char byte : bytes) {
    crc ^= static_cast<unsigned char>(byte);
    for (int bit = 0; bit < 8; ++bit)
      crc = (crc >> 1) ^ ((crc & 1u) != 0 ? 0xedb88320u : 0u);
  }
  return ~crc;
}

void put(std::string &out, std::uint32_t number, int bytes) {
  for (int i = 0; i < bytes; ++i)
    out += static_cast<char>((number >> (8 * i)) & 0xff);
}

constexpr std::uint32_t version = 20;
constexpr std::uint32_t first_day = 0x21; // 1980-01-01: the format has no earlier one

std::uint32_t length(std::string_view text) { return static_cast<std::uint32_t>(text.size()); }

// What a file's own head and its line in the list at the end have alike.
void put_facts(std::string &out, const ZippedFile &file) {
  put(out, version, 2);
  put(out, 0, 2); // no flags
  put(out, 0, 2); // stored
  put(out, 0, 2); // midnight
  put(out, first_day, 2);
  put(out, checksum(file.bytes), 4);
  put(out, length(file.bytes), 4);
  put(out, length(file.bytes), 4);
  put(out, length(file.name), 2);
  put(out, 0, 2); // nothing extra
}

} // namespace

std::string zipped(std::span<const ZippedFile> files) {
  std::string out, list;
  for (const ZippedFile &file : files) {
    const std::uint32_t begins = length(out);
    out += "PK\x03\x04";
    put_facts(out, file);
    out += file.name;
    out += file.bytes;
    list += "PK\x01\x02";
    put(list, version, 2);
    put_facts(list, file);
    put(list, 0, 2); // no comment
    put(list, 0, 2); // on the first disk
    put(list, 0, 2); // no attributes
    put(list, 0, 4);
    put(list, begins, 4);
    list += file.name;
  }
  const std::uint32_t list_begins = length(out);
  out += list + "PK\x05\x06";
  put(out, 0, 4); // one disk
  put(out, static_cast<std::uint32_t>(files.size()), 2);
  put(out, static_cast<std::uint32_t>(files.size()), 2);
  put(out, length(list), 4);
  put(out, list_begins, 4);
  put(out, 0, 2); // no comment
  return out;
}

} // namespace bodkin
