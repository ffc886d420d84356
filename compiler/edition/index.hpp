// Names are resolved once; after that the model speaks by number. Each is an index into the vector
// of its kind in Edition; `none` where a thing may be missing.
#pragma once

#include <cstdint>

namespace bodkin {

enum class StockId : std::uint32_t { none = 0xffffffff };
enum class MachineId : std::uint32_t { none = 0xffffffff };
enum class FaceId : std::uint32_t { none = 0xffffffff };
enum class StyleId : std::uint32_t { none = 0xffffffff };
enum class SourceId : std::uint32_t { none = 0xffffffff };
enum class LawId : std::uint32_t { none = 0xffffffff };
enum class LicenceId : std::uint32_t { none = 0xffffffff };
enum class MailId : std::uint32_t { none = 0xffffffff };
enum class EnvelopeId : std::uint32_t { none = 0xffffffff };
enum class TextId : std::uint32_t { none = 0xffffffff };
enum class StandingId : std::uint32_t { none = 0xffffffff };
enum class ElementId : std::uint32_t { none = 0xffffffff };

template <typename Id>
constexpr std::size_t at(Id id) {
  return static_cast<std::size_t>(id);
}

// What a side is printed with and charged by, the dearer the greater.
enum class Mode { black, colour };

} // namespace bodkin
