// How the paper of a pass goes in, and how a stack that was printed before goes back in, told in
// whole sentences.
#pragma once

#include "sheet/passes.hpp"

namespace bodkin {

// `earlier` are the passes before this one, in order.
std::vector<std::string> feeding(const Edition &edition, const Imposition &imposition,
                                 std::span<const Pass> earlier, const Pass &pass);

} // namespace bodkin
