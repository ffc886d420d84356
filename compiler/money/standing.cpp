#include "money/standing.hpp"

#include "edition/laid.hpp"
#include "edition/piece.hpp"

#include <map>
#include <tuple>
#include <utility>

namespace bodkin {
namespace {

// Elements that a page list repeats come from one line; what was never written is itself alone.
using Line = std::tuple<std::uint32_t, std::uint32_t, std::uint32_t>;

Line line_of(const Element &element, ElementId id) {
  if (!element.range.somewhere())
    return {static_cast<std::uint32_t>(FileId::none), 0, static_cast<std::uint32_t>(id)};
  return {static_cast<std::uint32_t>(element.range.file), bytes(element.range.begin), 0};
}

bool concerns_money(const Edition &edition, const Element &element) {
  return std::holds_alternative<Hand>(element.what) ||
         std::holds_alternative<PasteUp>(element.what) || element.work.takes ||
         !element.work.costs.empty() || source_of(edition, element) != SourceId::none;
}

} // namespace

SourceId source_of(const Edition &edition, const Element &element) {
  if (element.source)
    return **element.source;
  const auto *words = std::get_if<Words>(&element.what);
  const auto *text = words != nullptr ? std::get_if<TextId>(&words->words) : nullptr;
  if (text == nullptr || *text == TextId::none)
    return SourceId::none;
  const auto &source = edition.texts[at(*text)].source;
  return source ? **source : SourceId::none;
}

std::vector<StandingCharge> where_work_stands(const Edition &edition) {
  std::vector<StandingCharge> found;
  std::map<Line, std::size_t> index;
  each_laid(edition, [&](ElementId id, int page) {
    const Element &element = edition[id];
    if (!concerns_money(edition, element))
      return;
    const auto [entry, is_new] = index.try_emplace(line_of(element, id), found.size());
    if (is_new)
      found.push_back({id, {}, {}});
    found[entry->second].pages.push_back(page);
  });
  return found;
}

std::vector<StandingCharge> where_work_stands_in_all(const Edition &edition) {
  std::vector<StandingCharge> all = where_work_stands(edition);
  int before = *edition.page_count;
  for (const auto &piece : edition.pieces) {
    for (const StandingCharge &stands : where_work_stands(piece->edition)) {
      if (!is_own_matter(*piece, edition[stands.element]))
        continue;
      std::vector<int> pages;
      for (std::int64_t i = 0; i < *piece->count; ++i)
        for (const int page : stands.pages)
          pages.push_back(page + before);
      all.push_back({stands.element, std::move(pages), piece->only});
    }
    before += *piece->edition.page_count;
  }
  return all;
}

} // namespace bodkin
