#include "money/charged.hpp"

#include "money/send.hpp"
#include "sheet/parts.hpp"

#include <algorithm>
#include <map>
#include <utility>

namespace bodkin {
namespace {

using SideKey = std::pair<int, int>;

SideKey key_of(const PassPage &page) { return {page.sheet, page.side == SideName::back ? 1 : 0}; }

std::vector<SideKey> printed_by(const Pass &pass) {
  std::vector<SideKey> sides;
  for (const PassPage &page : pass.pages)
    if (page.prints)
      sides.push_back(key_of(page));
  std::ranges::sort(sides);
  return sides;
}

} // namespace

ChargedSides charged_sides(const Imposition &imposition, std::span<const SheetModes> modes,
                           std::span<const Pass> passes) {
  std::map<SideKey, ChargedSide> counted;
  const auto mode_of = [&](SideKey key) {
    return modes[static_cast<std::size_t>(key.first)][static_cast<std::size_t>(key.second)];
  };
  for (const Pass &pass : passes) {
    const std::vector<SideKey> printed = printed_by(pass);
    for (const PassPage &page : pass.pages) {
      const SideKey key = key_of(page);
      const SideMode mode = mode_of(key);
      if (page.prints && mode)
        counted[key] = {key.first, key.second, pass.machine, true, *mode, false, pass.number};
      else if (!mode && std::ranges::binary_search(printed, SideKey{key.first, 1 - key.second}))
        counted[key] = {key.first, key.second, pass.machine, false, Mode::black, true, pass.number};
    }
  }
  ChargedSides sides;
  for (const auto &[key, side] : counted)
    if (static_cast<std::size_t>(key.first) < imposition.sheets.size())
      sides.push_back(side);
  return sides;
}

Laid lay(const Edition &edition, const std::vector<bool> &draws, const Sources &sources) {
  Problems said_before;
  std::vector<CopyPart> parts = impose_parts(edition, sources, said_before);
  std::vector<PageInk> inks(1);
  for (const CopyPart &part : parts)
    for (int page = 1; page <= part.imposition.page_count; ++page)
      inks.push_back({inks.size() < draws.size() && draws[inks.size()],
                      *part.edition->pages[static_cast<std::size_t>(page)].mode});
  send_to_machines(edition, parts, inks, sources);
  Laid laid{joined(parts), {}};
  const std::vector<SheetModes> modes = modes_of(laid.imposition, inks);
  const std::vector<Pass> passes = passes_of(edition, laid.imposition, modes, sources, said_before);
  laid.sides = charged_sides(laid.imposition, modes, passes);
  return laid;
}

} // namespace bodkin
