// The files of an edition on disk.
#pragma once

#include "edition/files.hpp"

#include <memory>
#include <string>

namespace bodkin {

struct DiskEdition {
  std::unique_ptr<Files> files{}; // null: `trouble` says why
  std::string folder{};           // the edition's folder, absolute, links followed
  std::string manuscript{};       // relative to it; what read_edition() takes
  std::string trouble;            // "almanac.bodkin is not there"
};

// The edition's folder is the nearest one upwards from the manuscript that holds a `series.bodkin`,
// else the manuscript's own. `shelf_root` is the folder that holds `stdlib/` and `fonts/`: the
// source tree, or where the program was installed.
DiskEdition open_on_disk(const std::string &manuscript, const std::string &shelf_root);

} // namespace bodkin
