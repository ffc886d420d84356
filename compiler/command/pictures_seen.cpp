#include "command/pictures_seen.hpp"

#include "edition/laid.hpp"
#include "page/picture.hpp"
#include "page/placement.hpp"

#include <algorithm>
#include <map>
#include <utility>

namespace bodkin {
namespace {

// Less than this share of a side is what rounding a shape to whole samples makes of it.
constexpr double hardly_seen = 0.005;

bool is_of_spread(const Spread &spread, ElementId id) {
  return std::find(spread.elements.begin(), spread.elements.end(), id) != spread.elements.end();
}

Ground ground_under(const CopyPart &part, ElementId id, int page) {
  const Edition &edition = *part.edition;
  const auto &spread = edition.pages[static_cast<std::size_t>(page)].spread;
  if (spread && is_of_spread(edition.spreads[*spread], id))
    return ground_of(edition, part.imposition, edition.spreads[*spread]);
  return ground_of(edition, part.imposition, page);
}

bool is_cut(const SetPicture &set) {
  const auto lost = [](Length seen, Length whole) {
    return seen.in_points() < whole.in_points() * (1 - hardly_seen);
  };
  return lost(set.window.width, set.whole.width) || lost(set.window.height, set.whole.height);
}

paperwork::PictureSeen seen(const CopyPart &part, ElementId id, int page, art::Gallery &gallery) {
  const Element &element = (*part.edition)[id];
  const auto &picture = std::get<Picture>(element.what);
  paperwork::PictureSeen made{element.range};
  if (picture.path->empty())
    return made;
  if (const auto &facts = gallery.facts(picture); facts && element.placement.fills) {
    const Ground ground = ground_under(part, id, page);
    const Box place = place_of(element.placement, *part.edition, ground);
    made.cut = is_cut(stand(picture, true, facts->aspect(), place));
  }
  if (*part.edition->pages[static_cast<std::size_t>(page)].mode == Mode::black) {
    const auto &coloured = gallery.coloured(picture);
    made.in_grey = coloured && *coloured;
  }
  return made;
}

} // namespace

std::vector<paperwork::PictureSeen> pictures_seen(const std::vector<CopyPart> &parts,
                                                  art::Gallery &gallery) {
  std::vector<paperwork::PictureSeen> all;
  std::map<std::pair<FileId, Offset>, std::size_t> places; // by where its line begins
  for (const CopyPart &part : parts)
    each_laid(*part.edition, [&](ElementId id, int page) {
      if (!std::holds_alternative<Picture>((*part.edition)[id].what))
        return;
      const paperwork::PictureSeen one = seen(part, id, page, gallery);
      if (!one.cut && !one.in_grey)
        return;
      const auto [place, added] =
          places.emplace(std::pair(one.element.file, one.element.begin), all.size());
      if (added)
        return all.push_back(one);
      all[place->second].cut |= one.cut;
      all[place->second].in_grey |= one.in_grey;
    });
  return all;
}

} // namespace bodkin
