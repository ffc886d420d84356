// Every page of an edition as objects of one PDF in the making: layers to be placed on sheets,
// passes and proofs. Each thing is drawn once, however many outputs show it.
#pragma once

#include "page/drawing.hpp"
#include "press/images.hpp"
#include "sheet/marks.hpp"
#include "sheet/parts.hpp"
#include "sheet/passes.hpp"
#include "type/faces.hpp"

#include <array>
#include <functional>
#include <qpdf/QPDF.hh>
#include <string>
#include <vector>

namespace bodkin::press {

struct PrintJob {
  const Edition &edition;
  const Imposition &imposition; // of all parts of a copy, as joined()
  const std::vector<CopyPart> &parts;
  const std::vector<Drawings> &drawings; // by part
  const std::vector<SheetModes> &modes;
  const std::vector<Pass> &passes;
  art::Gallery &gallery;
  std::function<void(int done, int of)> progress; // pages drawn; may be empty
  bool all_black = false;                         // colour pages too are drawn in greys

  // Pages are numbered on through all parts.
  int pages() const { return static_cast<int>(imposition.where.size()) - 1; }
  Size size_of(int page) const { return imposition.size_of(page); }
  const CopyPart &part_of(int page) const { return part_of_page(parts, page); }
  const PageDrawing &drawing(int page) const;
  // The page that is printed where this one stands: of another run's book it may be the first's.
  int printed(int page) const;
  Mode mode_of(int page) const;
};

// One object of a page, in the page's own frame (points, y down from its top left).
struct Layer {
  QPDFObjectHandle xobject;
  Transform to_page; // from the object's own PDF space
  Polygon clip;      // empty: none
  bool shifted = true;
  // Of what differs from copy to copy: the copy that it is for, by its place in the count of all.
  std::optional<std::int64_t> copy{};
  // Of a picture placed by itself: which, how large all of it stands, and from the unit square of
  // the picture as seen.
  ElementId picture = ElementId::none;
  Size seen{};
  Transform unit{};
};

class Plates {
public:
  // Draws all pages. Throws std::runtime_error where a library fails.
  explicit Plates(const PrintJob &job);
  Plates(const Plates &) = delete;
  Plates &operator=(const Plates &) = delete;

  QPDF &pdf() { return pdf_; }
  const PrintJob &job() const { return job_; }
  const std::vector<Layer> &page(int number) const {
    return pages_[static_cast<std::size_t>(number)];
  }

private:
  friend class PlateMaker;
  const PrintJob &job_;
  std::string vectors_; // the PDF that the forms are taken from: read until the last write
  QPDF pdf_;
  std::vector<std::vector<Layer>> pages_;
};

} // namespace bodkin::press
