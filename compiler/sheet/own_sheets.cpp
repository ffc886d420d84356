#include "sheet/own_sheets.hpp"

#include <algorithm>
#include <map>

namespace bodkin {
namespace {

std::uint32_t matter_on(const CopyPart &book, std::size_t page) {
  return book.piece && page < book.piece->matter_of.size() ? book.piece->matter_of[page] : 0;
}

bool is_alike(const CopyPart &one, const CopyPart &other, int page) {
  const auto index = static_cast<std::size_t>(page);
  return matter_on(one, index) == matter_on(other, index) &&
         *one.edition->pages[index].mode == *other.edition->pages[index].mode;
}

bool is_alike(const CopyPart &one, const CopyPart &other, const Side &side, const Side &its) {
  return side.machine == its.machine &&
         std::all_of(side.places.begin(), side.places.end(), [&](const Place &place) {
           return place.page <= 0 || place.page > one.imposition.page_count ||
                  is_alike(one, other, place.page);
         });
}

bool is_alike(const CopyPart &one, const CopyPart &other, std::size_t sheet) {
  const Sheet &of_one = one.imposition.sheets[sheet], &of_other = other.imposition.sheets[sheet];
  return of_one.stock == of_other.stock && of_one.size == of_other.size &&
         is_alike(one, other, of_one.sides[0], of_other.sides[0]) &&
         is_alike(one, other, of_one.sides[1], of_other.sides[1]);
}

std::uint32_t run_of(const CopyPart &book) { return book.piece ? **book.piece->only : 0; }

// The books of one sheet, each with the first that has it alike.
void share(std::vector<CopyPart> &parts, const std::vector<std::size_t> &books, std::size_t sheet) {
  std::vector<std::size_t> makers;
  std::map<std::size_t, RunSet> whose;
  for (const std::size_t book : books) {
    const auto same = std::find_if(makers.begin(), makers.end(), [&](std::size_t maker) {
      return is_alike(parts[maker], parts[book], sheet);
    });
    const std::optional<std::size_t> with =
        same == makers.end() ? std::nullopt : std::optional(*same);
    if (with) {
      whose[*with] = whose[*with].with(run_of(parts[book]));
    } else {
      makers.push_back(book);
      whose.emplace(book, run_of(parts[book]));
    }
    if (book > 0)
      parts[book].made_with.push_back(with);
  }
  for (const std::size_t book : books)
    if (makers.size() > 1)
      parts[book].imposition.sheets[sheet].only =
          whose[book > 0 ? parts[book].made_with.back().value_or(book) : book];
}

} // namespace

void find_own_sheets(std::vector<CopyPart> &parts) {
  std::vector<std::size_t> books{0};
  for (std::size_t part = 1; part < parts.size(); ++part)
    if (parts[part].is_other_book())
      books.push_back(part);
  for (std::size_t sheet = 0; sheet < parts.front().imposition.sheets.size(); ++sheet)
    if (books.size() > 1)
      share(parts, books, sheet);
}

bool holds(const CopyPart &part, std::optional<std::uint32_t> run) {
  if (!part.piece || !part.piece->only)
    return true;
  const std::uint32_t only = **part.piece->only;
  if (part.is_other_book())
    return run && *run == only;
  return !run || *run == only;
}

std::vector<const CopyPart *> parts_of_copy(std::span<const CopyPart> parts,
                                            std::optional<std::uint32_t> run) {
  std::vector<const CopyPart *> held;
  for (const CopyPart &part : parts) {
    if (!holds(part, run))
      continue;
    if (part.is_other_book())
      held.front() = &part;
    else
      held.push_back(&part);
  }
  return held;
}

int sheet_of_part(const CopyPart &part, int sheet) {
  int left = sheet - part.sheets_before;
  for (std::size_t i = 0; i < part.made_with.size(); ++i)
    if (part.makes(i) && left-- == 0)
      return static_cast<int>(i);
  return part.made_with.empty() ? left : 0;
}

int sheet_of_copy(const std::vector<CopyPart> &parts, const CopyPart &part, std::size_t sheet) {
  if (!part.makes(sheet))
    return sheet_of_copy(parts, parts[*part.made_with[sheet]], sheet);
  int at = part.sheets_before;
  for (std::size_t i = 0; i < sheet; ++i)
    at += part.makes(i) ? 1 : 0;
  return at;
}

} // namespace bodkin
