// From a manuscript to the model of its edition: everything that it borrows taken in, all names
// resolved, all defaults filled in.
#pragma once

#include "edition/edition.hpp"
#include "edition/files.hpp"
#include "problems/problem.hpp"
#include "problems/sources.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace bodkin {

enum class FileRole { manuscript, borrowed, shelf, words, picture, face, letter };

struct FileRead {
  std::string path; // relative to the edition's folder; of a shelf file "stdlib/stocks/us.bodkin"
  FileRole role = FileRole::manuscript;
};

struct Reading {
  // Complete as far as the manuscript goes, whatever is wrong with it: ids that could not be
  // resolved are `none`, a picture that is not there has an empty path, and there is a problem for
  // each.
  Edition edition;
  bool has_edition = false;    // false: the manuscript holds no `edition`
  std::vector<FileRead> files; // everything the edition names and that is there, each once
};

// `path` is the manuscript's, relative to the edition's folder. The model's ranges point into
// `sources`. Never throws for anything that a manuscript says.
Reading read_edition(std::string_view path, const Files &files, Sources &sources,
                     Problems &problems);

// Where a value of the model was written, for reports: "almanac.bodkin:43",
// "stdlib/machines/copy-shop.bodkin:7", or "default".
std::string origin_words(Range from, const Sources &sources);

} // namespace bodkin
