#include "sheet/own_sheets.hpp"

#include <algorithm>

namespace bodkin {
namespace {

bool page_differs(const CopyPart &book, const CopyPart &other, int page) {
  const auto index = static_cast<std::size_t>(page);
  const std::vector<bool> &matter = other.piece->other_matter;
  return (index < matter.size() && matter[index]) ||
         *book.edition->pages[index].mode != *other.edition->pages[index].mode;
}

bool side_differs(const CopyPart &book, const CopyPart &other, const Side &one, const Side &two) {
  return one.machine != two.machine ||
         std::any_of(one.places.begin(), one.places.end(), [&](const Place &place) {
           return place.page > 0 && place.page <= book.imposition.page_count &&
                  page_differs(book, other, place.page);
         });
}

bool sheet_differs(const CopyPart &book, const CopyPart &other, std::size_t sheet) {
  const Sheet &one = book.imposition.sheets[sheet], &two = other.imposition.sheets[sheet];
  return one.stock != two.stock || one.size != two.size ||
         side_differs(book, other, one.sides[0], two.sides[0]) ||
         side_differs(book, other, one.sides[1], two.sides[1]);
}

} // namespace

void find_own_sheets(std::vector<CopyPart> &parts) {
  std::vector<CopyPart *> others;
  for (CopyPart &part : parts)
    if (part.piece && part.piece->is_other_book())
      others.push_back(&part);
  CopyPart &book = parts.front();
  for (std::size_t sheet = 0; sheet < book.imposition.sheets.size() && !others.empty(); ++sheet) {
    const bool differs = std::any_of(others.begin(), others.end(), [&](const CopyPart *other) {
      return sheet_differs(book, *other, sheet);
    });
    if (differs)
      book.imposition.sheets[sheet].only = 0;
    for (CopyPart *other : others) {
      other->own_sheets.push_back(differs);
      if (differs)
        other->imposition.sheets[sheet].only = **other->piece->only;
    }
  }
}

bool holds(const CopyPart &part, std::optional<std::uint32_t> run) {
  if (!part.piece || !part.piece->only)
    return true;
  const std::uint32_t only = **part.piece->only;
  if (part.piece->is_other_book())
    return run && *run == only;
  return !run || *run == only;
}

std::vector<const CopyPart *> parts_of_copy(std::span<const CopyPart> parts,
                                            std::optional<std::uint32_t> run) {
  std::vector<const CopyPart *> held;
  for (const CopyPart &part : parts) {
    if (!holds(part, run))
      continue;
    if (part.piece && part.piece->is_other_book())
      held.front() = &part;
    else
      held.push_back(&part);
  }
  return held;
}

int sheet_of_part(const CopyPart &part, int sheet) {
  int left = sheet - part.sheets_before;
  if (part.own_sheets.empty() || !part.piece)
    return left;
  for (std::size_t i = 0; i < part.own_sheets.size(); ++i)
    if (part.own_sheets[i] && left-- == 0)
      return static_cast<int>(i);
  return 0;
}

} // namespace bodkin
