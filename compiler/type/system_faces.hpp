// The faces that this machine has, behind a narrow interface so that tests run on faces of their
// own. A face is found by the exact name of its file, or listed under its family's exact name;
// nothing here ever offers one face for another.
#pragma once

#include "edition/files.hpp"

#include <cstddef>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace bodkin {

struct SystemFace {
  std::string path;
  int index = 0;                     // in a collection
  std::vector<std::string> families; // every name that the file gives its family
  int weight = 400;                  // 100 to 900: 400 is regular, 700 bold
  bool slanted = false;
  bool normal_width = true;
  bool variable = false; // one file for many weights; used at its default alone
};

class SystemFaces {
public:
  virtual ~SystemFaces() = default;
  // The whole path of the file of that name, or empty.
  virtual std::string path_of(std::string_view file_name) const = 0;
  // Every scalable OpenType face. Slow at first (the machine may have to build its list).
  virtual const std::vector<SystemFace> &list() const = 0;
  // Null view where it cannot be read or is larger than `most_bytes`.
  virtual FileBytes read(const std::string &path, std::size_t most_bytes) const = 0;
};

// Those of the machine: files under /usr/share/fonts and /usr/local/share/fonts by name, the list
// through fontconfig when it is first asked for.
std::unique_ptr<SystemFaces> machine_faces();

} // namespace bodkin
