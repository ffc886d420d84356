// A manuscript in a test, read, laid on its sheets and composed into pages.
#pragma once

#include "art/gallery.hpp"
#include "edition/reading.hpp"
#include "page/compose.hpp"
#include "sheet/passes.hpp"
#include "type/compositor.hpp"
#include "type/faces.hpp"

#include <memory>
#include <string>
#include <string_view>

namespace bodkin::tests {

// Not moved: its parts refer to one another.
struct Composed {
  Read read;
  Problems problems; // of every room up to the pages
  Imposition imposition;
  std::unique_ptr<SystemFaces> system;
  std::unique_ptr<FacesOpened> faces;
  std::unique_ptr<art::Gallery> gallery;
  std::unique_ptr<Compositor> compositor;
  Drawings drawings;
  std::vector<SheetModes> modes;
  std::vector<Pass> passes;

  const Edition &edition() const { return read.edition(); }
  // "72 36 288x18; …": where each thing of a page is, in points, in order of laying.
  std::string places(int page) const;
  // The lines of words on a page, parted by bars.
  std::string lines(int page) const;
  // The checks told, parted by blanks.
  std::string told() const;
};

// A small edition (see reading.hpp) with the style `body`, EB Garamond 10/12.
std::unique_ptr<Composed> composed(std::string_view facts, std::string_view rest,
                                   MoreFiles more = {});

} // namespace bodkin::tests
