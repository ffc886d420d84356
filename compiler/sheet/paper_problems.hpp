// Contradictions about the paper and the machine of a sheet, in words.
#pragma once

#include "sheet/papers.hpp"

namespace bodkin {

struct AllSheets {
  const Edition &edition;
  const Sources &sources;
  const Imposition &imposition;
};

Problem no_cover(const Edition &edition, const Imposition &imposition);
// `first` is the earlier line, which the sheet follows; `other` contradicts it and is reported.
Problem mixed_stock(const AllSheets &all, const Sheet &sheet, const Request<StockId> &first,
                    const Request<StockId> &other);
Problem mixed_machine(const AllSheets &all, const Sheet &sheet, const Side &side,
                      const Request<MachineId> &first, const Request<MachineId> &other);

// "pages 16 and 5 on its front, 6 and 15 on its back"
std::string sides_in_words(const Sheet &sheet);

} // namespace bodkin
