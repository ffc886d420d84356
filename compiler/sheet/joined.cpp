// All parts of a copy as one run of sheets.
#include "sheet/parts.hpp"

namespace bodkin {
namespace {

// The page behind the book lies on the back of its first sheet.
void take_reverse(Imposition &whole, const CopyPart &part) {
  whole.sheets.front().reverse = part.pages_before + 1;
  Side &back = whole.sheets.front().sides[1];
  Place place = part.imposition.place_of(1);
  place.page = part.pages_before + 1;
  back.places = {place};
  back.numbered = part.imposition.sheets.front().sides[0].numbered;
  back.machine = *part.edition->machine;
  whole.where.push_back({0, 1, 0});
  whole.where.push_back({0, 1, 0}); // its own other side is the book
}

void take_sheet(Imposition &whole, const CopyPart &part, Sheet sheet) {
  sheet.in_a_copy = part.in_a_copy();
  if (part.piece && part.piece->only && !part.is_other_book())
    sheet.only = **part.piece->only;
  sheet.pages_before = part.pages_before;
  sheet.piece = part.piece ? part.piece->name : std::string();
  for (Side &side : sheet.sides)
    for (Place &place : side.places)
      place.page = place.page > 0 && place.page <= part.imposition.page_count
                       ? place.page + part.pages_before
                       : 0;
  whole.sheets.push_back(std::move(sheet));
}

// Of another book only the sheets that no run before has; what stands on the others is where the
// run that makes them has it.
void take_other_book(Imposition &whole, const std::vector<CopyPart> &parts, const CopyPart &part) {
  for (std::size_t i = 0; i < part.imposition.sheets.size(); ++i) {
    if (!part.makes(i))
      continue;
    Sheet sheet = part.imposition.sheets[i];
    sheet.in_place_of = sheet.number;
    sheet.number = static_cast<int>(whole.sheets.size()) + 1;
    take_sheet(whole, part, std::move(sheet));
  }
  for (std::size_t page = 1; page < part.imposition.where.size(); ++page) {
    Spotted spot = part.imposition.where[page];
    spot.sheet = sheet_of_copy(parts, part, static_cast<std::size_t>(spot.sheet));
    whole.where.push_back(spot);
  }
}

void take(Imposition &whole, const std::vector<CopyPart> &parts, const CopyPart &part) {
  if (part.piece && part.piece->is_reverse())
    return take_reverse(whole, part);
  if (part.is_other_book())
    return take_other_book(whole, parts, part);
  const std::size_t first = whole.sheets.size();
  for (Sheet sheet : part.imposition.sheets) {
    sheet.number += part.sheets_before;
    take_sheet(whole, part, std::move(sheet));
  }
  for (std::size_t page = 1; page < part.imposition.where.size(); ++page) {
    Spotted spot = part.imposition.where[page];
    spot.sheet += static_cast<int>(first);
    whole.where.push_back(spot);
  }
}

} // namespace

Imposition joined(const std::vector<CopyPart> &parts) {
  Imposition whole = parts.front().imposition;
  for (std::size_t i = 1; i < parts.size(); ++i)
    take(whole, parts, parts[i]);
  return whole;
}

} // namespace bodkin
