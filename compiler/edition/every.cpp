#include "edition/every.hpp"

namespace bodkin {
namespace {

FactLine spot_of(const Facts &facts) {
  const FactLine at = facts.find("at");
  return at ? at : facts.find("cells");
}

FactLine area_of(const Facts &facts) {
  const FactLine fills = facts.find("fills");
  return fills ? fills : facts.find("fits");
}

bool is_place(FactLine area) { return area.words("area") == "place"; }

} // namespace

ElementFacts::ElementFacts(const Reader &reader, FactLine element) : own_(element) {
  const auto found = reader.every.find(element.word());
  if (found != reader.every.end())
    every_ = &found->second;
}

FactLine ElementFacts::find(std::string_view word) const {
  if (const FactLine own = own_.find(word))
    return own;
  if (every_)
    for (const Facts &level : every_->levels)
      if (const FactLine line = level.find(word))
        return line;
  return {};
}

ElementFacts::Where ElementFacts::where() const {
  Where where{spot_of(own_), area_of(own_)};
  // False once nothing of a weaker level can go with what there is.
  const auto take = [&](const Facts &level) {
    const FactLine spot = spot_of(level);
    const FactLine area = area_of(level);
    if (!where.spot && !where.area) {
      where = {spot, area};
    } else if (where.spot && !where.area && area) {
      if (!is_place(area))
        return false;
      where.area = area;
    } else if (where.area && !where.spot) {
      if (!is_place(where.area) || (area && !is_place(area)))
        return false;
      where.spot = spot;
    }
    return !(where.spot && where.area);
  };
  if (every_ && !(where.spot && where.area))
    for (const Facts &level : every_->levels)
      if (!take(level))
        break;
  return where;
}

Facts ElementFacts::of(std::initializer_list<std::string_view> words) const {
  Facts facts;
  for (const std::string_view word : words) {
    const Facts *level = &own_;
    if (every_ && !own_.find(word))
      for (const Facts &one : every_->levels)
        if (one.find(word)) {
          level = &one;
          break;
        }
    level->each(word, [&](FactLine line) { facts.add(line); });
  }
  return facts;
}

} // namespace bodkin
