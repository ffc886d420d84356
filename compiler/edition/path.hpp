// Paths as manuscripts write them, before any folder is looked at.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace bodkin {

// `folder` and then `written`, with `.` and `..` worked out; none where it is absolute or climbs
// out of the edition's folder at any point. Empty parts are left out, as a file system does.
std::optional<std::vector<std::string>> path_parts(std::string_view folder,
                                                   std::string_view written);
std::string joined(const std::vector<std::string> &parts);

// What a maker may have meant by `wanted` among the names of a folder.
struct NearName {
  std::string name; // empty: nothing is near
  bool only_case = false;
};
NearName near_name(std::string_view wanted, const std::vector<std::string> &among);

// `written` with its last parts replaced, so that it reads as the maker would write it.
std::string rewritten(std::string_view written, const std::vector<std::string> &was,
                      const std::vector<std::string> &now);

// `written` with its backslashes as strokes; empty where it has none.
std::string with_strokes(std::string_view written);

// The file's own name of a path.
std::string_view last_part(std::string_view written);

// How a manuscript in `folder` writes the path of a file of the edition; empty where it lies
// further out.
std::string as_written_in(std::string_view folder, std::string_view path);

// A shelf's name holds lower-case letters, digits, hyphens and one slash.
bool is_shelf_name(std::string_view name);

} // namespace bodkin
