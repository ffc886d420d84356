// The way through the house: a manuscript walks it once, in one direction, and every room hands the
// next a finished value.
#pragma once

#include "art/gallery.hpp"
#include "command/progress.hpp"
#include "edition/disk.hpp"
#include "edition/read.hpp"
#include "money/estimate.hpp"
#include "page/compose.hpp"
#include "paperwork/ledger.hpp"
#include "paperwork/post.hpp"
#include "problems/sources.hpp"
#include "sheet/parts.hpp"
#include "sheet/passes.hpp"
#include "type/compositor.hpp"
#include "type/faces.hpp"

#include <memory>
#include <optional>
#include <stdexcept>
#include <string>
#include <vector>

namespace bodkin {

// What was made of an edition, room by room. Not copied or moved: its parts refer to one another.
struct WayThrough {
  DiskEdition disk;
  Sources sources;
  Problems problems; // of all rooms, in order of place
  Reading reading;
  std::vector<CopyPart> parts; // of a copy: the book, then its pieces
  Imposition imposition;       // of all of them
  std::unique_ptr<SystemFaces> system;
  std::optional<FacesOpened> faces;
  std::optional<art::Gallery> gallery;
  std::optional<Compositor> compositor;
  std::vector<Drawings> drawings; // by part
  std::vector<SheetModes> modes;
  std::vector<Pass> passes;
  ChargedSides sides;
  Estimate estimate;
  paperwork::RightsLedger rights;
  std::vector<paperwork::Mailing> mailings;

  WayThrough() = default;
  WayThrough(const WayThrough &) = delete;
  WayThrough &operator=(const WayThrough &) = delete;

  const Edition &edition() const { return reading.edition; }
};

// By page, numbered on through the parts: whether anything is drawn on it.
std::vector<bool> draws_of(const WayThrough &way);

// The manuscript named on the command line cannot be read.
struct NoManuscript : std::runtime_error {
  using std::runtime_error::runtime_error;
};

// What a command asks about. Where it is the sheets or the pages alone, nothing is told of layings
// that would cost less.
enum class AskedAbout { money, making };

// `shelf_root` holds stdlib/ and fonts/. Throws NoManuscript.
std::unique_ptr<WayThrough> walk(const std::string &manuscript, const std::string &shelf_root,
                                 bool anyway, Progress &progress,
                                 AskedAbout about = AskedAbout::making);

// Paths, relative to the edition's folder or by file name, of everything that was read and its
// digest in hexadecimal; by path.
struct InputFile {
  std::string path;    // as made-from.json names it
  std::string on_disk; // where it is
  std::string digest;
};
std::vector<InputFile> inputs_of(WayThrough &way, const std::string &shelf_root);

} // namespace bodkin
