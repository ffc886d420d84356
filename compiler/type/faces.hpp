// The faces of an edition, opened once for the whole run. Exact families only: a family that is not
// there is a problem with near names and the package to install, never another face.
#pragma once

#include "edition/edition.hpp"
#include "problems/problem.hpp"
#include "type/cut.hpp"
#include "type/system_faces.hpp"

#include <array>
#include <memory>
#include <string>
#include <vector>

namespace bodkin {

// A face's open files by cut; null where the family has no such cut, all null where it cannot be
// used.
struct OpenFace {
  std::array<const FaceCut *, 4> cuts{};
  bool usable() const { return (*this)[Cut::regular] != nullptr; }
  const FaceCut *operator[](Cut cut) const { return cuts[static_cast<std::size_t>(cut)]; }
  // What stands in for a cut that is not there: for bold italic the bold, then the italic; else the
  // regular. Null only where the face is not usable.
  const FaceCut *nearest(Cut cut) const;
};

// Move only; OpenFace and GlyphRun point into it. One FaceCut for each file, however many faces
// name it.
class OpenFaces {
public:
  const OpenFace &operator[](FaceId id) const; // FaceId::none is not usable
  const std::vector<std::unique_ptr<FaceCut>> &files() const {
    return cuts_;
  } // in order of opening

private:
  friend class FaceOpener;
  FaceLibrary library_;
  std::vector<std::unique_ptr<FaceCut>> cuts_;
  std::vector<OpenFace> faces_; // by FaceId
};

struct FacesOpened {
  OpenFaces faces;
  Problems problems; // missing-face, missing-file, unreadable-face, system-face …
};

// Opens the faces that some used style asks for; the others stay closed (not usable, no problem
// said). `catalogue` are the families of the catalogue, offered beside those of the machine to who
// misspelt one.
FacesOpened open_faces(const Edition &edition, const Files &files, const SystemFaces &system,
                       const std::vector<std::string> &catalogue = {});

// Faces reached from the styles of words and folios, by FaceId.
std::vector<bool> faces_in_use(const Edition &edition);

} // namespace bodkin
