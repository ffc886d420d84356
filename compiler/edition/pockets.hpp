// Pockets and what is put in them.
#pragma once

#include "edition/piece.hpp"
#include "edition/reader.hpp"

#include <memory>
#include <vector>

namespace bodkin {

// When all pieces are read: pockets are found by their names, and nothing lies in itself. What has
// none lies loose. Problems: unknown-name, not-a-pocket, holds-itself.
void settle_pockets(Reader &reader, const std::vector<std::shared_ptr<Piece>> &pieces);

} // namespace bodkin
