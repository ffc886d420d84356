// A family of type that styles may ask for by its short name.
#pragma once

#include "edition/known.hpp"

#include <optional>
#include <string>
#include <vector>

namespace bodkin {

enum class Cut { regular, italic, bold, bold_italic };

struct FaceFile {
  std::string path; // as written: a file of the edition's folder, or a file name of the catalogue
  Cut cut = Cut::regular;
  Range range;
};

struct Face {
  std::string name;   // "book"
  std::string family; // "EB Garamond"; empty where a single file is named instead
  Range range;
  Range family_range;          // the quoted text
  std::vector<FaceFile> files; // of the edition, or of the catalogue's entry for the family
  bool own_files = false;      // the files lie in the edition's folder
  std::string package;         // Debian package, where the catalogue knows one
  std::string licence;
};

} // namespace bodkin
