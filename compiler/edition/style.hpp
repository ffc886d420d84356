// How words are set: a face at a size, and how its lines and paragraphs stand.
#pragma once

#include "edition/index.hpp"
#include "edition/known.hpp"
#include "measure/few.hpp"
#include "measure/length.hpp"

#include <array>
#include <optional>
#include <string>

namespace bodkin {

enum class Lines { left, right, centred, justified };

// Lining figures are as tall as capitals, old-style ones have tails.
enum class Figures { of_face, lining, old_style };

// A colour by name or number. White hides what lies below and counts as no ink.
struct Paint {
  Colour colour{0, 0, 0};
  bool operator==(const Paint &) const = default;
  constexpr bool is_black() const { return colour == Colour{0, 0, 0}; }
  constexpr bool is_white() const { return colour == Colour{255, 255, 255}; }
};

struct Style {
  std::string name, title;
  Range range;
  Known<FaceId> face{FaceId::none, {}}; // FaceId::none only where a problem was reported
  Known<Length> size{Length::points(10), {}};
  Known<Length> leading{Length::points(12), {}};
  Known<Lines> lines{Lines::left, {}};
  Known<Paint> ink;
  Known<Figures> figures;
  Known<Length>
      indent; // default filled: 1em, or 0 where `space` is written or lines are centred or right
  Known<Length> space_before, space_after;
  std::array<std::optional<Known<StyleId>>, 6> headings; // by level, from 1 at index 0
  std::optional<Known<StyleId>> quote, list, code;
};

} // namespace bodkin
