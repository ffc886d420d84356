// What its place and its page make of each picture: whether all of it is seen, and in its colours.
#pragma once

#include "art/gallery.hpp"
#include "paperwork/ledger.hpp"
#include "sheet/parts.hpp"

#include <vector>

namespace bodkin {

// Of the pictures of all parts, those that are cut to fill a place of another shape, or whose
// colours a black page takes. Files that cannot be read are left out.
std::vector<paperwork::PictureSeen> pictures_seen(const std::vector<CopyPart> &parts,
                                                  art::Gallery &gallery);

} // namespace bodkin
