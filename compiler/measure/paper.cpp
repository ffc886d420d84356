#include "measure/paper.hpp"

#include <array>

namespace bodkin {
namespace {

constexpr Size mm(std::int64_t width, std::int64_t height) {
  return {Length::mm(width), Length::mm(height)};
}
constexpr Size halves(std::int64_t width, std::int64_t height) {
  return {Length::inches(width, 4), Length::inches(height, 4)};
}

// American sizes in quarter inches.
constexpr std::array papers{
    NamedPaper{"letter", halves(34, 44)},
    NamedPaper{"legal", halves(34, 56)},
    NamedPaper{"tabloid", halves(44, 68)},
    NamedPaper{"half-letter", halves(22, 34)},
    NamedPaper{"quarter-letter", halves(17, 22)},
    NamedPaper{"half-legal", halves(28, 34)},
    NamedPaper{"a3", mm(297, 420)},
    NamedPaper{"a4", mm(210, 297)},
    NamedPaper{"a5", mm(148, 210)},
    NamedPaper{"a6", mm(105, 148)},
    NamedPaper{"a7", mm(74, 105)},
    NamedPaper{"a8", mm(52, 74)},
    NamedPaper{"sra3", mm(320, 450)},
};

} // namespace

std::span<const NamedPaper> named_papers() { return papers; }

std::optional<Size> paper_named(std::string_view name) {
  for (const NamedPaper &paper : papers)
    if (paper.name == name)
      return paper.size;
  return std::nullopt;
}

std::string written(const Size &size, Ruler ruler) {
  for (const NamedPaper &paper : papers)
    if (paper.size == size || paper.size.turned() == size)
      return std::string(paper.name);
  return written(size.width, ruler) + " x " + written(size.height, ruler);
}

Ruler ruler_of(const Size &size) {
  const bool whole_mm =
      size.width.units() % Length::per_mm == 0 && size.height.units() % Length::per_mm == 0;
  return whole_mm ? Ruler::millimetres : Ruler::inches;
}

} // namespace bodkin
