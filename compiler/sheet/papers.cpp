#include "sheet/papers.hpp"

#include "sheet/paper_problems.hpp"

#include <algorithm>
#include <tuple>

namespace bodkin {
namespace {

template <typename Id>
Requests<Id> requests(const Edition &edition, std::vector<int> pages,
                      std::optional<Known<Id>> Asked::*what) {
  std::sort(pages.begin(), pages.end());
  Requests<Id> result;
  for (const int page : pages) {
    if (static_cast<std::size_t>(page) >= edition.pages.size())
      continue;
    const std::optional<Known<Id>> &asked =
        edition.pages[static_cast<std::size_t>(page)].asked.*what;
    if (!asked || asked->value == Id::none)
      continue;
    const auto same = std::find_if(result.begin(), result.end(), [&](const Request<Id> &request) {
      return request.from == asked->from && request.wanted == asked->value;
    });
    if (same != result.end())
      same->pages.push_back(page);
    else
      result.push_back({asked->value, asked->from, {page}});
  }
  std::stable_sort(result.begin(), result.end(), [](const Request<Id> &a, const Request<Id> &b) {
    return std::tie(a.from.file, a.from.begin) < std::tie(b.from.file, b.from.begin);
  });
  return result;
}

template <typename Id>
Id first_wanted(const Requests<Id> &requests, Id otherwise) {
  return requests.empty() ? otherwise : requests.front().wanted;
}

// The cover is the first two and the last two pages; it is a sheet of its own where the outermost
// sheet carries those and no others.
bool has_cover_sheet(const Imposition &imposition) {
  const int last = imposition.folds_into;
  if (imposition.pages_a_sheet != 4 || imposition.sheets.empty())
    return false;
  return last == 4 || imposition.sheets.front().section == imposition.sheets.back().section;
}

} // namespace

std::vector<int> pages_of(const Side &side) {
  std::vector<int> pages;
  for (const Place &place : side.places)
    if (place.page > 0)
      pages.push_back(place.page);
  return pages;
}

std::vector<int> pages_of(const Sheet &sheet) {
  std::vector<int> pages = pages_of(sheet.sides[0]);
  const std::vector<int> back = pages_of(sheet.sides[1]);
  pages.insert(pages.end(), back.begin(), back.end());
  return pages;
}

Requests<StockId> asked_of(const Edition &edition, const Sheet &sheet) {
  return requests(edition, pages_of(sheet), &Asked::stock);
}

Requests<MachineId> asked_of(const Edition &edition, const Side &side) {
  return requests(edition, pages_of(side), &Asked::machine);
}

void choose_papers(const Edition &edition, const Sources &sources, Imposition &imposition,
                   Problems &problems) {
  const bool cover = has_cover_sheet(imposition);
  if ((edition.cover_stock || edition.cover_mode) && !cover)
    problems.push_back(no_cover(edition, imposition));
  for (Sheet &sheet : imposition.sheets) {
    const bool covers = cover && sheet.number == 1 && edition.cover_stock;
    sheet.stock =
        first_wanted(asked_of(edition, sheet), covers ? **edition.cover_stock : *edition.paper);
    for (Side &side : sheet.sides)
      side.machine = first_wanted(asked_of(edition, side), *edition.machine);
  }
  for (const Sheet &sheet : imposition.sheets) {
    const Requests<StockId> papers = asked_of(edition, sheet);
    for (const Request<StockId> &request : papers)
      if (request.wanted != papers.front().wanted)
        problems.push_back(
            mixed_stock({edition, sources, imposition}, sheet, papers.front(), request));
    for (const Side &side : sheet.sides) {
      const Requests<MachineId> machines = asked_of(edition, side);
      for (const Request<MachineId> &request : machines)
        if (request.wanted != machines.front().wanted)
          problems.push_back(mixed_machine({edition, sources, imposition}, sheet, side,
                                           machines.front(), request));
    }
  }
}

} // namespace bodkin
