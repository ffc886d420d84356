// A proved folding as its pages are read: the side with the first page is the front, upright (or
// turned a quarter, where the spine lies across the sheet), however its author laid the sheet down.
#pragma once

#include "sheet/fold.hpp"

namespace bodkin {

struct Binding {
  OpenedBy opened = OpenedBy::leaves;
  Toward spine = Toward::left;
  bool at_side = false; // through all leaves beside the spine, which is no fold
};

// Of one sheet, as written or from the other end.
std::vector<PanelShare> panel_shares(const Folding &folding, bool columns, bool mirrored = false);

// None where `front` and `back` tell pages that cannot be, or a strip does not begin at its start.
std::optional<FoldedSheet> settled(const Folding &folding, const FoldedPaper &paper,
                                   const PagesMet &met, const Binding &binding, Problems &problems);

} // namespace bodkin
