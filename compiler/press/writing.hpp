// One PDF written from some pages of the document in the making, the same bytes every time.
#pragma once

#include "press/output.hpp"

namespace bodkin::press {

// Puts the pages into the page tree, writes, and takes them out of the document again. `kind`
// tells this PDF's identifier from those of the edition's others.
void write_pdf(QPDF &pdf, const std::vector<QPDFObjectHandle> &pages, const Imprint &imprint,
               std::string_view kind, const Sink &sink);

} // namespace bodkin::press
