// The pictures of one edition, each file read and judged once. Made by its caller and handed along;
// for one thread. Holds mapped files and small judgements, never decoded samples: those are made
// when asked for and belong to who asked.
#pragma once

#include "art/inspect.hpp"
#include "art/load.hpp"
#include "edition/element.hpp"
#include "edition/files.hpp"
#include "measure/digest.hpp"

#include <map>
#include <optional>
#include <string>
#include <tuple>

namespace bodkin::art {

class Gallery {
public:
  // Keeps a reference to `files`.
  explicit Gallery(const Files &files, const Bounds &bounds = {})
      : files_(&files), bounds_(bounds) {}

  // The file's bytes; an empty view where it cannot be read.
  std::string_view bytes(const std::string &path);
  const Digest &digest(const std::string &path);

  const Outcome<Facts> &facts(const Picture &picture);
  // After its tone, within its crop.
  const Outcome<bool> &coloured(const Picture &picture);
  // In shares of the whole picture, before its crop. Decodes a raster file whole: ask only where
  // the picture's own edges are not safe.
  const Outcome<Hull> &ink(const Picture &picture);
  // Of the whole picture, after its tone. Decodes a raster file, reduced where it can be.
  const Outcome<LuminanceGrid> &luminance(const Picture &picture);
  // Not kept.
  Outcome<Pixels> pixels(const Picture &picture, std::int64_t about = all_samples);

private:
  using Sheet = std::pair<std::string, int>; // path and PDF page
  // Path, PDF page, tone, threshold, crop.
  using Treated = std::tuple<std::string, int, int, std::int64_t, std::array<std::int64_t, 4>>;
  static Treated treated(const Picture &picture, bool with_crop);

  const Files *files_;
  Bounds bounds_;
  std::map<std::string, FileBytes> bytes_;
  std::map<std::string, Digest> digests_;
  std::map<Sheet, Outcome<Facts>> facts_;
  std::map<Treated, Outcome<bool>> coloured_;
  std::map<Treated, Outcome<Hull>> ink_;
  std::map<Treated, Outcome<LuminanceGrid>> luminance_;
};

} // namespace bodkin::art
