#include "money/standing.hpp"

#include "edition/piece.hpp"
#include "measure/limits.hpp"

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

bool concerns_money(const Element &element) {
  return std::holds_alternative<Hand>(element.what) ||
         std::holds_alternative<PasteUp>(element.what) || element.work.takes ||
         !element.work.costs.empty() || element.source;
}

struct Walk {
  const Edition &edition;
  std::vector<StandingCharge> found{};
  std::map<Line, std::size_t> index{};
  std::size_t seen_on_page = 0;

  void stand(ElementId id, int page, std::size_t depth) {
    if (++seen_on_page > limits::elements_a_page || depth > limits::nesting)
      return;
    const Element &element = edition[id];
    if (const auto *laid = std::get_if<Lay>(&element.what)) {
      if (laid->standing != StandingId::none)
        for (const ElementId inner : edition.standings[at(laid->standing)].elements)
          stand(inner, page, depth + 1);
    }
    if (!concerns_money(element))
      return;
    const auto [entry, is_new] = index.try_emplace(line_of(element, id), found.size());
    if (is_new)
      found.push_back({id, {}});
    found[entry->second].pages.push_back(page);
  }

  void page(int number) {
    seen_on_page = 0;
    const Page &page = edition.pages[static_cast<std::size_t>(number)];
    for (const ElementId id : page.elements)
      stand(id, number, 0);
    if (page.spread && edition.spreads[*page.spread].left == number)
      for (const ElementId id : edition.spreads[*page.spread].elements)
        stand(id, number, 0);
    if (page.blank || !page.opened.somewhere())
      return;
    for (const Running &running : edition.runnings)
      if (static_cast<std::size_t>(number) < running.on_page.size() &&
          running.on_page[static_cast<std::size_t>(number)])
        for (const ElementId id : running.elements)
          stand(id, number, 0);
  }
};

} // namespace

std::vector<StandingCharge> where_work_stands(const Edition &edition) {
  Walk walk{edition};
  for (std::size_t number = 1; number < edition.pages.size(); ++number)
    walk.page(static_cast<int>(number));
  return std::move(walk.found);
}

std::vector<StandingCharge> where_work_stands_in_all(const Edition &edition) {
  std::vector<StandingCharge> all = where_work_stands(edition);
  int before = *edition.page_count;
  for (const auto &piece : edition.pieces) {
    for (StandingCharge stands : where_work_stands(piece->edition)) {
      std::vector<int> pages;
      for (std::int64_t i = 0; i < *piece->count; ++i)
        for (const int page : stands.pages)
          pages.push_back(page + before);
      all.push_back({stands.element, std::move(pages)});
    }
    before += *piece->edition.page_count;
  }
  return all;
}

} // namespace bodkin
